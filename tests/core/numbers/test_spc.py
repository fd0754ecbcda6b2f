import json
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from server.core.numbers import spc
from tests.conftest import ROOT

CASES = json.loads(
    (ROOT / "tests" / "cases" / "control_charts.json").read_text(encoding="utf-8")
)
FLOW = CASES["individuals"]
EWMA = CASES["ewma"]
TOLERANCE = CASES["tolerance"]


def test_limits_of_the_handbook_s_flow_rates(core):
    found = core("numbers.spc", "individuals_limits", FLOW["values"])
    assert found["mean"] == pytest.approx(FLOW["mean"], abs=TOLERANCE["mean"])
    assert found["mean_range"] == pytest.approx(
        FLOW["mean_range"], abs=TOLERANCE["range"]
    )
    for key in ("low", "high"):
        assert found[key] == pytest.approx(FLOW[key], abs=TOLERANCE["limit"])
    assert found["range_high"] == pytest.approx(
        FLOW["range_high"], abs=TOLERANCE["limit"]
    )


@pytest.mark.parametrize("i", range(5))
def test_the_handbook_s_moving_average(core, i):
    found = core("numbers.spc", "ewma", EWMA["values"], EWMA["target"], EWMA["weight"])
    assert len(found) == 20
    assert found[i] == pytest.approx(EWMA["averages"][i], abs=TOLERANCE["ewma"])


def test_the_handbook_s_limits_of_the_moving_average(core):
    found = core(
        "numbers.spc",
        "ewma_limits",
        *[EWMA["target"], EWMA["spread"], EWMA["weight"], EWMA["width"]],
    )
    for key in ("low", "high"):
        assert found[key] == pytest.approx(EWMA[key], abs=TOLERANCE["ewma_limit"])


def test_constants_agree_with_printed_tables():
    assert pytest.approx(1.128, abs=5e-4) == spc.D2
    assert pytest.approx(3.267, abs=1e-3) == spc.D4
    assert pytest.approx(2.66, abs=2e-3) == 3 / spc.D2
    assert pytest.approx(2 / math.sqrt(math.pi), rel=1e-15) == spc.D2


def test_moving_ranges_are_distances(core):
    assert core("numbers.spc", "moving_ranges", [3, 5, 4]) == [2, 1]


@given(st.lists(st.floats(4, 7), min_size=1, max_size=30), st.floats(4, 7))
def test_weight_one_follows_each_make(values, start):
    assert spc.ewma(values, start, 1.0) == pytest.approx(values)


@given(st.floats(1, 100), st.floats(0.05, 1))
def test_the_average_of_one_level_stays_there(level, weight):
    assert spc.ewma([level] * 5, level, weight) == pytest.approx([level] * 5)


def test_weight_one_has_the_limits_of_single_makes(core):
    found = core("numbers.spc", "ewma_limits", 50.0, 2.0, 1.0, 3.0)
    assert (found["low"], found["high"]) == pytest.approx((44.0, 56.0))


def test_nine_makes_have_no_limits_and_ten_have(core):
    nine = core("numbers.spc", "control_chart", FLOW["values"][:9])
    assert nine["verdict"] == "not_assessed"
    assert nine["limits"] is None
    assert (nine["count"], nine["needed"]) == (9, 10)
    ten = core("numbers.spc", "control_chart", FLOW["values"])
    assert ten["verdict"] == "like_the_others"
    assert ten["limits"]["high"] == pytest.approx(55.804, abs=TOLERANCE["limit"])


def test_no_makes_are_not_assessed(core):
    assert core("numbers.spc", "control_chart", [])["verdict"] == "not_assessed"


def test_a_make_outside_the_limits_is_named(core):
    values = [5.20, 5.22, 5.19, 5.21, 5.20, 5.18, 5.21, 5.20, 5.22, 5.19, 5.21, 5.60]
    found = core("numbers.spc", "control_chart", values)
    assert found["beyond"] == [11]
    assert found["verdict"] == "unlike_the_others"


def test_eight_on_one_side_are_named_and_seven_are_not(core):
    assert core("numbers.spc", "runs", [1] * 7 + [-1], 0, 8) == []
    assert core("numbers.spc", "runs", [-1] + [1] * 9, 0, 8) == [8, 9]


def test_a_value_on_the_centre_ends_a_run(core):
    assert core("numbers.spc", "runs", [1] * 4 + [0] + [1] * 4, 0, 8) == []


def test_a_drift_of_half_the_makes_is_a_run(core):
    low = [5.18, 5.20, 5.19, 5.17, 5.20, 5.18, 5.19, 5.18]
    high = [5.26, 5.28, 5.27, 5.25, 5.27, 5.28, 5.26, 5.27]
    found = core("numbers.spc", "control_chart", low + high)
    assert found["runs"] == [7, 15]


def test_equal_makes_ring_no_alarm(core):
    found = core("numbers.spc", "control_chart", [0.1] * 12)
    assert found["verdict"] == "like_the_others"


@given(st.lists(st.floats(-50, 50), min_size=10, max_size=40), st.floats(-20, 20))
def test_a_shift_of_all_makes_moves_the_limits_with_them(values, shift):
    before = spc.individuals_limits(values)
    after = spc.individuals_limits([v + shift for v in values])
    assert after["high"] - before["high"] == pytest.approx(shift, abs=1e-9)
    assert after["low"] - before["low"] == pytest.approx(shift, abs=1e-9)


@pytest.mark.parametrize(
    ("name", "arguments", "words"),
    [
        ("individuals_limits", [[5.2]], "values 1 below 2"),
        ("ewma", [[5.2], 5.2, 0], "weight 0 not_above 0"),
        ("ewma", [[5.2], 5.2, 1.5], "weight 1.5 above 1"),
        ("control_chart", [[5.2, None]], "value None not_a_number"),
        ("runs", [[1], 0, 1], "length 1 below 2"),
    ],
)
def test_impossible_charts_are_refused_in_words(core, name, arguments, words):
    with pytest.raises(ValueError, match=words):
        core("numbers.spc", name, *arguments)
