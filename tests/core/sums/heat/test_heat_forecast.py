import pytest

from tests.core.sums.asking import amount, answer, band, table, values

# formulas' own check set: jacket 60 °C, tau 40 min, 32 °C at the start.
READINGS = [[0, 32.0], [2, 33.4], [4, 34.7], [6, 35.9], [8, 37.1], [10, 38.2]]
TEMPS = table(["at_min", "value"], *READINGS)
GIVEN = {"vat_temps": TEMPS, "target_temp_c": 40, "jacket_temp_c": 60}


def test_the_time_to_the_target_holds_the_outside_fit(core):
    # SciPy curve_fit on these readings: 13.4303 min.
    low, value, high = band(values(core, "heat_forecast", GIVEN)[("reach_s", None)])
    assert low < value < high
    assert value / 60 == pytest.approx(13.43, abs=0.01)
    assert low / 60 < 13.4303 < high / 60


def test_one_bad_reading_is_set_aside_and_named(core):
    rows = [list(row) for row in READINGS]
    rows[3][1] += 2.0
    given = {**GIVEN, "vat_temps": table(["at_min", "value"], *rows)}
    found = answer(core, "heat_forecast", given)
    reach = found["values"][0]
    assert reach["value"] / 60 == pytest.approx(13.43, abs=0.5)
    told = [row for row in found["notes"] if row["key"] == "note.reading_set_aside"]
    assert [row["at_min"] for row in told] == [6]


def test_the_jacket_is_asked_for_and_never_guessed(core):
    found = answer(core, "heat_forecast", {"vat_temps": TEMPS, "target_temp_c": 40})
    assert found["missing"] == ["jacket_temp_c"]


def test_a_heater_at_its_power_warms_in_a_straight_line(core):
    # 1 K a minute from 30 °C: 36 °C after 6 min.
    rows = [[0, 30], [1, 31], [2, 32], [3, 33]]
    given = {
        "vat_temps": table(["at_min", "value"], *rows),
        "target_temp_c": 36,
        "heating": "power",
    }
    got = amount(core, "heat_forecast", given, "reach_s")
    assert got == pytest.approx(360)


def test_not_in_time_is_said_while_there_is_time(core):
    given = {**GIVEN, "due_s": 9 * 60}
    word = values(core, "heat_forecast", given)[("in_time", None)]
    assert word["value"] == "time.not_in_time"
    given["due_s"] = 30 * 60
    word = values(core, "heat_forecast", given)[("in_time", None)]
    assert word["value"] == "time.in_time"


def test_a_remembered_time_constant_narrows_two_readings(core):
    first = {**GIVEN, "vat_temps": table(["at_min", "value"], *READINGS[:2])}
    wide = band(values(core, "heat_forecast", first)[("reach_s", None)])
    first["tau_s"] = 2400
    row = values(core, "heat_forecast", first)[("reach_s", None)]
    assert row["high"] is not None
    assert wide[2] is None or row["high"] - row["low"] < wide[2] - wide[0]
