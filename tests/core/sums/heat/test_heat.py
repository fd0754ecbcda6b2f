import math

import pytest

from tests.core.sums.asking import amount, answer, table, values

# formulas' own check set: jacket 60 °C, tau 40 min, 32 °C at the start.
READINGS = [[0, 32.0], [2, 33.4], [4, 34.7], [6, 35.9], [8, 37.1], [10, 38.2]]
TEMPS = table(["at_min", "value"], *READINGS)


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
