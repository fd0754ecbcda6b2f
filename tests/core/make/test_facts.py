"""The bare facts of a step, and the status that follows from them."""

import itertools

import pytest

from tests.core.builders import Phone, at, figure, recipe, step

RECIPE = recipe()
STEPS = RECIPE["steps"]


def facts(ask, events):
    return ask.one(events, "make.facts", "facts", STEPS, RECIPE["figures"])


def status(ask, *events):
    found = {facts(ask, list(e))["heat"]["status"] for e in _orders(events)}
    assert len(found) == 1
    return found.pop()


def _orders(events):
    return itertools.permutations(events)


def received(phone):
    return phone.event("step_ended", 4, step="receive")


def skipped(phone, at_min, key="heat", why="Warm milk."):
    return phone.event("step_skipped", at_min, step=key, why=why)


def test_the_first_step_is_ready_and_the_others_wait(ask):
    found = facts(ask, [])
    assert found["receive"]["status"] == "ready"
    assert {found[row["key"]]["status"] for row in STEPS[1:]} == {"waiting"}
    assert found["rennet"]["waits_on"] == ["hold", "fans"]


def test_the_status_follows_from_what_was_done(ask):
    phone = Phone()
    done = received(phone)
    begun = phone.event("step_begun", 5, step="heat")
    ended = phone.event("step_ended", 60, step="heat")
    assert status(ask) == "waiting"
    assert status(ask, done) == "ready"
    assert status(ask, done, begun) == "running"
    assert status(ask, done, begun, ended) == "ended"


def test_a_step_begun_out_of_order_runs(ask):
    begun = Phone().event("step_begun", 5, step="heat", why="Milk came warm.")
    assert status(ask, begun) == "running"


def test_a_skipped_step_lets_the_next_begin(ask):
    phone = Phone()
    found = facts(ask, [received(phone), skipped(phone, 5)])
    assert found["heat"]["status"] == "skipped"
    assert found["hold"]["status"] == "ready"


def test_what_was_done_outweighs_a_skip_from_another_phone(ask):
    phone, other = Phone(), Phone(1)
    skip = skipped(other, 6)
    begun = phone.event("step_begun", 5, step="heat")
    ended = phone.event("step_ended", 60, step="heat")
    assert status(ask, skip, begun) == "running"
    assert status(ask, skip, begun, ended) == "ended"
    found = facts(ask, [received(phone), skip, begun])
    assert found["hold"]["waits_on"] == ["heat"]  # it is not over


def test_a_skip_that_is_struck_lets_the_step_stand_again(ask):
    phone = Phone()
    skip = skipped(phone, 5)
    undo = phone.event("entry_struck", 6, ref=skip["id"], why="Not skipped.")
    assert status(ask, received(phone), skip, undo) == "ready"


def test_the_earliest_begin_and_end_hold(ask):
    phone, other = Phone(), Phone(1)
    events = [
        other.event("step_begun", 6, step="heat"),
        phone.event("step_begun", 5, step="heat"),
        other.event("step_ended", 60, step="heat"),
        phone.event("step_ended", 61, step="heat"),
    ]
    for arrival in _orders(events):
        fact = facts(ask, list(arrival))["heat"]
        assert (fact["begun_ms"], fact["ended_ms"]) == (at(5), at(60))


def test_a_step_ended_without_a_begin_is_known_only_as_done(ask):
    # Seen: a deadline was counted from the end, and the step was called early.
    ended = Phone().event("step_ended", 60, step="heat")
    fact = facts(ask, [ended])["heat"]
    assert (fact["status"], fact["begun_ms"], fact["ended_ms"]) == (
        "ended",
        at(60),
        at(60),
    )
    assert fact["due_ms"] is None


def readings(ask, events, key="heat", quantity="milk_temp_c"):
    fact = facts(ask, events)[key]
    found = ask.one(events, "make.facts", "readings_in", fact, quantity)
    last = ask.one(events, "make.facts", "last_reading", fact, quantity)
    assert last == (found[-1] if found else None)
    return [entry["data"]["value"] for entry in found]


def test_a_reading_belongs_to_the_step_it_names_or_to_all_that_ran(ask):
    phone = Phone()
    begun = phone.event("step_begun", 5, step="heat")
    events = [
        phone.reading("milk_temp_c", 1.0, 4),  # before: of no step
        begun,
        phone.reading("milk_temp_c", 2.0, 5),
        phone.reading("milk_temp_c", 3.0, 10),
        phone.reading("milk_temp_c", 4.0, 11, "hold"),
        phone.reading("milk_temp_c", 5.0, 12, "heat"),
    ]
    assert readings(ask, events) == [2.0, 3.0, 5.0]
    assert readings(ask, events[:1] + events[2:]) == []  # it has not begun
    ended = phone.event("step_ended", 10, step="heat")
    late = phone.reading("milk_temp_c", 6.0, 13)
    named = phone.reading("milk_temp_c", 7.0, 14, "heat")
    # What names the step belongs to it though read after its end.
    assert readings(ask, [*events, ended, late, named]) == [2.0, 3.0, 5.0, 7.0]


@pytest.mark.parametrize(
    ("lasts", "hands_on"), [(None, True), (7199, True), (7200, False)]
)
def test_a_step_under_two_hours_is_work_under_the_hands(core, lasts, hands_on):
    row = step("dry", lasts=None if lasts is None else figure(lasts, "s"))
    assert core("make.facts", "is_hands_on", row) is hands_on
