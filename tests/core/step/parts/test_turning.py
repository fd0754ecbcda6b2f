"""When wheels want turning again: by the figure of the part that runs."""

import pytest

from tests.core.builders import MAKE, Phone, at, figure, recipe, step

HOUR_S = 3600


def turned(*turned_min, every=None):
    """Return a make whose wheels are turned hourly for two hours, then daily."""
    hourly = {"every": every or figure(HOUR_S, "s"), "until": figure(2 * HOUR_S, "s")}
    daily = {"every": figure(24 * HOUR_S, "s")}
    told = step("brine", lasts=figure(86400, "s"), place="brine", turns=[hourly, daily])
    told["sums"] = ["brine_time"]
    phone = Phone()
    events = [
        phone.opened(recipe={**recipe(), "steps": [told], "ingredients": []}),
        phone.event("step_begun", 0, step="brine"),
        phone.reading("brine_salt_frac", 0.2, 1, "brine"),
    ]
    return events + [phone.event("wheel_turned", minute) for minute in turned_min]


def turn(ask, events, minute):
    return ask.step(events, "brine", minute)["turn"]


@pytest.mark.parametrize(
    ("turned_min", "due_min", "every_s"),
    [
        ([], 60, HOUR_S),
        ([50], 110, HOUR_S),
        ([50, 119], 179, HOUR_S),  # turned within the two hours
        ([50, 120], 120 + 24 * 60, 24 * HOUR_S),
    ],
)
def test_wheels_are_turned_by_the_part_that_runs(ask, turned_min, due_min, every_s):
    told = turn(ask, turned(*turned_min), 125)
    assert (told["due_ms"], told["every_s"]) == (at(due_min), every_s)
    assert told["overdue_s"] == max(0, 125 - due_min) * 60


def test_a_step_that_is_over_wants_no_turn(ask):
    events = turned()
    events.append(Phone(1).event("step_ended", 30, step="brine"))
    assert turn(ask, events, 40) is None


def test_what_falls_due_is_the_turn_that_the_step_shows(ask):
    by = {"sum": "brine_time", "value": "time_s"}
    events = turned(every={**figure(HOUR_S, "s"), "by": by})
    answers = ask.desk(
        ("take", events),
        ("step_sums", MAKE, "brine", at(2)),
        ("step", MAKE, "brine", at(2)),
        ("board", at(2)),
    )
    (answer,) = answers[1]
    time_s = next(row["value"] for row in answer["values"] if row["name"] == "time_s")
    assert time_s > 4 * HOUR_S  # not the recipe's own hour
    assert answers[2]["turn"]["every_s"] == time_s
    (due,) = [row for row in answers[3]["due"] if row["what"] == "turn"]
    assert due["due_ms"] == answers[2]["turn"]["due_ms"]
    assert due["due_ms"] == pytest.approx(at(0) + time_s * 1000, abs=1)
