import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from server.core.formulas.curd import press

PSI_PA = 6894.757  # exact pound-force per square inch, to seven figures


def circle(diameter_m):
    return math.pi / 4 * diameter_m**2


# Hand arithmetic: F = p * pi/4 * d**2, then F over the mould's face.
@pytest.mark.parametrize(
    ("gauge_bar", "bore_m", "lever", "mould_m", "pressure_kpa"),
    [
        (2.0, 0.063, 1.0, 0.200, 19.845),
        (2.0, 0.063, 1.0, 0.350, 6.480),
        (3.0, 0.100, 3.0, 0.350, 73.469),
    ],
)
def test_the_cheese_feels_the_force_over_its_own_face(
    core, gauge_bar, bore_m, lever, mould_m, pressure_kpa
):
    force_n = core(
        "formulas.curd.press",
        "cylinder_force_n",
        gauge_bar * 1e5,
        bore_m,
        1,
        lever,
        1.0,
    )
    face_m2 = core("formulas.curd.press", "circle_area_m2", mould_m)
    pressure_pa = core(
        "formulas.curd.press", "cheese_pressure_pa", force_n, 0.0, face_m2, 1
    )
    # The expected figures are written to three decimals of a kPa.
    assert pressure_pa / 1000 == pytest.approx(pressure_kpa, abs=5e-4)


def test_63_mm_at_2_bar_pushes_with_623_newton(core):
    force_n = core("formulas.curd.press", "cylinder_force_n", 2e5, 0.063, 1, 1.0, 1.0)
    assert force_n == pytest.approx(623.45, abs=5e-3)  # 2e5 * pi/4 * .063**2


def test_twenty_kilos_on_145_mm_press_11_877_kpa(core):
    pressure = core(
        "formulas.curd.press", "cheese_pressure_pa", 0.0, 20.0, circle(0.145), 1
    )
    assert pressure == pytest.approx(11877, abs=0.5)  # 20 * 9.80665 / area


# The multiples 5, 8 and 10 of the wheel's own weight, 12 kg on 350 mm.
@pytest.mark.parametrize(("ratio", "kpa"), [(5, 6.1), (8, 9.8), (10, 12.2)])
def test_a_load_in_wheel_weights_becomes_a_pressure(core, ratio, kpa):
    pressure_pa = core(
        "formulas.curd.press", "own_weight_pressure_pa", 12.0, ratio, circle(0.35)
    )
    assert pressure_pa / 1000 == pytest.approx(kpa, abs=0.05)  # written to 0.1 kPa


def test_gauge_and_cheese_pressure_are_not_the_same_number(core):
    # 14 psi on the gauge of a 63 mm cylinder over a 200 mm mould, by areas.
    force_n = core(
        "formulas.curd.press", "cylinder_force_n", 14 * PSI_PA, 0.063, 1, 1.0, 1.0
    )
    pressure = core(
        "formulas.curd.press", "cheese_pressure_pa", force_n, 0.0, circle(0.2), 1
    )
    assert pressure == pytest.approx(14 * PSI_PA * (0.063 / 0.2) ** 2, rel=1e-12)


def test_wheels_side_by_side_share_the_force(core):
    alone = core("formulas.curd.press", "cheese_pressure_pa", 900.0, 0.0, 0.05, 1)
    three = core("formulas.curd.press", "cheese_pressure_pa", 900.0, 0.0, 0.05, 3)
    assert alone == pytest.approx(3 * three, rel=1e-12)


def test_wheels_in_series_each_feel_the_whole_force(core):
    stack = core(
        "formulas.curd.press", "stack_pressures_pa", 900.0, 0.0, [1e-9] * 3, 0.05
    )
    assert stack == pytest.approx([18000.0] * 3, rel=1e-6)


def test_the_lowest_wheel_carries_the_ones_above_it(core):
    stack = core(
        "formulas.curd.press", "stack_pressures_pa", 0.0, 2.0, [10.0, 10.0, 10.0], 0.1
    )
    # One plate; then two plates and a wheel; then three plates and two wheels.
    g = 9.80665
    assert stack == pytest.approx([2 * g / 0.1, 14 * g / 0.1, 26 * g / 0.1], rel=1e-12)


def test_two_cylinders_push_twice(core):
    one = core("formulas.curd.press", "cylinder_force_n", 2e5, 0.063, 1, 1.0, 0.9)
    two = core("formulas.curd.press", "cylinder_force_n", 2e5, 0.063, 2, 1.0, 0.9)
    assert two == pytest.approx(2 * one, rel=1e-12)


def test_a_lever_multiplies_by_its_arms(core):
    # 10 kg at 0.9 m over 0.3 m weighs like 30 kg.
    force_n = core("formulas.curd.press", "lever_force_n", 10.0, 0.9, 0.3)
    assert force_n == pytest.approx(30 * 9.80665, rel=1e-12)


@given(
    st.floats(5000, 50000),
    st.floats(0.0, 5.0),
    st.floats(0.1, 0.4),
    st.integers(1, 4),
)
def test_the_gauge_found_gives_the_pressure_wanted(wanted, plate_kg, mould_m, side):
    face = press.circle_area_m2(mould_m)
    if wanted < press.cheese_pressure_pa(0.0, plate_kg, face, side):
        return
    gauge = press.gauge_for_pressure_pa(wanted, plate_kg, face, side, 0.1, 2, 3.0, 0.9)
    if gauge <= 2000000:
        force = press.cylinder_force_n(gauge, 0.1, 2, 3.0, 0.9)
        again = press.cheese_pressure_pa(force, plate_kg, face, side)
        assert again == pytest.approx(wanted, rel=1e-12)


def test_a_pressure_below_the_dead_weight_is_refused_with_its_limit(core):
    with pytest.raises(ValueError, match=r"pressure_pa 100 below_dead_weight"):
        core(
            "formulas.curd.press",
            "gauge_for_pressure_pa",
            100,
            10,
            0.05,
            1,
            0.06,
            1,
            1,
            1,
        )


def test_weights_on_the_bed_give_the_pressure_back(core):
    kg = core("formulas.curd.press", "weight_for_pressure_kg", 1500.0, 0.6)
    assert core("formulas.curd.press", "cheese_pressure_pa", 0.0, kg, 0.6, 1) == (
        pytest.approx(1500.0, rel=1e-12)
    )


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        ([-1.0, 0.063, 1, 1.0, 1.0], "gauge_pa -1(.0)? below 0"),
        ([2e5, 0, 1, 1.0, 1.0], "diameter_m 0 not_above 0"),
        ([2e5, 0.063, 1.5, 1.0, 1.0], "cylinder_count 1.5 not_whole"),
        ([2e5, 0.063, 1, 1.0, 1.2], "efficiency_frac 1.2 above 1"),
        ([2e5, 0.063, 1, 1.0, 0], "efficiency_frac 0 not_above 0"),
    ],
)
def test_an_impossible_press_is_refused_in_words(core, arguments, words):
    with pytest.raises(ValueError, match=words):
        core("formulas.curd.press", "cylinder_force_n", *arguments)
