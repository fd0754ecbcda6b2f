"""The rows of the legal brief, judged from the shipped rule files.

Each test is one row: what was recorded, and what may be said of it. Sources stand
in the rule files beside each figure.
"""

import json

import pytest

from tests.conftest import ROOT

MINUTE_MS = 60000
CHART = {
    "date": "2026-11-25",
    "plant_name": "Quernbeck Creamery",
    "product_name": "cheese milk",
    "product_amount": "500 L",
    "hold_extent": "30 min",
    "indicating_reading": 145.0,
    "airspace_reading": 150.0,
    "operator_initials": "ab",
}


def rule(name):
    path = ROOT / "server" / "rules" / f"{name}.json"
    return json.loads(path.read_text(encoding="utf-8"))


US = rule("us_heat_treatment")
EU = rule("eu_uk_heat_treatment")


def vat(temp, minutes, air=None, **more):
    """Return readings once a minute, with the end exactly at `minutes`."""
    times = [*range(int(minutes) + (minutes == int(minutes)))]
    times = [m * MINUTE_MS for m in times]
    if minutes != int(minutes):
        times.append(int(minutes * MINUTE_MS))
    return [{"at_ms": t, "temp": temp, "air_temp": air, **more} for t in times]


def verdict(core, readings, unit="F", rule=US, chart=CHART, **product):
    product = {"vessel": "vat", "fat_frac": 0.04, **product}
    return core(
        "formulas.heat.pasteurisation",
        "heat_verdict",
        readings,
        unit,
        product,
        chart,
        rule,
    )


def keys(found):
    return [reason["key"] for reason in found["reasons"]]


def test_145_f_for_30_minutes_under_air_at_150_f_is_met(core):
    found = verdict(core, vat(145.0, 30, 150.0))
    assert found["class"] == "reads_as_pasteurised"
    assert found["reasons"] == []
    assert found["hold"]["row"] == "vat_30_min"
    assert found["hold"]["held_s"] == 1800
    assert found["hold"]["air_min_temp"] == 150
    assert found["if_not_met"] is None


def test_29_59_is_not_30_minutes(core):
    found = verdict(core, vat(145.0, 29 + 59 / 60, 150.0))
    assert found["class"] == "heat_treated_only"
    assert found["reasons"][0]["key"] == "hold_too_short"
    assert found["reasons"][0]["value"] == pytest.approx(1799)
    assert found["reasons"][0]["limit"] == 1800


def test_one_low_reading_at_minute_12_starts_the_hold_again(core):
    readings = vat(145.0, 31, 150.0)
    readings[12]["temp"] = 144.9
    found = verdict(core, readings)
    assert found["class"] == "heat_treated_only"
    (reason,) = found["reasons"]
    assert reason["key"] == "hold_too_short"
    assert reason["value"] == 18 * 60  # from minute 13 to minute 31
    assert reason["restarts"] == 1
    readings += [
        {"at_ms": m * MINUTE_MS, "temp": 145.0, "air_temp": 150.0}
        for m in range(32, 44)
    ]
    assert verdict(core, readings)["class"] == "reads_as_pasteurised"


def test_air_at_149_9_f_is_too_cold(core):
    found = verdict(core, vat(145.0, 30, 149.9))
    assert found["class"] == "heat_treated_only"
    assert found["reasons"] == [
        {
            "key": "airspace_too_cold",
            "row": "vat_30_min",
            "value": 149.9,
            "limit": 150,
        }
    ]


def test_62_8_c_is_not_rounded_up_to_63(core):
    found = verdict(core, vat(62.8, 30, 70.0), unit="C")
    assert found["class"] == "heat_treated_only"
    assert found["reasons"][0] == {
        "key": "temperature_never_reached",
        "value": 62.8,
        "limit": 63,
    }
    assert verdict(core, vat(63.0, 30, 66.0), unit="C")["class"] == (
        "reads_as_pasteurised"
    )


def flow(temp):
    return [{"at_ms": i * 10000, "temp": temp} for i in range(7)]


@pytest.mark.parametrize(
    ("fat_frac", "temp", "expected"),
    [
        (0.10, 161.0, "heat_treated_only"),
        (0.099, 161.0, "reads_as_pasteurised"),
        (0.10, 166.0, "reads_as_pasteurised"),
        (0.10, 165.9, "heat_treated_only"),
    ],
)
def test_ten_per_cent_of_fat_asks_for_five_degrees_more(core, fat_frac, temp, expected):
    found = verdict(core, flow(temp), vessel="flow", holding_s=15, fat_frac=fat_frac)
    assert found["class"] == expected


def test_191_f_with_12_per_cent_of_fat_is_left_to_the_authority(core):
    found = verdict(core, flow(191.0), vessel="flow", holding_s=1, fat_frac=0.12)
    assert found["class"] == "not_assessed"
    assert "supplement_scope_unclear" in keys(found)
    lean = verdict(core, flow(191.0), vessel="flow", holding_s=1, fat_frac=0.04)
    assert lean["class"] == "reads_as_pasteurised"


def test_150_f_for_20_minutes_is_not_pasteurised_and_curing_applies(core):
    found = verdict(core, vat(150.0, 20, 156.0))
    assert found["class"] == "heat_treated_only"
    assert keys(found) == ["hold_too_short"]
    assert found["if_not_met"] == "us_curing"


def test_65_c_for_15_seconds_is_thermised_in_the_eu_and_unpasteurised_in_the_us(core):
    readings = [{"at_ms": s * 1000, "temp": 65.0} for s in range(0, 16, 5)]
    found = verdict(core, readings, "C", EU, {}, phosphatase="positive")
    assert found["class"] == "heat_treated_only"
    assert "reads_as_thermised" in keys(found)
    untested = verdict(core, readings, "C", EU, {})
    assert "thermised_if_phosphatase_positive" in keys(untested)
    here = verdict(core, readings, "C", US)
    assert here["class"] == "heat_treated_only"
    assert here["if_not_met"] == "us_curing"


def test_a_recorder_above_the_indicator_is_warned_of(core):
    found = verdict(core, vat(145.0, 30, 150.0, recorder_temp=146.0))
    (warning,) = found["warnings"]
    assert warning["key"] == "recorder_reads_above_indicator"
    assert (warning["value"], warning["limit"], warning["count"]) == (146.0, 145.0, 31)


@pytest.mark.parametrize("field", ["airspace_reading", "operator_initials"])
def test_a_chart_without_a_field_cannot_close_the_batch(core, field):
    for chart in (
        {k: v for k, v in CHART.items() if k != field},
        dict(CHART, **{field: ""}),
    ):
        found = verdict(core, vat(145.0, 30, 150.0), chart=chart)
        assert found["class"] == "not_assessed"
        assert found["reasons"] == [{"key": "record_incomplete", "missing": [field]}]


FORMULAS = ROOT / "server" / "core" / "formulas" / "heat"
JUDGES = ["pasteurisation", "heat_rows", "holds"]


@pytest.mark.parametrize("name", JUDGES)
def test_no_class_speaks_of_safety(name):
    source = (FORMULAS / f"{name}.py").read_text(encoding="utf-8")
    for word in ("safe", "compliant", "certif"):
        assert word not in source.lower()


@pytest.mark.parametrize("name", JUDGES)
def test_the_verdict_reads_nothing_but_bounds_rows_and_holds(name):
    source = (FORMULAS / f"{name}.py").read_text(encoding="utf-8")
    lines = [line for line in source.splitlines() if line.startswith(("from ", "im"))]
    allowed = {"...numbers.bounds", "...numbers.refused", ".heat_rows", ".holds"}
    assert {line.split()[1] for line in lines} <= allowed
    assert "10 **" not in source


def test_celsius_figures_are_the_printed_ones_and_not_converted():
    # 145 °F is 62.78 and 161 °F is 71.67; the rule prints 63 and 72.
    rows = {row["key"]: row["min_temp"] for row in US["rows"]}
    printed = {"vat_30_min": 63, "flow_15_s": 72, "flow_1_s": 89, "flow_0_5_s": 90}
    for key, celsius in printed.items():
        assert rows[key]["C"]["value"] == celsius
        assert rows[key]["C"]["value"] >= (rows[key]["F"]["value"] - 32) / 1.8


# 21 CFR 1240.61(b) and (c), as printed.
@pytest.mark.parametrize(
    ("kind", "fahrenheit", "celsius", "seconds"),
    [
        ("milk", 145, 63, 1800),
        ("milk", 161, 72, 15),
        ("milk", 191, 89, 1),
        ("milk", 194, 90, 0.5),
        ("milk", 201, 94, 0.1),
        ("milk", 204, 96, 0.05),
        ("milk", 212, 100, 0.01),
        ("eggnog", 155, None, 1800),
        ("eggnog", 175, None, 25),
        ("eggnog", 180, None, 15),
    ],
)
def test_each_printed_pair_is_met_at_its_figures_and_not_below(
    core, kind, fahrenheit, celsius, seconds
):
    vessel = "vat" if seconds == 1800 else "flow"
    for unit, temp, rise in (("F", fahrenheit, 5), ("C", celsius, 3)):
        if temp is None:
            continue

        def judge(temp, holding_s, unit=unit, rise=rise):
            if vessel == "vat":
                readings = vat(temp, holding_s / 60, temp + rise)
                return verdict(core, readings, unit, kind=kind)["class"]
            product = {"vessel": "flow", "kind": kind, "holding_s": holding_s}
            return verdict(core, flow(temp), unit, **product)["class"]

        assert judge(temp, seconds) == "reads_as_pasteurised"
        assert judge(temp, seconds * 0.99) != "reads_as_pasteurised"
        assert judge(temp - 0.1, seconds) != "reads_as_pasteurised"
