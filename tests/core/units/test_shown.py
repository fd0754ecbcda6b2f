"""The units that people may read figures in, handed out as data."""

import pytest


def row(core, kept, to):
    rows = core("desk", "units")
    found = [one for one in rows if (one["from"], one["to"]) == (kept, to)]
    assert len(found) == 1, f"{kept} to {to} is to be there once"
    return found[0]


# Freezing and boiling are the fixed points of both scales; the pound, the
# gallons and the inch are exact by definition (see formulas.units).
@pytest.mark.parametrize(
    ("kept", "to", "value", "wanted"),
    [
        ("C", "F", 0, 32),
        ("C", "F", 100, 212),
        ("C", "F", -40, -40),
        ("K", "F_rise", 5, 9),
        ("L", "gal", 3.785411784, 1),
        ("L", "imp_gal", 4.54609, 1),
        ("kg", "lb", 0.45359237, 1),
        ("kPa", "psi", 0.45359237 * 9.80665 / 0.0254**2 / 1000, 1),
    ],
)
def test_a_value_is_shown_by_scale_and_offset(core, kept, to, value, wanted):
    found = row(core, kept, to)
    # rel: doubles; the phone's last digit may differ.
    shown = value * found["scale"] + found["offset"]
    assert shown == pytest.approx(wanted, rel=1e-12, abs=1e-12)


def test_a_difference_of_temperatures_has_no_offset(core):
    # 5 °C warmer is 9 °F warmer.
    assert 5 * row(core, "C", "F")["scale"] == pytest.approx(9, rel=1e-12)
    assert row(core, "K", "F_rise")["offset"] == 0


def test_every_unit_that_is_shown_can_be_typed(core):
    # Of each kind one quantity that is read off an instrument.
    quantities = {
        "C": "milk_temp_c",
        "L": "milk_volume_l",
        "kg": "milk_mass_kg",
        "kPa": "press_gauge_kpa",
    }
    for one in core("desk", "units"):
        if one["from"] not in quantities:
            continue
        shown = 40 * one["scale"] + one["offset"]
        read = core(
            "desk", "read_typed", quantities[one["from"]], str(shown), one["to"]
        )
        assert read["problems"] == []
        assert read["value"] == pytest.approx(40, rel=1e-9)
