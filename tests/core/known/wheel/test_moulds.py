"""What a make knows of its moulds."""

import pytest

from tests.core.known.making import Make


def test_sizes_of_wheel_are_answered_one_by_one(ask):
    make = Make("press_1", "press_gauge").run("press_1", 5)
    given = {"bore_m": {"value": 0.063}, "cheese_kpa": {"value": 20}}
    rows = make.answers(ask, 6, given=given)
    assert [row["of"] for row in rows] == ["small", "large"]
    small, large = (row["values"][0]["value"] for row in rows)
    # The same pressure on four times the face: (300 / 145)² times the gauge.
    assert large / small == pytest.approx((300 / 145) ** 2)


def test_blocks_are_cut_for_both_moulds(ask):
    make = Make("cut_blocks", "block_plan").run("cut_blocks", 5)
    known = make.known(ask, 6)
    assert (known["large_kg"], known["small_kg"]) == (8.0, 1.4)


def test_one_size_in_use_leaves_no_second_block(ask):
    moulds = [{"size": "large", "count": 12}]
    make = Make("cut_blocks", "block_plan", moulds=moulds).run("cut_blocks", 5)
    assert "small_kg" not in make.known(ask, 6)


def test_a_size_moulded_against_the_plan_is_a_size_of_the_make(ask):
    moulds = [{"size": "large", "count": 12}]
    make = Make("cut_blocks", "block_plan", moulds=moulds).run("cut_blocks", 5)
    make.add("wheels_moulded", 4, size="small", count=3)
    # The view said so before, the sums did not.
    assert make.known(ask, 6)["small_kg"] == 1.4
