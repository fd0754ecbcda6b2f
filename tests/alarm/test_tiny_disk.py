"""A real file system that fills up under a real server."""

import contextlib
import subprocess
import time

import pytest

from tests.core.builders import Phone
from tests.live.test_process import HEADERS, LONG_S, Server
from tests.sync.phones import a_uuid, note

MAKE = "0193a5b0-0000-7000-8000-00000000000a"


@pytest.fixture
def tiny(tmp_path):
    """Give a folder on a disk of six megabytes."""
    folder = tmp_path / "tiny"
    folder.mkdir()
    mount = ["mount", "-t", "tmpfs", "-o", "size=6m", "tmpfs", str(folder)]
    try:
        made = subprocess.run(mount, capture_output=True, text=True)
    except FileNotFoundError:
        pytest.skip("there is no program to mount a small disk with")
    if made.returncode:
        pytest.skip(f"a small disk cannot be mounted here: {made.stderr.strip()}")
    yield folder
    # Its server may take a moment to end.
    end_s = time.monotonic() + LONG_S
    while subprocess.run(["umount", str(folder)], capture_output=True).returncode:
        assert time.monotonic() < end_s
        time.sleep(0.1)


@pytest.fixture
def server(tiny, monkeypatch):
    monkeypatch.setenv("VATSIDE_PUSH_CONTACT", "mailto:owner@creamery.org")
    monkeypatch.setenv("VATSIDE_PUSH_HOSTS", "127.0.0.1")
    server = Server(tiny / "data")
    yield server
    server.process.terminate()
    server.process.communicate()
    HEADERS.pop("Cookie")


def push(server, *events):
    return server.ask("POST", "/sync/push", {"events": list(events)})


def timer(server):
    now_ms = time.time_ns() // 1_000_000
    rows = [
        ("make_opened", Phone().opened()["data"]),
        ("timer_started", {"label": "Press", "lasts_s": 2}),
    ]
    return [
        note(
            server.device,
            seq,
            server.person,
            make=MAKE,
            kind=kind,
            data=data,
            at_ms=now_ms,
            entered_ms=now_ms,
        )
        for seq, (kind, data) in enumerate(rows, 1)
    ]


def fill(folder):
    with contextlib.suppress(OSError), (folder / "filler").open("wb") as out:
        while True:
            out.write(bytes(4096))
            out.flush()


def test_alarms_go_on_and_phones_are_told_until_there_is_room_again(
    server, service, tiny
):
    server.ask("POST", "/push/subscriptions", service.browser().posted())
    _, stored = push(server, *timer(server))
    assert [row["st"] for row in stored["results"]] == ["stored"] * 2
    fill(tiny)
    batch = [
        note(server.device, seq, server.person, id=a_uuid(), text="warm " * 40)
        for seq in range(3, 150)
    ]
    refused, body = push(server, *batch)
    assert (refused.status, body["error"]["key"]) == (507, "disk_full")
    _, health = server.ask("GET", "/health")
    assert (health["ok"], health["disk"]["state"]) == (False, "full")
    end_s = time.monotonic() + LONG_S
    while not service.came:
        assert time.monotonic() < end_s
        time.sleep(0.05)
    read, makes = server.ask("GET", "/makes")
    assert (read.status, len(makes["makes"])) == (200, 1)
    (tiny / "filler").unlink()
    _, stored = push(server, *batch)
    assert {row["st"] for row in stored["results"]} == {"stored"}
    _, health = server.ask("GET", "/health")
    assert health["ok"]
    assert len(service.came) == 1
