import json
import threading
from dataclasses import replace

import pytest

from server import auth, live
from tests.api.conftest import PairedPhone
from tests.sync.phones import note

LONG_S = 10


@pytest.fixture(autouse=True)
def closed(app):
    hub = live.hub(app)
    hub.pace = replace(hub.pace, look_s=0.02, check_s=0.05)
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
    assert set(json.loads(rest[0]["data"])) == {"n", "recv_ms", "event", "receipt"}


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


def test_a_viewer_beyond_the_last_place_is_told_to_pull_instead(pair, app):
    hub = live.hub(app)
    places = [live.Place(f"p{n}", f"d{n}", f"t{n}") for n in range(500)]
    assert all(hub.enter(place) for place in places)
    paired = pair()
    answer = paired.get("/live")
    assert answer.status_code == 503
    assert answer.json["error"]["key"] == "no_place"
    assert int(answer.headers["Retry-After"]) > 0
    hub.leave(places[0])
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
    assert live.hub(app).viewers == 0


def test_one_phone_cannot_take_the_places_of_all(pair, app):
    greedy, other = pair(), pair()
    answers = [greedy.get("/live") for _ in range(40)]
    assert [answer.status_code for answer in answers] == [200] * 40
    assert live.hub(app).viewers == 6
    # The newest stay: a page that was reloaded has its place at once.
    assert len(messages(answers[-1], 2)) == 2
    answer = other.get("/live")
    assert answer.status_code == 200
    for one in (answer, *answers):
        one.close()


def test_a_removed_phone_sees_nothing_more(pair):
    owner, viewer = pair("owner"), pair("viewer")
    assert owner.delete(f"/devices/{viewer.device}").status_code == 204
    answer = viewer.get("/live")
    assert (answer.status_code, answer.json["error"]["key"]) == (403, "removed_device")


def rest(answer):
    """Read a stream to its end."""
    return b"".join(answer.response)


def test_the_stream_of_a_phone_ends_when_it_is_removed(pair):
    owner, viewer = pair("owner"), pair("viewer")
    answer = viewer.get("/live")
    assert owner.delete(f"/devices/{viewer.device}").status_code == 204
    rest(answer)  # else it would go on for five minutes
    answer.close()
    assert viewer.get("/live").status_code == 403


def test_the_streams_of_a_person_end_when_they_are_made_inactive(pair):
    owner, viewer = pair("owner"), pair("viewer")
    answer = viewer.get("/live")
    changed = owner.post(f"/people/{viewer.person}", {"active": False})
    assert changed.status_code == 200
    rest(answer)
    answer.close()
    assert viewer.get("/live").status_code == 403


def test_the_stream_of_a_phone_ends_when_it_is_paired_anew(app, pair, clock):
    viewer = pair("viewer")
    answer = viewer.get("/live")
    with app.app_context():
        code = auth.start_pairing(viewer.person, viewer.person, clock.now_ms(), 1).long
    again = PairedPhone(app.test_client(), viewer.device, viewer.person)
    body = {"code": code, "device": viewer.device, "device_name": "Pocket"}
    assert again.post("/pair", body).status_code == 200
    rest(answer)
    answer.close()
    assert viewer.get("/live").status_code == 401
