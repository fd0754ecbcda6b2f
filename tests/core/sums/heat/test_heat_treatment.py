"""The verdict comes from the legal table alone: rows of the facts of law."""

import pytest

from tests.core.sums.asking import answer, table, values

RULES = ["us_heat_treatment", "eu_uk_heat_treatment"]
CHART = {
    "chart_" + key: "noted"
    for key in (
        "date",
        "plant_name",
        "product_name",
        "product_amount",
        "hold_extent",
        "indicating_reading",
        "airspace_reading",
        "operator_initials",
    )
}
COLUMNS = ["at_min", "value", "air", "recorder"]


def hold(minutes, temp=145.0, air=150.0, recorder=None):
    return [[at, temp, air, recorder] for at in range(minutes + 1)]


def judged(core, rows, unit="F", **rest):
    given = {
        "thermometer": unit,
        "milk_temps": table(COLUMNS, *rows),
        "fat_tested_frac": 0.04,
        **CHART,
        **rest,
    }
    return answer(core, "heat_treatment", given, rules=RULES)


def word(found, name="class"):
    return next(row["value"] for row in found["values"] if row["name"] == name)


def notes(found):
    return [row["key"] for row in found["notes"]]


def test_thirty_minutes_at_145_f_under_150_f_reads_as_pasteurised(core):
    found = judged(core, hold(30))
    assert word(found) == "reads_as_pasteurised"
    assert word(found, "meaning") == "counts_as_pasteurised"


def test_a_second_short_does_not(core):
    rows = hold(30)
    rows[-1][0] = 29 + 59 / 60
    found = judged(core, rows)
    assert word(found) == "heat_treated_only"
    assert "note.hold_too_short" in notes(found)


def test_a_dip_begins_the_hold_again(core):
    rows = hold(31)
    rows[12][1] = 144.9
    assert word(judged(core, rows)) == "heat_treated_only"
    rows = hold(43)
    rows[12][1] = 144.9
    assert word(judged(core, rows)) == "reads_as_pasteurised"


def test_cold_air_above_the_milk_does_not_meet(core):
    found = judged(core, hold(30, air=149.9))
    assert word(found) == "heat_treated_only"
    assert "note.airspace_too_cold" in notes(found)


def test_62_8_c_is_not_rounded_up_to_63(core):
    found = judged(core, hold(30, 62.8, 66.0), "C")
    assert word(found) == "heat_treated_only"
    assert word(judged(core, hold(30, 63.0, 66.0), "C")) == "reads_as_pasteurised"


def test_the_same_milk_meets_in_fahrenheit_what_it_misses_in_celsius(core):
    # 145 °F is 62.78 °C: the printed figures are separate minima.
    assert word(judged(core, hold(30, 145.0, 150.0), "F")) == "reads_as_pasteurised"
    assert word(judged(core, hold(30, 62.78, 66.0), "C")) == "heat_treated_only"


def test_ten_percent_fat_asks_for_five_degrees_more(core):
    assert word(judged(core, hold(30), fat_tested_frac=0.10)) == "heat_treated_only"
    found = judged(core, hold(30, 150, 155), fat_tested_frac=0.10)
    assert word(found) == "reads_as_pasteurised"


def test_sweetened_milk_asks_for_five_degrees_more(core):
    assert word(judged(core, hold(30), sweetened="yes")) == "heat_treated_only"


def test_fat_not_entered_leaves_the_answer_open(core):
    given = {"thermometer": "F", "milk_temps": table(COLUMNS, *hold(30)), **CHART}
    found = answer(core, "heat_treatment", given, rules=RULES)
    assert word(found) == "not_assessed"
    assert "note.fat_not_entered" in notes(found)


def test_a_chart_without_the_airspace_note_is_not_closed(core):
    found = judged(core, hold(30), chart_airspace_reading="not_noted")
    assert word(found) == "not_assessed"
    (told,) = [r for r in found["notes"] if r["key"] == "note.record_incomplete"]
    assert told["missing"] == ["airspace_reading"]


def test_a_gap_leaves_the_answer_open(core):
    rows = [row for row in hold(30) if row[0] not in (14, 15, 16)]
    found = judged(core, rows)
    assert word(found) == "not_assessed"
    assert "note.gap_too_long" in notes(found)


def test_a_recorder_above_the_indicator_is_told(core):
    found = judged(core, hold(30, recorder=146.0))
    assert "note.recorder_reads_above_indicator" in notes(found)


def test_milk_heated_less_is_handled_as_unpasteurised(core):
    # 150 °F for 20 min: below the pair, so the curing rule applies.
    found = judged(core, hold(20, 150, 156))
    assert word(found) == "heat_treated_only"
    meaning = next(r for r in found["values"] if r["name"] == "meaning")
    assert meaning["value"] == "handle_as_unpasteurised"
    assert meaning["of"] == "us_curing"


def test_no_lethality_stands_in_a_verdict(core):
    found = judged(core, hold(30))
    assert all("log" not in row["name"] for row in found["values"])


@pytest.mark.parametrize("vessel", ["vat", "flow"])
def test_air_alone_is_no_reading_of_the_milk(core, vessel):
    found = judged(core, [[0, None, 150.0, None]], vessel=vessel)
    assert word(found) == "not_assessed"
    assert "note.no_readings" in notes(found)


def test_without_rules_there_is_no_verdict(core):
    given = {"thermometer": "F", "milk_temps": table(COLUMNS, *hold(30))}
    found = answer(core, "heat_treatment", given)
    assert found["values"] == []
    assert found["missing"] == ["rules"]


def test_the_figures_name_their_sources(core):
    found = judged(core, hold(30))
    (row,) = [r for r in found["rests_on"] if r["name"] == "min_temp.vat_30_min"]
    assert row["value"] == 145
    assert row["source"] == "21 CFR 1240.61(b)"


def test_lethality_is_for_information_and_holds_the_worked_ramp(core):
    # 40 to 63 °C in 20 min, 30 min hold, down again, z 7. Of each ramp only the
    # last 5 of 23 K count: 20 × 5 / 23 × (1 - 10^(-5/7)) / (ln 10 × 5/7) = 2.13315 min.
    rows = [[0, 40], [20, 63], [50, 63], [70, 40]]
    given = {"vat_temps": table(["at_min", "value"], *rows)}
    found = values(core, "lethality", given)
    got = found[("f63_s", None)]["value"]
    assert got / 60 == pytest.approx(34.26629, abs=1e-5)
    capped = found[("log_reduction", "staphylococcus_aureus_milk")]
    assert (capped["value"], capped["low"]) == (12, 12)


def test_a_hold_too_far_from_what_was_measured_is_not_worked_out(core):
    # 31 min at 63 °C: D of Listeria was measured at 71.7, 8.7 K away.
    given = {"vat_temps": table(["at_min", "value"], [0, 63], [31, 63])}
    found = answer(core, "lethality", given)
    told = {(row["name"], row["of"]): row for row in found["values"]}
    listeria = told[("log_reduction", "listeria_monocytogenes_milk")]
    assert (listeria["value"], listeria["low"]) == (None, None)
    words = [row["row"] for row in found["notes"] if "too_far" in row["key"]]
    assert words == ["listeria_monocytogenes_milk"]
    # The others were measured at 60 °C and count whole.
    assert not any("partly" in row["key"] for row in found["notes"])
    assert told[("f63_s", None)]["value"] == pytest.approx(31 * 60)


def test_a_heating_that_is_partly_too_cold_says_so(core):
    given = {"vat_temps": table(["at_min", "value"], [0, 40], [20, 63], [50, 63])}
    found = answer(core, "lethality", given)
    keys = [(row["key"], row.get("row")) for row in found["notes"]]
    assert ("note.lethality_partly", "staphylococcus_aureus_milk") in keys
    assert ("note.lethality_63_partly", None) in keys
    cold = {"vat_temps": table(["at_min", "value"], [0, 40], [20, 50])}
    found = answer(core, "lethality", cold)
    assert [row["value"] for row in found["values"]] == [None] * 4
    assert "note.lethality_63_too_far" in notes(found)
