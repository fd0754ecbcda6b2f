"""A server as it really runs, and commands that must not take its file away."""

import socket
import sqlite3
import sys
import time
from contextlib import closing

import pytest

from server import cli
from tests.live.test_process import HEADERS, LONG_S, Server
from tests.sync.phones import note


@pytest.fixture
def data(tmp_path, monkeypatch):
    for name in ("DATABASE_URL", "VATSIDE_DATA"):
        monkeypatch.delenv(name, raising=False)
    return tmp_path / "data"


@pytest.fixture
def server(data):
    server = Server(data)
    yield server
    server.process.kill()
    server.process.communicate()
    HEADERS.pop("Cookie")


def push(server, seq):
    event = note(server.device, seq, server.person)
    _, answer = server.ask("POST", "/sync/push", {"events": [event]})
    assert answer["results"][0]["st"] == "stored"
    return event["id"]


def free_port():
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


def ids(file):
    with closing(sqlite3.connect(file)) as opened:
        return [row[0] for row in opened.execute("SELECT id FROM events ORDER BY n")]


def vatside(command, data, *rest):
    return cli.main([command, "--data", str(data), *map(str, rest)])


def test_no_acknowledged_entry_is_lost_to_a_restore(server, data, tmp_path, capsys):
    copy = tmp_path / "copy.sqlite3"
    first = push(server, 1)
    assert vatside("backup", data, copy) == 0
    second = push(server, 2)
    assert vatside("restore", data, copy) == 1
    said = capsys.readouterr().err
    assert "Stop it first" in said
    assert f"process {server.process.pid}" in said
    third = push(server, 3)
    assert ids(data / "vatside.sqlite3") == [first, second, third]
    # Its workers are left to themselves, and end all the same.
    server.process.kill()
    end_s = time.monotonic() + LONG_S
    while vatside("restore", data, copy) != 0:
        assert time.monotonic() < end_s
        time.sleep(0.2)
    assert ids(data / "vatside.sqlite3") == [first]
    assert ids(data / "vatside-before-restore-1.sqlite3") == [first, second, third]


def test_a_second_server_on_the_same_data_is_refused_in_words(
    server, data, capsys, monkeypatch
):
    # `server.cli.start` by its name is the function.
    monkeypatch.setattr(sys.modules["server.cli.start"], "ENDING_S", 0)
    port = ["--host", "127.0.0.1", "--port", free_port()]
    assert vatside("serve", data, *port) == 1
    said = capsys.readouterr()
    assert "Another Vatside server" in said.err
    assert "--data" in said.err
    assert said.out == ""
    push(server, 1)
