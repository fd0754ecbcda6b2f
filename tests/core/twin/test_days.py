"""Ordinary days: a little off, each another, none beyond what is ordinary."""

import pytest

from server.core.twin import days, plant
from tests.core.twin.plays import entries, played, truth

SEEDS = range(200)


def test_a_day_stays_within_two_standard_deviations_and_can_be():
    for seed in SEEDS:
        setting = days.ordinary(seed)
        for table, part, spread in (
            (plant.MILK, setting["milk"], days.MILK_SD),
            (plant.EQUIPMENT, setting["equipment"], days.EQUIPMENT_SD),
        ):
            plant.complete(part, table)
            for name, value in part.items():
                assert abs(value - table[name][0]) <= 2.0 * spread[name] + 1e-9
        plant.instruments(setting["instruments"])


def test_days_differ_about_what_is_usual():
    fats = [days.ordinary(seed)["milk"]["fat_frac"] for seed in SEEDS]
    assert len(set(fats)) > 180
    mean = sum(fats) / len(fats)
    assert mean == pytest.approx(0.035, abs=4 * 0.001 / len(fats) ** 0.5)


def test_both_interpreters_have_the_same_day(core):
    # The phone's dicts are unordered, so this fails if draws follow a dict's order.
    assert core("twin.days", "ordinary", 11) == days.ordinary(11)


@pytest.mark.parametrize("seed", [2, 5])
def test_an_ordinary_day_comes_to_the_press_without_anything_given_up(seed):
    made = played(seed=seed, setting=days.ordinary(seed), until="press_1")
    assert all("why" not in row for row in entries(made, "step_ended"))
    assert 5.6 <= truth(made, "press_1")["ph"] <= 6.1
