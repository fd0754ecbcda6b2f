"""The day ahead: planned from the recipe, expected from what has happened."""

import pytest

from tests.core.builders import Phone, figure, step

# milk is heated while cloths are boiled; the rennet waits on both
STEPS = [
    step("rennet", ["heat", "cloths"], lasts=figure(300, "s")),
    step("heat", lasts=figure(3600, "s")),
    step("cloths", lasts=figure(1200, "s")),
    step("rest", ["rennet"]),
]


def in_order(core):
    return core("make.plan", "in_order", STEPS)


def test_each_step_stands_after_what_it_waits_on(core):
    keys = [row["key"] for row in in_order(core)]
    assert keys == ["heat", "cloths", "rennet", "rest"]


def test_steps_in_a_circle_are_the_programmers_mistake(core):
    circle = [step("a", ["b"]), step("b", ["a"])]
    with pytest.raises(ValueError, match="wait on each other in a circle"):
        core("make.plan", "in_order", circle)


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
