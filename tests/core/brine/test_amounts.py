"""Masses as they are entered at a tank: by the scale or by the dip stick."""

import pytest


@pytest.mark.parametrize(
    ("amount", "unit", "salt_frac", "mass_kg"),
    [
        (20, "lb", 0.0, 9.0718474),  # the pound is 0.45359237 kg by definition
        (500, "g", 0.2, 0.5),
        (600, "kg", 0.2, 600),
        # 1000 L of 20 % at 20 °C weigh 1148 kg by the published tables.
        (1000, "L", 0.2, 1148),
        (100, "gal", 0.2, 378.5411784 * 1.148),
        (100, "L", 0.0, 99.82),  # water at 20 °C: 998.2 kg/m³
    ],
)
def test_an_amount_of_brine_is_told_by_mass_or_by_volume(
    core, amount, unit, salt_frac, mass_kg
):
    found = core("brine.amounts", "mass_kg", amount, unit, salt_frac, 20.0)
    assert found == pytest.approx(mass_kg, rel=5e-4)  # tables to four figures


def test_a_brine_of_unknown_temperature_is_taken_as_in_a_cellar(core):
    known = core("brine.amounts", "mass_kg", 100, "L", 0.2, 12.5)
    assert core("brine.amounts", "mass_kg", 100, "L", 0.2, None) == known


@pytest.mark.parametrize(
    ("out_kg", "key", "limit"),
    [(60.5, "unlikely_high", 60.0), (49.0, "unlikely_low", 50.0)],
)
def test_wheels_heavier_or_far_lighter_than_before_are_asked_about(
    core, out_kg, key, limit
):
    found = core("brine.amounts", "second_look", 60.0, out_kg)
    assert found == {"key": key, "limit": pytest.approx(limit)}


def test_a_usual_loss_in_the_brine_is_not_asked_about(core):
    assert core("brine.amounts", "second_look", 60.0, 58.5) is None
