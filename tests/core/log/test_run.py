"""Filing: each event once, in one order, whatever order they come in."""

from tests.core.builders import MAKE, Phone, a_day, at

NEVER = "0193a5b0-0000-7000-8000-0000000000ff"


def struck(phone, ref, at_min=50, why="Wrong vat."):
    return phone.event("entry_struck", at_min, ref=ref, why=why)


def corrected(phone, ref, at_min=50, why="Misread.", **changes):
    return phone.event("entry_corrected", at_min, ref=ref, set=changes, why=why)


def values(ask, events, quantity="milk_temp_c"):
    found = ask.one(events, "log.run", "entries", "reading_taken", quantity)
    return [entry["data"]["value"] for entry in found]


def test_a_new_state_knows_nothing(core):
    assert core("log.run", "new_state", MAKE) == {
        "make": MAKE,
        "events": {},
        "raw": {},
        "log": [],
        "lists": {},
        "amends": {},
        "strikes": {},
        "judged": {},
        "kept": {},
    }


def test_the_same_event_again_changes_nothing(ask):
    reading = Phone().reading("milk_temp_c", 31.5, 5)
    once, state_once = ask.state([reading], ("", "taken"), ("", "state"))
    twice, state_twice = ask.state([reading, reading], ("", "taken"), ("", "state"))
    assert (once, twice) == ([True], [True, False])
    assert state_twice == state_once


def test_a_kind_this_app_does_not_know_is_not_filed(ask):
    event = Phone().event("moon_seen", 5)
    taken, state = ask.state([event], ("", "taken"), ("", "state"))
    assert taken == [False]
    assert state["events"] == {}


def test_an_entry_is_filed_with_its_corrected_instant_and_person(ask):
    event = Phone(clock_off_ms=90_000, person="bo").reading("ph", 6.5, 5)
    (entry,) = ask.one([event], "log.run", "entries", "reading_taken", "ph")
    assert entry == {
        "id": event["id"],
        "t_ms": at(5),
        "device": event["device"],
        "seq": 1,
        "by": "bo",
        "data": {"quantity": "ph", "value": 6.5},
        "ref": None,
    }


def test_the_last_entry_is_the_newest_by_time_not_by_arrival(ask):
    phone = Phone()
    late = phone.reading("ph", 6.4, 9)
    early = phone.reading("ph", 6.6, 2)
    assert ask.one([late, early], "log.run", "last", "reading_taken", "ph")[
        "t_ms"
    ] == at(9)
    assert ask.one([late], "log.run", "last", "reading_taken", "brine_ph") is None


def test_a_day_is_filed_alike_forwards_backwards_and_doubled(ask):
    day = a_day(Phone())
    (forwards,) = ask.state(day, ("", "state"))
    for arrival in (day[::-1], day + day, day[1::2] + day[::2]):
        assert ask.state(arrival, ("", "state")) == [forwards]
