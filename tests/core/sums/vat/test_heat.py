import math

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


def test_scalding_time_by_hand(core):
    # tau ln((60 - 32) / (60 - 38)) with tau 40 min: 9.6465 min.
    given = {
        "vat_temp_c": 32,
        "target_temp_c": 38,
        "jacket_temp_c": 60,
        "tau_s": 2400,
    }
    got = amount(core, "heat_time", given, "time_s")
    assert got == pytest.approx(2400 * math.log(28 / 22))


def test_warming_at_power_by_hand(core):
    # 1000 kg × 3850 J/(kg K) × 10 K over 38.5 kW: 1000 s.
    given = {
        "vat_temp_c": 20,
        "target_temp_c": 30,
        "heating": "power",
        "contents_kg": 1000,
        "power_kw": 38.5,
    }
    assert amount(core, "heat_time", given, "time_s") == pytest.approx(1000)


def test_the_jacket_needed_undoes_the_time(core):
    given = {"vat_temp_c": 32, "target_temp_c": 38, "tau_s": 2400, "time_s": 578.79}
    got = amount(core, "jacket_needed", given, "jacket_temp_c")
    assert got == pytest.approx(60, abs=0.01)


def test_the_rate_of_scald_is_judged_against_the_gouda_page(core):
    # 31 to 37 °C over 18 min is inside 15 to 20 min (Guelph, Gouda).
    rows = [[0, 31], [6, 33], [12, 35], [18, 37]]
    given = {"vat_temps": table(["at_min", "value"], *rows)}
    found = values(core, "scald_rate", given)
    assert found[("rate_k_s", None)]["value"] * 60 == pytest.approx(1 / 3)
    assert found[("rate_verdict", None)]["value"] == "in_band"
    fast = {"vat_temps": table(["at_min", "value"], [0, 31], [3, 33], [6, 35])}
    found = values(core, "scald_rate", fast)
    assert found[("rate_verdict", None)]["value"] == "above"


def test_twice_the_milk_takes_between_once_and_twice_as_long(core):
    given = {
        "vat_temps": TEMPS,
        "jacket_temp_c": 60,
        "contents_kg": 500,
        "other_contents_kg": 1000,
    }
    found = values(core, "vat_time_constant", given)
    tau_s = found[("tau_s", None)]["value"]
    assert tau_s == pytest.approx(2400, rel=0.005)
    other = found[("other_tau_s", None)]
    assert (other["low"], other["high"]) == pytest.approx((tau_s, 2 * tau_s))


def test_what_is_lacking_is_named_for_the_way_it_is_heated(core):
    given = {"vat_temp_c": 20, "target_temp_c": 30}
    assert answer(core, "heat_time", given)["missing"] == ["jacket_temp_c", "tau_s"]
    given["heating"] = "power"
    missing = answer(core, "heat_time", given)["missing"]
    assert missing == ["contents_kg", "power_kw"]


def test_a_jacket_beyond_steam_is_told(core):
    given = {"vat_temp_c": 10, "target_temp_c": 60, "tau_s": 3600, "time_s": 600}
    found = answer(core, "jacket_needed", given)
    assert found["notes"][0]["key"] == "note.jacket_out_of_reach"


def test_slow_scalding_is_told(core):
    rows = [[0, 31], [10, 32], [20, 33]]
    given = {"vat_temps": table(["at_min", "value"], *rows)}
    found = values(core, "scald_rate", given)
    assert found[("rate_verdict", None)]["value"] == "below"


def test_one_reading_has_no_rate(core):
    given = {"vat_temps": table(["at_min", "value"], [0, 31])}
    found = answer(core, "scald_rate", given)
    assert found["values"][0]["value"] is None
    assert found["notes"][0]["key"] == "note.heat.not_enough_readings"
