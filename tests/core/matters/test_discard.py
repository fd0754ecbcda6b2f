"""Discarding acts: the make is over, and nothing of it goes on, is stored or leaves."""

import pytest

from tests.core.builders import MAKE, Phone, at
from tests.core.matters.gated import HELPER, MAKER, MOULDS, Make
from tests.core.matters.test_hold import passed
from tests.core.matters.test_store import DAY, MOULDED, stored

TANK = "0193a5b0-0000-7000-8000-0000000000bb"


def poured_away():
    """Take in milk that tests positive while a timer runs; discard it at minute 8."""
    make = Make(moulds=MOULDS)
    make.add("step_begun", 1, step="receive")
    make.add("timer_started", 2, label="Second sample", lasts_s=3600)
    make.read("drug_test", "positive", 3, "receive")
    make.decided("drug", "discard", 8, "Fetched by the renderer, ticket 12.")
    return make


def board(ask, make, minute):
    return ask.desk(*make.calls(), ("board", at(minute)))[2]


def test_what_is_discarded_is_over_and_says_so(ask):
    make = poured_away()
    shown = make.view(ask, 9)
    assert (shown["make"]["state"], shown["make"]["is_open"]) == ("discarded", False)
    (matter,) = [one for one in shown["matters"] if one["id"] == "drug"]
    assert matter["decided"]["way"] == "discard"
    assert {stop["what"] for stop in matter["stops"]} == {"begin", "close", "release"}
    # It stands as it stood then: hours later nothing more is late.
    later = make.view(ask, 600)
    assert later["alerts"] == shown["alerts"]
    assert later["next_change_ms"] is None


def test_its_timers_and_alarms_stop(ask):
    make = poured_away()
    before = Make()
    before.phone, before.events = make.phone, make.events[:-1]
    rung = ask.desk(*before.calls(), ("alarms", at(200), 600.0))[2]
    assert "timer" in [one["kind"] for one in rung["alarms"]]
    told, rung = ask.desk(
        *make.calls(), ("view", MAKE, at(200)), ("alarms", at(200), 600.0)
    )[2:]
    assert (rung["alarms"], rung["deadlines"]) == ([], [])
    assert [one["stopped_ms"] for one in told["timers"]] == [at(8)]
    assert told["countdowns"] == []


def test_now_shows_it_as_discarded_for_two_days_with_nothing_due(ask):
    make = poured_away()
    for minute, on_now in ((9, True), (8 + 2 * DAY - 1, True), (8 + 2 * DAY, False)):
        told = board(ask, make, minute)
        (summary,) = told["makes"]
        assert (summary["state"], summary["on_now"]) == ("discarded", on_now)
        assert told["due"] == []
    assert board(ask, make, 9)["next_change_ms"] == at(8 + 2 * DAY)


@pytest.mark.parametrize("roles", [HELPER, MAKER, ["owner"]])
def test_nothing_of_it_goes_on_whoever_taps(ask, roles):
    make = poured_away()
    refused = {"field": "make", "key": "was_discarded", "limit": None}
    for kind, data in (
        ("step_begun", {"step": "heat", "why": "Now"}),
        ("step_ended", {"step": "receive", "why": "Now"}),
        ("ingredient_added", {"ingredient": "rennet", "amount": 9.0, "unit": "mL"}),
        ("wheels_moulded", {"size": "small", "count": 3}),
        ("make_closed", {}),
        ("matter_decided", {"matter": "drug", "way": "confirmed_negative", "why": "x"}),
    ):
        if kind.startswith(("make", "matter")) and roles == HELPER:
            continue
        if kind in ("ingredient_added", "wheels_moulded"):
            data = {**data, "step": "heat"}
        (problem,) = make.tap(ask, kind, 9, roles, **data)
        # The gate's own matter says it where it stops that; else the discard does.
        assert problem["key"] == "stopped" or problem == refused
    tank = Phone(make=TANK)
    load = {"load_make": MAKE, "size": "small", "wheels": 3, "mass_kg": 4.2}
    (problem,) = make.tap(ask, "tank_loaded", 9, roles, phone=tank, **load)
    assert problem["key"] == "stopped" or problem == refused
    (problem,) = make.tap(ask, "step_ended", 9, roles, step="receive", why="Now")
    assert problem == refused
    # What is still known of it may be written down.
    assert passed(make.tap(ask, "note_added", 9, roles, text="Floor washed."))


def test_a_helper_discards_nothing(ask):
    make = poured_away()
    make.events.pop()
    body = {"matter": "drug", "way": "discard", "why": "Smells."}
    (told,) = make.tap(ask, "matter_decided", 9, HELPER, **body)
    assert told["key"] == "not_allowed"
    assert passed(make.tap(ask, "matter_decided", 9, MAKER, **body))


def test_cheese_that_is_discarded_leaves_the_store(ask):
    make = stored(until_day=61)
    minute = MOULDED + 61 * DAY
    assert board(ask, make, minute)["ripening"] == [MAKE]
    make.read("listeria_test", "positive", minute)
    make.decided("lab", "discard", minute + 5, "Burnt, receipt 7.")
    (summary,) = board(ask, make, minute + 6)["makes"]
    assert summary["state"] == "discarded"
    assert (summary["store_step"], summary["can_brine"]) == (None, False)
    assert board(ask, make, minute + 6)["ripening"] == []


def test_cheese_of_a_closed_make_can_be_discarded(ask):
    make = stored(until_day=61)
    minute = MOULDED + 61 * DAY
    make.add("make_closed", minute)
    make.read("listeria_test", "positive", minute + 10)
    make.decided("lab", "discard", minute + 20, "Burnt, receipt 7.")
    assert make.view(ask, minute + 30)["make"]["state"] == "discarded"


def test_it_stays_discarded_though_the_fact_changes_and_returns_when_it_is_struck(ask):
    make = poured_away()
    test = make.events[3]
    make.events.append(make.phone.event("entry_struck", 9, test["id"], why="Mistake"))
    assert make.view(ask, 10)["make"]["state"] == "discarded"
    decision = make.events[4]
    assert decision["kind"] == "matter_decided"
    struck = make.phone.event("entry_struck", 11, decision["id"], why="Wrong make")
    make.events.append(struck)
    assert make.view(ask, 12)["make"]["state"] == "running"


def test_a_phone_that_did_not_know_loses_nothing(ask):
    make = poured_away()
    begun = make.phone.event("step_begun", 7, step="heat")
    for events in ([*make.events, begun], [begun, *make.events]):
        make.events = events
        shown = make.view(ask, 20)
        assert shown["make"]["state"] == "discarded"
        heat = next(one for one in shown["steps"] if one["key"] == "heat")
        assert heat["status"] == "running"
