"""Two workers as they really run: an alarm goes out once, with nobody asking."""

import time

import pytest

from tests.core.builders import Phone
from tests.live.test_process import HEADERS, Server
from tests.sync.phones import a_uuid, note

LONG_S = 30


@pytest.fixture
def server(tmp_path, monkeypatch):
    monkeypatch.setenv("VATSIDE_PUSH_CONTACT", "mailto:owner@creamery.org")
    monkeypatch.setenv("VATSIDE_PUSH_HOSTS", "127.0.0.1")
    server = Server(tmp_path)
    yield server
    server.process.kill()
    server.process.communicate()
    HEADERS.pop("Cookie")


def test_of_two_workers_one_pushes_an_alarm_though_nobody_asks(server, service):
    browser = service.browser()
    answer, _ = server.ask("POST", "/push/subscriptions", browser.posted())
    assert answer.status == 200
    now_ms = time.time_ns() // 1_000_000
    make = "0193a5b0-0000-7000-8000-00000000000a"
    opened = Phone().opened()["data"]
    rows = [
        ("make_opened", opened),
        ("timer_started", {"label": "Press", "lasts_s": 4}),
    ]
    events = [
        note(
            server.device,
            seq,
            server.person,
            id=a_uuid(),
            make=make,
            kind=kind,
            data=data,
            at_ms=now_ms,
            entered_ms=now_ms,
        )
        for seq, (kind, data) in enumerate(rows, 1)
    ]
    _, pushed = server.ask("POST", "/sync/push", {"events": events})
    assert [row["st"] for row in pushed["results"]] == ["stored"] * 2
    end_s = time.monotonic() + LONG_S
    while not service.came:
        assert time.monotonic() < end_s
        time.sleep(0.05)
    late_ms = time.time_ns() // 1_000_000 - (now_ms + 4000)
    assert 0 <= late_ms < 3000  # it looks once a second
    time.sleep(3)  # another worker would send within a second
    assert len(service.came) == 1
    said = browser.read(service.came[0][2])["notification"]
    assert said["body"] == "Press: the time is up"
    _, shown = server.ask("GET", "/push")
    assert shown["sends"]
