import math

import pytest
from scipy.integrate import quad
from scipy.optimize import brentq

from server.core.formulas.milk import acid
from tests.core.formulas.tables import table

CURVE = table("acid_curve")
GROWTH = table("starter_growth")
STARTER = GROWTH["starter"]
CARDINALS = (STARTER["min_c"], STARTER["best_c"], STARTER["max_c"])
H_S = 3600
FOUR = (6.6, 5.2, 0.25 / H_S, 0.75 * H_S)


def ask(core, name, *args):
    return core("formulas.milk.acid", name, *args)


@pytest.mark.parametrize(("hours", "ph"), CURVE["points"])
def test_the_curve_is_the_published_one(core, hours, ph):
    got = ask(core, "gompertz_ph", hours * H_S, *FOUR)
    assert got == pytest.approx(ph, abs=CURVE["tolerance_ph"])


def test_the_time_to_5_4_is_the_published_one(core):
    got = ask(core, "gompertz_time_s", 5.4, *FOUR) / H_S
    assert got == pytest.approx(CURVE["time_to_5_4_h"], abs=5e-7)


@pytest.mark.parametrize("ph", [6.59, 6.3, 5.8, 5.4, 5.21])
def test_time_and_ph_undo_each_other(core, ph):
    time_s = ask(core, "gompertz_time_s", ph, *FOUR)
    assert ask(core, "gompertz_ph", time_s, *FOUR) == pytest.approx(ph, rel=1e-12)


def test_the_steepest_fall_is_the_one_asked_for(core):
    # A Gompertz curve is steepest at 1/e of its drop.
    steepest_s = ask(core, "gompertz_time_s", 6.6 - 1.4 / math.e, *FOUR)
    before, after = [ask(core, "gompertz_ph", steepest_s + x, *FOUR) for x in (-30, 30)]
    assert (before - after) / 60 * H_S == pytest.approx(0.25, rel=1e-4)


def test_the_steepest_tangent_leaves_the_start_at_the_lag(core):
    steepest_s = ask(core, "gompertz_time_s", 6.6 - 1.4 / math.e, *FOUR)
    assert steepest_s - 1.4 / math.e / FOUR[2] == pytest.approx(FOUR[3], rel=1e-9)


@pytest.mark.parametrize(("hours", "ph"), [(-1000, 6.6), (1000, 5.2)])
def test_the_curve_is_flat_far_before_and_after(core, hours, ph):
    assert ask(core, "gompertz_ph", hours * H_S, *FOUR) == pytest.approx(ph)


def test_the_curve_at_the_starter_is_already_below_its_start(core):
    assert ask(core, "gompertz_ph", 0, *FOUR) < 6.58


def test_the_inverse_agrees_with_root_finding():
    found = brentq(lambda time_s: acid.gompertz_ph(time_s, *FOUR) - 5.4, 0, 1e5)
    assert acid.gompertz_time_s(5.4, *FOUR) == pytest.approx(found, rel=1e-9)


@pytest.mark.parametrize(("temp_c", "per_h"), GROWTH["rows"])
def test_growth_follows_the_published_cardinal_temperatures(core, temp_c, per_h):
    got = GROWTH["best_per_h"] * ask(core, "growth_factor", temp_c, *CARDINALS)
    assert got == pytest.approx(per_h, abs=GROWTH["tolerance_per_h"])


@pytest.mark.parametrize("temp_c", [-5, 4.0, 49.6, 63])
def test_a_starter_does_not_grow_outside_its_limits(core, temp_c):
    assert ask(core, "growth_factor", temp_c, *CARDINALS) == 0


@pytest.mark.parametrize("starter", [acid.MIXED_STARTER, acid.MESOPHILIC_STARTER])
def test_growth_is_best_at_its_best(core, starter):
    cardinals = (starter["min_c"], starter["best_c"], starter["max_c"])
    shares = [
        ask(core, "growth_factor", starter["best_c"] + x, *cardinals)
        for x in (-2, -0.1, 0, 0.1, 2)
    ]
    assert max(shares) == shares[2] == pytest.approx(1, rel=1e-12)


def test_the_shipped_mixed_starter_is_the_published_one():
    assert acid.MIXED_STARTER == STARTER


def test_lactococci_slow_above_37_and_a_mixed_starter_does_not():
    def gain(starter):
        return [
            acid.growth_factor(
                temp_c, starter["min_c"], starter["best_c"], starter["max_c"]
            )
            for temp_c in (34, 38)
        ]

    mesophilic, mixed = gain(acid.MESOPHILIC_STARTER), gain(acid.MIXED_STARTER)
    assert mesophilic[1] < 0.8 * mesophilic[0]
    assert mixed[1] > mixed[0]


def test_time_at_the_reference_is_time(core):
    got = ask(core, "equivalent_time_s", [0, 1000, 3600], [32] * 3, 32, STARTER)
    assert got == pytest.approx(3600, rel=1e-12)


def test_cooler_milk_is_worth_less_time(core):
    got = ask(core, "equivalent_time_s", [0, 3600], [25, 25], 32, STARTER)
    assert got / 3600 == pytest.approx(0.9083 / 1.3604, abs=1e-4)  # the table's ratio


def test_a_warming_make_is_integrated_as_quadrature_does(core):
    def rate(time_s):
        temp_c = 31 + 8 * time_s / 1800
        return acid.growth_factor(temp_c, *CARDINALS) / acid.growth_factor(
            32, *CARDINALS
        )

    got = ask(core, "equivalent_time_s", [0, 1800], [31, 39], 32, STARTER)
    # Simpson's rule in half kelvins against adaptive quadrature.
    assert got == pytest.approx(quad(rate, 0, 1800)[0], rel=1e-6)


def test_a_scald_beyond_the_starters_limit_adds_nothing(core):
    got = ask(core, "equivalent_time_s", [0, 600, 4200], [32, 32, 32], 32, STARTER)
    hot = ask(
        core,
        "equivalent_time_s",
        [0, 600, 601, 4199, 4200],
        [32, 32, 52, 52, 32],
        32,
        STARTER,
    )
    assert hot < 603 < got


@pytest.mark.parametrize(
    ("name", "args", "words"),
    [
        ("gompertz_ph", (0, 5.2, 6.6, 1, 0), "end_ph 6.6 not_below 5.2"),
        ("gompertz_ph", (0, 66, 5.2, 1, 0), "start_ph 66 above 14"),
        ("gompertz_ph", (0, 6.6, 5.2, 0, 0), "fall_ph_s 0 not_above 0"),
        ("gompertz_time_s", (5.2, 6.6, 5.2, 1, 0), "ph 5.2 off_curve \\[5.2, "),
        ("gompertz_time_s", (6.7, 6.6, 5.2, 1, 0), "ph 6.7 off_curve \\[5.2, "),
        ("growth_factor", (32, 4, 20, 49), "best_c 20 not_above 26.5"),
        ("growth_factor", (32, 4, 50, 49), "best_c 50 not_below 49"),
        ("growth_factor", (32, 4, 3, 2), "max_c 2 not_above 4"),
        ("equivalent_time_s", ([0], [32], 60, STARTER), "reference_c 60 no_growth"),
        ("equivalent_time_s", ([0, 0], [32, 32], 32, STARTER), "0 not_rising 0"),
    ],
)
def test_an_impossible_curve_or_starter_is_refused(core, name, args, words):
    with pytest.raises(ValueError, match=words):
        ask(core, name, *args)
