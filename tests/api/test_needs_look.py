import pytest

from tests.sync.phones import note


@pytest.fixture
def helper(pair):
    return pair("helper", "Bo")


@pytest.fixture
def look(helper, paired):
    """Let a helper open a make, which only a maker may."""
    event = note(helper.device, 1, helper.person, kind="make_abandoned")
    event["data"] = {"why": "Spilt"}
    result = helper.push(event).json["results"][0]
    assert result["st"] == "needs_look"
    return event


def settle(phone, n, as_="accept", why="Was told to."):
    return phone.post(f"/needs-look/{n}/settle", {"as": as_, "why": why})


def test_what_was_not_taken_is_listed_as_it_came_with_the_reason(paired, look, helper):
    (row,) = paired.get("/needs-look").json
    assert row["event"] == look
    assert (row["id"], row["device"]) == (look["id"], helper.device)
    assert row["why"] == [{"field": "kind", "key": "not_allowed", "limit": "maker"}]


@pytest.mark.parametrize("role", ["viewer", "helper"])
def test_only_makers_and_the_owner_may_see_and_settle(pair, look, role):
    phone = pair(role, "Cy")
    for answer in (phone.get("/needs-look"), settle(phone, 1)):
        assert answer.status_code == 403
        assert answer.json["error"] == {
            "key": "role_too_low",
            "text": "This asks for the role maker.",
            "field": None,
            "limit": "maker",
        }
    assert len(pair("owner", "Di").get("/needs-look").json) == 1


def test_a_phone_that_is_not_paired_may_not(client):
    assert client.get("/api/v1/needs-look").status_code == 401


def test_an_accepted_item_joins_the_log(paired, look):
    (row,) = paired.get("/needs-look").json
    assert settle(paired, row["n"]).status_code == 200
    assert paired.get("/needs-look").json == []
    events = [entry["event"] for entry in paired.get("/sync/pull").json["events"]]
    assert events == [look]


def test_an_item_kept_aside_leaves_the_list_and_never_joins(paired, look):
    (row,) = paired.get("/needs-look").json
    assert settle(paired, row["n"], "keep_aside").status_code == 200
    assert paired.get("/needs-look").json == []
    assert paired.get("/sync/pull").json["events"] == []


def test_an_item_is_settled_once(paired, look):
    (row,) = paired.get("/needs-look").json
    settle(paired, row["n"], "keep_aside")
    again = settle(paired, row["n"])
    assert (again.status_code, again.json["error"]["key"]) == (409, "settled_already")
    assert paired.get("/sync/pull").json["events"] == []


@pytest.mark.parametrize(
    ("body", "field", "key"),
    [
        ({"as": "accept"}, "why", "missing"),
        ({"as": "accept", "why": " "}, "why", "missing"),
        ({"as": "accept", "why": "x" * 401}, "why", "too_long"),
        ({"as": "delete", "why": "x"}, "as", "not_a_choice"),
        ({"as": "accept", "why": "x", "by": "me"}, "by", "unknown_field"),
    ],
)
def test_a_settlement_that_is_not_clear_changes_nothing(paired, look, body, field, key):
    (row,) = paired.get("/needs-look").json
    answer = paired.post(f"/needs-look/{row['n']}/settle", body)
    assert answer.status_code == 422
    assert (answer.json["error"]["field"], answer.json["error"]["key"]) == (field, key)
    assert len(paired.get("/needs-look").json) == 1


def test_an_unknown_item_is_not_found(paired):
    answer = settle(paired, 7)
    assert (answer.status_code, answer.json["error"]["key"]) == (404, "unknown_item")
