"""A server and a restore know of each other, however the other one ended."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from server.store.hold import RESTORE, SERVER, InUseError, hold, require_no_restore

ROOT = Path(__file__).resolve().parent.parent.parent
CHILD = """
import sys
from pathlib import Path
from server.store.hold import hold
kept = hold(Path(sys.argv[1]), sys.argv[2])
print("taken", flush=True)
sys.stdin.read()
"""


@pytest.fixture
def database(tmp_path):
    return tmp_path / "vatside.sqlite3"


@pytest.fixture
def other(database):
    """Give a function that lets another process take the database."""
    children = []

    def take(what):
        child = subprocess.Popen(
            [sys.executable, "-c", CHILD, str(database), what],
            cwd=ROOT,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
        )
        children.append(child)
        assert child.stdout.readline() == b"taken\n"
        return child

    yield take
    for child in children:
        child.kill()
        child.stdout.close()
        child.stdin.close()
        child.wait()


@pytest.mark.parametrize(
    ("theirs", "ours", "words"),
    [
        (SERVER, SERVER, "Another Vatside server .* a folder of its own"),
        (SERVER, RESTORE, "Stop it first"),
        (RESTORE, SERVER, "being put back"),
        (RESTORE, RESTORE, "being put back .* already"),
    ],
)
def test_who_comes_second_is_told_who_has_it_and_what_to_do(
    database, other, theirs, ours, words
):
    child = other(theirs)
    with pytest.raises(InUseError, match=words) as refused:
        hold(database, ours)
    assert f"process {child.pid}" in str(refused.value)
    assert str(database) in str(refused.value)


def test_one_that_was_killed_holds_nothing(database, other):
    child = other(SERVER)
    child.kill()
    child.wait()
    hold(database, RESTORE).close()
    hold(database, SERVER).close()


def test_the_database_is_known_by_any_of_its_names(database, other):
    other(SERVER)
    database.touch()
    alias = database.with_name("alias.sqlite3")
    alias.symlink_to(database)
    with pytest.raises(InUseError):
        hold(alias, RESTORE)


def test_who_waits_gets_it_when_the_other_ends(database, other):
    child = other(SERVER)
    child.stdin.close()
    hold(database, SERVER, wait_s=30).close()


def test_nothing_is_written_into_a_database_that_is_being_replaced(database, other):
    require_no_restore(database)
    child = other(RESTORE)
    with pytest.raises(InUseError, match="being put back"):
        require_no_restore(database)
    child.kill()
    child.wait()
    require_no_restore(database)


def test_a_server_does_not_keep_out_what_only_runs_beside_it(database, other):
    other(SERVER)
    require_no_restore(database)


def test_a_lock_without_words_still_holds(database, other):
    other(SERVER)
    os.truncate(f"{database}.lock", 0)
    with pytest.raises(InUseError, match="another process"):
        hold(database, RESTORE)


def test_another_database_has_no_file_to_hold():
    assert hold(None, SERVER) is None
    require_no_restore(None)


def test_a_lock_that_cannot_be_opened_is_named(database):
    database.with_name(database.name + ".lock").mkdir()
    with pytest.raises(InUseError, match=r"cannot be opened .* the user"):
        hold(database, SERVER)
