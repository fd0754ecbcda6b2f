import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from server.core.formulas.store import curing
from tests.conftest import ROOT

DAY_MS = 86400000
GAP_MS = DAY_MS  # a store logged at least once a day

RULE = {
    "days": {"value": 60, "status": "read"},
    "min_temp": {
        "F": {"value": 35.0, "status": "read"},
        "C": {"value": 1.7, "status": "read"},
    },
}


def log(*runs):
    """Return daily readings: log((59, 50.0)) is 59 days at 50."""
    readings, day = [], 0
    for days, temp in runs:
        readings += [{"at_ms": (day + i) * DAY_MS, "temp": temp} for i in range(days)]
        day += days
    return [*readings, {"at_ms": day * DAY_MS, "temp": runs[-1][1]}]


def check(core, readings, days, rule=RULE, unit="F", gap_ms=GAP_MS):
    return core(
        "formulas.store.curing",
        "check_curing",
        *[readings, unit, 0, int(days * DAY_MS), rule, gap_ms],
    )


def test_a_raw_wheel_is_held_on_day_59_and_released_when_day_60_is_complete(core):
    readings = log((61, 50.0))
    day_59 = check(core, readings, 59)
    assert day_59["verdict"] == "does_not_meet"
    assert day_59["reasons"] == [
        {"key": "days_still_to_hold", "value": 59, "limit": 60}
    ]
    assert check(core, readings, 60 - 1 / DAY_MS)["verdict"] == "does_not_meet"
    assert check(core, readings, 60)["verdict"] == "meets"


def test_five_days_frozen_do_not_count(core):
    # Thirty days at 50 °F, five at 30 °F, thirty at 50 °F. Between the daily
    # readings the line crosses 35 °F three quarters of the way down.
    readings = log((30, 50.0), (5, 30.0), (30, 50.0))
    found = check(core, readings, 65)
    assert found["below_days"] == pytest.approx(5.0 + 0.25 - 0.75 + 0.0, abs=1e-9)
    assert found["counted_days"] == pytest.approx(65 - 4.5, abs=1e-9)
    assert check(core, readings, 60)["verdict"] == "does_not_meet"
    # Hourly readings leave five days less an hour.
    hours = [
        {"at_ms": h * 3600000, "temp": 30.0 if 720 <= h < 840 else 50.0}
        for h in range(65 * 24 + 1)
    ]
    found = check(core, hours, 65)
    assert found["below_days"] == pytest.approx(5.0, abs=1 / 24)
    assert check(core, hours, 64.9)["verdict"] == "does_not_meet"
    assert check(core, hours, 65)["verdict"] == "meets"


def test_exactly_35_counts(core):
    assert check(core, log((60, 35.0)), 60)["verdict"] == "meets"
    assert check(core, log((60, 34.9)), 60)["counted_days"] == 0


def test_a_gap_is_not_counted_but_only_delays(core):
    readings = log((20, 50.0)) + [
        {"at_ms": (30 + i) * DAY_MS, "temp": 50.0} for i in range(41)
    ]
    found = check(core, readings, 60)
    assert found["unknown_days"] == pytest.approx(10.0)
    assert found["counted_days"] == pytest.approx(50.0)
    assert found["verdict"] == "does_not_meet"
    assert check(core, readings, 70)["verdict"] == "meets"


def test_time_after_the_last_reading_is_not_known(core):
    found = check(core, log((50, 50.0)), 80)
    assert found["counted_days"] == pytest.approx(50.0)
    assert found["unknown_days"] == pytest.approx(30.0)


def test_time_before_the_start_does_not_count(core):
    readings = log((70, 50.0))
    found = core(
        "formulas.store.curing",
        "curing_time",
        *[readings, 15 * DAY_MS, 70 * DAY_MS, 35.0, GAP_MS],
    )
    assert found["whole_days"] == 55


def test_the_thermometer_s_own_unit_is_asked_of_the_rule(core):
    # 1.67 °C is 35.006 °F; the rule's Celsius figure is the next tenth up.
    found = check(core, log((61, 1.67)), 61, unit="C")
    assert found["counted_days"] == 0
    only_f = {"days": RULE["days"], "min_temp": {"F": RULE["min_temp"]["F"]}}
    found = check(core, log((61, 10.0)), 61, rule=only_f, unit="C")
    assert found["verdict"] == "not_assessed"
    assert found["reasons"] == [{"key": "rule_not_printed_in_unit", "unit": "C"}]


def test_no_readings_are_not_assessed(core):
    found = check(core, [], 90)
    assert found["verdict"] == "not_assessed"
    assert found["reasons"] == [{"key": "no_readings"}]


def test_a_rule_from_memory_neither_passes_nor_fails(core):
    rule = {"days": {"value": 60, "status": "memory"}, "min_temp": RULE["min_temp"]}
    for days in (10, 90):
        found = check(core, log((91, 50.0)), days, rule=rule)
        assert found["verdict"] == "not_assessed"
        assert found["reasons"] == [{"key": "rule_figure_from_memory"}]


def test_a_rule_of_age_alone_needs_no_thermometer(core):
    # Gruyere, 90 days old whatever the milk.
    rule = {"days": {"value": 90, "status": "read"}}
    assert check(core, [], 75, rule=rule)["verdict"] == "does_not_meet"
    assert check(core, [], 90, rule=rule)["verdict"] == "meets"


@given(
    st.lists(st.tuples(st.integers(1, 200000000), st.floats(20, 60)), max_size=20),
    st.integers(0, 10**9),
    st.integers(0, 10**9),
)
def test_counted_below_and_unknown_add_up(steps, start_ms, span_ms):
    at_ms, readings = 0, []
    for step_ms, temp in steps:
        at_ms += step_ms
        readings.append({"at_ms": at_ms, "temp": temp})
    found = curing.curing_time(readings, start_ms, start_ms + span_ms, 35.0, GAP_MS)
    total = found["counted_ms"] + found["below_ms"] + found["unknown_ms"]
    assert total == pytest.approx(span_ms, abs=1e-3)
    assert min(found["counted_ms"], found["below_ms"], found["unknown_ms"] + 1e-3) >= 0


def test_counted_time_never_shrinks_as_time_goes_on():
    readings = log((5, 50.0), (5, 30.0), (5, 40.0))
    counted = [
        curing.curing_time(readings, 0, h * 3600000, 35.0, GAP_MS)["counted_ms"]
        for h in range(16 * 24)
    ]
    assert counted == sorted(counted)


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        ([[], 10, 5, 35, 1], "now_ms 5 before_start 10"),
        ([[], 0, 5, 35, 0], "gap_max_ms 0 not_above 0"),
        (
            [[{"at_ms": 9, "temp": 1}, {"at_ms": 5, "temp": 1}], 0, 9, 35, 99],
            "at_ms 5 not_in_order",
        ),
    ],
)
def test_an_impossible_log_is_refused_in_words(core, arguments, words):
    with pytest.raises(ValueError, match=words):
        core("formulas.store.curing", "curing_time", *arguments)


def test_the_shipped_rule_holds_a_raw_wheel_for_sixty_days(core):
    path = ROOT / "server" / "rules" / "us_curing.json"
    rules = json.loads(path.read_text(encoding="utf-8"))
    (rule,) = rules["rows"]
    gap_ms = rules["gap_max_s"]["value"] * 1000
    readings = log((61, 50.0))
    assert check(core, readings, 59, rule, gap_ms=gap_ms)["verdict"] == "does_not_meet"
    assert check(core, readings, 60, rule, gap_ms=gap_ms)["verdict"] == "meets"


def test_a_rule_of_age_alone_still_needs_time_to_go_forward(core):
    rule = {"days": {"value": 90, "status": "read"}}
    with pytest.raises(ValueError, match="now_ms 5 before_start 10"):
        core("formulas.store.curing", "check_curing", [], "F", 10, 5, rule, GAP_MS)
