"""When a view changes by itself: the very millisecond, and nothing before it."""

import pytest

from tests.core.builders import Phone, a_day, at, figure, until
from tests.core.step.parts.test_step_parts import wanted
from tests.core.step.test_steps import one_step

MS = 1 / 60000
LASTS = figure(1800, "s", 1500, 2100)


def change(ask, events, now_min):
    """Return the next change as minutes after the start, or None."""
    found = ask.view(events, now_min)["next_change_ms"]
    return None if found is None else (found - at(0)) / 60000


def test_a_running_step_changes_at_its_deadline_and_the_ends_of_its_band(ask):
    events = one_step(Phone(), lasts=LASTS, end={"by": "time"})
    assert change(ask, events, 0) == 25
    assert change(ask, events, 25) == 30
    # Past its deadline its end moves with the clock, asked for every half minute.
    assert change(ask, events, 30) == 30.5
    # Late from one millisecond past the band; to act a quarter of 30 min later.
    assert change(ask, events, 34.9) == pytest.approx(35 + MS, abs=MS / 10)
    assert change(ask, events, 42.4) == pytest.approx(42.5 + MS, abs=MS / 10)


def test_a_reading_changes_the_view_when_due_overdue_and_to_act_on(ask):
    rows = [wanted("during", 600)]
    events = one_step(Phone(), readings=rows, lasts=figure(86400, "s"))
    assert change(ask, events, 0) == 10
    # Overdue by more than half an interval, then by more than all of it.
    assert change(ask, events, 14.9) == pytest.approx(15 + MS, abs=MS / 10)
    assert change(ask, events, 19.9) == pytest.approx(20 + MS, abs=MS / 10)


def test_a_timer_changes_the_view_when_it_is_due(ask):
    phone = Phone()
    timer = phone.event("timer_started", 1, label="Tea", lasts_s=600)
    events = [*one_step(phone, lasts=figure(86400, "s")), timer]
    assert change(ask, events, 1) == 11
    assert change(ask, events, 11) == 11.5  # it rings, and by how much moves
    stop = phone.event("timer_stopped", 12, ref=timer["id"])
    assert change(ask, [*events, stop], 12) == 24 * 60


def test_the_curd_changes_the_view_when_it_is_to_be_looked_at(ask):
    day = a_day(Phone())
    # Rennet at 100: the floc test is asked for at 106; flocculated at 110, the
    # break at 125.5; its own band begins at 120, its cut is due at 130.
    assert change(ask, until(day, 102), 103) == 106
    assert change(ask, until(day, 108), 109) == 110  # two minutes after a look
    assert change(ask, until(day, 110), 111) == 120
    assert change(ask, until(day, 110), 120) == 125.5
    assert change(ask, until(day, 110), 125.5) == 130


def test_what_is_ready_moves_the_day_on(ask):
    assert change(ask, [Phone().opened()], 5) == 5.5


def test_a_step_without_a_deadline_moves_the_day_on(ask):
    assert change(ask, one_step(Phone()), 5) == 5.5


def test_when_all_is_done_nothing_changes(ask):
    phone = Phone()
    events = [*one_step(phone), phone.event("step_ended", 5, step="work")]
    assert change(ask, events, 6) is None


@pytest.mark.parametrize("kind", ["make_closed", "make_abandoned"])
def test_a_make_that_is_over_stands_still(ask, kind):
    # Seen: the day of a closed make went on getting later.
    phone = Phone()
    events = one_step(phone, lasts=LASTS, end={"by": "time"})
    events.append(phone.event(kind, 40, why="Done."))
    early, late = ask.view(events, 41), ask.view(events, 4100)
    assert early["next_change_ms"] is None
    assert early["day"]["expected_end_ms"] == at(40)
    del early["now_ms"], late["now_ms"]
    assert early == late
