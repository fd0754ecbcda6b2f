"""What a make knows of its time in the store."""

import pytest

from tests.core.known.making import Make


def test_ripening_counts_the_store_alone(ask):
    make = Make("store", "ripening_days").run("store", 0)
    make.read("brine_temp_c", 13.0, -100)
    for day in range(15):
        make.read("store_temp_c", 15.0, 1440 * day)
    # 14 d at 15 °C, Q10 2.5, reference 13 °C: 16.816 d.
    got = make.value(ask, 15 * 1440, "ripening_days")
    assert got == pytest.approx(16.816, abs=5e-4)


def cured(unit="F", days=61):
    make = Make("store", "curing_days").run("fill_moulds", 0, 1).run("store", 2)
    for day in range(days):
        typed = 50 if unit == "F" else 10
        make.read(
            "store_temp_c", 10.0, 1 + 1440 * day, typed=str(typed), typed_unit=unit
        )
    return make


def test_days_of_curing_go_by_the_stores_own_thermometer(ask):
    make = cured()
    assert make.known(ask, 60 * 1440 + 1)["store_thermometer"] == "F"
    got = make.value(ask, 60 * 1440 + 1, "verdict", "unpasteurised_60_days")
    assert got == "meets"
    assert cured("C").known(ask, 60 * 1440 + 1)["store_thermometer"] == "C"


def test_a_thermometer_from_before_the_moulds_says_nothing_of_the_store(ask):
    make = Make("store", "curing_days").run("fill_moulds", 1000, 1001)
    for minute in range(3):
        make.read("room_temp_c", 21.0, minute, typed="69.8", typed_unit="F")
    make.run("store", 1002).read("store_temp_c", 12.0, 1003)
    known = make.known(ask, 1004)
    # Seen: counted in Celsius, judged by the limit in Fahrenheit.
    assert known["store_thermometer"] == "C"
    assert known["curing_temps"] == [{"at_min": 2, "value": 12.0}]


def test_brine_and_press_count_toward_the_days_as_they_were_read(ask):
    make = Make("store", "curing_days").run("fill_moulds", 0, 1).run("store", 2)
    make.read("room_temp_c", 20.0, 1).read("brine_temp_c", 12.0, 1000)
    make.read("store_temp_c", 12.0, 2000)
    got = make.value(ask, 2000, "counted_days")
    assert got == pytest.approx(1999 / 1440)


def test_before_the_moulds_no_day_counts(ask):
    make = Make("store", "curing_days").run("store", 2)
    (row,) = make.read("store_temp_c", 12.0, 5).answers(ask, 6)
    assert "curing_temps" in row["missing"]


@pytest.mark.parametrize(("days", "verdict"), [(60, "meets"), (59, "does_not_meet")])
def test_raw_milk_cheese_is_held_by_the_makes_own_log(ask, days, verdict):
    # 21 CFR 133.142 as Edam: raw milk, 60 days at 35 °F.
    make = Make("store", "identity").run("fill_moulds", 0, 1).run("store", 2)
    make.read("milk_temp_c", 60.0, -200).run("hold", -201, -150)
    for day in range(days + 1):
        make.read("store_temp_c", 10.0, 1 + 1440 * day, typed="50", typed_unit="F")
    for size in ("small", "large"):
        make.read("cheese_moisture_frac", 0.42, 50, place=size)
        make.read("cheese_fat_frac", 0.29, 51, place=size)
    given = {"standard": {"value": "gouda"}}
    for row in make.answers(ask, 1 + 1440 * days, given=given):
        known = {item["name"]: item["value"] for item in row["known"]}
        assert known["cured_days"] == days
        assert row["values"][0]["value"] == verdict
