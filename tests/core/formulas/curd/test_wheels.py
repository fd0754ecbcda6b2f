import pytest
from hypothesis import given
from hypothesis import strategies as st

from server.core.formulas.curd import wheels


# 515 kg of milk at 10.5 % is 54.075 kg of curd.
@pytest.mark.parametrize(
    ("curd_kg", "sizes", "counts", "left_kg"),
    [
        (54.075, [12.0], [4], 6.075),
        (54.075, [4.5], [12], 0.075),
        (30.9, [12.0], [2], 6.9),
        (0, [12.0], [0], 0.0),
        (11.999, [12.0], [0], 11.999),
        (12.0, [12.0], [1], 0.0),
    ],
)
def test_whole_wheels_and_what_is_left(core, curd_kg, sizes, counts, left_kg):
    found = core("formulas.curd.wheels", "wheel_plan", curd_kg, sizes)
    assert found["counts"] == counts
    assert found["left_kg"] == pytest.approx(left_kg, abs=1e-9)


def test_two_sizes_are_offered_in_every_way_that_fills(core):
    # By hand: 24 + 4.5 leaves 2.4; 12 + 18 leaves .9; 27 leaves 3.9.
    found = core("formulas.curd.wheels", "wheel_plans", 30.9, [12.0, 4.5])
    assert [plan["counts"] for plan in found] == [[1, 4], [2, 1], [0, 6]]
    assert [plan["left_kg"] for plan in found] == pytest.approx([0.9, 2.4, 3.9])


def test_binary_fractions_do_not_cost_a_wheel(core):
    # 0.1 * 3 is a hair above 0.3 in binary; ten wheels of 0.3 kg fill 3 kg.
    found = core("formulas.curd.wheels", "wheel_plan", 3.0, [0.1 * 3])
    assert found["counts"] == [10]
    assert found["left_kg"] == pytest.approx(0.0, abs=1e-9)


@given(
    st.floats(0, 120),
    st.lists(st.floats(0.8, 14), min_size=1, max_size=2),
)
def test_wheels_and_remainder_add_up_and_no_wheel_more_fits(curd_kg, sizes):
    for plan in wheels.wheel_plans(curd_kg, sizes):
        used = sum(n * kg for n, kg in zip(plan["counts"], sizes, strict=True))
        assert used + plan["left_kg"] == pytest.approx(curd_kg, abs=1e-6)
        assert plan["left_kg"] < min(sizes)


@given(st.floats(1, 60), st.floats(3, 12), st.floats(0.8, 3))
def test_no_other_whole_plan_leaves_less(curd_kg, large_kg, small_kg):
    best = wheels.wheel_plan(curd_kg, [large_kg, small_kg])["left_kg"]
    for large in range(int(curd_kg / large_kg) + 1):
        left = curd_kg - large * large_kg
        assert best <= left - int(left / small_kg) * small_kg + 1e-6


def test_the_range_plans_for_a_poor_and_a_good_yield(core):
    # 3 % either way of 54.075 kg; the text rounds it to 52.5 and 55.7.
    found = core("formulas.curd.wheels", "wheel_plan_range", 52.5, 54.075, 55.7, [4.5])
    counts = [found[key]["counts"] for key in ("low", "value", "high")]
    assert counts == [[11], [12], [12]]
    assert found["basis"] == "yield_range"


def test_a_range_out_of_order_is_refused(core):
    with pytest.raises(ValueError, match=r"low_kg 60 above 54"):
        core("formulas.curd.wheels", "wheel_plan_range", 60, 54, 55, [12])


def test_a_wheel_of_no_weight_is_refused(core):
    with pytest.raises(ValueError, match="size_kg 0 not_above 0"):
        core("formulas.curd.wheels", "wheel_plan", 50, [12, 0])


def test_a_search_too_wide_for_a_phone_is_refused(core):
    with pytest.raises(ValueError, match="too_many_plans"):
        core("formulas.curd.wheels", "wheel_plan", 5000, [1, 1, 1])


def test_no_sizes_is_refused(core):
    with pytest.raises(ValueError, match="sizes 0 below 1"):
        core("formulas.curd.wheels", "wheel_plan", 50, [])


def test_fill_mass_carries_both_losses(core):
    # By hand: 12 over .98 and over .97.
    assert core("formulas.curd.wheels", "fill_kg", 12.0, 0.02, 0.03) == pytest.approx(
        12.624, abs=5e-4
    )


def test_filling_then_losing_gives_the_ripe_mass(core):
    fill = core("formulas.curd.wheels", "fill_kg", 4.2, 0.015, 0.08)
    assert fill * 0.985 * 0.92 == pytest.approx(4.2, rel=1e-12)


@pytest.mark.parametrize(
    ("kg", "verdict"),
    [
        (10.0, "in_band"),
        (9.8, "in_band"),
        (10.2, "in_band"),
        (9.79, "light"),
        (10.21, "heavy"),
    ],
)
def test_the_fill_is_judged_at_two_per_cent(core, kg, verdict):
    assert (
        core("formulas.curd.wheels", "fill_check", kg, 10.0, 0.02)["basis"] == verdict
    )
