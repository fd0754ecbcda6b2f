import os
from types import SimpleNamespace

import pytest
from sqlalchemy.exc import OperationalError

from server.config import settings
from server.store import disk


def file_system(free_bytes, flag=0):
    return lambda _: SimpleNamespace(
        f_bfree=free_bytes, f_bavail=free_bytes, f_frsize=1, f_flag=flag
    )


@pytest.mark.parametrize(
    ("free_bytes", "flag", "state"),
    [
        (disk.NEARLY_FULL_BYTES, 0, "fine"),
        (disk.NEARLY_FULL_BYTES - 1, 0, "nearly_full"),
        (disk.FULL_BYTES, 0, "nearly_full"),
        (disk.FULL_BYTES - 1, 0, "full"),
        (0, 0, "full"),
        (10**12, os.ST_RDONLY, "read_only"),
    ],
)
def test_a_file_system_is_judged_by_what_is_left(
    app, monkeypatch, free_bytes, flag, state
):
    monkeypatch.setattr(os, "statvfs", file_system(free_bytes, flag))
    assert disk.look() == (state, free_bytes)


def test_the_words_say_what_is_left_and_what_to_do(app, monkeypatch):
    monkeypatch.setattr(os, "statvfs", file_system(120 * disk.MB))
    assert disk.look().text.endswith("old copies first. 120 MB left.")


def test_what_the_database_said_counts_until_a_write_goes_well(app):
    full = OperationalError("", {}, SimpleNamespace(sqlite_errorcode=13))
    disk.note(full)
    assert disk.look().state == "full"
    disk.note(None)
    assert disk.look().state in ("fine", "nearly_full")


def test_a_worker_that_writes_no_more_does_not_keep_on_saying_so(app, monkeypatch):
    now_s = [1000.0]
    monkeypatch.setattr(disk, "_now_s", lambda: now_s[0])
    disk.note(OperationalError("", {}, SimpleNamespace(sqlite_errorcode=13)))
    now_s[0] += disk.BELIEVED_S
    assert disk.look().state == "full"
    now_s[0] += 1
    assert disk.look().state in ("fine", "nearly_full")


def test_what_the_disk_showed_by_itself_is_over_once_it_shows_room(app, monkeypatch):
    monkeypatch.setattr(os, "statvfs", file_system(0))
    disk.note(OperationalError("", {}, SimpleNamespace(sqlite_errorcode=13)))
    assert disk.look().state == "full"
    monkeypatch.setattr(os, "statvfs", file_system(10**12))
    assert disk.look().state == "fine"


def test_a_lock_says_nothing_of_the_disk(app):
    locked = OperationalError("", {}, SimpleNamespace(sqlite_errorcode=5))
    disk.note(locked)
    assert disk.trouble_of(locked) is None
    assert disk.look().state in ("fine", "nearly_full")


@pytest.mark.parametrize(
    ("sqlstate", "state"), [("53100", "full"), ("25006", "read_only"), ("40001", None)]
)
def test_postgresql_says_it_by_its_own_codes(app, sqlstate, state):
    error = OperationalError("", {}, SimpleNamespace(sqlstate=sqlstate))
    assert disk.trouble_of(error) == state


def test_a_failed_write_is_laid_to_the_disk_only_where_the_disk_is_full(
    app, monkeypatch
):
    error = OperationalError("", {}, SimpleNamespace(sqlite_errorcode=10 | 3 << 8))
    assert settings().data_dir.is_dir()
    monkeypatch.setattr(os, "statvfs", file_system(10**12))
    assert disk.trouble_of(error) is None
    monkeypatch.setattr(os, "statvfs", file_system(0))
    assert disk.trouble_of(error) == "full"
