import math
import random

import pytest

from server.core.formulas.curd import yields


# Inputs of the Guelph yield prediction page and two others, worked by hand with
# (0.93 F + C - 0.1) 1.09 / (1 - M).
@pytest.mark.parametrize(
    ("fat", "casein", "moisture", "percent"),
    [(3.6, 2.5, 0.37, 9.9450), (3.4, 2.6, 0.43, 10.827), (4.0, 2.6, 0.42, 11.689)],
)
def test_van_slyke_and_price(core, fat, casein, moisture, percent):
    found = core(
        "formulas.curd.yields",
        "van_slyke_yield_frac",
        fat / 100,
        casein / 100,
        moisture,
    )
    # The expected figures are written to three decimals of a per cent.
    assert found * 100 == pytest.approx(percent, abs=6e-4)


@pytest.mark.parametrize(
    ("moisture", "salt", "whey_solids", "percent"),
    [(0.43, 0.0, 0.01, 10.374), (0.42, 0.018, 0.005, 10.430)],
)
def test_general_form(core, moisture, salt, whey_solids, percent):
    found = core(
        "formulas.curd.yields",
        "general_yield_frac",
        *[0.034, 0.026, moisture, salt, 0.92, 0.955, 0.08, whey_solids],
    )
    assert found * 100 == pytest.approx(percent, abs=6e-4)


def test_moisture_adjusted_yield_of_the_text_book_exercise(core):
    # Hill and Ferrer, chapter 18: 11 % made at 37 %, compared at 39 %.
    found = core("formulas.curd.yields", "moisture_adjusted_frac", 0.11, 0.37, 0.39)
    assert found * 100 == pytest.approx(11.3607, abs=5e-5)


def test_moisture_and_salt_adjusted_yield(core):
    found = core(
        "formulas.curd.yields",
        "moisture_salt_adjusted_frac",
        *[0.11, 0.37, 0.017, 0.39, 0.015],
    )
    assert found * 100 == pytest.approx(11.3376, abs=5e-5)


def test_adjusting_to_the_same_moisture_changes_nothing(core):
    found = core("formulas.curd.yields", "moisture_adjusted_frac", 0.104, 0.43, 0.43)
    assert found == pytest.approx(0.104, rel=1e-12)


def test_guelph_casein_number(core):
    # Protein 3.3, casein 2.6 kg in a hectolitre: .788.
    assert core(
        "formulas.curd.yields", "casein_frac", 0.033, 2.6 / 3.3
    ) == pytest.approx(0.026, rel=1e-12)


FIGURES = {
    "fat_frac": 0.034,
    "casein_frac": 0.026,
    "moisture_frac": 0.43,
    "salt_frac": 0.0,
    "fat_kept_frac": 0.92,
    "casein_kept_frac": 0.955,
    "ash_ratio": 0.08,
    "whey_solids_frac": 0.01,
}
SPREADS = {
    "fat_frac": 0.0005,
    "casein_frac": 0.0006,
    "moisture_frac": 0.012,
    "fat_kept_frac": 0.012,
    "casein_kept_frac": 0.006,
    "ash_ratio": 0.004,
    "whey_solids_frac": 0.002,
}


@pytest.mark.parametrize("model_spread", [0.0, 0.01, 0.03])
def test_nine_simulated_makes_in_ten_fall_in_the_stated_range(model_spread):
    # Each figure is entered with its error, and the range stated from the entered
    # figures is asked whether it holds the make as it came out.
    draw = random.Random(20261125)
    expected = yields.general_yield_frac(*[FIGURES[k] for k in yields.YIELD_FIGURES])
    makes, held = 4000, 0
    for _ in range(makes):
        entered = {k: v + draw.gauss(0, SPREADS.get(k, 0)) for k, v in FIGURES.items()}
        band = yields.yield_range(entered, SPREADS, model_spread)
        made = expected * (1 + draw.gauss(0, model_spread))
        held += band["low"] <= made <= band["high"]
    assert 0.85 <= held / makes <= 0.95


def test_the_range_of_one_figure_is_its_slope_times_1_645(core):
    # dY/dF = Kf / (1 - M - x), so .92 / .56 * .001 * 1.644854.
    band = core("formulas.curd.yields", "yield_range", FIGURES, {"fat_frac": 0.001}, 0)
    half = (band["high"] - band["low"]) / 2
    assert half == pytest.approx(0.92 / 0.56 * 0.001 * 1.6448536, rel=1e-7)
    assert band["basis"] == "90_percent_of_makes"


@pytest.mark.parametrize("name", list(FIGURES))
def test_each_slope_agrees_with_a_small_step(name):
    step = 1e-6
    bumped = dict(FIGURES)
    bumped[name] += step
    values = [
        yields.general_yield_frac(*[f[k] for k in yields.YIELD_FIGURES])
        for f in (FIGURES, bumped)
    ]
    band = yields.yield_range(FIGURES, {name: step}, 0)
    half = (band["high"] - band["low"]) / 2 / 1.6448536269514722
    assert half == pytest.approx(abs(values[1] - values[0]), rel=1e-4)  # one step


def test_no_doubt_gives_no_width(core):
    band = core("formulas.curd.yields", "yield_range", FIGURES, {}, 0)
    assert band["low"] == band["value"] == band["high"]


def test_ninety_per_cent_of_a_normal_spread_lies_within_1_645():
    assert math.erf(yields.NORMAL_90 / math.sqrt(2)) == pytest.approx(0.9, abs=1e-12)


def test_a_misspelt_spread_is_refused(core):
    with pytest.raises(ValueError, match="spread 'fat' not_a_choice"):
        core("formulas.curd.yields", "yield_range", FIGURES, {"fat": 0.1}, 0.01)


def test_a_missing_figure_is_named(core):
    partial = {k: v for k, v in FIGURES.items() if k != "casein_frac"}
    with pytest.raises(ValueError, match="casein_frac None missing"):
        core("formulas.curd.yields", "yield_range", partial, {}, 0.01)


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        ([3.4, 0.026, 0.43], r"fat_frac 3.4 above 0.2"),
        ([0.034, 0.026, 1], r"moisture_frac 1 above 0.85"),
        ([0.034, -0.1, 0.43], r"casein_frac -0.1 below 0.002"),
    ],
)
def test_percent_where_a_fraction_is_meant_is_refused(core, arguments, words):
    with pytest.raises(ValueError, match=words):
        core("formulas.curd.yields", "van_slyke_yield_frac", *arguments)
