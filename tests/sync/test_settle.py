import pytest

from server import auth, store, sync
from server.store import look
from tests.sync.phones import NOON_MS, a_person, a_phone, note

LATER_MS = NOON_MS + 60_000


@pytest.fixture
def phone(either_app):
    return a_phone(a_person("helper").id)


def keep_aside(phone, **changed):
    """Push one item that the log does not take, and return it as kept."""
    held = {"kind": "hold_placed", "data": {"why": "smell"}}
    item = note(phone.device, 1, phone.person) | held | changed
    sync.push([item], None, phone, NOON_MS)
    return look.open_looks()[-1]


def settle(found, way="accept"):
    return sync.settle(found.n, way, "seen by me", "boss", LATER_MS)


def test_accepting_moves_a_copy_into_the_log(phone):
    found = keep_aside(phone)
    assert settle(found) == []
    (row,) = store.every_event()
    assert (row.event, row.n, row.recv_ms) == (found.event, 1, LATER_MS)
    assert row.proof_state == "accepted"
    assert look.open_looks() == []
    assert look.find_look(found.n)._replace(settled_as=None) == found
    (result,) = sync.push([found.event], None, phone, LATER_MS).results
    assert (result["st"], result["n"]) == ("duplicate", 1)


def test_keeping_aside_is_final_even_if_it_comes_again_and_is_sound(phone):
    found = keep_aside(phone)
    assert settle(found, "keep_aside") == []
    # As a maker they might place a hold, but this one was judged by a person.
    auth.change_person(phone.person, LATER_MS, role="maker")
    assert look.open_looks() == []
    (result,) = sync.push([found.event], None, phone, LATER_MS).results
    assert result["st"] == "needs_look"
    assert (store.count_events(), look.open_looks()) == (0, [])


def test_an_open_item_that_has_become_allowed_is_stored_when_it_comes_again(phone):
    found = keep_aside(phone)
    auth.change_person(phone.person, LATER_MS, role="maker")
    (result,) = sync.push([found.event], None, phone, LATER_MS).results
    assert (result["st"], result["n"]) == ("stored", 1)
    assert look.open_looks() == []


def test_an_item_is_settled_once(phone):
    found = keep_aside(phone)
    settle(found, "keep_aside")
    assert [why["key"] for why in settle(found)] == ["settled_already"]
    assert store.count_events() == 0


def test_what_has_no_id_cannot_be_accepted_and_stays_open(phone):
    found = keep_aside(phone, id="seven")
    assert [why["key"] for why in settle(found)] == ["not_a_uuid"]
    assert [one.n for one in look.open_looks()] == [found.n]


def test_an_id_that_the_log_holds_cannot_be_accepted_over_it(phone):
    first = note(phone.device, 1, phone.person)
    sync.push([first], None, phone, NOON_MS)
    found = keep_aside(phone, id=first["id"], data={"text": "other"})
    assert [why["key"] for why in settle(found)] == ["id_taken"]
    assert [row.event for row in store.every_event()] == [first]


def test_an_unknown_number_is_named(phone):
    assert [why["key"] for why in sync.settle(9, "accept", "x", "boss", 0)] == [
        "unknown_item"
    ]


def test_an_unknown_way_is_misuse(phone):
    found = keep_aside(phone)
    with pytest.raises(ValueError, match="not 'burn'"):
        settle(found, "burn")


def test_an_event_of_an_unknown_kind_can_be_accepted(phone):
    found = keep_aside(phone, kind="whey_tasted", v=7, seq="x", make=None)
    assert settle(found) == []
    assert store.every_event()[0].event == found.event


def test_what_is_too_large_for_every_phone_stays_aside(phone):
    data = {"set": {"text": "w" * 20000}, "why": "mistyped"}
    ref = note(phone.device, 1, phone.person)["id"]
    found = keep_aside(phone, kind="entry_corrected", ref=ref, data=data)
    assert settle(found) == [{"field": "event", "key": "too_large", "limit": 16384}]
    assert store.count_events() == 0
    assert [one.n for one in look.open_looks()] == [found.n]
    assert settle(found, "keep_aside") == []
