import pytest

from tests.core.sums.asking import amount, answer, table, typed, values

TEMPS = ["at_min", "value"]


def days(count, temp):
    return table(TEMPS, *[[1440 * day, temp] for day in range(count + 1)])


def test_humidity_agrees_with_the_reference_library(core):
    # PsychroLib: 13 and 12 °C give 89.27 %; 0.2 K is about 2 %.
    row = values(core, "humidity", {"dry_c": 13, "wet_c": 12})[("humidity_frac", None)]
    assert row["value"] == pytest.approx(0.8927, abs=0.0015)
    assert row["high"] - row["low"] == pytest.approx(0.04, abs=0.005)


def test_a_wet_bulb_warmer_than_the_dry_one_cannot_be(core):
    found = answer(core, "humidity", {"dry_c": 12, "wet_c": 13})
    assert found["problems"][0]["field"] == "wet_c"


def test_drying_by_hand(core):
    # 12 to 11.76 kg is 2 %; 0.3134 m², 28 d: 27.35 g/(m² d).
    given = {
        "start_kg": 12,
        "now_kg": 11.76,
        "days": 28,
        "diameter_m": 0.35,
        "height_m": 0.11,
        "moisture_frac": 0.43,
    }
    found = values(core, "weight_loss", given)
    assert found[("loss_frac", None)]["value"] == pytest.approx(0.02)
    assert found[("loss_g_m2_day", None)]["value"] == pytest.approx(27.35, abs=0.01)
    # Solids stay: 1 - 0.57 × 12 / 11.76.
    after = found[("moisture_after_frac", None)]["value"]
    assert after == pytest.approx(1 - 0.57 * 12 / 11.76)


def test_sixty_whole_days_at_50_f_meet_and_59_do_not(core):
    given = {"store_thermometer": "F", "curing_temps": days(60, 50)}
    found = values(core, "curing_days", given, ["us_curing"])
    assert found[("verdict", "unpasteurised_60_days")]["value"] == "meets"
    given["curing_temps"] = days(59, 50)
    found = values(core, "curing_days", given, ["us_curing"])
    assert found[("verdict", "unpasteurised_60_days")]["value"] == "does_not_meet"


def test_days_below_35_f_do_not_count(core):
    rows = [[1440 * day, 30 if 20 <= day <= 25 else 50] for day in range(61)]
    given = {"store_thermometer": "F", "curing_temps": table(TEMPS, *rows)}
    found = values(core, "curing_days", given, ["us_curing"])
    # Five days at 30 °F and the two slopes below 35: a quarter of a day each.
    assert found[("below_days", None)]["value"] == pytest.approx(5.5)
    assert found[("verdict", "unpasteurised_60_days")]["value"] == "does_not_meet"


def test_days_nobody_read_do_not_count(core):
    rows = [[1440 * day, 50] for day in range(61) if day not in (30, 31)]
    given = {"store_thermometer": "F", "curing_temps": table(TEMPS, *rows)}
    found = values(core, "curing_days", given, ["us_curing"])
    assert found[("unknown_days", None)]["value"] == pytest.approx(3)


def test_days_still_to_hold_and_the_first_day_that_may_meet_the_rule(core):
    known = {
        "curing_start_ms": {
            "value": 1764000000000, "low": None, "high": None, "typed": None,
            "from": "make", "status": "measured", "source": None,
        },
    }  # fmt: skip
    given = {"store_thermometer": "F", "curing_temps": days(50, 50)}
    found = answer(core, "curing_days", given, known, ["us_curing"])
    rows = {row["name"]: row["value"] for row in found["values"]}
    # Fifty days of sixty count: ten are left, 60 d of 86,400,000 ms from the start.
    assert rows["still_days"] == pytest.approx(10)
    assert rows["first_met_ms"] == 1764000000000 + 60 * 86400000


def test_a_hold_that_is_met_names_no_day(core):
    given = {"store_thermometer": "F", "curing_temps": days(60, 50)}
    found = values(core, "curing_days", given, ["us_curing"])
    assert ("still_days", None) not in found


def test_warm_days_ripen_faster_by_hand(core):
    # Q10 2.5, 14 d at 15 °C at a reference of 13 °C: 14 × 2.5^0.2 = 16.816.
    row = values(core, "ripening_days", {"store_temps": days(14, 15)})
    assert row[("ripening_days", None)]["value"] == pytest.approx(16.816, abs=5e-4)


def test_a_loss_that_goes_by_the_root_of_time_goes_on_so(core):
    rows = [[1, 0.01], [4, 0.02], [9, 0.03]]
    given = {"weighings": table(["at_day", "loss_frac"], *rows), "days": 16}
    assert amount(core, "loss_forecast", given, "loss_frac") == pytest.approx(0.04)


def test_percent_may_be_typed(core):
    given = {
        "start_kg": typed("26,455", "lb"),
        "now_kg": 11.76,
        "moisture_frac": typed("43", "%"),
    }
    got = amount(core, "weight_loss", given, "loss_frac")
    assert got == pytest.approx(0.02, abs=1e-4)


def test_a_wheel_to_be_dried_is_weighed_for(core):
    # 100 kg at 43 % reach 40 % at 95 kg.
    given = {
        "start_kg": 100,
        "now_kg": 98,
        "moisture_frac": 0.43,
        "wanted_moisture_frac": 0.40,
    }
    assert amount(core, "weight_loss", given, "wanted_kg") == pytest.approx(95)


def test_a_far_forecast_of_drying_is_a_guide_only(core):
    rows = [[1, 0.01], [4, 0.02], [9, 0.03]]
    given = {"weighings": table(["at_day", "loss_frac"], *rows), "days": 100}
    found = answer(core, "loss_forecast", given)
    assert "note.loss_guide_only" in [row["key"] for row in found["notes"]]


def test_curing_is_asked_about_an_instant(core):
    given = {
        "store_thermometer": "F",
        "curing_temps": days(60, 50),
        "start_min": 1440,
        "now_min": 1440 * 11,
    }
    found = values(core, "curing_days", given, ["us_curing"])
    assert found[("counted_days", None)]["value"] == pytest.approx(10)


def test_curing_without_the_rule_says_so(core):
    given = {"store_thermometer": "F", "curing_temps": days(60, 50)}
    assert answer(core, "curing_days", given)["missing"] == ["rules"]
