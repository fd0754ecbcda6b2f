import json
import threading

import pytest

from server.live import Follower, stream

HELLO = {"head": 0, "now": 1000, "rate": 1, "epoch": "e"}


class Log:
    def __init__(self, count=0):
        self.rows = []
        self.grow(count)

    def grow(self, count):
        for _ in range(count):
            n = len(self.rows) + 1
            self.rows.append({"n": n, "recv_ms": 1000 + n, "event": {"id": str(n)}})

    def head(self):
        return len(self.rows)

    def after(self, n, limit):
        return self.rows[n : n + limit]


@pytest.fixture
def follow():
    opened = []

    def begin(log, after=0, comment_s=0.05, life_s=0.5):
        follower = Follower(log.head, 4, poll_s=0.01)
        assert follower.enter()
        opened.append(follower)
        return follower, stream(follower, log.after, after, HELLO, comment_s, life_s)

    yield begin
    for follower in opened:
        follower.close()


def numbers(texts):
    found = []
    for text in texts:
        lines = dict(
            line.split(": ", 1)
            for line in text.splitlines()
            if ": " in line and not line.startswith(":")
        )
        if "id" in lines:
            found.append(int(lines["id"]))
            assert json.loads(lines["data"])["n"] == found[-1]
    return found


def test_a_stream_begins_with_the_pause_before_reconnecting_and_the_head(follow):
    _, texts = follow(Log())
    assert next(texts) == "retry: 3000\n\n"
    assert next(texts) == f"event: head\ndata: {json.dumps(HELLO)}\n\n"


def test_a_stream_brings_what_came_after_its_cursor_once_and_in_order(follow):
    _, texts = follow(Log(5), after=2)
    assert numbers(texts) == [3, 4, 5]


def test_a_long_absence_is_caught_up_whole(follow):
    _, texts = follow(Log(1203))
    assert numbers(texts) == list(range(1, 1204))


def test_an_event_stored_while_the_viewer_waits_is_brought(follow):
    log = Log(1)
    _, texts = follow(log, comment_s=5, life_s=1)
    threading.Timer(0.1, log.grow, [2]).start()
    assert numbers(texts) == [1, 2, 3]


def test_a_silent_stream_gives_signs_of_life(follow):
    _, texts = follow(Log(), comment_s=0.05, life_s=0.3)
    signs = [text for text in texts if text.startswith(":")]
    assert 3 <= len(signs) <= 6  # 0.3 s at 0.05 s each, on a busy machine


def test_a_stream_ends_when_the_server_stops(follow):
    follower, texts = follow(Log(), comment_s=5, life_s=60)
    next(texts)
    next(texts)
    threading.Timer(0.1, follower.close).start()
    rest = list(texts)
    assert len(rest) <= 1


def test_a_cursor_beyond_the_log_waits_in_peace(follow):
    _, texts = follow(Log(2), after=9)
    assert numbers(texts) == []


def test_a_read_cut_short_by_its_bytes_is_gone_on_with(follow):
    log = Log(10)
    whole, log.after = log.after, lambda n, limit: whole(n, 3)
    _, told = follow(log)
    numbers = [line for one in told for line in one.split("\n") if "id: " in line]
    assert numbers == [f"id: {n}" for n in range(1, 11)]
