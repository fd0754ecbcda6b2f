"""A step as a person at the vat sees it: what now, how late, what to press."""

import pytest

from tests.core.builders import Phone, a_day, at, recipe, step, until


def day(at_min):
    return until(a_day(Phone()), at_min)


def with_steps(*steps, **rest):
    """Return a recipe of these steps alone."""
    made = {**recipe(), "steps": list(steps), **rest}
    if not any(row.get("adds") for row in steps):
        made["ingredients"] = []
    return made


def one_step(phone, **rest):
    """Return an opened make of one step "work", begun at minute 0."""
    opened = phone.opened(recipe=with_steps(step("work", **rest)))
    return [opened, phone.event("step_begun", 0, step="work")]


def test_a_step_in_full_says_all_that_is_needed(ask):
    found = ask.step(day(20), "heat", 20)
    heat = recipe()["steps"][1]
    assert found["full"] is True
    assert found["title"] == heat["title"]
    assert found["do"] == heat["do"]
    assert [row["hazard"] for row in found["cautions"]] == heat["cautions"]
    assert found["drift"] == heat["drift"]
    assert found["status"] == "running"
    assert (found["begun"]["at_ms"], found["begun"]["by"]) == (at(5), "ida")
    assert (found["ended"], found["skipped"], found["task"]) == (None, None, None)
    # Planned: receive has no duration, so heat from 0 to 60 min; begun at 5, it
    # is expected to end at 65.
    assert (found["planned_begin_ms"], found["planned_end_ms"]) == (at(0), at(60))
    assert (found["expected_begin_ms"], found["expected_end_ms"]) == (at(5), at(65))
    assert found["lasts"] == {
        "value_s": 3600,
        "low_s": 2700,
        "high_s": 4500,
        "origin": None,
    }
    assert (found["due_ms"], found["due_basis"]) == (at(65), "lasts")
    assert found["end"] == {
        "by": "reading",
        "quantity": "milk_temp_c",
        "at_least": 63.0,
        "at_most": None,
    }


def test_only_what_is_at_hand_is_worked_out_in_full(ask):
    found = {row["key"]: row["full"] for row in ask.view(day(20), 20)["steps"]}
    assert [key for key in found if found[key]] == ["heat"]
    found = {row["key"]: row["full"] for row in ask.view(day(4), 4)["steps"]}
    assert [key for key in found if found[key]] == ["heat"]  # ready


@pytest.mark.parametrize(
    ("at_min", "timing"),
    [
        # Begun at 5, lasting 3600 s (2700 to 4500): due at 65, band 50 to 80.
        (5, {"state": "on_time", "by_s": 0.0}),
        (80, {"state": "on_time", "by_s": 0.0}),
        (81.5, {"state": "late", "by_s": 90.0}),
    ],
)
def test_a_running_step_is_late_past_its_band(ask, at_min, timing):
    assert ask.step(day(20), "heat", at_min)["timing"] == timing


@pytest.mark.parametrize(
    ("ended_min", "timing"),
    [
        (49, {"state": "early", "by_s": 60.0}),
        (50, {"state": "on_time", "by_s": 0.0}),
        (80, {"state": "on_time", "by_s": 0.0}),
        (82, {"state": "late", "by_s": 120.0}),
    ],
)
def test_how_a_step_ended_stays_as_it_was(ask, ended_min, timing):
    phone = Phone()
    events = until(a_day(phone), 20)
    events.append(phone.event("step_ended", ended_min, step="heat"))
    for now_min in (90, 9000):
        assert ask.step(events, "heat", now_min)["timing"] == timing


def test_a_running_step_whose_end_has_come_too_soon_is_early(ask):
    phone = Phone()
    events = until(a_day(phone), 20)
    events.append(phone.reading("milk_temp_c", 63.0, 40, "heat"))
    # The band begins at 50: reached ten minutes early.
    found = ask.step(events, "heat", 40)
    assert found["timing"] == {"state": "early", "by_s": 600.0}
    assert ask.step(events, "heat", 50)["timing"]["state"] == "on_time"


def test_a_step_ended_without_a_begin_is_neither_early_nor_late(ask):
    phone = Phone()
    events = [phone.opened(), phone.event("step_ended", 60, step="heat")]
    found = ask.step(events, "heat", 70)
    assert found["timing"] == {"state": "on_time", "by_s": 0.0}
    assert (found["due_ms"], found["expected_begin_ms"]) == (None, at(60))


def test_a_step_that_has_not_begun_is_not_timed(ask):
    found = ask.step(day(4), "hold", 4)
    assert found["timing"] == {"state": "not_begun", "by_s": 0.0}
    assert (found["end_blockers"], found["button"]["act"]) == ([], "begin")


def test_a_step_says_why_it_was_skipped_or_ended(ask):
    phone = Phone()
    skip = phone.event("step_skipped", 5, step="fans", why="Too hot.")
    end = phone.event("step_ended", 6, step="heat", why="Milk came warm.")
    steps = {
        row["key"]: row for row in ask.view([phone.opened(), skip, end], 7)["steps"]
    }
    assert steps["fans"]["skipped"] == {
        "id": skip["id"],
        "at_ms": at(5),
        "by": "ida",
        "why": "Too hot.",
    }
    assert steps["heat"]["ended"]["why"] == "Milk came warm."
    assert ask.step([phone.opened(), skip], "fans", 7)["button"]["act"] == "none"


def test_an_end_that_lies_ahead_of_now_has_not_come(ask):
    # Another phone's clock may run a little ahead.
    events = [*day(34), Phone(1).reading("milk_temp_c", 63.9, 60, "heat")]
    assert ask.step(events, "heat", 59.9)["button"]["act"] == "reading"
    assert ask.view(events, 59.9)["next_change_ms"] == at(60)
    assert ask.step(events, "heat", 60)["button"]["act"] == "end"


@pytest.mark.parametrize("at_min", [-10000, 0, 61, 10**7])
def test_deadlines_survive_any_now(ask, at_min):
    found = ask.view(a_day(Phone()), at_min)
    due = {row["key"]: row["due_ms"] for row in found["steps"]}
    assert (due["hold"], due["set"]) == (at(91), at(130))
    # 28 days from minute 165.
    assert due["store"] == at(165 + 28 * 24 * 60)
