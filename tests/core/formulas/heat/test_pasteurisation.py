import copy
import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from server.core.formulas.heat import pasteurisation
from tests.conftest import ROOT

MINUTE_MS = 60000


def rule(name):
    path = ROOT / "server" / "rules" / f"{name}.json"
    return json.loads(path.read_text(encoding="utf-8"))


US = rule("us_heat_treatment")
EU = rule("eu_uk_heat_treatment")
CHART = {
    field["key"]: "noted" for field in US["chart_fields"]["vat"] if field["required"]
}


def readings(*temps, air=150.0, every_ms=MINUTE_MS):
    return [
        {"at_ms": i * every_ms, "temp": temp, "air_temp": air}
        for i, temp in enumerate(temps)
    ]


def verdict(core, rows, unit="F", rule=US, chart=CHART, **product):
    product = {"vessel": "vat", "fat_frac": 0.04, **product}
    return core(
        "formulas.heat.pasteurisation", "heat_verdict", rows, unit, product, chart, rule
    )


def keys(found):
    return [reason["key"] for reason in found["reasons"]]


HELD = readings(*[145.0] * 31)


def test_heating_and_cooling_around_a_hold_do_not_spoil_it(core):
    found = verdict(core, readings(*range(100, 145, 5), *[145.0] * 31, 140.0, 120.0))
    assert found["class"] == "reads_as_pasteurised"
    assert found["hold"]["start_ms"] == 9 * MINUTE_MS
    assert found["hold"]["end_ms"] == 39 * MINUTE_MS


def test_a_gap_longer_than_allowed_is_not_assessed(core):
    gapped = HELD[:10] + HELD[14:]
    found = verdict(core, gapped)
    assert found["class"] == "not_assessed"
    assert found["reasons"] == [
        {"key": "gap_too_long", "row": "vat_30_min", "value": 300.0, "limit": 120}
    ]
    assert found["if_not_met"] == "us_curing"


def test_a_gap_just_allowed_does_not_break_the_hold(core):
    assert verdict(core, HELD[::2])["class"] == "reads_as_pasteurised"


def test_a_gap_cannot_turn_a_short_hold_into_an_open_question(core):
    found = verdict(core, readings(*[145.0] * 6) + readings(*[145.0] * 12)[11:])
    assert found["class"] == "heat_treated_only"


def test_a_missing_reading_is_a_gap(core):
    rows = copy.deepcopy(HELD)
    rows[15]["temp"] = None
    assert verdict(core, rows)["class"] == "reads_as_pasteurised"
    rows[16]["temp"] = None
    found = verdict(core, rows)
    assert found["class"] == "not_assessed"
    assert keys(found) == ["gap_too_long"]
    assert found["reasons"][0]["value"] == 180


def test_missing_readings_at_the_end_are_not_taken_for_a_short_hold(core):
    rows = copy.deepcopy(HELD)
    for row in rows[25:]:
        row["temp"] = None
    found = verdict(core, rows)
    assert found["class"] == "not_assessed"
    assert keys(found) == ["reading_missing"]


def test_no_readings_are_not_assessed(core):
    for rows in ([], readings(None, None)):
        found = verdict(core, rows)
        assert found["class"] == "not_assessed"
        assert keys(found) == ["no_readings"]


@pytest.mark.parametrize("vessel", ["vat", "flow"])
@pytest.mark.parametrize(
    "rows", [[], [{"at_ms": 0, "temp": None, "air_temp": 155.0}]], ids=["none", "air"]
)
def test_no_reading_of_the_milk_is_not_assessed_in_any_vessel(core, rows, vessel):
    found = verdict(core, rows, vessel=vessel, holding_s=16)
    assert found["class"] == "not_assessed"
    assert found["reasons"] == [{"key": "no_readings"}]


def test_no_reading_of_the_air_is_not_assessed(core):
    found = verdict(core, readings(*[145.0] * 31, air=None))
    assert found["class"] == "not_assessed"
    assert keys(found) == ["airspace_not_recorded_in_hold"]


def test_one_reading_of_the_air_in_the_hold_is_enough(core):
    rows = readings(*[145.0] * 31, air=None)
    rows[15]["air_temp"] = 150.0
    assert verdict(core, rows)["class"] == "reads_as_pasteurised"


def test_air_read_only_before_the_hold_is_not_enough(core):
    rows = readings(120.0, *[145.0] * 31, air=None)
    rows[0]["air_temp"] = 155.0
    assert keys(verdict(core, rows)) == ["airspace_not_recorded_in_hold"]


def test_cold_air_once_starts_the_hold_again(core):
    rows = readings(*[145.0] * 41)
    rows[5]["air_temp"] = 149.0
    found = verdict(core, rows)
    assert found["class"] == "reads_as_pasteurised"
    assert found["hold"]["start_ms"] == 6 * MINUTE_MS
    rows[20]["air_temp"] = 149.0
    assert keys(verdict(core, rows)) == ["airspace_too_cold"]


def test_the_air_is_judged_against_the_required_temperature_not_the_milk(core):
    rows = readings(*[148.0] * 31, air=150.0)
    assert verdict(core, rows)["class"] == "reads_as_pasteurised"


def test_rich_milk_asks_more_of_milk_and_air(core):
    rich = {"fat_frac": 0.12}
    cold_air = readings(*[150.0] * 31, air=154.0)
    assert keys(verdict(core, cold_air, **rich)) == ["airspace_too_cold"]
    warm_air = readings(*[150.0] * 31, air=155.0)
    assert verdict(core, warm_air, **rich)["class"] == "reads_as_pasteurised"


def test_sweetened_milk_is_raised_whatever_its_fat(core):
    found = verdict(core, HELD, is_sweetened=True)
    assert found["class"] == "heat_treated_only"


def test_fat_not_entered_matters_only_where_it_decides(core):
    found = verdict(core, HELD, fat_frac=None)
    assert found["class"] == "not_assessed"
    assert keys(found) == ["fat_not_entered"]
    hot = readings(*[150.0] * 31, air=156.0)
    assert verdict(core, hot, fat_frac=None)["class"] == "reads_as_pasteurised"
    cold = readings(*[144.0] * 31)
    assert verdict(core, cold, fat_frac=None)["class"] == "heat_treated_only"


def test_filling_and_emptying_time_is_added_to_the_hold(core):
    found = verdict(core, HELD, extra_hold_s=300)
    assert found["class"] == "heat_treated_only"
    assert found["reasons"][0]["limit"] == 2100
    longer = readings(*[145.0] * 36)
    assert verdict(core, longer, extra_hold_s=300)["class"] == "reads_as_pasteurised"


def test_a_vat_held_as_a_continuous_plant_would_be_is_left_to_the_authority(core):
    found = verdict(core, readings(*[166.0] * 6, air=175.0))
    assert found["class"] == "not_assessed"
    assert "row_for_other_equipment" in keys(found)


def flow(*temps):
    return [{"at_ms": i * 10000, "temp": temp} for i, temp in enumerate(temps)]


def test_an_hour_of_readings_is_not_a_hold_of_the_tube(core):
    found = verdict(core, flow(*[161.0] * 360), vessel="flow")
    assert found["class"] == "not_assessed"
    assert "holding_time_not_entered" in keys(found)


def test_one_low_reading_of_a_continuous_run_fails_it(core):
    found = verdict(
        core, flow(161.0, 160.9, 161.0), vessel="flow", holding_s=16, fat_frac=0.04
    )
    assert found["class"] == "heat_treated_only"
    assert found["reasons"][0] == {
        "key": "temperature_fell_below",
        "row": "flow_15_s",
        "value": 160.9,
        "limit": 161,
    }


def test_a_continuous_run_needs_no_airspace(core):
    found = verdict(core, flow(161.0, 161.0), vessel="flow", holding_s=15)
    assert found["hold"]["air_min_temp"] is None


def test_the_eu_asks_for_a_negative_phosphatase_test(core):
    rows = readings(*[63.0] * 31, air=None)
    asked = verdict(core, rows, "C", EU, {})
    assert asked["class"] == "not_assessed"
    assert keys(asked) == ["phosphatase_not_entered"]
    negative = verdict(core, rows, "C", EU, {}, phosphatase="negative")
    assert negative["class"] == "reads_as_pasteurised"
    positive = verdict(core, rows, "C", EU, {}, phosphatase="positive")
    assert positive["class"] == "heat_treated_only"
    assert keys(positive) == ["phosphatase_positive"]


def test_a_fahrenheit_thermometer_cannot_be_judged_by_a_celsius_rule(core):
    found = verdict(core, HELD, "F", EU, {}, phosphatase="negative")
    assert found["class"] == "not_assessed"
    assert set(keys(found)) == {"rule_not_printed_in_unit"}


@pytest.mark.parametrize("path", ["min_temp", "hold_s", "airspace"])
def test_a_figure_from_memory_neither_passes_nor_fails(core, path):
    changed = copy.deepcopy(US)
    changed["rows"] = [row for row in changed["rows"] if row["key"] == "vat_30_min"]
    row = changed["rows"][0]
    figure = {
        "min_temp": row["min_temp"]["F"],
        "hold_s": row["hold_s"],
        "airspace": changed["airspace"]["rise"]["F"],
    }[path]
    figure["status"] = "memory"
    for rows in (HELD, readings(*[144.0] * 31)):
        found = verdict(core, rows, rule=changed)
        assert found["class"] == "not_assessed"
        assert keys(found) == ["rule_figure_from_memory"]


def test_a_product_without_a_row_is_not_assessed(core):
    found = verdict(core, HELD, kind="ice_cream_mix")
    assert found["reasons"] == [{"key": "no_row_for_product", "kind": "ice_cream_mix"}]


def test_a_short_hold_with_an_incomplete_chart_says_both(core):
    found = verdict(core, HELD[:10], chart={})
    assert found["class"] == "heat_treated_only"
    assert found["warnings"][0]["key"] == "record_incomplete"


@pytest.mark.parametrize(
    ("rows", "unit", "product", "words"),
    [
        (HELD[::-1], "F", {}, "at_ms 1740000 not_in_order"),
        (HELD, "K", {}, "unit 'K' not_a_choice"),
        (HELD, "F", {"vessel": "churn"}, "vessel 'churn' not_a_choice"),
        (HELD, "F", {"fat_frac": 4.0}, r"fat_frac 4.0 above 1"),
        ([{"at_ms": 0, "temp": "145"}], "F", {}, "temp '145' not_a_number"),
        (HELD, "F", {"extra_hold_s": -1}, "extra_hold_s -1 below 0"),
    ],
)
def test_impossible_input_is_refused_in_words(core, rows, unit, product, words):
    with pytest.raises(ValueError, match=words):
        verdict(core, rows, unit, **product)


CLASSES = ["heat_treated_only", "not_assessed", "reads_as_pasteurised"]
# Mostly warm, or no hold would ever be met.
TEMPS = st.lists(
    st.sampled_from([145.0] * 12 + [146.0] * 12 + [None, 144.9]), max_size=60
)


def judge(rows, chart=CHART):
    product = {"vessel": "vat", "fat_frac": 0.04}
    return pasteurisation.heat_verdict(rows, "F", product, chart, US)


@given(TEMPS, st.integers(1, 400))
def test_more_heat_never_makes_the_class_worse(temps, every_s):
    rows = readings(*temps, every_ms=every_s * 1000)
    hotter = [
        dict(row, temp=None if row["temp"] is None else row["temp"] + 1) for row in rows
    ]
    before, after = judge(rows)["class"], judge(hotter)["class"]
    assert CLASSES.index(after) >= CLASSES.index(before)


@given(TEMPS)
def test_a_hold_that_is_met_holds_the_time_by_plain_counting(temps):
    rows = readings(*temps)
    # Minutes from each first to each last reading with none low, and no three
    # minutes without one, between them.
    seen = [(i, t) for i, t in enumerate(temps) if t is not None]
    held = [
        last - first
        for a, (first, _) in enumerate(seen)
        for b, (last, _) in enumerate(seen[a:], a)
        if all(t >= 145 for _, t in seen[a : b + 1])
        and all(seen[k + 1][0] - seen[k][0] <= 2 for k in range(a, b))
    ]
    met = judge(rows)["class"] == "reads_as_pasteurised"
    assert met == (max(held, default=0) >= 30)


@given(TEMPS)
def test_what_is_missing_never_helps(temps):
    rows = readings(*temps)
    if judge(rows)["class"] != "reads_as_pasteurised":
        for i in range(len(rows)):
            thinned = rows[:i] + rows[i + 1 :]
            low = temps[i] is not None and temps[i] < 145
            if not low:
                assert judge(thinned)["class"] != "reads_as_pasteurised"


def test_a_gap_in_a_continuous_run_is_not_assessed(core):
    rows = [{"at_ms": 0, "temp": 161.0}, {"at_ms": 121000, "temp": 161.0}]
    found = verdict(core, rows, vessel="flow", holding_s=15)
    assert found["class"] == "not_assessed"
    assert found["reasons"][0]["key"] == "gap_too_long"
    assert found["reasons"][0]["value"] == 121


def test_an_airspace_not_printed_in_the_unit_leaves_the_answer_open(core):
    changed = copy.deepcopy(US)
    del changed["airspace"]["rise"]["C"]
    found = verdict(core, readings(*[63.0] * 31, air=66.0), "C", changed)
    assert found["class"] == "not_assessed"
    assert "rule_not_printed_in_unit" in keys(found)


def thermised(core, rows, rule=EU, **product):
    found = verdict(core, rows, "C", rule, {}, **product)
    assert found["class"] == "heat_treated_only"
    return [key for key in keys(found) if "thermised" in key]


def test_thermised_milk_was_held_long_enough_and_not_too_hot(core):
    positive = {"phosphatase": "positive"}
    long = [{"at_ms": s * 1000, "temp": 60.0} for s in range(0, 16, 5)]
    short = [{"at_ms": s * 1000, "temp": 60.0} for s in range(0, 11, 5)]
    hot = [*long, {"at_ms": 20000, "temp": 68.1}]
    assert thermised(core, long, **positive) == ["reads_as_thermised"]
    assert thermised(core, short, **positive) == []
    assert thermised(core, hot, **positive) == []


def test_milk_with_a_negative_test_is_not_thermised(core):
    rows = [{"at_ms": s * 1000, "temp": 65.0} for s in range(0, 16, 5)]
    assert thermised(core, rows, phosphatase="negative") == []


def test_a_continuous_plant_thermises_by_its_timed_hold(core):
    rows = [{"at_ms": s * 1000, "temp": 65.0} for s in range(0, 120, 10)]
    plant = {"vessel": "flow", "phosphatase": "positive"}
    assert thermised(core, rows, holding_s=14, **plant) == []
    assert thermised(core, rows, holding_s=14.9, **plant) == []
    assert thermised(core, rows, holding_s=15, **plant) == ["reads_as_thermised"]
    rows[3]["temp"] = 56.9
    assert thermised(core, rows, holding_s=15, **plant) == []


def test_a_definition_from_memory_names_nothing(core):
    changed = copy.deepcopy(EU)
    changed["thermised"]["hold_s"]["status"] = "memory"
    rows = [{"at_ms": s * 1000, "temp": 65.0} for s in range(0, 16, 5)]
    assert thermised(core, rows, changed, phosphatase="positive") == []


def test_a_fahrenheit_reading_is_not_called_thermised(core):
    changed = copy.deepcopy(EU)
    for row in changed["rows"]:
        row["min_temp"]["F"] = dict(row["min_temp"]["C"], value=145)
    found = verdict(core, readings(140.0, 140.0, air=None), "F", changed, {})
    assert keys(found) == ["temperature_never_reached"]
