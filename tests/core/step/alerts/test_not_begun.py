"""A step that stands ready and is not begun is told, with a grace by its place."""

import pytest

from tests.core.builders import Phone, at, figure, step
from tests.core.step.alerts.test_step_alerts import drift
from tests.core.step.test_steps import with_steps


def waits(ask, body, at_min, *done, begun=(), skipped=()):
    """Return steps that are told as not begun; each of `done` ended at minute 10."""
    phone = Phone()
    events = [phone.opened(recipe=body)]
    for key in (*done, *begun):
        events.append(phone.event("step_begun", 5, step=key, why="First."))
    events += [phone.event("step_ended", 10, step=key, why="Done.") for key in done]
    events += [phone.event("step_skipped", 10, step=key, why="No.") for key in skipped]
    found = ask.view(events, at_min)["alerts"]
    return [row for row in found if row["key"] == "alert.begin_late"]


def two(place):
    first = step("press", place=place, drift=drift("time_late"))
    return with_steps(first, step("turn", ["press"], place=place))


@pytest.mark.parametrize(
    # Curd cools on a table; a wheel in the store waits for half a day.
    ("place", "grace_min"),
    [("table", 10), ("vat", 15), ("press", 15), ("brine", 120), ("store", 720)],
)
def test_a_ready_step_is_told_after_a_grace_by_its_place(ask, place, grace_min):
    assert waits(ask, two(place), 10 + grace_min, "press") == []
    (found,) = waits(ask, two(place), 11 + grace_min, "press")
    assert (found["step"], found["level"]) == ("turn", "check")
    assert (found["since_ms"], found["rings_ms"]) == (at(10), at(10 + grace_min))
    assert found["by_s"] == (grace_min + 1) * 60.0
    assert found["do"] == {"en": "time_late"}  # of the step that goes on meanwhile


def test_a_make_that_was_only_opened_waits_for_nobody(ask):
    assert waits(ask, two("vat"), 900) == []


def test_what_was_begun_or_skipped_is_waited_for_no_longer(ask):
    assert waits(ask, two("vat"), 60, "press", begun=["turn"]) == []
    assert waits(ask, two("vat"), 60, "press", skipped=["turn"]) == []


def test_a_step_that_was_passed_over_is_told(ask):
    body = two("press")
    body["steps"].append(step("again", ["turn"], place="press"))
    (found,) = waits(ask, body, 26, "press", begun=["again"])
    assert found["step"] == "turn"


def test_what_is_done_beside_another_step_is_due_when_it_holds_up_the_rest(ask):
    # Both are wanted at the next: an hour's cooling, and ten minutes for the knives.
    body = with_steps(
        step("drain", place="vat"),
        step("cool", ["drain"], place="vat", lasts=figure(3600, "s")),
        step("knives", ["drain"], place="vat", lasts=figure(600, "s")),
        step("starter", ["cool", "knives"], place="vat"),
    )
    # Begun at 5, it ends at 65: due at 55, told after 70.
    assert waits(ask, body, 70, "drain", begun=["cool"]) == []
    (found,) = waits(ask, body, 71, "drain", begun=["cool"])
    assert (found["step"], found["rings_ms"]) == ("knives", at(70))
