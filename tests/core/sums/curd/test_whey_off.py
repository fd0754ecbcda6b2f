import pytest

from tests.core.sums.asking import amount, answer, values


def test_a_third_of_the_whey_by_hand(core):
    # A third of 89 kg whey from 100 kg milk: 29.67 kg off, 70.33 kg left.
    found = values(core, "wash_drain", {"milk_kg": 100})
    assert found[("drain_kg", None)]["value"] == pytest.approx(89 / 3)
    assert found[("vat_kg", None)]["value"] == pytest.approx(100 - 89 / 3)


def test_whey_off_for_the_water_at_hand_gives_the_temperature(core):
    given = {
        "milk_kg": 100,
        "water_kg": 20,
        "vat_temp_c": 31,
        "target_temp_c": 37,
        "water_planned_c": 56.68,
    }
    # 56.68 °C is right for 20 kg on 70.3 kg: so 29.7 kg must go.
    got = amount(core, "wash_drain", given, "drain_for_water_kg")
    assert got == pytest.approx(29.7, abs=0.02)


def test_more_water_than_is_needed_asks_for_no_whey_off(core):
    given = {
        "milk_kg": 100,
        "water_kg": 90,
        "vat_temp_c": 31,
        "target_temp_c": 33,
        "water_planned_c": 60,
    }
    found = answer(core, "wash_drain", given)
    assert "note.water_is_more_than_enough" in [row["key"] for row in found["notes"]]


def test_whey_off_for_water_needs_the_temperatures(core):
    found = answer(core, "wash_drain", {"milk_kg": 100, "water_kg": 20})
    assert found["missing"] == ["vat_temp_c", "target_temp_c", "water_planned_c"]


def test_whey_off_for_cold_water_is_refused(core):
    given = {
        "milk_kg": 100,
        "water_kg": 20,
        "vat_temp_c": 31,
        "target_temp_c": 37,
        "water_planned_c": 20,
    }
    problem = answer(core, "wash_drain", given)["problems"][0]
    assert problem["field"] == "target_temp_c"


def test_a_vat_that_is_warm_already_still_tells_the_whey_to_run_off(core):
    given = {
        "milk_kg": 100,
        "water_kg": 20,
        "vat_temp_c": 38,
        "target_temp_c": 37,
        "water_planned_c": 60,
    }
    found = answer(core, "wash_drain", given)
    assert found["values"][0]["value"] == pytest.approx(89 / 3)
    assert [row["key"] for row in found["notes"]] == ["note.vat_is_warm_enough"]


def test_water_too_little_for_the_whole_rise_asks_for_more_whey_than_there_is(core):
    # 1 kg at 60 °C warms 1 × 4180 × 23 / (3900 × 6) = 4.1 kg by 6 K; 89 kg is whey.
    given = {
        "milk_kg": 100,
        "water_kg": 1,
        "vat_temp_c": 31,
        "target_temp_c": 37,
        "water_planned_c": 60,
    }
    told = answer(core, "wash_drain", given)["notes"]
    assert [row["key"] for row in told] == ["note.drain_more_than_whey"]
    assert told[0]["limit"] == pytest.approx(89)
    assert told[0]["value"] == pytest.approx(100 - 4180 * 23 / (3900 * 6), abs=0.02)


def test_more_whey_than_is_left_is_refused_with_what_is_left(core):
    # 89 kg of whey, 70 off already: a third of 89 is more than the 19 left.
    problem = answer(core, "wash_drain", {"milk_kg": 100, "drained_before_kg": 70})[
        "problems"
    ][0]
    assert problem["field"] == "drain_frac"
    # 19 of the 89 kg that all the whey is.
    assert problem["limit"] == pytest.approx(19 / 89)
    assert problem["figures"]["left_kg"]["value"] == pytest.approx(19)
