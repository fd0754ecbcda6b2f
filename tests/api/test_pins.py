import logging
import re
import sqlite3

import pytest

from server import seal
from tests.sync.phones import NOON_MS, note
from tests.sync.signers import Signer

PIN, OTHER = "40718263", "2580147"
SIGNED = {"kind": "signed_off", "data": {"statement": "Read through."}}


@pytest.fixture
def owner(pair):
    return pair("owner", "Oda")


@pytest.fixture
def quick(monkeypatch):
    """Stretch PINs as little as can be: these tests ask who may, not how slowly."""
    monkeypatch.setattr(seal, "ROUNDS", 1)


def of(person):
    return f"/people/{person}/pin"


def new_pin(signer, before=None):
    made = signer.sealed._asdict()
    body = {name: made[name] for name in made if name != "person"}
    sig = before.sign(seal.sealed_text(signer.sealed)) if before else None
    return body | {"sig": sig}


def set_pin(phone, person=None, before=None):
    signer = Signer(person or phone.person)
    return signer, phone.post(of(signer.person), new_pin(signer, before))


def set_plain(phone, pin=PIN, before=None, person=None):
    body = {"pin": pin, "before": before}
    return phone.post(of(person or phone.person) + "/plain", body)


def act_of(event):
    names = (*seal.SIGNED,)
    return {name: event[name] for name in names if name != "person"}


def prove(phone, pin, event=None, person=None):
    event = event or note(phone.device, 1, phone.person, **SIGNED)
    body = {"pin": pin, "act": act_of(event)}
    return phone.post(of(person or phone.person) + "/prove", body)


def error(answer):
    return answer.status_code, answer.json["error"]["key"]


def state(phone, event):
    (result,) = phone.push(event).json["results"]
    return result["st"]


def test_a_maker_sets_a_pin_on_their_own_phone_and_signs_with_it(paired):
    signer, answer = set_pin(paired)
    assert answer.status_code == 204
    event = note(paired.device, 1, paired.person, **SIGNED)
    assert state(paired, signer.proves(event)) == "stored"


def test_phones_of_makers_get_the_wrapped_keys_and_no_other_phone_does(pair, paired):
    signer, _ = set_pin(paired)
    (told,) = pair("owner", "Oda").get("/pins").json["pins"]
    assert told == signer.sealed._asdict() | {
        "device": paired.device,
        "set_ms": NOON_MS,
    }
    for role in ("helper", "viewer"):
        assert error(pair(role, role).get("/pins")) == (403, "role_too_low")


@pytest.mark.parametrize("role", ["viewer", "helper"])
def test_who_does_not_sign_sets_no_pin_and_has_none(pair, owner, role):
    low = pair(role, "Hal")
    assert error(set_pin(low)[1]) == (403, "role_too_low")
    assert error(set_plain(low)) == (403, "role_too_low")
    assert error(prove(low, PIN)) == (403, "role_too_low")
    assert error(low.post(of(owner.person) + "/reset", {})) == (403, "role_too_low")
    assert error(set_pin(owner, low.person)[1]) == (422, "no_pin_for_role")
    assert error(owner.post(of(low.person) + "/reset", {})) == (422, "no_pin_for_role")


def test_nobody_sets_the_owners_first_pin_on_another_phone(paired, owner):
    assert error(set_pin(paired, owner.person)[1]) == (403, "pin_not_here")
    assert error(set_plain(paired, person=owner.person)) == (403, "pin_not_here")
    assert owner.get("/pins").json["pins"] == []


def test_the_owner_lets_a_maker_set_one_on_any_phone_once_for_half_an_hour(
    pair, paired, owner, clock
):
    second = pair("maker", "Bo")
    answer = owner.post(of(second.person) + "/reset", {})
    assert answer.json == {"person": second.person, "until_ms": NOON_MS + 1_800_000}
    assert set_pin(paired, second.person)[1].status_code == 204
    assert error(set_pin(paired, second.person)[1]) == (403, "wrong_pin")
    owner.post(of(second.person) + "/reset", {})
    clock.tick(1_800_000)
    assert error(set_pin(paired, second.person)[1]) == (403, "pin_not_here")


def test_a_pin_is_changed_with_the_one_before_on_any_phone(paired, owner):
    first, _ = set_pin(paired)
    assert error(set_pin(paired)[1]) == (403, "wrong_pin")
    assert error(set_pin(paired, before=Signer(paired.person))[1]) == (403, "wrong_pin")
    second, answer = set_pin(owner, paired.person, before=first)
    assert answer.status_code == 204
    (told,) = owner.get("/pins").json["pins"]
    assert told["key"] == second.key


def test_after_a_reset_the_old_pin_signs_nothing_new(paired, owner, clock):
    first, _ = set_pin(paired)
    early = note(paired.device, 1, paired.person, **SIGNED)
    assert owner.post(of(paired.person) + "/reset", {}).status_code == 200
    late = note(paired.device, 2, paired.person, **SIGNED, entered_ms=NOON_MS + 1)
    assert state(paired, first.proves(early)) == "stored"
    assert state(paired, first.proves(late)) == "needs_look"
    assert owner.get("/pins").json["pins"] == []


def test_the_owners_phone_does_not_reset_the_owners_own_pin(owner):
    first, _ = set_pin(owner)
    assert error(owner.post(of(owner.person) + "/reset", {})) == (409, "own_pin")
    (told,) = owner.get("/pins").json["pins"]
    assert told["key"] == first.key


def test_a_key_of_another_sort_or_made_too_quickly_is_refused(paired):
    sound = new_pin(Signer(paired.person))
    for changed, key in (
        ({"public": "AAAA"}, "not_a_key"),
        ({"rounds": seal.ROUNDS - 1}, "too_low"),
        ({"rounds": 2**40}, "too_low"),
        ({"wrapped": "w" * 401}, "too_long"),
        ({"salt": "é"}, "not_base64url"),
        ({"pin": PIN}, "unknown_field"),
    ):
        assert error(paired.post(of(paired.person), sound | changed)) == (422, key)
    assert paired.get("/pins").json["pins"] == []


def test_a_key_that_signed_before_is_not_set_again(paired, owner):
    signer, _ = set_pin(paired)
    owner.post(of(paired.person) + "/reset", {})
    answer = paired.post(of(paired.person), new_pin(signer))
    assert error(answer) == (422, "not_a_key")


def test_a_page_without_cryptography_sets_changes_and_proves(quick, paired):
    assert error(prove(paired, PIN)) == (409, "no_pin")
    assert set_plain(paired).status_code == 204
    assert error(set_plain(paired, OTHER)) == (403, "wrong_pin")
    assert error(set_plain(paired, OTHER, before="9021")) == (403, "wrong_pin")
    assert set_plain(paired, OTHER, before=PIN).status_code == 204
    event = note(paired.device, 1, paired.person, **SIGNED)
    proof = prove(paired, OTHER, event).json
    assert state(paired, event | {"proof": proof}) == "stored"
    another = note(paired.device, 2, paired.person, **SIGNED, proof=proof)
    assert state(paired, another) == "needs_look"


@pytest.mark.parametrize(
    ("pin", "key"),
    [("158", "pin_too_short"), ("0000", "pin_too_easy"), ("15a2", "pin_not_digits")],
)
def test_a_weak_pin_is_refused(paired, pin, key):
    assert error(set_plain(paired, pin)) == (422, key)


def test_wrong_pins_cost_time_and_a_right_one_must_wait_too(quick, paired, clock):
    set_plain(paired)
    left = [prove(paired, "9021").json["error"]["limit"] for _ in range(4)]
    assert left == [4, 3, 2, 1]
    waits = []
    for _ in range(8):
        answer = prove(paired, "9021")
        assert error(answer) == (429, "too_many_pins")
        waits.append(answer.json["error"]["limit"])
        assert answer.headers["Retry-After"] == str(waits[-1])
        assert error(prove(paired, PIN)) == (429, "too_many_pins")
        clock.tick(waits[-1] * 1000)
    assert waits == [60, 120, 240, 480, 960, 1920, 3600, 3600]
    assert prove(paired, PIN).status_code == 200
    assert prove(paired, "9021").json["error"]["limit"] == 4


def test_one_persons_wrong_pins_do_not_slow_another(quick, paired, owner):
    set_plain(paired)
    set_plain(owner, OTHER)
    for _ in range(5):
        prove(paired, "9021", person=paired.person)
    assert error(prove(paired, PIN)) == (429, "too_many_pins")
    assert prove(owner, OTHER).status_code == 200


def test_a_reset_forgets_wrong_pins(quick, paired, owner):
    set_plain(paired)
    for _ in range(5):
        prove(paired, "9021")
    owner.post(of(paired.person) + "/reset", {})
    assert set_plain(paired, OTHER).status_code == 204
    assert prove(paired, OTHER).status_code == 200


def test_a_pin_is_never_in_a_table_an_answer_or_the_servers_log(
    quick, paired, owner, tmp_path, caplog
):
    caplog.set_level(logging.DEBUG)
    answers = [
        set_plain(paired),
        set_plain(paired, OTHER, before=PIN),
        set_plain(paired, "000000"),
        prove(paired, "9021", note(paired.device, 9, paired.person, **SIGNED)),
    ]
    event = note(paired.device, 1, paired.person, **SIGNED)
    answers.append(prove(paired, OTHER, event))
    answers.append(paired.push(event | {"proof": answers[-1].json}))
    answers += [paired.get("/pins"), owner.post(of(paired.person) + "/reset", {})]
    said = "".join(answer.text for answer in answers) + caplog.text
    with sqlite3.connect(tmp_path / "vatside.sqlite3") as database:
        said += "\n".join(database.iterdump())
    database.close()
    said += (tmp_path / "security.log").read_text("utf-8")
    assert event["data"]["statement"] in said  # the log was looked at
    for pin in (PIN, OTHER, "000000", "9021"):
        assert pin not in without_ids(said)


def without_ids(text):
    """Leave out what is random or an instant, where any four digits may stand."""
    ids = r"[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}|[0-9a-f]{64}|[\w-]{20,}|\d{13}"
    return re.sub(ids, "", text)
