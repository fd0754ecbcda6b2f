import gzip
import json
import sys
import tracemalloc

import pytest
from sqlalchemy.exc import OperationalError

from server import sync
from server.store import look
from tests.api.conftest import HEADERS
from tests.sync.phones import NOON_MS, a_uuid, note

LIMIT_BYTES = 1 << 20  # the contract's 1 MiB


def error(answer):
    return answer.json["error"]


def test_a_sound_event_is_stored_and_comes_back_as_it_was_sent(paired):
    event = note(paired.device, 1, paired.person, text="größer 🧀")
    pushed = paired.push(event).json
    assert pushed["results"] == [
        {"id": event["id"], "st": "stored", "n": 1, "why": None}
    ]
    assert (pushed["head"], pushed["now"], pushed["rate"]) == (1, NOON_MS, 1)
    assert pushed["have"] == {"upto": 1, "missing": [], "repeated": []}
    pulled = paired.get("/sync/pull").json
    (row,) = pulled["events"]
    assert row.pop("receipt")
    assert row == {"n": 1, "recv_ms": NOON_MS, "event": event}
    assert (pulled["next"], pulled["more"]) == (1, False)
    assert pulled["epoch"] == pushed["epoch"]


def test_a_push_without_a_pairing_is_asked_to_pair(client):
    answer = client.post("/api/v1/sync/push", data='{"events":[]}', headers=HEADERS)
    assert answer.status_code == 401
    assert error(answer) == {
        "key": "not_paired",
        "text": "This phone is not paired. Ask the owner for a code.",
        "field": None,
        "limit": None,
    }


@pytest.mark.parametrize(
    ("left_out", "status", "key"),
    [("X-Vatside", 403, "header_missing"), ("Content-Type", 415, "not_json_type")],
)
def test_a_form_of_another_site_cannot_push(paired, left_out, status, key):
    headers = {name: value for name, value in HEADERS.items() if name != left_out}
    answer = paired.http.post("/api/v1/sync/push", data="{}", headers=headers)
    assert (answer.status_code, error(answer)["key"]) == (status, key)


@pytest.mark.parametrize(
    ("name", "value"),
    [("Origin", "http://elsewhere.example"), ("Sec-Fetch-Site", "cross-site")],
)
def test_a_page_of_another_site_cannot_push(paired, name, value):
    answer = paired.post("/sync/push", {"events": []}, headers={name: value})
    assert (answer.status_code, error(answer)["key"]) == (403, "other_origin")
    own = {"Origin": "http://localhost", "Sec-Fetch-Site": "same-origin"}
    assert paired.post("/sync/push", {"events": []}, headers=own).status_code == 200


@pytest.mark.parametrize(
    ("data", "status", "key"),
    [
        (b"", 400, "not_json"),
        (b"{", 400, "not_json"),
        (b"\xff\xfe", 400, "not_json"),
        (b"[" * 100_000, 400, "not_json"),
        (b'{"events":[' + b"[" * 300 + b"]" * 300 + b"]}", 400, "not_json"),
        (b"[]", 422, "not_a_mapping"),
        (b"{}", 422, "not_a_list"),
        (b'{"events":{}}', 422, "not_a_list"),
    ],
)
def test_a_body_that_cannot_be_read_is_named(paired, data, status, key):
    answer = paired.post("/sync/push", data=data)
    assert (answer.status_code, error(answer)["key"]) == (status, key)


@pytest.mark.parametrize(
    "item",
    [
        "null",
        "7",
        '"text"',
        "[]",
        "{}",
        '{"id":7}',
        '{"id":"\\ud800"}',
        '{"id":"a\\u0000b","person":"\\u0000"}',
        '{"id":null,"kind":[],"seq":{}}',
        '{"at_ms":1e999,"seq":NaN,"mono_ms":-Infinity}',
        '{"seq":' + "9" * 5000 + ',"v":' + "9" * 3000 + "}",
        '{"kind":"note_added","v":1,"data":{"text":[' + "[" * 60 + "]" * 60 + "]}}",
        '{"person":{},"device":[],"make":1.5,"data":"x","ref":{}}',
        '{"kind":{},"data":{}}',
        '{"entered_ms":1e300,"off_ms":1e300}',
    ],
)
def test_a_broken_item_is_kept_and_its_neighbours_are_stored(paired, item, app):
    sound = note(paired.device, 1, paired.person)
    events = f"[{item},{json.dumps(sound)}]"
    data = f'{{"events":{events},"t0":{"9" * 400}}}'
    answer = paired.post("/sync/push", data=data)
    assert answer.status_code == 200, answer.text
    broken, stored = answer.json["results"]
    assert (broken["st"], broken["n"], stored["st"]) == ("needs_look", None, "stored")
    assert broken["why"]
    assert paired.post("/sync/push", data=data).status_code == 200
    with app.app_context():
        assert look.count_open_looks() == 1  # sending again kept no second copy


def test_every_event_of_a_batch_over_the_limit_waits_for_a_smaller_batch(paired):
    events = [note(paired.device, seq, paired.person) for seq in range(1, 202)]
    answer = paired.push(*events)
    assert (answer.status_code, error(answer)["limit"]) == (413, 200)
    assert paired.push(*events[:200]).json["head"] == 200


def test_a_body_over_the_limit_is_refused_packed_or_not(paired):
    sound = json.dumps({"events": [note(paired.device, 1, paired.person)]})
    large = (sound + " " * (LIMIT_BYTES - len(sound) + 1)).encode()
    packed = {"Content-Encoding": "gzip"}
    for answer in (
        paired.post("/sync/push", data=large),
        paired.post("/sync/push", data=gzip.compress(large), headers=packed),
        paired.post("/sync/push", data=gzip.compress(bytes(1 << 28)), headers=packed),
    ):
        assert (answer.status_code, error(answer)["limit"]) == (413, LIMIT_BYTES)
    assert paired.get("/sync/pull").json["events"] == []
    at_limit = gzip.compress(large[:LIMIT_BYTES])
    answer = paired.post("/sync/push", data=at_limit, headers=packed)
    assert answer.json["head"] == 1


def test_a_packed_body_is_unpacked_no_further_than_the_limit(paired):
    bomb = gzip.compress(bytes(64 * LIMIT_BYTES))
    tracemalloc.start()
    paired.post("/sync/push", data=bomb, headers={"Content-Encoding": "gzip"})
    peak = tracemalloc.get_traced_memory()[1]
    tracemalloc.stop()
    assert peak < 16 * LIMIT_BYTES


def test_a_packed_body_that_was_cut_or_broken_is_named(paired):
    whole = gzip.compress(b'{"events":[]}')
    for data in (whole[:-4], whole[:12], b"{}", b""):
        headers = {"Content-Encoding": "gzip"}
        answer = paired.post("/sync/push", data=data, headers=headers)
        assert (answer.status_code, error(answer)["key"]) == (400, "not_gzip")
    answer = paired.post("/sync/push", {}, headers={"Content-Encoding": "br"})
    assert (answer.status_code, error(answer)["limit"]) == (415, "gzip")


def test_a_wrong_epoch_is_stored_all_the_same_and_told(paired):
    event = note(paired.device, 1, paired.person)
    answer = paired.push(event, epoch="another")
    assert answer.json["results"][0]["st"] == "stored"
    assert answer.json["epoch"] == paired.get("/sync/pull").json["epoch"]


@pytest.mark.parametrize("off_ms", [-7 * 3_600_000, 7 * 3_600_000])
def test_a_clock_that_is_hours_off_is_told_and_refuses_nothing(paired, off_ms):
    event = note(paired.device, 1, paired.person, at_ms=NOON_MS + off_ms)
    answer = paired.push(event, t0=NOON_MS + off_ms)
    assert answer.json["results"][0]["st"] == "stored"
    assert answer.json["notes"] == [{"key": "clock", "off_s": -off_ms / 1000}]


def test_an_event_entered_in_the_future_is_noted_and_stored(paired):
    ahead = note(paired.device, 1, paired.person, entered_ms=NOON_MS + 121_000)
    mended = note(
        paired.device, 2, paired.person, entered_ms=NOON_MS + 121_000, off_ms=-121_000
    )
    first, second = paired.push(ahead, mended, t0=NOON_MS).json["results"]
    assert (first["st"], second["st"]) == ("stored", "stored")
    assert first["notes"] == [{"key": "clock", "off_s": -121.0}]
    assert "notes" not in second


def test_pages_of_the_log_join_without_a_gap(paired):
    events = [note(paired.device, seq, paired.person) for seq in range(1, 8)]
    epoch = paired.push(*events).json["epoch"]
    seen, after, more = [], 0, True
    while more:
        page = paired.get(f"/sync/pull?epoch={epoch}&after={after}&limit=3").json
        seen += [one["event"] for one in page["events"]]
        after, more = page["next"], page["more"]
    assert seen == events


def test_a_reader_of_another_epoch_is_sent_back_to_the_start(paired):
    epoch = paired.push(note(paired.device, 1, paired.person)).json["epoch"]
    for query in ("epoch=old&after=0", f"epoch={epoch}&after=2", "after=1"):
        answer = paired.get(f"/sync/pull?{query}")
        assert answer.status_code == 409, query
        assert error(answer)["key"] == "epoch"
        assert answer.json["epoch"] == epoch


@pytest.mark.parametrize(
    ("query", "field", "key"),
    [
        ("after=-1", "after", "too_low"),
        ("after=x", "after", "not_whole"),
        ("after=" + "9" * 30, "after", "too_high"),
        ("limit=0", "limit", "too_low"),
    ],
)
def test_a_pull_that_cannot_be_read_is_named(paired, query, field, key):
    answer = paired.get(f"/sync/pull?{query}")
    assert answer.status_code == 422
    assert (error(answer)["field"], error(answer)["key"]) == (field, key)


def test_have_tells_gaps_and_repeats_and_refuses_neither(paired):
    sent = [note(paired.device, seq, paired.person) for seq in (1, 2, 5, 2)]
    answer = paired.push(*sent).json
    assert [result["st"] for result in answer["results"]] == ["stored"] * 4
    want = {"upto": 5, "missing": [3, 4], "repeated": [2]}
    assert answer["have"] == want
    assert paired.get(f"/sync/have?device={paired.device}").json == want
    nothing = {"upto": 0, "missing": [], "repeated": []}
    assert paired.get(f"/sync/have?device={a_uuid()}").json == nothing
    assert paired.get("/sync/have?device=x").status_code == 422


def test_a_removed_phone_may_still_hand_over_what_it_holds(pair, clock):
    owner, helper = pair("owner"), pair("helper")
    assert owner.delete(f"/devices/{helper.device}").status_code == 204
    event = note(helper.device, 1, helper.person)
    (result,) = helper.push(event).json["results"]
    assert result["st"] == "needs_look"
    assert [why["key"] for why in result["why"]] == ["removed_device"]
    for path in ("/sync/pull", "/me", "/people"):
        answer = helper.get(path)
        assert (answer.status_code, error(answer)["key"]) == (403, "removed_device")


def test_a_failing_database_asks_the_phone_to_wait(paired, monkeypatch):
    def locked(*_):
        raise OperationalError("BEGIN", {}, Exception("database is locked"))

    monkeypatch.setattr(sync, "push", locked)
    answer = paired.push()
    assert (answer.status_code, error(answer)["key"]) == (503, "busy")
    assert int(answer.headers["Retry-After"]) > 0


def test_a_fault_of_ours_has_the_same_shape(paired, monkeypatch):
    def broken(*_):
        raise KeyError("planted")

    monkeypatch.setattr(sync, "push", broken)
    answer = paired.push()
    assert (answer.status_code, error(answer)["key"]) == (500, "failed")
    assert "planted" not in answer.text


def test_unknown_paths_and_methods_have_the_same_shape(paired):
    assert error(paired.get("/nothing"))["key"] == "not_found"
    answer = paired.delete("/people")
    assert (answer.status_code, error(answer)["key"]) == (405, "method_not_allowed")


def test_the_clock_is_told(paired):
    assert paired.get("/time").json == {"now": NOON_MS, "rate": 1}


def test_a_page_of_large_events_ends_early_and_says_that_there_is_more(paired):
    events = [
        note(paired.device, seq, paired.person, text="w" * 1900)
        for seq in range(1, 401)
    ]
    for at in (0, 200):
        assert paired.push(*events[at : at + 200]).status_code == 200
    found, after, pages, epoch = [], 0, 0, ""
    while True:
        page = paired.get(f"/sync/pull?after={after}&epoch={epoch}").json
        assert len(json.dumps(page["events"])) < sync.MOST_BYTES * 1.1
        found += [row["event"] for row in page["events"]]
        after, pages, epoch = page["next"], pages + 1, page["epoch"]
        if not page["more"]:
            break
    assert found == events
    assert pages > 1


def test_an_event_larger_than_a_page_comes_alone(paired, monkeypatch):
    # By its module: the package gives the function the same name.
    monkeypatch.setattr(sys.modules["server.sync.pull"], "MOST_BYTES", 100)
    events = [note(paired.device, seq, paired.person) for seq in (1, 2)]
    paired.push(*events)
    page = paired.get("/sync/pull").json
    assert [row["n"] for row in page["events"]] == [1]
    assert (page["next"], page["more"]) == (1, True)
    page = paired.get(f"/sync/pull?after=1&epoch={page['epoch']}").json
    assert [row["n"] for row in page["events"]] == [2]
    assert page["more"] is False


def test_a_log_set_back_is_given_again_what_a_viewer_had_read(paired):
    event = note(paired.device, 1, paired.person)
    paired.push(event)
    (row,) = paired.get("/sync/pull").json["events"]
    kept = [{name: row[name] for name in ("event", "receipt")}]
    body = {"events": [], "kept": kept}
    (told,) = paired.post("/sync/push", body).json["kept"]
    assert (told["id"], told["st"]) == (event["id"], "duplicate")


@pytest.mark.parametrize(
    ("kept", "key"), [(7, "not_a_list"), ([7] * 201, "too_many_events")]
)
def test_what_is_given_back_has_the_limits_of_a_push(paired, kept, key):
    answer = paired.post("/sync/push", {"events": [], "kept": kept})
    assert error(answer)["key"] == key
