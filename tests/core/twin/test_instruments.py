"""Instruments: what they add to the truth, and that each has its own noise."""

import pytest

from server.core.numbers.refused import Refused
from server.core.twin import begin, instruments, plant, truth
from server.core.units.quantities import QUANTITIES
from tests.core.twin.twins import START_MS, go, gouda, twin

MILK = {"volume_l": 500.0, "temp_c": 31.0}


def shown(quantity, count=400, at_min=0.0, **has):
    made = begin.begin({}, MILK, {quantity: has}, 5, START_MS)
    go(made, at_min)
    found = [instruments.read(made, quantity) for _ in range(count)]
    return found, truth.true_value(made, quantity, None)


def test_an_instrument_without_error_shows_the_truth():
    found, true = shown("milk_temp_c", 3, noise=0.0, step=0.0)
    assert found == [true] * 3


def test_an_offset_is_added():
    found, true = shown("milk_temp_c", 1, noise=0.0, step=0.0, offset=1.5)
    assert found == [true + 1.5]


def test_a_drift_grows_by_the_day():
    found, true = shown("ph", 1, at_min=720, noise=0.0, step=0.0, drift_per_day=0.2)
    assert found == [pytest.approx(true + 0.1)]


def test_noise_has_the_spread_that_is_given():
    found, true = shown("milk_temp_c", noise=0.2, step=0.0)
    mean = sum(found) / len(found)
    spread = (sum((x - mean) ** 2 for x in found) / len(found)) ** 0.5
    assert mean == pytest.approx(true, abs=4 * 0.2 / 20)
    assert spread == pytest.approx(0.2, rel=4 / (2 * 400) ** 0.5)


@pytest.mark.parametrize("step", [0.1, 0.5, 2.0])
def test_a_reading_stands_on_a_mark_of_the_scale(step):
    found, _ = shown("milk_temp_c", 50, noise=1.0, step=step)
    assert len(set(found)) > 2
    for value in found:
        assert value == pytest.approx(step * round(value / step), abs=1e-12)


def test_an_instrument_never_shows_what_cannot_be_entered():
    found, _ = shown("milk_temp_c", 5, offset=500.0)
    assert set(found) == {QUANTITIES["milk_temp_c"]["high"]}
    found, _ = shown("store_humidity_frac", 5, offset=-9.0)
    assert set(found) == {0.0}


def test_one_instrument_s_noise_leaves_the_others_as_they_were():
    one = begin.begin({}, MILK, {}, 5, START_MS)
    other = begin.begin({}, MILK, {"ph": {"noise": 0.5}}, 5, START_MS)
    for _ in range(9):
        instruments.read(other, "ph")
    names = ("milk_temp_c", "brine_salt_frac")
    assert [instruments.read(one, x) for x in names] == [
        instruments.read(other, x) for x in names
    ]


def test_every_quantity_that_can_be_read_has_a_truth(core):
    made, _, _, _ = gouda()
    for quantity in plant.INSTRUMENTS:
        row = QUANTITIES[quantity]
        value = core("twin.truth", "true_value", made, quantity, "large")
        assert row["low"] <= value <= row["high"], quantity


def test_what_no_instrument_reads_is_refused():
    with pytest.raises(Refused, match="quantity 'moon' not_a_choice"):
        instruments.read(twin(), "moon")


def test_a_laboratory_s_figures_are_there_without_an_instrument():
    made, _, _, _ = gouda()
    assert instruments.read(made, "cheese_salt_frac", "large") > 0.01
    assert 0.3 < instruments.read(made, "cheese_moisture_frac", "large") < 0.5
    assert instruments.read(made, "cheese_ph") == made["acid"]["ph"]


def test_before_there_are_wheels_they_weigh_nothing():
    made = twin()
    assert truth.true_value(made, "wheel_mass_kg", "small") == 0.0
    assert truth.true_value(made, "cheese_salt_frac", "small") == 0.0
    assert truth.true_value(made, "cheese_moisture_frac", None) > 0.9
    assert truth.true_value(made, "press_gauge_kpa", None) == 0.0
