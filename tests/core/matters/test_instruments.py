"""The chart's recorder and the indicating thermometer, each beside what checks it.

1 NYCRR 2.45: the recorder never reads above the indicator. Ala. 420-3-17-.05: an
indicating thermometer is right to 0.5 °F.
"""

import pytest

from tests.core.matters.gated import HELPER, Make
from tests.core.matters.test_hold import passed, refused_by


def read(make, indicator, other, quantity, unit="F", minute=93):
    for name, typed in (("indicator_temp_c", indicator), (quantity, other)):
        value = (typed - 32) / 1.8 if unit == "F" else typed
        make.read(name, value, minute, "fans", typed, unit)


def at_the_chart(gate):
    make = Make(gate)
    make.add("step_begun", 92, step="fans")
    return make


def test_a_recorder_at_or_below_the_indicator_is_no_matter(ask):
    for recorder in (146.0, 145.5):
        make = at_the_chart("chart")
        read(make, 146.0, recorder, "recorder_temp_c")
        assert make.matters(ask, 94) == {}
        assert passed(make.tap(ask, "step_ended", 94, step="fans"))


def test_a_recorder_above_the_indicator_stops_the_end_of_the_chart(ask):
    make = at_the_chart("chart")
    read(make, 146.0, 147.0, "recorder_temp_c")
    (matter,) = make.matters(ask, 94).values()
    assert (matter["key"], matter["rule"]) == ("recorder_above", "1 NYCRR 2.45")
    (reason,) = matter["reasons"]
    assert (reason["value"], reason["limit"]) == (147.0, 146.0)
    told = make.tap(ask, "step_ended", 94, HELPER, step="fans", why="Hurry")
    assert refused_by(told) == ("matter.recorder_above", "maker")
    # Who sets the recorder to the indicator reads both again.
    read(make, 146.0, 146.0, "recorder_temp_c", minute=95)
    assert make.matters(ask, 96) == {}
    assert passed(make.tap(ask, "step_ended", 96, step="fans"))


def test_a_chart_that_was_not_read_stops_nothing_by_itself(ask):
    make = at_the_chart("chart")
    assert passed(make.tap(ask, "step_ended", 94, step="fans", why="No recorder"))


@pytest.mark.parametrize(
    ("indicator", "check", "unit", "is_out"),
    [
        (146.0, 146.5, "F", False),
        (146.0, 146.6, "F", True),
        (146.0, 145.4, "F", True),
        # 0.5 °F is 0.28 K.
        (63.0, 63.2, "C", False),
        (63.0, 63.3, "C", True),
    ],
)
def test_a_thermometer_out_by_more_than_half_a_degree_f_is_a_matter(
    ask, indicator, check, unit, is_out
):
    make = at_the_chart("thermometer")
    read(make, indicator, check, "check_temp_c", unit)
    keys = [one["key"] for one in make.matters(ask, 94).values()]
    assert keys == (["thermometer_out"] if is_out else [])
    assert passed(make.tap(ask, "step_ended", 94, step="fans")) is not is_out
