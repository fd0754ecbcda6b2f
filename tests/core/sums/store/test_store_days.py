import pytest

from tests.core.sums.asking import answer, table, values

TEMPS = ["at_min", "value"]


def days(count, temp):
    return table(TEMPS, *[[1440 * day, temp] for day in range(count + 1)])


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


def test_days_that_count_are_drawn_on_their_way_to_the_days_asked(core):
    given = {"store_thermometer": "F", "curing_temps": days(15, 50)}
    found = values(core, "curing_days", given, ["us_curing"])
    assert found[("counted_days", None)]["bar"]["at_frac"] == pytest.approx(15 / 60)
    assert found[("below_days", None)]["bar"] is None  # nothing to come to
    assert found[("verdict", "unpasteurised_60_days")]["bar"] is None


def test_a_hold_that_is_met_names_no_day(core):
    given = {"store_thermometer": "F", "curing_temps": days(60, 50)}
    found = values(core, "curing_days", given, ["us_curing"])
    assert ("still_days", None) not in found


def test_warm_days_ripen_faster_by_hand(core):
    # Q10 2.5, 14 d at 15 °C at a reference of 13 °C: 14 × 2.5^0.2 = 16.816.
    row = values(core, "ripening_days", {"store_temps": days(14, 15)})
    assert row[("ripening_days", None)]["value"] == pytest.approx(16.816, abs=5e-4)


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
