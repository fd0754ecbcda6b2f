"""The recorder never reads above the indicator (1 NYCRR 2.45)."""

import pytest

from tests.core.heat.holding import every_two_minutes, whole


def marked(ask, indicator, recorder, units=("F", "F")):
    hold = whole()
    every_two_minutes(hold, 0, 30)
    hold.add("step_ended", 31, step="hold")
    for quantity, typed, unit in (
        ("indicator_temp_c", indicator, units[0]),
        ("recorder_temp_c", recorder, units[1]),
    ):
        value = (typed - 32) / 1.8 if unit == "F" else typed
        told = {"quantity": quantity, "value": value}
        hold.add("reading_taken", 33, typed=str(typed), typed_unit=unit, **told)
    return hold.step(ask, 34)["verdict"]["warnings"]


def test_a_recorder_above_the_indicator_is_told_as_the_chart_is_marked(ask):
    (warning,) = marked(ask, 146, 147)
    assert warning["key"] == "recorder_reads_above_indicator"
    assert (warning["value"], warning["limit"]) == (147, 146)
    assert warning["units"] == {"value": "F", "limit": "F"}


@pytest.mark.parametrize("indicator", [146, 147])
def test_a_recorder_below_or_level_is_not(ask, indicator):
    assert marked(ask, indicator, 146) == []


def test_two_units_are_compared_by_what_they_mean(ask):
    # 147 °F is 63.9 °C
    assert marked(ask, 63.5, 147, ("C", "F"))[0]["value"] == pytest.approx(63.889, 1e-4)
    assert marked(ask, 64.0, 147, ("C", "F")) == []
