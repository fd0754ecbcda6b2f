import pytest
from hypothesis import given
from hypothesis import strategies as st

from server.core.formulas.curd import curd_bed


def plan(core, *arguments):
    return core("formulas.curd.curd_bed", "cutting_plan", *arguments)


def test_a_bed_of_14_1_block_areas_gives_fourteen_blocks(core):
    # 1.0 m by 0.6 m over 0.0425 m2 is 14.1; seven strips of 0.1417 m, two across.
    found = plan(core, 0.6, 1.0, 0.6, 0.0425, 0.0, 2.2)
    assert found["large_count"] == 14
    assert found["left_kg"] == pytest.approx(0.6 - 14 * 0.0425, abs=1e-9)


def test_square_blocks_fit_fewer_than_the_area_says(core):
    # At most 1.2 to 1: three across, 0.2125 m long; four strips fit in 1 m.
    assert plan(core, 0.6, 1.0, 0.6, 0.0425, 0.0, 1.2)["large_count"] == 12


def test_small_blocks_use_what_large_ones_leave(core):
    found = plan(core, 60.0, 1.2, 0.6, 12.0, 4.5, 2.0)
    alone = plan(core, 60.0, 1.2, 0.6, 12.0, 0.0, 2.0)
    assert found["left_kg"] <= alone["left_kg"]
    assert found["small_count"] > 0


@given(
    st.floats(20, 200),
    st.floats(0.6, 2.0),
    st.floats(0.4, 1.0),
    st.floats(5, 12),
    st.floats(0.5, 4.5),
)
def test_blocks_and_remainder_add_up_to_the_curd(curd, length, width, large, small):
    found = curd_bed.cutting_plan(curd, length, width, large, small, 1.6)
    total = (
        found["large_count"] * large + found["small_count"] * small + found["left_kg"]
    )
    assert total == pytest.approx(curd, rel=1e-9)
    for size in ("large", "small"):
        if found[size + "_count"]:
            sides = [found[size + "_strip_m"], width / found[size + "_across"]]
            assert max(sides) / min(sides) <= 1.6 * (1 + 1e-6)


def test_a_block_larger_than_the_bed_leaves_all_the_curd(core):
    found = plan(core, 3.0, 1.0, 0.6, 12.0, 0.0, 2.0)
    assert found["large_count"] == 0
    assert found["left_kg"] == pytest.approx(3.0)


def test_a_small_block_as_large_as_the_large_one_is_refused(core):
    with pytest.raises(ValueError, match="large_kg 4 not_above 5"):
        plan(core, 60, 1, 0.6, 4, 5, 2)


def test_crumbs_are_refused_rather_than_searched_for(core):
    with pytest.raises(ValueError, match="too_many_blocks"):
        plan(core, 60, 1, 0.6, 0.01, 0, 2)


def test_bed_depth_times_area_times_density_is_the_curd(core):
    depth_m = core("formulas.curd.curd_bed", "bed_depth_m", 66.0, 1.0, 0.6, 1100.0)
    assert depth_m == pytest.approx(0.1, rel=1e-12)
