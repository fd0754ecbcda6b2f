import pytest
from sqlalchemy import delete, update

from server import store, sync
from server.core.log.kinds.columns import PERSON, PHONE
from server.core.log.kinds.table import KINDS
from server.store import look, pins
from server.store.models import LoggedEvent, LookedAt, PinStartRow
from server.store.pulled import as_filed
from tests.sync.phones import NOON_MS, a_person, a_phone, a_uuid, note
from tests.sync.signers import Signer, a_signer

# A maker with a PIN, and a phone of theirs that others use too.

SIGNED = {"kind": "signed_off", "data": {"statement": "Read through; 31.25 °C. 🧀"}}
HELD = {"kind": "hold_placed", "data": {"why": "smell"}}
# Whatever else asks for a proof is given a reason alone.
BODIES = {
    "signed_off": {"statement": "x"},
    "matter_decided": {"matter": "hold", "way": "discard", "why": "x"},
}
PROOF = {"field": "proof", "limit": None}


@pytest.fixture
def maker(either_app):
    return a_person("maker")


@pytest.fixture
def owner(either_app):
    return a_person("owner", "Oda")


@pytest.fixture
def phone(maker):
    return a_phone(maker.id)


@pytest.fixture
def signer(maker):
    return a_signer(maker.id)


def by(phone, seq=1, person=None, **changed):
    return note(phone.device, seq, person or phone.person, **changed)


def push(phone, event):
    (result,) = sync.push([event], None, phone, NOON_MS).results
    return result["st"], result["why"]


def refused(key):
    return "needs_look", [PROOF | {"key": key}]


def logged():
    return [row.event for row in store.every_event()]


def test_a_proved_sign_off_is_kept_as_it_came(phone, signer):
    event = signer.proves(by(phone, **SIGNED))
    assert push(phone, event) == ("stored", None)
    assert logged() == [event]


def test_the_owner_signs_off_on_the_makers_phone(phone, owner):
    event = a_signer(owner.id).proves(by(phone, person=owner.id, **SIGNED))
    assert push(phone, event) == ("stored", None)


@pytest.mark.parametrize("kind", [name for name in KINDS if KINDS[name]["proof"]])
def test_nobody_acts_in_the_owners_name_without_the_owners_pin(
    phone, owner, signer, kind
):
    data = BODIES.get(kind, {"why": "x"})
    ref = a_uuid() if KINDS[kind]["ref"] == "required" else None
    event = by(phone, person=owner.id, kind=kind, data=data, ref=ref)
    assert push(phone, event) == refused("not_proved")
    with_another = signer.proves({**event, "id": a_uuid()})
    assert push(phone, with_another) == refused("bad_proof")
    in_a_hurry = {**event, "id": a_uuid(), "proof": {"by": "phone"}}
    assert push(phone, in_a_hurry) == refused("not_proved")
    assert logged() == []
    assert len(look.open_looks()) == 3


def test_a_key_that_was_never_set_proves_nothing(phone, maker):
    event = Signer(maker.id).proves(by(phone, **SIGNED))
    assert push(phone, event) == refused("unknown_pin")


@pytest.mark.parametrize(
    "changed",
    [
        {"id": "00000000-0000-4000-8000-000000000001"},
        {"make": "00000000-0000-4000-8000-00000000cccc"},
        {"data": {"statement": "Another statement."}},
        {"at_ms": NOON_MS - 1},
        {"entered_ms": NOON_MS - 1},
        {"off_ms": 1},
        {"ref": "00000000-0000-4000-8000-000000000001"},
    ],
    ids=lambda changed: next(iter(changed)),
)
def test_a_proof_fits_no_other_act(phone, signer, changed):
    proof = signer.proves(by(phone, **SIGNED))["proof"]
    event = by(phone, **SIGNED, proof=proof) | changed
    assert push(phone, event) == refused("bad_proof")
    assert logged() == []


def test_a_proof_of_lifting_one_hold_lifts_no_other(phone, signer):
    lifting = {"kind": "hold_lifted", "data": {"why": "drain"}}
    event = signer.proves(by(phone, ref=a_uuid(), **lifting))
    assert push(phone, {**event, "ref": a_uuid()}) == refused("bad_proof")


@pytest.mark.parametrize(
    "proof", ["1234", {"by": "pin"}, {"by": "pin", "key": "x", "sig": "A" * 86}, {}]
)
def test_a_proof_without_form_is_put_aside(phone, proof):
    state, why = push(phone, by(phone, **SIGNED, proof=proof))
    assert (state, why[0]["key"]) == ("needs_look", "bad_proof")


@pytest.mark.parametrize("sig", ["A" * 86, "é" * 86, "-" * 86])
def test_noise_in_place_of_a_signature_proves_nothing(phone, signer, sig):
    proof = {"by": "pin", "key": signer.key, "sig": sig}
    assert push(phone, by(phone, **SIGNED, proof=proof)) == refused("bad_proof")


def test_a_hold_in_a_hurry_is_placed_by_the_phones_own_person(phone):
    event = by(phone, **HELD, proof={"by": "phone"})
    assert push(phone, event) == ("stored", None)
    assert logged() == [event]


def test_a_hold_signed_with_a_pin_changed_meanwhile_holds_and_says_so(phone, signer):
    event = signer.proves(by(phone, **HELD, entered_ms=NOON_MS + 1))
    pins.end_pin(phone.person, NOON_MS)
    assert push(phone, event) == ("stored", None)
    (row,) = store.every_event()
    assert (row.event, row.proof_state) == (event, "old_pin")


def test_a_pin_changed_meanwhile_signs_nothing_off_but_what_was_before(phone, signer):
    late = signer.proves(by(phone, 1, **SIGNED, entered_ms=NOON_MS + 1))
    early = signer.proves(by(phone, 2, **SIGNED))
    pins.end_pin(phone.person, NOON_MS)
    assert push(phone, late) == refused("old_pin")
    assert push(phone, early) == ("stored", None)


def test_what_was_recorded_before_pins_stands_without_a_proof(phone):
    with store.writing() as session:
        session.execute(update(PinStartRow).values(since_ms=NOON_MS))
    before = by(phone, 1, **SIGNED, entered_ms=NOON_MS - 1)
    after = by(phone, 2, **SIGNED)
    assert push(phone, before) == ("stored", None)
    assert push(phone, after) == refused("not_proved")


@pytest.mark.parametrize("kind", ["entry_struck", "entry_corrected"])
def test_a_hold_is_neither_struck_nor_corrected_without_a_proof(phone, signer, kind):
    hold = by(phone, 1, **HELD)
    push(phone, hold)
    data = {"why": "slip"} | ({"set": {"why": "x"}} if "corr" in kind else {})
    change = by(phone, 2, kind=kind, ref=hold["id"], data=data)
    assert push(phone, change) == refused("not_proved")
    assert push(phone, signer.proves({**change, "id": a_uuid()})) == ("stored", None)


def test_what_a_person_takes_after_a_look_stays_unproved(phone):
    event = by(phone, **SIGNED)
    push(phone, event)
    (found,) = look.open_looks()
    assert sync.settle(found.n, "accept", "I saw it", "boss", NOON_MS) == []
    (pulled,) = sync.pull(store.epoch(), 0, 10).events
    assert (pulled["event"], pulled["proof_state"]) == (event, "accepted")
    assert as_filed(pulled)["proof_state"] == "accepted"
    assert push(phone, event)[0] == "duplicate"


def test_nobody_brings_the_servers_word_along(phone):
    event = by(phone, **HELD, proof={"by": "phone"}, proof_state="pin")
    problem = {"field": "proof_state", "key": "unknown_field", "limit": None}
    assert push(phone, event) == ("needs_look", [problem])
    (found,) = look.open_looks()
    sync.settle(found.n, "accept", "I saw it", "boss", NOON_MS)
    (pulled,) = sync.pull(store.epoch(), 0, 10).events
    assert "proof_state" in pulled["event"]  # kept as it came
    assert as_filed(pulled)["proof_state"] == "accepted"


@pytest.mark.parametrize("said", ["accepted", None, "pin"])
def test_what_is_given_back_after_a_restore_keeps_the_state_it_had(
    phone, said, monkeypatch
):
    event = by(phone, **SIGNED)
    push(phone, event)
    (found,) = look.open_looks()
    sync.settle(found.n, "accept", "I saw it", "boss", NOON_MS)
    (pulled,) = sync.pull(store.epoch(), 0, 10).events
    with store.writing() as session:
        session.execute(delete(LoggedEvent))
        session.execute(delete(LookedAt))
    kept = {"event": event, "receipt": pulled["receipt"], "proof_state": said}
    (result,) = sync.take_back([kept], phone, NOON_MS)
    assert result["st"] == ("stored" if said == "accepted" else "needs_look")
    assert [row.proof_state for row in store.every_event()] == (
        ["accepted"] if said == "accepted" else []
    )


def test_every_kind_says_what_proof_it_asks_for():
    asked = {name: kind["proof"] for name, kind in KINDS.items() if kind["proof"]}
    assert asked == {
        "matter_decided": PERSON,
        "signed_off": PERSON,
        "hold_lifted": PERSON,
        "hold_placed": PHONE,
    }
