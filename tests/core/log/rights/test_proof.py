import pytest

from server.core.log.kinds.table import KINDS
from tests.core.builders import Phone, at

SIG = {"by": "pin", "key": "0193a5b0-0000-7000-8000-0000000000aa", "sig": "A" * 86}


@pytest.mark.parametrize(
    ("kind", "about", "asked"),
    [
        ("signed_off", None, "person"),
        ("hold_lifted", None, "person"),
        ("hold_placed", None, "phone"),
        ("make_closed", None, None),
        ("reading_taken", None, None),
        ("entry_struck", "hold_placed", "person"),
        ("entry_corrected", "signed_off", "person"),
        ("entry_struck", "reading_taken", None),
        ("entry_struck", None, None),
        ("entry_struck", "legal_reading", None),
        ("whey_tasted", None, None),
    ],
)
def test_what_must_be_proved(core, kind, about, asked):
    assert core("log.rights.proof", "proof_for", kind, about) == asked


@pytest.mark.parametrize("kind", sorted(KINDS))
def test_who_proves_an_act_is_at_least_a_maker(kind):
    if KINDS[kind]["proof"]:
        assert KINDS[kind]["role"] in ("maker", "owner")


@pytest.mark.parametrize(
    ("kind", "beside", "said"),
    [
        ("signed_off", {"proof": SIG}, "pin"),
        ("signed_off", {}, "none"),
        ("hold_placed", {"proof": {"by": "phone"}}, "phone"),
        ("hold_placed", {"proof": SIG, "proof_state": "old_pin"}, "old_pin"),
        ("signed_off", {"proof": SIG, "proof_state": "accepted"}, "accepted"),
        ("note_added", {}, None),
    ],
)
def test_the_record_says_how_an_act_was_proved(core, kind, beside, said):
    data = {"statement": "x"} if kind == "signed_off" else {"why": "x"}
    if kind == "note_added":
        data = {"text": "x"}
    event = Phone().event(kind, 5, **data) | beside
    assert core("log.kinds.event", "check_event", event) == []
    state = core("log.run", "new_state", event["make"])
    assert core("step.record", "line", state, event)["proved"] == said


@pytest.mark.parametrize(
    "proof",
    [
        "1582",
        [],
        {},
        {"by": "pin"},
        {"by": "word"},
        {"by": "phone", "key": SIG["key"]},
        SIG | {"sig": "A" * 85},
        SIG | {"sig": 86},
        SIG | {"key": "mine"},
        SIG | {"more": 1},
    ],
    ids=repr,
)
def test_a_proof_of_no_known_form_is_refused(core, proof):
    event = Phone().event("signed_off", 5, statement="x") | {"proof": proof}
    problem = {"field": "proof", "key": "bad_proof", "limit": None}
    assert core("log.kinds.event", "check_event", event) == [problem]
    assert event["at_ms"] == at(5)
