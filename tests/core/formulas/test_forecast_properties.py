"""Whatever is read, a forecast is a range around its value, or says why not."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from server.core.formulas.heat import heat_forecast
from server.core.formulas.milk import acid_curve, acid_forecast
from tests.core.formulas.tables import table

ROW = table("acid_schedules")["rows"][1]
GOUDA = {"times_s": [60 * minute for minute in ROW["times_min"]], "phs": ROW["phs"]}
gaps_s = st.lists(st.integers(1, 7200), min_size=0, max_size=12)
sds = st.floats(0.001, 0.5)


def clock(gaps):
    times_s, now_s = [], 0
    for gap in gaps:
        now_s += gap
        times_s.append(now_s)
    return times_s


def a_reading_each(data, times_s, low, high):
    count = len(times_s)
    values = st.floats(low, high) | st.integers(math.ceil(low), math.floor(high))
    return data.draw(st.lists(values, min_size=count, max_size=count))


def is_range_or_reason(found):
    value, low, high = found["value_s"], found["low_s"], found["high_s"]
    assert found["basis"].split(".")[0] in ("heat", "acid")
    if value is None:
        return (low, high) == (None, None)
    slack = 1e-9 * (1 + abs(value))
    assert math.isfinite(value)
    assert low is None or low <= value + slack
    return high is None or value <= high + slack


@given(st.data(), gaps_s.filter(len), sds, st.booleans())
def test_a_warming_vat(data, gaps, sd_k, with_prior):
    times_s = clock(gaps)
    temps_c = a_reading_each(data, times_s, 20.0, 59.0)
    target_c = data.draw(st.floats(temps_c[0], 59.5))
    prior = {"tau_s": 2400, "tau_sd_s": 240} if with_prior else None
    args = (times_s, temps_c, target_c, 60, sd_k, prior)
    assert is_range_or_reason(heat_forecast.forecast(*args))


@given(st.data(), gaps_s.filter(len), sds)
def test_a_vat_limited_by_its_heater(data, gaps, sd_k):
    times_s = clock(gaps)
    temps_c = a_reading_each(data, times_s, 20.0, 59.0)
    target_c = data.draw(st.floats(20, 70))
    found = heat_forecast.forecast_line(times_s, temps_c, target_c, sd_k)
    assert is_range_or_reason(found)


@given(st.data(), gaps_s, sds, st.floats(0, 0.2))
def test_a_falling_ph(data, gaps, sd, end_sd):
    times_s = clock(gaps)
    phs = a_reading_each(data, times_s, 4.6, 6.9)
    found = acid_forecast.forecast(times_s, phs, 5.4, 6.6, 5.2, sd, 0.06, end_sd)
    assert is_range_or_reason(found)
    assert found["value_s"] is None or found["value_s"] > 0


@given(st.data(), gaps_s, sds)
def test_a_ph_along_the_recipes_curve(data, gaps, sd):
    times_s = clock(gaps)
    phs = a_reading_each(data, times_s, 4.6, 6.9)
    spread = {"lag_sd_s": 900, "pace_sd": 0.15}
    line = acid_curve.line_on_curve(times_s, phs, GOUDA, sd, spread)
    found = acid_curve.reach_on_curve(line, 5.6, GOUDA)
    assert is_range_or_reason(found)


@given(st.data(), gaps_s.filter(lambda gaps: len(gaps) > 2))
def test_a_later_clock_moves_the_forecast_by_as_much(data, gaps):
    times_s = clock(gaps)
    temps_c = [60 - 28 * math.exp(-time_s / 2400) for time_s in times_s]
    shift_s = data.draw(st.integers(-86400, 86400))
    moved_s = [time_s + shift_s for time_s in times_s]
    here = heat_forecast.forecast(times_s, temps_c, 59.5, 60, 0.1, None)
    there = heat_forecast.forecast(moved_s, temps_c, 59.5, 60, 0.1, None)
    if here["value_s"] is not None:
        # A clock a day off costs digits of the differences.
        expected = here["value_s"] + shift_s
        assert there["value_s"] == pytest.approx(expected, rel=1e-6, abs=1)
