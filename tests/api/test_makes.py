import json

import pytest

from server import live
from server.core import desk
from server.core.creamery import kept
from tests.api.conftest import HEADERS
from tests.core import builders
from tests.sync.phones import NOON_MS, a_uuid, note

MIN_MS = 60_000


def opening(phone, make, seq=1, **data):
    body = {
        "name": "Tuesday vat",
        "batch": "QB-7",
        "recipe": builders.recipe(),
        "milk_l": 860.0,
        **data,
    }
    return note(
        phone.device, seq, phone.person, kind="make_opened", make=make, data=body
    )


def began(phone, make, step, seq, at_ms=NOON_MS):
    event = note(phone.device, seq, phone.person, kind="step_begun", make=make)
    return event | {"data": {"step": step}, "at_ms": at_ms}


@pytest.fixture
def make(paired):
    make = a_uuid()
    answer = paired.push(opening(paired, make), began(paired, make, "receive", 2))
    assert [row["st"] for row in answer.json["results"]] == ["stored", "stored"]
    return make


@pytest.mark.parametrize("path", ["/makes", "/makes/x/view", "/makes/x/record"])
def test_makes_are_for_paired_phones_only(client, path):
    assert client.get(f"/api/v1{path}").status_code == 401


def test_a_viewer_sees_the_board_and_a_make_as_the_core_folds_it(pair, make):
    viewer = pair("viewer")
    board = viewer.get("/makes").json
    assert board["now_ms"] == NOON_MS
    assert [(row["id"], row["name"]) for row in board["makes"]] == [
        (make, "Tuesday vat")
    ]
    view = viewer.get(f"/makes/{make}/view").json
    assert view["make"]["milk_l"] == 860.0
    steps = {step["key"]: step["status"] for step in view["steps"]}
    assert steps["receive"] == "running"
    assert steps["heat"] == "waiting"


def test_only_what_is_new_changes_the_view(paired, make, clock):
    assert paired.get(f"/makes/{make}/view").json["steps"][0]["ended"] is None
    clock.tick(5 * MIN_MS)
    ended = began(paired, make, "receive", 3, NOON_MS + 5 * MIN_MS)
    paired.push(ended | {"kind": "step_ended"})
    view = paired.get(f"/makes/{make}/view").json
    assert view["now_ms"] == NOON_MS + 5 * MIN_MS
    assert view["steps"][0]["ended"]["at_ms"] == NOON_MS + 5 * MIN_MS


def test_the_record_has_every_entry_oldest_first(paired, make):
    kinds = [row["kind"] for row in paired.get(f"/makes/{make}/record").json]
    assert kinds == ["make_opened", "step_begun"]


@pytest.mark.parametrize("part", ["view", "record"])
def test_an_unknown_make_is_not_found(paired, part):
    answer = paired.get(f"/makes/{a_uuid()}/{part}")
    assert (answer.status_code, answer.json["error"]["key"]) == (404, "unknown_make")


def test_a_make_whose_opening_is_still_on_a_phone_has_no_view_but_a_record(paired):
    make = a_uuid()
    paired.push(began(paired, make, "receive", 1))
    assert paired.get(f"/makes/{make}/view").status_code == 404
    assert len(paired.get(f"/makes/{make}/record").json) == 1
    assert paired.get("/makes").json["makes"] == []


@pytest.fixture
def broken(paired, make):
    """A make whose opening an earlier check let pass, beside one that is sound."""
    made = a_uuid()
    event = opening(paired, made, 3, name="Old vat")
    event["data"]["recipe"]["steps"][0]["readings"] = None
    paired.push(event)
    (look,) = paired.get("/needs-look").json
    settled = {"as": "accept", "why": "maker_decides"}
    paired.post(f"/needs-look/{look['n']}/settle", settled)
    return made


def test_a_make_that_cannot_be_shown_leaves_board_and_alarms_to_the_others(
    paired, make, broken
):
    board = paired.get("/makes").json
    assert [row["id"] for row in board["makes"]] == [make]
    assert [(row["make"], row["name"]) for row in board["broken"]] == [
        (broken, "Old vat")
    ]
    first = paired.get("/makes?open=true").json
    assert first["broken"] == board["broken"]
    rung = paired.get("/alarms")
    assert rung.status_code == 200
    assert {row["make"] for row in rung.json["alarms"]} >= {broken}
    assert paired.get(f"/makes/{make}/view").status_code == 200
    answer = paired.get(f"/makes/{broken}/view")
    assert answer.json["error"]["key"] == "not_shown"


def test_a_guest_is_told_which_make_cannot_be_shown_and_no_more(
    pair, client, make, monkeypatch, makes_may_break
):
    wanted = {"name": "Vet", "makes": [make], "until_ms": NOON_MS + 86_400_000}
    url = pair("owner").post("/links", wanted).json["url"]
    body = json.dumps({"token": url.rsplit("/", 1)[-1]})
    assert client.post("/api/v1/guest", data=body, headers=HEADERS).status_code == 200

    def wrong(*_):
        raise KeyError("a fault told by Ada")

    monkeypatch.setattr(kept, "view_of", wrong)
    with client.application.app_context():
        live.ask(desk.set_rules, {})  # forgets the views that were kept
    answer = client.get("/api/v1/guest").json
    assert answer["makes"] == []
    assert answer["broken"] == [
        {
            "make": make,
            "name": "Tuesday vat",
            "batch": "QB-7",
            "practice": False,
            "what": "view",
            "since_ms": NOON_MS,
        }
    ]


def test_a_make_that_cannot_be_shown_can_be_abandoned(paired, make, broken):
    event = note(paired.device, 4, paired.person, kind="make_abandoned", make=broken)
    answer = paired.push(event | {"data": {"why": "milk_bad"}}).json
    assert [row["st"] for row in answer["results"]] == ["stored"]
    board = paired.get("/makes").json
    assert board["broken"] == []
    assert [row["id"] for row in board["makes"]] == [make]
