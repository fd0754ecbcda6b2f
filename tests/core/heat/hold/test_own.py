"""A hold by own figures: its clock and its verdict, which never says pasteurised."""

import pytest

from tests.core.builders import at
from tests.core.heat.ways import Way


def verdict(ask, way, minute=600):
    return way.step(ask, "hold", minute)["verdict"]


def test_a_hold_that_meets_its_own_figures_says_so_and_no_more(ask):
    told = verdict(ask, Way().held(16))
    assert told["class"] == "meets_own_figures"
    assert told["rule"] == "own_hold"
    assert told["meaning"] == "handle_as_unpasteurised"
    assert (told["hold"]["held_s"], told["hold"]["needed_s"]) == (960, 900)
    assert (told["hold"]["min_temp"], told["hold"]["air_min_temp"]) == (145, 150)


def test_even_a_hold_that_a_rule_would_be_met_in_makes_no_claim(ask):
    # 21 CFR 1240.61(b) asks 145 °F for 30 min: 40 min at 147 °F are more.
    told = verdict(ask, Way().held(40))
    assert told["class"] == "meets_own_figures"


@pytest.mark.parametrize(
    ("minutes", "milk_f", "air_f", "reason"),
    [
        (12, 147.0, 152.0, "hold_too_short"),
        (16, 144.9, 152.0, "temperature_never_reached"),
        (16, 147.0, 149.9, "airspace_too_cold"),
    ],
)
def test_a_hold_below_its_own_figures_says_what_was_amiss(
    ask, minutes, milk_f, air_f, reason
):
    told = verdict(ask, Way().held(minutes, milk_f, air_f))
    assert told["class"] == "misses_own_figures"
    assert reason in [row["key"] for row in told["reasons"]]


def test_the_low_end_of_the_band_counts_in_the_unit_that_was_read(ask):
    assert verdict(ask, Way().held(16, 145.0, 150.0))["class"] == "meets_own_figures"
    way = Way()
    way.add("step_begun", 10, step="hold")
    for minute in range(0, 17, 2):
        way.read(10 + minute, 62.9, 66.0, "C")
    way.add("step_ended", 27, step="hold", why="Over.")
    assert verdict(ask, way)["class"] == "misses_own_figures"


def test_own_readings_may_lie_as_far_apart_as_the_recipe_lets_them(ask):
    # The law's gap of two minutes, or one agreed for it, is about the law's rule.
    told = verdict(ask, Way().held(20, every=10))
    assert told["class"] == "meets_own_figures"
    assert told["gap"]["gap_s"] == 600
    way = Way(equipment={"gap_max_s": 60.0})
    assert verdict(ask, way.held(20, every=10))["gap"]["gap_s"] == 600


def test_a_dip_begins_the_clock_again(ask):
    way = Way()
    way.add("step_begun", 10, step="hold")
    way.read(10, 147.0, 152.0)
    way.read(14, 144.0, 152.0)
    way.read(16, 147.0, 152.0)
    step = way.step(ask, "hold", 17)
    assert step["verdict"]["start_ms"] == at(16)
    assert step["due_ms"] == at(16 + 15)
    assert step["verdict"]["class"] == "not_assessed"


def test_neither_fat_nor_a_chart_is_asked_of_own_figures(ask):
    way = Way(equipment={})
    way.events = way.events[:1]  # no volume, no fat
    assert verdict(ask, way.held(16))["class"] == "meets_own_figures"
