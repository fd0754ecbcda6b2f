import pytest

from tests.core.sums.asking import amount, answer, table, typed, values

LB_KG = 0.45359237


def test_the_general_yield_is_as_worked(core):
    # Fat 3.4 %, casein 2.6 %, moisture 43 %: 10.374 %.
    given = {"milk_kg": 515, "fat_frac": 0.034, "casein_frac": 0.026}
    row = values(core, "expected_yield", given)[("yield_frac", None)]
    assert row["value"] == pytest.approx(0.10374, abs=5e-6)
    assert row["low"] < row["value"] < row["high"]


def test_protein_stands_in_for_casein(core):
    # Guelph: protein 3.3 %, casein 2.6 %: casein number .788.
    given = {
        "milk_kg": 515,
        "fat_frac": 0.034,
        "protein_frac": 0.033,
        "casein_number": 0.026 / 0.033,
    }
    got = amount(core, "expected_yield", given, "yield_frac")
    assert got == pytest.approx(0.10374, abs=5e-6)


def test_neither_protein_nor_casein_is_asked_for(core):
    found = answer(core, "expected_yield", {"milk_kg": 515, "fat_frac": 0.034})
    assert found["missing"] == ["protein_frac"]


def test_cheese_and_whey_are_the_milk_and_the_water(core):
    given = {
        "milk_kg": 515,
        "fat_frac": 0.034,
        "casein_frac": 0.026,
        "water_added_kg": 100,
    }
    found = values(core, "expected_yield", given)
    out = found[("cheese_kg", None)]["value"] + found[("whey_kg", None)]["value"]
    assert out == pytest.approx(615)


def test_15_small_and_24_large_wheels_come_from_just_under_6000_lb(core):
    # Common practice: 15 wheels of 1 kg and 24 of 10 kg from just under 6,000 lb.
    given = {
        "milk_kg": typed("5970", "lb"),
        "fat_frac": 0.033,
        "protein_frac": 0.031,
        "moisture_frac": 0.42,
    }
    cheese = values(core, "expected_yield", given)[("cheese_kg", None)]
    made_kg = 15 * 1.0 + 24 * 10.0
    assert cheese["low"] < made_kg < cheese["high"]
    share = amount(
        core,
        "actual_yield",
        {"milk_kg": typed("5970", "lb"), "cheese_kg": made_kg},
        "yield_frac",
    )
    assert 0.09 < share < 0.10


def test_255_kg_fill_as_many_wheels_as_practice_says(core):
    given = {
        "curd_kg": 255,
        "sizes": table(["wheel_kg"], [10], [1]),
        "share_large_frac": 240 / 255,
    }
    found = values(core, "wheel_plan", given)
    assert found[("wheels_by_share", "size_1")]["value"] == 24
    assert found[("wheels_by_share", "size_2")]["value"] == 15
    assert found[("left_by_share_kg", None)]["value"] == pytest.approx(0, abs=1e-9)


def test_a_10_kg_wheel_weighs_between_20_and_25_lb(core):
    found = values(core, "fill_mass", {"ripe_kg": 10})
    assert 20 < 10 / LB_KG < 25
    assert 20 < found[("fill_kg", None)]["value"] / LB_KG < 25


def test_whole_wheels_and_what_is_left_by_hand(core):
    # 54.075 kg: twelve of 4.5 kg leave 0.075 kg.
    given = {"curd_kg": 54.075, "sizes": table(["wheel_kg"], [4.5])}
    found = values(core, "wheel_plan", given)
    assert found[("wheels", "size_1")]["value"] == 12
    assert found[("left_kg", None)]["value"] == pytest.approx(0.075)


def test_a_yield_that_is_not_sure_gives_a_range_of_wheels(core):
    given = {
        "curd_kg": 54.075,
        "curd_low_kg": 52.5,
        "curd_high_kg": 55.7,
        "sizes": table(["wheel_kg"], [4.5]),
    }
    row = values(core, "wheel_plan", given)[("wheels", "size_1")]
    assert (row["low"], row["high"]) == (11, 12)


def test_moisture_adjusted_yield_follows_the_exercise(core):
    # Hill and Ferrer, chapter 18: 11 %, 37 to 39 %: 11.3607 %.
    given = {
        "milk_kg": 1000,
        "cheese_kg": 110,
        "cheese_moisture_frac": 0.37,
        "standard_moisture_frac": 0.39,
    }
    got = amount(core, "actual_yield", given, "adjusted_yield_frac")
    assert got == pytest.approx(0.113607, abs=5e-7)


def test_the_account_closes_and_a_gap_is_told(core):
    given = {"milk_kg": 1000, "cheese_kg": 100, "whey_kg": 900}
    found = values(core, "actual_yield", given)
    assert found[("accounted_ratio", "mass")]["value"] == pytest.approx(1)
    found = answer(core, "actual_yield", {**given, "whey_kg": 860})
    assert [row["key"] for row in found["notes"]] == ["note.account.some_missing"]


def test_fat_kept_by_hand(core):
    # 29.99 % of 10.43 kg over 3.4 % of 100 kg: .92.
    given = {
        "milk_kg": 100,
        "cheese_kg": 10.43,
        "fat_frac": 0.034,
        "cheese_fat_frac": 0.2999,
        "whey_kg": 89.57,
        "whey_fat_frac": 0.00304,
    }
    found = values(core, "actual_yield", given)
    assert found[("fat_kept_frac", None)]["value"] == pytest.approx(0.92, abs=5e-5)
    assert found[("accounted_ratio", "fat")]["value"] == pytest.approx(1, abs=2e-3)


def test_a_light_mould_is_told(core):
    # 12 kg ripe, 2 % then 3 % lost: 12.624 kg.
    found = values(core, "fill_mass", {"ripe_kg": 12, "filled_kg": 12.3})
    assert found[("fill_kg", None)]["value"] == pytest.approx(12.624, abs=5e-4)
    assert found[("fill_verdict", None)]["value"] == "light"


def test_no_milk_has_no_yield(core):
    found = answer(core, "actual_yield", {"milk_kg": 0, "cheese_kg": 1})
    assert found["problems"][0]["field"] == "milk_kg"
    assert found["problems"][0]["limit"] == 0
