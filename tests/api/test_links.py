"""Read-only links: what a guest sees, for how long, and what stays closed."""

import json

import pytest

from server.auth import links
from tests.api.conftest import HEADERS, PairedPhone
from tests.api.test_makes import began, opening
from tests.sync.phones import NOON_MS, a_uuid, note

DAY_MS = 86_400_000


@pytest.fixture
def owner(pair):
    return pair("owner", "Olive Quern")


@pytest.fixture
def maker(pair):
    return pair("maker", "Maren Okello")


def opened(phone, seq, name="Tuesday vat"):
    make = a_uuid()
    told = phone.push(
        opening(phone, make, seq, name=name), began(phone, make, "receive", seq + 1)
    )
    assert [row["st"] for row in told.json["results"]] == ["stored", "stored"]
    return make


@pytest.fixture
def make(maker):
    return opened(maker, 1)


def link(owner, make, until_ms=NOON_MS + 30 * DAY_MS, name="Vet"):
    wanted = {"name": name, "makes": [make], "until_ms": until_ms}
    answer = owner.post("/links", wanted)
    assert answer.status_code == 201, answer.text
    return answer.json


def token_of(made):
    return made["url"].partition("/#/guest/")[2]


@pytest.fixture
def enter(app):
    """Give a function that opens a link in a new browser."""

    def open_it(made):
        guest = PairedPhone(app.test_client(), "", "")
        answer = guest.post("/guest", {"token": token_of(made)})
        assert answer.status_code == 200, answer.text
        return guest

    return open_it


def refusal(answer):
    return answer.status_code, answer.json["error"]["key"]


def test_a_guest_sees_the_makes_of_the_link(owner, make, enter):
    guest = enter(link(owner, make))
    shown = guest.get("/guest").json
    assert [row["id"] for row in shown["makes"]] == [make]
    assert (shown["name"], shown["until_ms"]) == ("Vet", NOON_MS + 30 * DAY_MS)
    for part in ("view", "record", "curve"):
        assert guest.get(f"/guest/makes/{make}/{part}").status_code == 200, part
    record = guest.get(f"/guest/makes/{make}/record").json
    assert [row["kind"] for row in record] == ["make_opened", "step_begun"]


def test_the_secret_of_a_link_has_256_bits_and_stands_behind_the_hash(owner, make):
    made = link(owner, make)
    before, _, token = made["url"].partition("#")
    assert before == "http://localhost/"
    # Base64 carries 6 bits a sign, so 256 bits take 43.
    assert len(token.removeprefix("/guest/")) == 43
    assert "<svg" in made["qr_svg"]


def test_the_secret_is_told_only_once_and_kept_only_as_a_hash(app, owner, make, enter):
    made = link(owner, make)
    guest = enter(made)
    cookie = guest.http.get_cookie("vatside-guest")
    assert "url" not in owner.get("/links").json[0]
    with app.app_context():
        from server.store import db

        kept = db.session.connection().connection.iterdump()
        text = "\n".join(kept)
    assert token_of(made) not in text
    assert cookie.value not in text


def test_the_guests_cookie_is_out_of_reach_of_scripts(app, owner, make):
    made = link(owner, make)
    guest = app.test_client()
    answer = guest.post(
        "/api/v1/guest",
        data=json.dumps({"token": token_of(made)}),
        headers=HEADERS,
        base_url="https://localhost",
    )
    (cookie,) = answer.headers.getlist("Set-Cookie")
    assert cookie.startswith("__Host-vatside-guest=")
    for word in ("HttpOnly", "Secure", "SameSite=Strict", "Max-Age=2592000", "Path=/"):
        assert word in cookie, word


def test_a_guest_sees_no_other_make_and_not_whether_there_is_one(
    owner, maker, make, enter
):
    other = opened(maker, 3, "Secret vat")
    guest = enter(link(owner, make))
    assert "Secret vat" not in guest.get("/guest").text
    for part in ("view", "record", "curve"):
        there = guest.get(f"/guest/makes/{other}/{part}")
        nowhere = guest.get(f"/guest/makes/{a_uuid()}/{part}")
        assert refusal(there) == refusal(nowhere) == (404, "unknown_make")
        assert there.data == nowhere.data


def test_every_other_path_of_the_interface_is_closed_to_a_guest(
    app, owner, make, enter
):
    guest = enter(link(owner, make))
    tried = 0
    for rule in app.url_map.iter_rules():
        path = rule.rule.removeprefix("/api/v1")
        if not rule.rule.startswith("/api/") or path.startswith("/guest"):
            continue
        if path in ("/health", "/pair", "/openapi.json"):
            continue
        for argument in rule.arguments:
            path = path.replace(f"<{argument}>", make)
        head, _, tail = path.partition("<")
        path = head + (make + tail.partition(">")[2] if tail else "")
        for method in rule.methods - {"OPTIONS", "HEAD"}:
            answer = guest.http.open(
                f"/api/v1{path}", method=method, headers=HEADERS, data="{}"
            )
            assert refusal(answer) == (401, "not_paired"), (method, path)
            tried += 1
    assert tried >= 20


def test_a_guest_can_neither_push_nor_pull(owner, maker, make, enter):
    guest = enter(link(owner, make))
    event = note(maker.device, 9, maker.person, make=make)
    assert refusal(guest.push(event)) == (401, "not_paired")
    assert refusal(guest.get("/sync/pull?after=0")) == (401, "not_paired")
    assert refusal(guest.get("/live?after=0")) == (401, "not_paired")
    kept = maker.get("/sync/pull?after=0").json["events"]
    assert event["id"] not in [row["event"]["id"] for row in kept]


def test_a_guest_changes_neither_people_nor_recipes_nor_links(owner, make, enter):
    made = link(owner, make)
    guest = enter(made)
    people = owner.get("/people").json
    tries = [
        guest.post("/people", {"name": "Eve", "role": "owner"}),
        guest.post("/recipes", {}),
        guest.post("/links", {"name": "x", "makes": [make], "until_ms": NOON_MS + 1}),
        guest.delete(f"/links/{made['id']}"),
        guest.get("/people"),
        guest.get("/recipes"),
        guest.get("/links"),
    ]
    assert {refusal(answer) for answer in tries} == {(401, "not_paired")}
    assert owner.get("/people").json == people
    assert len(owner.get("/links").json) == 1


def test_a_phones_own_cookie_does_not_make_it_a_guest(owner, make):
    link(owner, make)
    assert refusal(owner.get("/guest")) == (401, "no_guest")
    answer = owner.get(f"/guest/makes/{make}/view")
    assert refusal(answer) == (401, "no_guest")


def test_a_phone_that_opens_a_link_stays_paired(owner, maker, make):
    answer = maker.post("/guest", {"token": token_of(link(owner, make))})
    assert answer.status_code == 200
    assert maker.get("/me").json["person"]["id"] == maker.person
    assert maker.get("/guest").status_code == 200


def test_roles_stand_in_place_of_people(owner, maker, make, enter):
    words = {"text": "Maren Okello tasted it, Olive agreed; Marensson does not"}
    event = note(maker.device, 3, maker.person, kind="note_added", make=make)
    maker.push(event | {"data": words})
    guest = enter(link(owner, make))
    answers = [guest.get("/guest")]
    for part in ("view", "record", "curve"):
        answers.append(guest.get(f"/guest/makes/{make}/{part}"))
    for answer in answers:
        for secret in (maker.person, maker.device, owner.person, "Okello", "Olive"):
            assert secret not in answer.text, secret
    record = answers[2].json
    assert {row["by"] for row in record} == {"maker"}
    assert {row["device"] for row in record} == {None}
    assert record[-1]["data"]["text"] == (
        "[maker] tasted it, [owner] agreed; Marensson does not"
    )
    assert answers[1].json["make"]["opened_by"] == "maker"


def test_an_ended_link_says_so(owner, make, enter, clock, app):
    made = link(owner, make, NOON_MS + DAY_MS)
    guest = enter(made)
    clock.tick(DAY_MS - 1)
    assert guest.get("/guest").status_code == 200
    clock.tick(1)
    for answer in (
        guest.get("/guest"),
        guest.get(f"/guest/makes/{make}/record"),
        PairedPhone(app.test_client(), "", "").post(
            "/guest", {"token": token_of(made)}
        ),
    ):
        assert refusal(answer) == (403, "link_ended")
        assert answer.json["error"]["text"].startswith("This link has ended.")
        assert answer.json["error"]["limit"] == NOON_MS + DAY_MS


def test_a_revoked_link_is_closed_at_once_for_all_who_opened_it(owner, make, enter):
    made = link(owner, make)
    guests = [enter(made), enter(made)]
    assert owner.delete(f"/links/{made['id']}").status_code == 204
    for guest in guests:
        answer = guest.get(f"/guest/makes/{make}/view")
        assert refusal(answer) == (403, "link_revoked")
        assert "revoked this link" in answer.json["error"]["text"]
    again = guests[0].post("/guest", {"token": token_of(made)})
    assert refusal(again) == (403, "link_revoked")
    (listed,) = owner.get("/links").json
    assert listed["revoked_ms"] == NOON_MS


def test_a_wrong_secret_opens_nothing(client, owner, make):
    link(owner, make)
    guest = PairedPhone(client, "", "")
    answer = guest.post("/guest", {"token": "x" * 43})
    assert refusal(answer) == (403, "link_unknown")
    assert refusal(guest.get("/guest")) == (401, "no_guest")


@pytest.mark.parametrize(
    ("change", "key", "field"),
    [
        ({"until_ms": NOON_MS}, "too_low", "until_ms"),
        ({"until_ms": NOON_MS + 90 * DAY_MS + 1}, "too_high", "until_ms"),
        ({"makes": []}, "missing", "makes"),
        ({"makes": ["x"]}, "not_a_uuid", "makes.0"),
        ({"makes": [a_uuid() for _ in range(51)]}, "too_many_makes", "makes"),
        ({"name": " "}, "missing", "name"),
    ],
)
def test_a_link_that_may_not_be_is_refused_and_not_kept(
    owner, make, change, key, field
):
    wanted = {"name": "Vet", "makes": [make], "until_ms": NOON_MS + DAY_MS}
    answer = owner.post("/links", wanted | change)
    assert answer.status_code == 422
    assert (answer.json["error"]["key"], answer.json["error"]["field"]) == (key, field)
    assert owner.get("/links").json == []


def test_ninety_days_is_the_longest(owner, make):
    link(owner, make, NOON_MS + 90 * DAY_MS)


def test_a_link_to_a_make_that_is_not_known_is_refused(owner, make):
    wanted = {"name": "Vet", "makes": [make, a_uuid()], "until_ms": NOON_MS + DAY_MS}
    assert refusal(owner.post("/links", wanted)) == (404, "unknown_make")
    assert owner.get("/links").json == []


@pytest.mark.parametrize("role", ["viewer", "helper", "maker"])
def test_only_the_owner_makes_sees_and_revokes_links(owner, pair, make, role):
    made = link(owner, make)
    phone = pair(role)
    wanted = {"name": "x", "makes": [make], "until_ms": NOON_MS + DAY_MS}
    tries = [
        phone.post("/links", wanted),
        phone.get("/links"),
        phone.delete(f"/links/{made['id']}"),
    ]
    assert {refusal(answer) for answer in tries} == {(403, "role_too_low")}
    assert owner.get("/links").json[0]["revoked_ms"] is None


def test_a_link_that_is_not_there_cannot_be_revoked(owner):
    assert refusal(owner.delete(f"/links/{a_uuid()}")) == (404, "unknown_link")


def test_the_oldest_of_too_many_browsers_must_open_the_link_anew(
    owner, make, enter, clock
):
    made = link(owner, make)
    guests = []
    for _ in range(links.MOST_BROWSERS + 1):
        guests.append(enter(made))
        clock.tick(1000)
    assert refusal(guests[0].get("/guest")) == (401, "no_guest")
    assert {one.get("/guest").status_code for one in guests[1:]} == {200}
    assert owner.get("/links").json[0]["opened_ms"] == NOON_MS + 20_000
