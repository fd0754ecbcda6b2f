import re
import xml.etree.ElementTree as ET

import pytest

from server import auth
from tests.sync.phones import NOON_MS, HandClock, a_uuid, close_app, make_app

TEN_MINUTES_MS = 600_000
ATTEMPTS_FREE = 5


def error(answer):
    return answer.json["error"]


def ask(phone, code, /, **changed):
    body = {"code": code, "device": phone.device, "device_name": "Pocket"}
    return phone.post("/pair", body | changed)


@pytest.fixture
def owner(pair):
    return pair("owner", "Olive")


@pytest.fixture
def stranger(app, pair):
    """Give a phone that was never paired, in a browser of its own."""
    phone = pair("viewer", "Nobody")
    phone.http, phone.device = app.test_client(), a_uuid()
    return phone


@pytest.fixture
def codes(owner, pair):
    helper = pair("helper", "Hal")
    return owner.post(f"/people/{helper.person}/pairing").json | {"of": helper.person}


def long_code(codes):
    return codes["url"].rpartition("/")[2]


def test_the_owners_code_makes_the_first_owner_once(app, client, stranger):
    with app.app_context():
        first, code = (auth.owner_code(NOON_MS, 1).code for _ in range(2))
    assert re.fullmatch(r"([0-9A-Z]{4}-){3}[0-9A-Z]{4}", code)
    nameless = ask(stranger, code)
    assert (nameless.status_code, error(nameless)["field"]) == (422, "person_name")
    assert error(ask(stranger, first, person_name="Al"))["key"] == "wrong_code"
    done = ask(stranger, code.lower().replace("-", " "), person_name="Olive")
    assert done.status_code == 200
    made = done.json["person"]
    assert (made["name"], made["role"]) == ("Olive", "owner")
    again = ask(stranger, code, person_name="Mallory", device=a_uuid())
    assert (again.status_code, error(again)["key"]) == (403, "wrong_code")
    with app.app_context():
        assert auth.owner_code(NOON_MS, 1) is None


def test_an_owner_who_lost_the_phone_is_let_in_again(app, owner, stranger):
    with app.app_context():
        code = auth.owner_code(NOON_MS, 1, even_if_paired=True).code
    assert ask(stranger, code).json["person"]["id"] == owner.person


@pytest.mark.parametrize("form", ["long", "short", "as misread"])
def test_one_code_pairs_one_phone_in_either_form(codes, stranger, form):
    code = long_code(codes) if form == "long" else codes["code"]
    if form == "as misread":
        code = f" {code.lower().replace('0', 'o').replace('1', 'l')} "
    done = ask(stranger, code)
    assert done.status_code == 200, done.text
    assert done.json["person"]["id"] == codes["of"]
    assert stranger.get("/me").json["device"] == stranger.device
    stranger.device = a_uuid()
    for used in (codes["code"], long_code(codes)):
        assert error(ask(stranger, used))["key"] == "wrong_code"


def test_the_picture_holds_the_address_behind_a_hash(codes):
    assert codes["url"].startswith("http://localhost/#/pair/")
    assert len(long_code(codes)) * 5 >= 128  # five bits a sign
    assert len(codes["code"].replace("-", "")) * 5 >= 20
    assert ET.fromstring(codes["qr_svg"]).tag == "{http://www.w3.org/2000/svg}svg"


def test_a_code_ends_after_ten_minutes(codes, stranger, clock):
    clock.tick(TEN_MINUTES_MS)
    for code in (codes["code"], long_code(codes)):
        assert error(ask(stranger, code))["key"] == "wrong_code"


def test_a_code_works_until_just_before_its_end(codes, stranger, clock):
    assert codes["expires_ms"] == clock.now_ms() + TEN_MINUTES_MS
    clock.tick(TEN_MINUTES_MS - 1)
    assert ask(stranger, codes["code"]).status_code == 200


def test_on_a_fast_clock_a_code_lasts_ten_real_minutes(tmp_path):
    clock = HandClock(rate=60)
    app = make_app(tmp_path / "fast", clock=clock)
    with app.app_context():
        person = auth.add_person("Ada", "maker", clock.now_ms()).id
        made = auth.start_pairing(person, person, clock.now_ms(), clock.rate)
    close_app(app)
    assert made.expires_ms == clock.now_ms() + 60 * TEN_MINUTES_MS


def test_a_new_code_ends_the_one_before(owner, codes, stranger):
    newer = owner.post(f"/people/{codes['of']}/pairing").json
    assert error(ask(stranger, codes["code"]))["key"] == "wrong_code"
    assert ask(stranger, newer["code"]).status_code == 200


def test_guessing_is_slowed_and_the_picture_still_works(codes, stranger, clock):
    waits = []
    for guess in range(ATTEMPTS_FREE):
        assert ask(stranger, f"0000000{guess}").status_code == 403
    for _ in range(3):
        slowed = ask(stranger, codes["code"])  # right, but too soon
        assert (slowed.status_code, error(slowed)["key"]) == (429, "too_many_tries")
        waits.append(int(slowed.headers["Retry-After"]))
        clock.tick(waits[-1] * 1000)
        assert ask(stranger, "00000000").status_code == 403
    assert waits[0] < waits[1] < waits[2]
    assert ask(stranger, codes["code"]).status_code == 429
    assert ask(stranger, long_code(codes)).status_code == 200


def test_after_the_wait_the_right_code_works(codes, stranger, clock):
    for _ in range(ATTEMPTS_FREE):
        ask(stranger, "00000000")
    wait_s = int(ask(stranger, codes["code"]).headers["Retry-After"])
    clock.tick(wait_s * 1000)
    assert ask(stranger, codes["code"]).status_code == 200


def test_the_cookie_is_out_of_reach_of_scripts_and_other_sites(codes, stranger):
    (cookie,) = ask(stranger, codes["code"]).headers.getlist("Set-Cookie")
    name, *rest = cookie.split("; ")
    assert name.startswith("vatside=")
    assert len(name) - len("vatside=") >= 43  # 256 bits in base64
    assert {"HttpOnly", "SameSite=Strict", "Path=/"} <= set(rest)


def test_over_https_the_cookie_is_bound_to_the_host(codes, stranger):
    body = {"code": codes["code"], "device": stranger.device, "device_name": "P"}
    headers = {"X-Vatside": "1"}
    answer = stranger.http.post(
        "/api/v1/pair", json=body, headers=headers, base_url="https://localhost"
    )
    (cookie,) = answer.headers.getlist("Set-Cookie")
    assert cookie.startswith("__Host-vatside=")
    assert "Secure" in cookie.split("; ")


def test_pairing_anew_ends_the_old_token(owner, codes, stranger, app):
    ask(stranger, codes["code"])
    newer = owner.post(f"/people/{codes['of']}/pairing").json
    old, stranger.http = stranger.http, app.test_client()
    assert ask(stranger, newer["code"]).status_code == 200
    assert stranger.get("/me").status_code == 200
    stranger.http = old
    assert stranger.get("/me").status_code == 401


def test_a_code_cannot_push_another_persons_phone_out(owner, codes, stranger):
    answer = ask(stranger, codes["code"], device=owner.device)
    assert (answer.status_code, error(answer)["key"]) == (409, "device_in_use")
    assert owner.get("/me").status_code == 200
    assert ask(stranger, codes["code"]).status_code == 200  # the code is not used up


def test_a_phone_may_change_hands_and_a_removed_one_come_back(owner, pair, codes):
    helper = pair("maker", "Mo")
    assert ask(helper, codes["code"]).json["person"]["name"] == "Hal"
    owner.delete(f"/devices/{helper.device}")
    assert helper.get("/me").status_code == 403
    newer = owner.post(f"/people/{codes['of']}/pairing").json
    assert ask(helper, newer["code"]).status_code == 200
    assert helper.get("/me").status_code == 200


def test_nobody_pairs_for_a_person_who_left(owner, codes, stranger):
    owner.post(f"/people/{codes['of']}", {"active": False})
    assert error(ask(stranger, codes["code"]))["key"] == "inactive_person"
    refused = owner.post(f"/people/{codes['of']}/pairing")
    assert error(refused)["key"] == "inactive_person"


def test_neither_codes_nor_tokens_lie_in_the_database(app, codes, stranger, tmp_path):
    waiting = (codes["code"].replace("-", ""), codes["code"], long_code(codes))
    (cookie,) = ask(stranger, codes["code"]).headers.getlist("Set-Cookie")
    token = cookie.partition("=")[2].partition(";")[0]
    kept = b"".join(path.read_bytes() for path in tmp_path.glob("vatside.sqlite3*"))
    assert stranger.device.encode() in kept
    for secret in (*waiting, token):
        assert secret.encode() not in kept


@pytest.mark.parametrize(
    ("changed", "field", "key"),
    [
        ({"device": "x"}, "device", "not_a_uuid"),
        ({"device": None}, "device", "missing"),
        ({"device_name": ""}, "device_name", "missing"),
        ({"code": 12345678}, "code", "not_text"),
        ({"code": "x" * 65}, "code", "too_long"),
    ],
)
def test_a_request_that_cannot_be_read_is_named(stranger, changed, field, key):
    answer = ask(stranger, "00000000", **changed)
    assert answer.status_code == 422
    assert (error(answer)["field"], error(answer)["key"]) == (field, key)
