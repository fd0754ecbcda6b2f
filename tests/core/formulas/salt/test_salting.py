import json
import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import solve_ivp
from scipy.special import jn_zeros

from server.core.formulas.salt import salting
from tests.conftest import ROOT

DAY_S = 86400


def table(name):
    return json.loads((ROOT / "tests" / "cases" / name).read_text(encoding="utf-8"))


BY_DAY = table("salt_by_day.json")


def twelve_kilos(core, days):
    return core(
        "formulas.salt.salting",
        "wheel_salting",
        *[days * DAY_S, 0.35, 0.118, 0.44, 0.20, 2.3e-10, 2.0],
    )


@pytest.mark.parametrize(("days", "percent", "loss_kg"), BY_DAY["rows"])
def test_salt_and_loss_of_a_12_kg_wheel_by_day(core, days, percent, loss_kg):
    found = twelve_kilos(core, days)
    tolerance = BY_DAY["tolerance"]
    assert found["salt_frac"] * 100 == pytest.approx(percent, abs=tolerance["percent"])
    # 350 by 118 mm at 1060 kg/m³ weigh 12.03 kg.
    lost = math.pi / 4 * 0.35**2 * 0.118 * 1060 * found["loss_frac"]
    assert lost == pytest.approx(loss_kg, abs=tolerance["loss_kg"])


def test_salt_through_a_square_metre_in_a_day(core):
    found = core(
        "formulas.salt.salting",
        "salt_taken_kg_m2",
        *[0.20, 0.0, 2.3e-10, DAY_S, 1060.0, 0.44],
    )
    # By hand: 2 * .25 * sqrt(2.3e-10 * 86400 / pi) * 466.4.
    assert found == pytest.approx(0.58651, abs=5e-6)


def test_four_times_the_time_takes_twice_the_salt(core):
    one, four = [
        core("formulas.salt.salting", "salt_taken_kg_m2", 0.2, 0, 2e-10, t, 1060, 0.44)
        for t in (DAY_S, 4 * DAY_S)
    ]
    assert four == pytest.approx(2 * one, rel=1e-12)


def cylinder_series(reach):
    zeros = jn_zeros(0, 3000)
    return 1 - float(np.sum(4 / zeros**2 * np.exp(-(zeros**2) * reach)))


@pytest.mark.parametrize(
    ("radius_m", "days"), [(0.065, 1), (0.12, 3), (0.175, 2), (0.065, 10), (0.03, 30)]
)
def test_a_tall_thin_wheel_follows_3000_terms_of_the_bessel_series(radius_m, days):
    found = salting.uptake_ratio(2.3e-10, days * DAY_S, 2 * radius_m, 1e6)
    exact = cylinder_series(2.3e-10 * days * DAY_S / radius_m**2)
    assert found == pytest.approx(exact, abs=1.5e-5)  # the short-time form's end


def test_two_printed_values_of_the_bessel_series(core):
    for radius_m, days, exact in ((0.065, 1, 0.150005), (0.12, 3, 0.141014)):
        found = core(
            "formulas.salt.salting",
            "uptake_ratio",
            *[2.3e-10, days * DAY_S, 2 * radius_m, 1e6],
        )
        assert found == pytest.approx(exact, abs=5e-6)


@pytest.mark.parametrize("days", [0.5, 2, 8, 40])
def test_a_flat_wide_wheel_follows_a_numerical_slab(days):
    half_m, diffusion, cells = 0.05, 2.3e-10, 400
    step = half_m / cells

    def flow(_, c):
        # Cell centres; brine at the face half a step away, a mirror at the middle.
        outer = np.concatenate(([2 - c[0]], c))
        inner = np.concatenate((c, [c[-1]]))
        flux = outer[:] - inner[:]
        return diffusion / step**2 * (flux[:-1] - flux[1:])

    solved = solve_ivp(
        flow, (0, days * DAY_S), np.zeros(cells), method="BDF", rtol=1e-7, atol=1e-9
    )
    exact = float(np.mean(solved.y[:, -1]))
    found = salting.uptake_ratio(diffusion, days * DAY_S, 1e6, 2 * half_m)
    assert found == pytest.approx(exact, rel=2e-3)  # 400 cells


@given(st.floats(0.001, 3), st.floats(0.03, 0.5), st.floats(0.03, 0.5))
def test_uptake_rises_with_time_and_never_passes_equilibrium(reach, diameter, height):
    time_s = reach * min(diameter, height) ** 2 / 2e-10
    before = salting.uptake_ratio(2e-10, time_s, diameter, height)
    after = salting.uptake_ratio(2e-10, time_s * 1.01, diameter, height)
    assert 0 < before <= after <= 1


@pytest.mark.parametrize("reach", [0.01, 0.1])
def test_the_two_series_meet_where_they_change_over(reach):
    for diameter, height in ((2.0, 1e6), (1e6, 2.0)):
        below, above = [
            salting.uptake_ratio(1e-9, reach * factor * 1e9, diameter, height)
            for factor in (1 - 1e-9, 1 + 1e-9)
        ]
        assert above == pytest.approx(below, abs=2e-5)


def test_a_wheel_left_for_ever_stands_at_the_brine_on_its_water():
    found = salting.wheel_salting(1e9, 0.1, 0.05, 0.44, 0.20, 2.3e-10, 2.0)
    on_water = found["salt_in_ratio"] / (0.44 - found["water_out_ratio"])
    assert on_water == pytest.approx(0.25, rel=1e-9)


def test_the_tank_loses_what_the_wheels_gain(core):
    made = twelve_kilos(core, 2)
    found = core("formulas.salt.salting", "brine_exchange", 120.0, made)
    assert found["wheel_kg"] == pytest.approx(
        120 + found["salt_out_kg"] - found["water_in_kg"]
    )
    assert found["wheel_kg"] == pytest.approx(120 * (1 - made["loss_frac"]))
    assert found["salt_out_kg"] / found["wheel_kg"] == pytest.approx(made["salt_frac"])


def test_moisture_and_salt_of_the_brined_wheel_close_the_balance(core):
    made = twelve_kilos(core, 3)
    left = 1 - made["loss_frac"]
    dry_before = 1 - 0.44
    dry_after = left * (1 - made["moisture_frac"] - made["salt_frac"])
    assert dry_after == pytest.approx(dry_before, rel=1e-12)


def test_no_time_in_brine_takes_up_nothing(core):
    assert twelve_kilos(core, 0)["salt_frac"] == 0


@pytest.mark.parametrize(
    ("name", "arguments", "words"),
    [
        ("uptake_ratio", [2e-10, -1, 0.3, 0.1], r"brined_s -1 below 0"),
        ("uptake_ratio", [0, 1, 0.3, 0.1], r"diffusion_m2_s 0 not_above 0"),
    ],
)
def test_impossible_salting_is_refused_in_words(core, name, arguments, words):
    with pytest.raises(ValueError, match=words):
        core("formulas.salt.salting", name, *arguments)


def test_the_zeros_are_those_of_the_bessel_function():
    assert list(jn_zeros(0, 10)) == pytest.approx(salting._J0_ZEROS, rel=1e-14)
    assert math.isclose(salting.salt_on_water(0.20), 0.25)
