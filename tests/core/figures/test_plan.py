"""The day ahead: planned by the figures, expected from what has happened."""

from tests.core.builders import at, figure, step

# milk is heated while cloths are boiled; the rennet waits on both
STEPS = [
    step("rennet", ["heat", "cloths"], lasts=figure(300, "s")),
    step("heat", lasts=figure(3600, "s")),
    step("cloths", lasts=figure(1200, "s")),
    step("rest", ["rennet"]),
]
LASTS = {row["key"]: row["lasts"] for row in STEPS}


def in_order(core):
    return core("make.plan", "in_order", STEPS)


def facts(**given):
    empty = {"begun_ms": None, "ended_ms": None, "skipped_ms": None, "due_ms": None}
    found = {row["key"]: dict(empty) for row in STEPS}
    for key, values in given.items():
        found[key].update({name + "_ms": at(value) for name, value in values.items()})
    return found


def expected(core, now_min, **given):
    found = core(
        "figures.plan",
        "expected",
        in_order(core),
        facts(**given),
        LASTS,
        at(0),
        at(now_min),
    )
    return {
        key: (row["begin_ms"] - at(0), row["end_ms"] - at(0))
        for key, row in found.items()
    }


def ms(*minutes):
    return tuple(value * 60_000 for value in minutes)


def test_the_plan_runs_side_by_side_and_waits_for_the_longest(core):
    found = core("figures.plan", "planned", in_order(core), LASTS, at(0))
    # heat 0 to 60, cloths 0 to 20, rennet 60 to 65, a rest without duration.
    assert found == {
        "heat": {"begin_ms": at(0), "end_ms": at(60)},
        "cloths": {"begin_ms": at(0), "end_ms": at(20)},
        "rennet": {"begin_ms": at(60), "end_ms": at(65)},
        "rest": {"begin_ms": at(65), "end_ms": at(65)},
    }


def test_what_has_not_begun_cannot_begin_before_now(core):
    assert expected(core, 10) == {
        "heat": ms(10, 70),
        "cloths": ms(10, 30),
        "rennet": ms(70, 75),
        "rest": ms(75, 75),
    }


def test_what_runs_ends_when_it_is_due_or_else_now(core):
    begun = {"begun": 5, "due": 65}
    assert expected(core, 10, heat=begun)["heat"] == ms(5, 65)
    assert expected(core, 80, heat=begun)["heat"] == ms(5, 80)
    assert expected(core, 80, heat=begun)["rennet"] == ms(100, 105)  # cloths first
    # Without a deadline of its own the recipe's duration counts.
    assert expected(core, 10, cloths={"begun": 5})["cloths"] == ms(5, 25)


def test_what_is_over_stands_as_it_was(core):
    ended = {"begun": 5, "ended": 50}
    found = expected(core, 60, heat=ended, cloths={"begun": 1, "ended": 15})
    assert found["heat"] == ms(5, 50)
    assert found["rennet"] == ms(60, 65)


def test_an_end_before_its_begin_takes_no_time(core):
    found = expected(core, 60, heat={"begun": 50, "ended": 45})
    assert found["heat"] == ms(45, 45)
    found = expected(core, 60, heat={"ended": 45})
    assert found["heat"] == ms(45, 45)


def test_a_skipped_step_takes_no_time(core):
    found = expected(core, 10, heat={"skipped": 5}, cloths={"begun": 0, "ended": 9})
    assert found["heat"] == ms(0, 0)
    assert found["rennet"] == ms(10, 15)


def test_a_step_that_was_done_all_the_same_counts_though_skipped(core):
    # Seen: a skip from another phone hid the real hours of a step that was done.
    found = expected(core, 60, heat={"skipped": 2, "begun": 5, "ended": 50})
    assert found["heat"] == ms(5, 50)
    found = expected(core, 10, heat={"skipped": 2, "begun": 5, "due": 65})
    assert found["heat"] == ms(5, 65)


def test_a_make_not_opened_yet_is_planned_by_the_recipe_alone(core):
    found = core("figures.plan", "planned_by_recipe", in_order(core), at(0))
    assert found == core("figures.plan", "planned", in_order(core), LASTS, at(0))


def test_a_step_is_planned_by_its_figure_not_by_the_recipes_own(core):
    lasts = {**LASTS, "heat": {"value": 5400.0}}
    found = core("figures.plan", "planned", in_order(core), lasts, at(0))
    assert found["heat"]["end_ms"] == at(90)
    assert found["rennet"] == {"begin_ms": at(90), "end_ms": at(95)}
