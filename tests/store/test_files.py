"""The data is for the server's user alone."""

import os
import stat
import threading

import pytest

from server.alarm import keys
from server.store.files import made_once
from server.store.log import NewEvent, add_events
from tests.sync.phones import NOON_MS, close_app, make_app


def mode(path):
    return stat.S_IMODE(path.stat().st_mode)


@pytest.fixture
def usual_umask():
    """Let new files be open to others unless somebody thinks of it."""
    before = os.umask(0o022)
    yield
    os.umask(before)


def serve_once(folder):
    app = make_app(folder)
    with app.app_context():
        event = NewEvent(os.urandom(8).hex(), None, None, None, None, "0" * 64, "{}")
        add_events([event], NOON_MS)
        keys.private_key(folder)
        modes = {file.name: mode(file) for file in folder.iterdir()}
    close_app(app)
    return modes


def test_a_new_folder_and_all_in_it_are_closed_to_others(tmp_path, usual_umask):
    modes = serve_once(tmp_path / "data")
    assert mode(tmp_path / "data") == 0o700
    assert {"vatside.sqlite3", "vatside.sqlite3-wal", "push-key.pem"} <= set(modes)
    assert set(modes.values()) == {0o600}


def test_an_older_folder_is_closed_at_the_next_start(tmp_path, usual_umask):
    data = tmp_path / "data"
    serve_once(data)
    data.chmod(0o755)
    for file in data.iterdir():
        file.chmod(0o644)
    modes = serve_once(data)
    assert mode(data) == 0o700
    assert modes["vatside.sqlite3"] == modes["vatside.sqlite3-wal"] == 0o600


def test_a_folder_that_all_share_stays_open(tmp_path):
    tmp_path.chmod(0o1777)
    serve_once(tmp_path)
    assert mode(tmp_path) == 0o1777


def test_of_many_that_make_a_file_at_once_all_read_the_same(tmp_path):
    start = threading.Barrier(8)
    read = []

    def make(number):
        start.wait()
        read.append(made_once(tmp_path / "key", lambda: b"%d" % number))

    threads = [threading.Thread(target=make, args=(n,)) for n in range(8)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert len(set(read)) == 1
    assert [file.name for file in tmp_path.iterdir()] == ["key"]
    assert mode(tmp_path / "key") == 0o600
