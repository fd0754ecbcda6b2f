"""What a thermometer shows: the unit that most were typed in, and numbers in it."""

import pytest


def reading(value, typed=None, unit=None):
    data = {"value": value}
    if typed is not None:
        data["typed"] = typed
    if unit is not None:
        data["typed_unit"] = unit
    return {"data": data}


@pytest.mark.parametrize(
    ("units", "unit"),
    [([], "C"), (["F"], "F"), (["F", "C"], "C"), (["F", "F", None], "F")],
)
def test_most_readings_say_which_unit_the_thermometer_shows(core, units, unit):
    entries = [reading(60.0, unit=one) for one in units]
    assert core("heat.thermometer", "unit_read", entries) == unit


@pytest.mark.parametrize(
    ("entry", "unit", "shown"),
    [
        (reading(62.777, "145", "F"), "F", 145.0),
        (reading(62.777, "145", "F"), "C", None),
        (reading(63.0), "C", 63.0),  # entered without its text
        (reading(63.0), "F", None),
    ],
)
def test_a_reading_in_another_unit_is_one_not_taken(core, entry, unit, shown):
    assert core("heat.thermometer", "as_typed", entry, unit) == shown
