"""Putting a copy back loses nothing, wherever it ends."""

import os
import sqlite3
import stat
from contextlib import closing, suppress
from pathlib import Path

import pytest
from alembic import command
from sqlalchemy import create_engine, text

from server.store import copies, migrate, restore
from server.store.copies import BackupError
from server.store.log import NewEvent, add_events
from server.store.restore import put_back
from tests.sync.phones import NOON_MS, bare_app, close_app


def event(name):
    return NewEvent(name, None, None, None, None, "0" * 64, "{}")


def add(database, *names):
    app = bare_app(f"sqlite:///{database}")
    with app.app_context():
        add_events([event(name) for name in names], NOON_MS)
    close_app(app)


def names(database):
    with closing(sqlite3.connect(database)) as opened:
        return [row[0] for row in opened.execute("SELECT id FROM events ORDER BY n")]


def one(database, question):
    with closing(sqlite3.connect(database)) as opened:
        return opened.execute(question).fetchone()[0]


def say(database, statement):
    with closing(sqlite3.connect(database)) as opened:
        opened.execute(statement)
        opened.commit()


@pytest.fixture
def database(tmp_path):
    """Give a database with two entries."""
    file = tmp_path / "data" / "vatside.sqlite3"
    file.parent.mkdir()
    add(file, "a", "b")
    return file


@pytest.fixture
def backup(database, tmp_path):
    """Give a copy that lacks the third entry of its database."""
    file = tmp_path / "copy.sqlite3"
    copies.back_up(database, file)
    add(database, "c")
    return file


def test_the_old_database_is_kept_with_what_lay_in_its_write_ahead_log(
    database, backup
):
    # A server that was killed leaves its newest entries there.
    with closing(sqlite3.connect(database)) as opened:
        opened.execute("PRAGMA wal_autocheckpoint=0")
        opened.execute("UPDATE events SET kind = 'newest' WHERE id = 'c'")
        opened.commit()
        left = {
            ending: Path(f"{database}{ending}").read_bytes() for ending in ("", "-wal")
        }
    for ending, content in left.items():
        Path(f"{database}{ending}").write_bytes(content)
    done = put_back(backup, database)
    assert names(database) == ["a", "b"]
    assert names(done.kept) == ["a", "b", "c"]
    assert one(done.kept, "SELECT kind FROM events WHERE id = 'c'") == "newest"
    assert done.events == 2


def test_a_program_that_has_the_database_open_is_noticed_without_its_help(
    database, backup
):
    with closing(sqlite3.connect(database)) as busy:
        busy.execute("SELECT 1 FROM events").fetchall()
        with pytest.raises(BackupError, match=r"open\. Stop it first"):
            put_back(backup, database)
    assert names(database) == ["a", "b", "c"]
    assert {file.name for file in database.parent.iterdir()} == {
        "vatside.sqlite3",
        "vatside.sqlite3.lock",
    }


def test_a_copy_of_a_newer_version_is_refused_before_anything_is_touched(
    database, backup
):
    say(backup, "UPDATE alembic_version SET version_num = '9999'")
    before = database.read_bytes()
    with pytest.raises(BackupError, match=r"newer Vatside .*9999"):
        put_back(backup, database)
    assert database.read_bytes() == before
    assert not list(database.parent.glob("*restore*"))


def test_a_server_does_not_start_on_a_database_of_a_newer_version(database):
    say(database, "UPDATE alembic_version SET version_num = '9999'")
    with pytest.raises(ValueError, match=r"newer Vatside .*9999"):
        bare_app(f"sqlite:///{database}")


def test_an_older_copy_is_brought_up_to_date_before_it_takes_the_name(
    database, backup, monkeypatch
):
    backup.unlink()
    engine = create_engine(f"sqlite:///{backup}")
    with engine.begin() as connection:
        command.upgrade(migrate._config(connection), "0003")
        columns = "(n, id, recv_ms, sha256, text) VALUES (1, 'old', 0, '', '')"
        connection.execute(text(f"INSERT INTO events {columns}"))
    engine.dispose()
    seen = []
    swap = restore._swap

    def look_first(fresh, old):
        seen.append(one(fresh, "SELECT count(*) FROM link_visits"))
        return swap(fresh, old)

    monkeypatch.setattr(restore, "_swap", look_first)
    put_back(backup, database)
    assert seen == [0]
    assert names(database) == ["old"]


def test_a_damaged_database_is_kept_as_it_lies_and_replaced(database, backup):
    database.write_bytes(b"damaged" * 1000)
    Path(f"{database}-wal").write_bytes(b"what was newest")
    done = put_back(backup, database)
    assert names(database) == ["a", "b"]
    assert done.kept.read_bytes() == b"damaged" * 1000
    assert Path(f"{done.kept}-wal").read_bytes() == b"what was newest"


class CrashError(BaseException):
    """The power goes."""


def crash_at(monkeypatch, number):
    """Let the power go at the so many-th step that the disk would see."""
    left = [number]

    def step(act):
        def stepped(*args, **kwargs):
            left[0] -= 1
            if left[0] == 0:
                raise CrashError
            return act(*args, **kwargs)

        return stepped

    monkeypatch.setattr(restore, "sync_file", step(restore.sync_file))
    monkeypatch.setattr(restore.os, "link", step(restore.os.link))
    monkeypatch.setattr(Path, "replace", step(Path.replace))
    monkeypatch.setattr(Path, "unlink", step(Path.unlink))
    return left


def test_wherever_the_power_goes_there_is_one_whole_database_and_all_entries(
    database, backup
):
    epoch = one(database, "SELECT epoch FROM head")
    outcomes = []
    for number in range(1, 60):
        with pytest.MonkeyPatch.context() as patch:
            left = crash_at(patch, number)
            with suppress(CrashError):
                put_back(backup, database)
        found = names(database)
        kept = [
            names(file) for file in database.parent.glob("*restore*") if file.suffix
        ]
        assert found == ["a", "b", "c"] or ["a", "b", "c"] in kept
        # The name and the new epoch come together.
        assert (one(database, "SELECT epoch FROM head") == epoch) == (len(found) == 3)
        outcomes.append(found)
        if left[0] > 0:
            break
    assert len(outcomes) > 8
    assert outcomes[0] == ["a", "b", "c"]
    assert outcomes[-1] == ["a", "b"]


@pytest.mark.parametrize("ending", ["", "-wal", "-shm", "-journal", ".lock"])
def test_a_backup_onto_the_database_or_what_belongs_to_it_is_refused(database, ending):
    before = database.read_bytes()
    with pytest.raises(BackupError, match="belongs to the database"):
        copies.back_up(database, Path(f"{database}{ending}"))
    assert database.read_bytes() == before


@pytest.mark.parametrize("how", ["symlink_to", "hardlink_to"])
def test_a_backup_onto_another_name_of_the_database_is_refused(database, tmp_path, how):
    alias = tmp_path / "alias"
    getattr(alias, how)(database)
    with pytest.raises(BackupError, match="belongs to the database"):
        copies.back_up(database, alias)
    assert names(alias) == ["a", "b"]


def test_a_backup_replaces_an_older_copy_and_no_other_file(database, backup, tmp_path):
    copies.back_up(database, backup)
    assert names(backup) == ["a", "b", "c"]
    letter = tmp_path / "letter.txt"
    letter.write_text("Dear Ada")
    with pytest.raises(BackupError, match="no copy of a database"):
        copies.back_up(database, letter)
    assert letter.read_text() == "Dear Ada"


def test_a_backup_into_a_folder_that_is_not_there_is_refused_in_words(
    database, tmp_path
):
    with pytest.raises(BackupError, match="no folder"):
        copies.back_up(database, tmp_path / "absent" / "copy")


def test_copies_can_be_read_by_the_servers_user_alone(database, backup):
    done = put_back(backup, database)
    for file in (database, backup, done.kept, Path(f"{database}.lock")):
        assert stat.S_IMODE(file.stat().st_mode) == 0o600, file


def test_a_copy_is_one_file_that_can_be_read_where_nothing_can_be_written(backup):
    assert one(backup, "PRAGMA journal_mode") == "delete"
    assert [file.name for file in backup.parent.glob("copy*")] == ["copy.sqlite3"]


@pytest.mark.skipif(os.geteuid() != 0, reason="only root can act for another user")
def test_what_root_puts_back_belongs_to_the_servers_user(database, backup):
    for file in (database.parent, *database.parent.iterdir()):
        os.chown(file, 12345, 12345)
    put_back(backup, database)
    for file in database.parent.iterdir():
        assert file.stat().st_uid == 12345, file
