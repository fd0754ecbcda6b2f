import pytest

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
