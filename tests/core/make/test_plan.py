"""The day ahead: planned from the recipe, expected from what has happened."""

import pytest

from tests.core.builders import Phone, at, figure, recipe, step

# milk is heated while cloths are boiled; the rennet waits on both
STEPS = [
    step("rennet", ["heat", "cloths"], lasts=figure(300, "s")),
    step("heat", lasts=figure(3600, "s")),
    step("cloths", lasts=figure(1200, "s")),
    step("rest", ["rennet"]),
]


def facts(**given):
    empty = {"begun_ms": None, "ended_ms": None, "skipped_ms": None, "due_ms": None}
    found = {row["key"]: dict(empty) for row in STEPS}
    for key, values in given.items():
        found[key].update({name + "_ms": at(value) for name, value in values.items()})
    return found


def in_order(core):
    return core("make.plan", "in_order", STEPS)


def expected(core, now_min, **given):
    found = core(
        "make.plan", "expected", in_order(core), facts(**given), at(0), at(now_min)
    )
    return {
        key: (row["begin_ms"] - at(0), row["end_ms"] - at(0))
        for key, row in found.items()
    }


def ms(*minutes):
    return tuple(value * 60_000 for value in minutes)


def test_each_step_stands_after_what_it_waits_on(core):
    keys = [row["key"] for row in in_order(core)]
    assert keys == ["heat", "cloths", "rennet", "rest"]


def test_steps_in_a_circle_are_the_programmers_mistake(core):
    circle = [step("a", ["b"]), step("b", ["a"])]
    with pytest.raises(ValueError, match="wait on each other in a circle"):
        core("make.plan", "in_order", circle)


def test_the_plan_runs_side_by_side_and_waits_for_the_longest(core):
    found = core("make.plan", "planned", in_order(core), at(0))
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


def test_the_day_closes_with_the_step_that_says_so(core):
    assert core("make.plan", "closing_step", STEPS)["key"] == "rest"
    steps = [step("turn", closes_day=True), step("store", ["turn"])]
    assert core("make.plan", "closing_step", steps)["key"] == "turn"


OPENED = {"milk_l": 500.0}
# kg/L of milk with 4.00 % fat, 8.95 % solids-not-fat at 4.4, 20 and 38.9 °C, from
# the table of fluid dairy products (D. Goff, University of Guelph), as printed.
DENSITY = {4.4: 1.035, 20.0: 1.030, 38.9: 1.023}
PRINTED = 1.5e-3  # the table is printed to 0.001, and fitted to 0.0009


def milk(ask, events):
    return ask.one(events, "make.plan", "milk_in", OPENED)


def volume(phone, value=480.0, at_min=5):
    return phone.reading("milk_volume_l", value, at_min)


def test_before_anything_is_measured_the_planned_volume_counts(ask):
    found = milk(ask, [])
    assert (found["milk_l"], found["milk_from"]) == (500.0, "opened")
    assert found["density_kg_l"] == pytest.approx(DENSITY[4.4], abs=PRINTED)
    assert found["milk_kg"] == pytest.approx(500 * 1.035, rel=PRINTED)


def test_a_metered_volume_goes_before_the_plan(ask):
    found = milk(ask, [volume(Phone())])
    assert (found["milk_l"], found["milk_from"]) == (480.0, "volume")
    assert found["milk_kg"] == pytest.approx(480 * 1.035, rel=PRINTED)


def test_a_weighed_mass_goes_before_a_volume(ask):
    phone = Phone()
    mass = phone.reading("milk_mass_kg", 497.0, 9)
    weighed = {"milk_kg": 497.0, "milk_from": "mass", "density_kg_l": None}
    assert milk(ask, [mass]) == {**weighed, "milk_l": 500.0}
    assert milk(ask, [mass, volume(phone)]) == {**weighed, "milk_l": 480.0}


@pytest.mark.parametrize(
    ("temps", "density"),
    [
        ([(20.0, 10)], DENSITY[20.0]),
        ([(20.0, 65)], DENSITY[20.0]),  # an hour after, to the minute
        ([(20.0, 66)], DENSITY[4.4]),  # too long after to belong to it
        ([(38.9, 20), (20.0, 10)], DENSITY[20.0]),  # the nearest in time
        ([(60.0, 10)], DENSITY[4.4]),  # beyond the table: the usual cold milk
        ([(-1.0, 10)], DENSITY[4.4]),
    ],
)
def test_the_temperature_read_with_the_volume_decides_the_density(ask, temps, density):
    phone = Phone()
    events = [phone.reading("milk_temp_c", value, at_min) for value, at_min in temps]
    found = milk(ask, [*events, volume(phone)])
    assert found["density_kg_l"] == pytest.approx(density, abs=PRINTED)


MILK = {"milk_kg": 515.0, "milk_l": 500.0, "milk_from": "volume"}


@pytest.mark.parametrize(
    ("per", "unit", "value"),
    [
        ("kg_milk", "mL/kg", 103.0),  # 0.2 x 515
        ("l_milk", "mL/L", 100.0),  # 0.2 x 500
        ("make", "mL", 0.2),
    ],
)
def test_a_dose_follows_the_milk(core, per, unit, value):
    row = recipe()["ingredients"][0]
    row["dose"] = {"per": per, "amount": figure(0.2, unit)}
    found = core("make.plan", "doses", {"ingredients": [row]}, MILK)["rennet"]
    # Two roundings of a double at the most; the recipe allows 5 % each way.
    assert found["value"] == pytest.approx(value, rel=1e-12)
    assert found["low"] == pytest.approx(0.95 * value, rel=1e-12)
    assert found["high"] == pytest.approx(1.05 * value, rel=1e-12)
    assert found["unit"] == "mL"
    assert found["basis"] == {
        "per": per,
        "amount": 0.2,
        "amount_unit": unit,
        "milk_kg": 515.0,
        "milk_l": 500.0,
        "milk_from": "volume",
        "status": "derived",
    }


def test_without_a_tolerance_a_dose_has_no_band(core):
    row = recipe()["ingredients"][0]
    del row["tolerance_frac"]
    found = core("make.plan", "doses", {"ingredients": [row]}, MILK)["rennet"]
    assert (found["low"], found["high"]) == (None, None)
