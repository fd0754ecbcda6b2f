import pytest

from server.core.log.kinds.columns import ROLES
from server.shapes.people import ROLE_CHOICES
from server.store.security_log import lines
from tests.api.conftest import PairedPhone
from tests.sync.phones import NOON_MS, a_uuid, note

DAY_MS = 86_400_000
AS_THE_PHONE = {
    "language": None,
    "temp_unit": None,
    "volume_unit": None,
    "mass_unit": None,
    "pressure_unit": None,
}
IN_SPANISH = {"language": "es", "temp_unit": "F", "volume_unit": "imp_gal"}


def error(answer):
    return answer.json["error"]


@pytest.fixture
def owner(pair):
    return pair("owner", "Olive")


def test_the_documented_roles_are_the_roles_of_the_core():
    assert ROLE_CHOICES == ROLES


def test_me_tells_whose_phone_this_is_and_who_works_here(owner, pair):
    helper = pair("helper", "Hal")
    answer = helper.get("/me").json
    assert answer["person"] == {
        "id": helper.person,
        "name": "Hal",
        "role": "helper",
        **AS_THE_PHONE,
    }
    assert answer["device"] == helper.device
    assert {(one["name"], one["role"]) for one in answer["people"]} == {
        ("Olive", "owner"),
        ("Hal", "helper"),
    }
    assert (answer["server"]["now"], answer["server"]["rate"]) == (NOON_MS, 1)


@pytest.mark.parametrize("role", ["viewer", "helper", "maker"])
def test_only_the_owner_changes_people_and_sees_phones(owner, pair, role):
    phone = pair(role)
    answers = [
        phone.post("/people", {"name": "Eve", "role": "owner"}),
        phone.post(f"/people/{phone.person}", {"role": "owner"}),
        phone.post(f"/people/{owner.person}/pairing"),
        phone.get("/devices"),
        phone.delete(f"/devices/{owner.device}"),
    ]
    assert [answer.status_code for answer in answers] == [403] * 5
    assert {error(answer)["key"] for answer in answers} == {"role_too_low"}
    assert len(owner.get("/people").json) == 2
    assert owner.get("/me").status_code == 200


def test_every_path_of_the_interface_is_closed_to_a_stranger(app, client):
    rules = [rule for rule in app.url_map.iter_rules() if rule.rule.startswith("/api/")]
    opened = []
    for rule in rules:
        path = rule.rule
        for argument in rule.arguments:
            path = path.replace(f"<{argument}>", "1")
        path = path.split("<", 1)[0]
        method = "GET" if "GET" in rule.methods else min(rule.methods - {"OPTIONS"})
        headers = {"X-Vatside": "1", "Content-Type": "application/json"}
        answer = client.open(path, method=method, headers=headers)
        if answer.status_code != 401:
            opened.append(path)
    assert len(rules) >= 10
    # A guest gives the secret of their link there.
    doors = {"/api/v1/pair", "/api/v1/guest"}
    assert set(opened) <= doors | {"/api/v1/health", "/api/v1/openapi.json"}


def test_the_owner_adds_a_person_and_changes_them(owner):
    made = owner.post("/people", {"name": "  Hal ", "role": "helper"})
    assert made.status_code == 201
    person = made.json
    assert person == {
        "id": person["id"],
        "name": "Hal",
        "role": "helper",
        "active": True,
        **AS_THE_PHONE,
    }
    changed = owner.post(f"/people/{person['id']}", {"role": "maker"}).json
    assert changed == person | {"role": "maker"}
    left = owner.post(f"/people/{person['id']}", {"active": False, "name": "H."}).json
    assert left == person | {"role": "maker", "active": False, "name": "H."}
    assert left in owner.get("/people").json


@pytest.mark.parametrize(
    ("body", "field", "key", "limit"),
    [
        ({"role": "maker"}, "name", "missing", None),
        ({"name": " ", "role": "maker"}, "name", "missing", None),
        ({"name": "x" * 81, "role": "maker"}, "name", "too_long", 80),
        ({"name": 7, "role": "maker"}, "name", "not_text", None),
        ({"name": "a\0b", "role": "maker"}, "name", "not_text", None),
        ({"name": "a\ud800b", "role": "maker"}, "name", "not_text", None),
        ({"name": "Al", "role": "king"}, "role", "not_a_choice", list(ROLES)),
        ({"name": "Al", "role": ["maker"]}, "role", "not_text", None),
        ({"name": "Al", "role": "maker", "id": "1"}, "id", "unknown_field", None),
        ([], None, "not_a_mapping", None),
        (None, None, "not_a_mapping", None),
    ],
)
def test_a_person_that_cannot_be_is_named_and_not_added(owner, body, field, key, limit):
    answer = owner.post("/people", body)
    assert answer.status_code == 422, answer.text
    assert (error(answer)["field"], error(answer)["key"]) == (field, key)
    assert error(answer)["limit"] == limit
    assert len(owner.get("/people").json) == 1


def test_a_body_that_is_not_json_is_named(owner):
    answer = owner.post("/people", data="{")
    assert (answer.status_code, error(answer)["key"]) == (400, "not_json")


@pytest.mark.parametrize("change", [{"role": "maker"}, {"active": False}])
def test_the_last_owner_stays_owner(owner, change):
    answer = owner.post(f"/people/{owner.person}", change)
    assert (answer.status_code, error(answer)["key"]) == (409, "last_owner")
    assert owner.get("/me").json["person"]["role"] == "owner"
    second = owner.post("/people", {"name": "Oz", "role": "owner"})
    assert second.status_code == 201
    assert owner.post(f"/people/{owner.person}", change).status_code == 200


def test_an_unknown_person_is_named(owner):
    for path in ("nobody", "x" * 64):
        answer = owner.post(f"/people/{path}", {"name": "Al"})
        assert (answer.status_code, error(answer)["key"]) == (404, "unknown_person")


def test_a_person_who_left_is_let_in_no_more_but_may_hand_over(owner, pair):
    helper = pair("helper")
    owner.post(f"/people/{helper.person}", {"active": False})
    assert error(helper.get("/me"))["key"] == "inactive_person"
    (result,) = helper.push(note(helper.device, 1, helper.person)).json["results"]
    assert (result["st"], result["why"][0]["key"]) == ("needs_look", "inactive_person")


def test_phones_are_listed_and_removed(owner, pair):
    helper = pair("helper")
    listed = {phone["id"]: phone for phone in owner.get("/devices").json}
    assert listed[helper.device] == {
        "id": helper.device,
        "name": "Pocket",
        "person": helper.person,
        "paired_ms": NOON_MS,
        "seen_ms": NOON_MS,
        "removed_ms": None,
    }
    assert owner.delete(f"/devices/{helper.device}").status_code == 204
    listed = {phone["id"]: phone for phone in owner.get("/devices").json}
    assert listed[helper.device]["removed_ms"] == NOON_MS
    assert owner.delete(f"/devices/{a_uuid()}").status_code == 404
    own = owner.delete(f"/devices/{owner.device}")
    assert (own.status_code, error(own)["key"]) == (409, "own_device")


def test_a_phone_in_use_stays_paired_and_a_forgotten_one_does_not(owner, clock):
    for _ in range(3):
        clock.tick(300 * DAY_MS)
        assert owner.get("/me").status_code == 200
    clock.tick(401 * DAY_MS)
    assert owner.get("/me").status_code == 401


@pytest.mark.parametrize("role", ROLES)
def test_everyone_says_how_they_read(owner, pair, role):
    phone = owner if role == "owner" else pair(role, "Ana")
    answer = phone.patch("/me", IN_SPANISH)
    assert answer.status_code == 200
    # What was not named stays as the phone says.
    assert answer.json.items() >= (AS_THE_PHONE | IN_SPANISH).items()
    assert phone.patch("/me", {"mass_unit": "lb"}).json["language"] == "es"
    told = phone.get("/me").json
    assert told["person"]["mass_unit"] == "lb"
    mine = [one for one in told["people"] if one["id"] == phone.person]
    assert (mine[0]["language"], mine[0]["temp_unit"]) == ("es", "F")


def test_the_owner_says_how_anyone_reads_and_nobody_else_does(owner, pair):
    helper, maker = pair("helper", "Hal"), pair("maker", "Mara")
    changed = owner.post(f"/people/{helper.person}", IN_SPANISH)
    assert changed.json.items() >= IN_SPANISH.items()
    refused = maker.post(f"/people/{helper.person}", {"language": "fr"})
    assert (refused.status_code, error(refused)["key"]) == (403, "role_too_low")
    assert helper.get("/me").json["person"]["language"] == "es"


@pytest.mark.parametrize(
    ("body", "field", "key", "limit"),
    [
        ({"language": "tlh"}, "language", "not_a_choice", ["en", "es", "fr"]),
        ({"language": None}, "language", "missing", None),
        ({"temp_unit": "K"}, "temp_unit", "not_a_choice", ["C", "F"]),
        ({"mass_unit": "stone"}, "mass_unit", "not_a_choice", ["kg", "lb"]),
        ({"role": "owner"}, "role", "unknown_field", None),
    ],
)
def test_a_way_to_read_that_cannot_be_is_named(pair, body, field, key, limit):
    phone = pair("helper")
    answer = phone.patch("/me", body)
    assert answer.status_code == 422
    assert (error(answer)["field"], error(answer)["key"]) == (field, key)
    assert error(answer)["limit"] == limit
    assert phone.get("/me").json["person"].items() >= AS_THE_PHONE.items()


def test_a_phone_signs_out_and_its_token_is_forgotten(owner, pair, tmp_path):
    helper = pair("helper")
    token = helper.http.get_cookie("vatside").value
    answer = helper.post("/me/sign-out", {})
    assert answer.status_code == 204
    assert helper.http.get_cookie("vatside") is None
    helper.http.set_cookie("vatside", token)
    for asked in (helper.get("/me"), helper.push(), helper.get("/live")):
        assert (asked.status_code, error(asked)["key"]) == (401, "not_paired")
    (row,) = [one for one in owner.get("/devices").json if one["id"] == helper.device]
    assert row["removed_ms"] is not None
    last = list(lines(tmp_path))[-1]
    assert (last["what"], last["device"]) == ("signed_out", helper.device)


def test_what_waited_on_a_phone_comes_when_it_is_paired_again(owner, pair):
    helper = pair("helper")
    waits = note(helper.device, 1, helper.person)
    helper.post("/me/sign-out", {})
    code = owner.post(f"/people/{helper.person}/pairing", {}).json["code"]
    body = {"code": code, "device": helper.device, "device_name": "Pocket"}
    assert helper.post("/pair", body).status_code == 200
    assert [row["st"] for row in helper.push(waits).json["results"]] == ["stored"]


def test_signing_out_ends_one_phone_of_a_person_and_no_other(owner, app):
    code = owner.post(f"/people/{owner.person}/pairing", {}).json["code"]
    second = PairedPhone(app.test_client(), a_uuid(), owner.person)
    body = {"code": code, "device": second.device, "device_name": "Desk"}
    assert second.post("/pair", body).status_code == 200
    assert owner.post("/me/sign-out", {}).status_code == 204
    assert second.get("/me").status_code == 200
    assert owner.get("/me").status_code == 401
