"""The log of the doors: added to by many, bounded, and without a way back to people."""

import json
import re
import stat
import subprocess
import sys

import pytest

from server.store import security_log
from server.store.security_log import NAME, SecurityLog, lines

WRITER = """
import sys
from pathlib import Path
from server.store import security_log
security_log.MOST_BYTES = 40_000
log = security_log.SecurityLog(Path(sys.argv[1]))
for n in range(200):
    log.note("paired", by=f"{sys.argv[2]}-{n}")
"""


def test_a_line_says_when_what_and_whom_it_was_about(tmp_path):
    SecurityLog(tmp_path).note("role_changed", by="p1", about="p2", role="maker")
    (line,) = lines(tmp_path)
    at = line.pop("at")
    assert re.fullmatch(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ", at)
    assert line == {"what": "role_changed", "by": "p1", "about": "p2", "role": "maker"}


def test_a_source_is_told_by_a_hash_that_only_this_server_can_make(tmp_path):
    here, there = tmp_path / "here", tmp_path / "there"
    for folder in (here, there):
        folder.mkdir()
        for address in ("192.0.2.7", "192.0.2.7", "192.0.2.8"):
            SecurityLog(folder).note("phone_seen", source=address)
    one, again, other = [line["source"] for line in lines(here)]
    assert one == again != other
    assert one not in [line["source"] for line in lines(there)]
    assert "192.0.2" not in (here / NAME).read_text()


def test_only_the_servers_user_reads_it(tmp_path):
    SecurityLog(tmp_path).note("paired", source="192.0.2.7")
    for name in (NAME, security_log.KEY_NAME):
        assert stat.S_IMODE((tmp_path / name).stat().st_mode) == 0o600


def test_a_stranger_cannot_push_out_what_was_written_before(tmp_path, monkeypatch):
    log = SecurityLog(tmp_path)
    clock = [0.0]
    monkeypatch.setattr(security_log.time, "monotonic", lambda: clock[0])
    log.note("paired", by="p1")
    for _ in range(5000):
        log.note("pairing_failed", source="192.0.2.7")
    clock[0] = 60.0
    log.note("pairing_failed", source="192.0.2.7")
    told = list(lines(tmp_path))
    assert told[0]["what"] == "paired"
    assert len(told) == 1 + security_log.MOST_A_MINUTE + 1
    assert told[-1]["unwritten_before"] == 5000 - security_log.MOST_A_MINUTE


def test_what_the_owner_does_is_never_left_out(tmp_path):
    log = SecurityLog(tmp_path)
    for number in range(50):
        log.note("phone_removed", by="owner", about=str(number))
    assert len(list(lines(tmp_path))) == 50


def test_two_files_of_a_size_are_kept_and_the_newest_lines_in_them(
    tmp_path, monkeypatch
):
    monkeypatch.setattr(security_log, "MOST_BYTES", 2000)
    log = SecurityLog(tmp_path)
    for number in range(200):
        log.note("paired", by=str(number))
    files = sorted(file.name for file in tmp_path.glob("security.log*"))
    assert files == [NAME, NAME + ".1"]
    assert all((tmp_path / name).stat().st_size <= 2000 for name in files)
    told = [int(line["by"]) for line in lines(tmp_path)]
    assert told == list(range(told[0], 200))


def test_lines_of_workers_are_not_mixed_while_the_file_is_changed(tmp_path):
    workers = [
        subprocess.Popen([sys.executable, "-c", WRITER, str(tmp_path), name])
        for name in "ab"
    ]
    assert [worker.wait(timeout=60) for worker in workers] == [0, 0]
    texts = [
        text
        for file in (tmp_path / (NAME + ".1"), tmp_path / NAME)
        if file.exists()
        for text in file.read_text().splitlines()
    ]
    # 400 lines of under 90 bytes fit into two files of 40,000.
    assert len({json.loads(text)["by"] for text in texts}) == 400


def test_a_line_cut_off_by_a_crash_hides_no_other(tmp_path):
    log = SecurityLog(tmp_path)
    log.note("paired", by="p1")
    with (tmp_path / NAME).open("a") as file:
        file.write('{"at": "2026\n')
    log.note("paired", by="p2")
    assert [line["by"] for line in lines(tmp_path)] == ["p1", "p2"]


def test_a_log_that_cannot_be_written_stops_nothing_and_says_so(tmp_path, caplog):
    (tmp_path / NAME).mkdir()
    SecurityLog(tmp_path).note("paired", by="p1")
    assert "the security log cannot be written" in caplog.text


@pytest.mark.parametrize("odd", ["", "x" * 100])
def test_no_log_yet_is_an_empty_one(tmp_path, odd):
    assert list(lines(tmp_path / odd)) == []
