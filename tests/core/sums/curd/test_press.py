import pytest

from tests.core.sums.asking import amount, table, typed, values

PRESS = {"bore_m": typed("63", "mm"), "diameter_m": typed("200", "mm")}


def test_two_bar_on_a_small_cylinder_is_20_kpa_on_the_cheese(core):
    # 623.45 N; 19.845 kPa on a 200 mm mould.
    found = values(core, "press_pressure", {**PRESS, "gauge_kpa": typed("2", "bar")})
    assert found[("force_n", None)]["value"] == pytest.approx(623.45, abs=0.005)
    assert found[("cheese_kpa", None)]["value"] == pytest.approx(19.845, abs=0.0005)


def test_gauge_and_cheese_pressure_undo_each_other(core):
    given = {**PRESS, "cheese_kpa": 19.845}
    assert amount(core, "press_gauge", given, "gauge_kpa") == pytest.approx(200)


def test_wheels_side_by_side_share_the_force(core):
    one = amount(core, "press_pressure", {**PRESS, "gauge_kpa": 200}, "cheese_kpa")
    two = {**PRESS, "gauge_kpa": 200, "side_by_side": 2}
    assert amount(core, "press_pressure", two, "cheese_kpa") == pytest.approx(one / 2)


def test_wheels_in_series_each_feel_the_whole_force_and_what_lies_on_them(core):
    given = {
        **PRESS,
        "gauge_kpa": 200,
        "wheels": table(["wheel_kg"], [5], [5]),
    }
    found = values(core, "press_stack", given)
    top = found[("cheese_kpa", "wheel_1")]["value"]
    low = found[("cheese_kpa", "wheel_2")]["value"]
    # 5 kg × 9.80665 over the face of 200 mm.
    assert low - top == pytest.approx(5 * 9.80665 / 0.0314159 / 1000, rel=1e-4)


def test_a_dead_weight_over_a_lever_by_hand(core):
    # 20 kg on 145 mm with equal arms: 11.877 kPa.
    given = {
        "weight_kg": 20,
        "weight_arm_m": 1,
        "plate_arm_m": 1,
        "diameter_m": 0.145,
    }
    got = amount(core, "press_lever", given, "cheese_kpa")
    assert got == pytest.approx(11.877, abs=0.0005)


def test_the_programme_rests_on_memory_and_rises(core):
    moulds = table(["diameter_m", "side_by_side"], [0.3, 1])
    found = values(core, "press_programme", {"bore_m": 0.063, "moulds": moulds})
    gauges = [found[("gauge_kpa", f"press_{n}.300")]["value"] for n in (1, 2, 3)]
    assert gauges == sorted(gauges)
    # The gauge over the cheese is the face over the cylinder: (300 / 63)².
    cheese = found[("cheese_kpa", "press_1.300")]["value"]
    assert gauges[0] / cheese == pytest.approx((300 / 63) ** 2)


def test_weights_on_the_bed_by_hand(core):
    # 1 kPa on 0.6 m² is 600 N: 61.18 kg.
    given = {"length_m": 1.0, "width_m": 0.6, "wanted_kpa": 1.0}
    got = amount(core, "bed_weights", given, "weight_kg")
    assert got == pytest.approx(600 / 9.80665)


def test_a_bed_lies_as_deep_as_its_mass(core):
    given = {
        "length_m": 1.0,
        "width_m": 0.6,
        "curd_kg": 66,
        "bed_density_kg_m3": 1100,
    }
    assert amount(core, "bed_weights", given, "depth_m") == pytest.approx(0.1)


def test_blocks_of_two_sizes_use_up_the_bed(core):
    given = {
        "curd_kg": 66,
        "length_m": 1.0,
        "width_m": 0.6,
        "large_kg": 10,
        "small_kg": 1,
    }
    found = values(core, "block_plan", given)
    used = 10 * found[("count", "large")]["value"] + found[("count", "small")]["value"]
    assert used + found[("left_kg", None)]["value"] == pytest.approx(66)
    assert found[("left_kg", None)]["value"] < 1
