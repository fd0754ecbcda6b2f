"""The one word for how a step stands, which every screen has a shape for."""

import pytest

from tests.core.builders import MAKE, Phone, a_day, at, figure, recipe, step, until
from tests.core.matters.gated import DAY, Make
from tests.core.matters.test_instruments import at_the_chart, read
from tests.core.matters.test_store import MOULDED, stored


def marks(ask, at_min, events_until=None):
    """Return {key: mark} of the short make that goes by its recipe."""
    kept = at_min if events_until is None else events_until
    view = ask.view(until(a_day(Phone()), kept), at_min)
    return {row["key"]: row["mark"] for row in view["steps"]}


def test_a_step_that_is_over_at_hand_or_ahead_has_a_mark_of_its_own(ask):
    found = marks(ask, 8)
    assert (found["receive"], found["heat"], found["hold"]) == (
        "done",
        "running",
        "waiting",
    )
    assert marks(ask, 92, 91)["fans"] == "ready"


def test_a_skipped_step_is_not_a_done_one(ask):
    phone = Phone()
    events = [phone.opened(), phone.event("step_skipped", 1, step="receive", why="No")]
    found = {row["key"]: row["mark"] for row in ask.view(events, 2)["steps"]}
    assert (found["receive"], found["heat"]) == ("skipped", "ready")


@pytest.mark.parametrize(
    ("at_min", "mark"),
    [
        (14.9, "running"),
        (15, "due"),  # the first reading, ten minutes after the begin at 5
        (80, "due"),  # the end of its band: lasting 60 min, 45 to 75
        (80.1, "late"),
    ],
)
def test_a_running_step_is_due_when_a_reading_is_and_late_past_its_band(
    ask, at_min, mark
):
    assert marks(ask, at_min, 5)["heat"] == mark


def test_a_step_that_time_ends_is_due_when_the_time_is_up(ask):
    # Begun at 61, lasting 30 to 35 min.
    told = [marks(ask, minute, 61)["hold"] for minute in (90.9, 91, 96, 96.1)]
    assert told == ["running", "due", "due", "late"]


def test_a_look_at_the_curd_is_due_from_its_instant_on(ask):
    # Flocculated 9 min after the rennet of 101: cut at 128, looked at from 0.85 of it.
    events = until(a_day(Phone()), 110)
    judge = ask.step(events, "set", 111)["judge"]
    before_min = (judge["from_ms"] - at(0)) / 60000 - 0.1
    assert ask.step(events, "set", before_min)["mark"] == "running"
    assert ask.step(events, "set", before_min + 0.1)["mark"] == "due"


def test_a_turn_makes_its_step_due(ask):
    told = step("press", lasts=figure(86400, "s"), turns=[{"every": figure(3600, "s")}])
    phone = Phone()
    events = [
        phone.opened(recipe={**recipe(), "steps": [told], "ingredients": []}),
        phone.event("step_begun", 0, step="press"),
    ]
    told = [ask.step(events, "press", minute)["mark"] for minute in (59, 60)]
    assert told == ["running", "due"]


def test_what_a_step_does_at_once_is_its_work_and_not_due(ask):
    found = marks(ask, 100)
    assert ask.step(until(a_day(Phone()), 100), "rennet", 100)["button"]["act"] == "add"
    assert found["rennet"] == "running"


def test_a_gate_stops_what_could_begin_and_not_what_waits_anyway(ask):
    make = Make("drug")
    make.add("step_begun", 1, step="receive")
    make.read("milk_volume_l", 500.0, 2, "receive")
    make.read("drug_test", "positive", 3, "receive")
    make.add("step_ended", 4, step="receive")
    asked = (("view", MAKE, at(5)), ("step", MAKE, "hold", at(5)))
    view, hold = ask.desk(*make.calls(), *asked)[-2:]
    found = {row["key"]: row["mark"] for row in view["steps"]}
    assert (found["receive"], found["heat"], found["hold"]) == (
        "done",
        "stopped",
        "waiting",
    )
    assert hold["stopped_by"]
    assert hold["mark"] == "waiting"


def test_an_end_that_is_stopped_is_no_longer_running(ask):
    make = at_the_chart("chart")
    assert {row["key"]: row["mark"] for row in make.view(ask, 93)["steps"]}["fans"] == (
        "running"
    )
    read(make, 146.0, 147.0, "recorder_temp_c")  # a recorder above the indicator
    assert {row["key"]: row["mark"] for row in make.view(ask, 94)["steps"]}["fans"] == (
        "stopped"
    )


def test_what_is_stopped_and_late_is_told_as_stopped(ask):
    # The store may end from 21 to 90 days; sixty were not shown.
    minute = MOULDED + 95 * DAY
    found = stored(until_day=20).view(ask, minute)
    (store,) = [row for row in found["steps"] if row["key"] == "store"]
    assert (store["timing"]["state"], store["mark"]) == ("late", "stopped")
