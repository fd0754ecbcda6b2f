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


def gauges(ask, make):
    rows = make.answers(ask, 20)
    return {
        row["of"]: item["value"]
        for row in rows
        for item in row["known"]
        if item["name"] == "gauge_kpa"
    }


def test_the_gauge_of_one_size_is_not_the_other_s(ask):
    make = Make("press_1", "press_pressure").run("press_1", 5)
    make.read("press_gauge_kpa", 24.0, 6, step="press_1", place="small")
    assert gauges(ask, make) == {"small": 24.0}
    make.read("press_gauge_kpa", 100.0, 7, step="press_1", place="large")
    make.read("press_gauge_kpa", 60.0, 8, step="press_1")
    assert gauges(ask, make) == {"small": 24.0, "large": 100.0}


def test_a_gauge_that_names_no_size_is_of_the_only_one(ask):
    moulds = [{"size": "large", "count": 12}]
    make = Make("press_1", "press_pressure", moulds=moulds).run("press_1", 5)
    make.read("press_gauge_kpa", 100.0, 6, step="press_1")
    assert gauges(ask, make) == {"large": 100.0}
