import json
import threading

import pytest

from server import live
from tests.sync.phones import note

LONG_S = 10


@pytest.fixture(autouse=True)
def closed(app):
    yield
    live.close(app)


def messages(answer, count):
    """Read so many messages of a stream, and hang up."""
    text = ""
    for part in answer.response:
        text += part if isinstance(part, str) else part.decode()
        if text.count("\n\n") >= count:
            break
    answer.close()
    found = []
    for block in text.split("\n\n")[:count]:
        lines = [line.split(": ", 1) for line in block.splitlines()]
        found.append({line[0]: line[1] for line in lines if len(line) == 2})
    return found


def stored(phone, count, first=1):
    events = [note(phone.device, first + i, phone.person) for i in range(count)]
    assert all(row["st"] == "stored" for row in phone.push(*events).json["results"])
    return [event["id"] for event in events]


def ids(found):
    return [json.loads(row["data"])["event"]["id"] for row in found]


def test_a_phone_that_is_not_paired_sees_nothing(client):
    answer = client.get("/api/v1/live")
    assert (answer.status_code, answer.json["error"]["key"]) == (401, "not_paired")


def test_a_viewer_sees_where_the_log_stands_and_then_what_is_in_it(pair, paired):
    wanted = stored(paired, 3)
    viewer = pair("viewer")
    answer = viewer.get("/live?after=1")
    assert answer.status_code == 200
    assert answer.headers["Content-Type"] == "text/event-stream"
    assert answer.headers["Cache-Control"] == "no-store"
    assert answer.headers["X-Accel-Buffering"] == "no"
    retry, head, *rest = messages(answer, 4)
    assert retry == {"retry": "3000"}
    assert head["event"] == "head"
    told = json.loads(head["data"])
    assert set(told) == {"head", "now", "rate", "epoch"}
    assert told["head"] == 3
    assert [row["id"] for row in rest] == ["2", "3"]
    assert ids(rest) == wanted[1:]
    assert set(json.loads(rest[0]["data"])) == {"n", "recv_ms", "event"}


def test_a_browser_that_comes_back_goes_on_where_it_was(paired):
    wanted = stored(paired, 3)
    answer = paired.get("/live?after=0", headers={"Last-Event-ID": "2"})
    assert ids(messages(answer, 3)[2:]) == wanted[2:]


def test_an_event_that_is_stored_meanwhile_arrives(paired, app):
    answer = paired.get("/live")
    pushed = []
    timer = threading.Timer(0.2, lambda: pushed.extend(stored(paired, 1)))
    timer.start()
    found = messages(answer, 3)
    timer.join()
    assert ids(found[2:]) == pushed


@pytest.mark.parametrize("cursor", ["-1", "x", "9" * 40])
def test_a_cursor_that_is_no_number_is_named(paired, cursor):
    answer = paired.get("/live", headers={"Last-Event-ID": cursor})
    assert answer.status_code == 422
    assert answer.json["error"]["field"] == "Last-Event-ID"
    assert paired.get(f"/live?after={cursor}").status_code == 422


def test_a_viewer_beyond_the_last_place_is_told_to_pull_instead(paired, app):
    follower = live.follower(app)
    answers = []
    while follower.enter():
        answers.append(1)
    assert len(answers) == 16  # half of the 32 threads of a worker
    answer = paired.get("/live")
    assert answer.status_code == 503
    assert answer.json["error"]["key"] == "no_place"
    assert int(answer.headers["Retry-After"]) > 0
    follower.leave()
    answer = paired.get("/live")
    assert answer.status_code == 200
    answer.close()


def test_a_place_is_given_back_when_the_viewer_hangs_up(paired, app):
    for _ in range(40):
        answer = paired.get("/live")
        assert answer.status_code == 200
        messages(answer, 1)
    answer = paired.get("/live")
    answer.close()  # before a single line was read
    assert live.follower(app).viewers == 0


def test_a_removed_phone_sees_nothing_more(pair):
    owner, viewer = pair("owner"), pair("viewer")
    assert owner.delete(f"/devices/{viewer.device}").status_code == 204
    answer = viewer.get("/live")
    assert (answer.status_code, answer.json["error"]["key"]) == (403, "removed_device")
