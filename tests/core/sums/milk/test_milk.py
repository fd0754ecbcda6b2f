import pytest

from tests.core.sums.asking import amount, answer, typed, values

RECEIVING = ["us_milk_receiving", "eu_uk_milk_receiving"]


def test_a_little_under_700_gallons_weighs_just_under_6000_lb(core):
    # Common practice of a creamery, cold whole milk; 8.6 lb a US gallon (USDA).
    given = {
        "milk_l": typed("696", "gal"),
        "fat_frac": typed("4,0", "%"),
        "milk_temp_c": typed("40", "F"),
    }
    lb = amount(core, "milk_mass", given, "milk_kg") / 0.45359237
    assert 5950 < lb < 6020
    assert lb / 696 == pytest.approx(8.6, abs=0.05)


def test_mass_and_its_range_hold_the_printed_density(core):
    # D. Goff, Guelph: 4.00 % fat, 8.95 % SNF has 1.030 kg/L at 20 °C.
    given = {"milk_l": 100, "fat_frac": 0.04, "milk_temp_c": 20}
    row = values(core, "milk_mass", given)[("milk_kg", None)]
    assert row["low"] <= 103.0 <= row["high"]


def test_litres_come_back_from_kilograms(core):
    given = {"milk_l": 100, "fat_frac": 0.04, "milk_temp_c": 20}
    kg = amount(core, "milk_mass", given, "milk_kg")
    back = {"weighed_kg": kg, "fat_frac": 0.04, "milk_temp_c": 20}
    assert amount(core, "milk_mass", back, "milk_l") == pytest.approx(100)


def test_milk_neither_weighed_nor_metered_is_asked_for(core):
    found = answer(core, "milk_mass", {"fat_frac": 0.04, "milk_temp_c": 4})
    assert found["missing"] == ["milk_l"]


@pytest.mark.parametrize(
    ("text", "verdict"), [("45.0", "meets"), ("45.1", "does_not_meet")]
)
def test_receipt_is_judged_in_the_unit_that_was_typed(core, text, verdict):
    # 1 NYCRR 2.49: 45 °F until processed.
    given = {"milk_temp_c": typed(text, "F")}
    found = values(core, "milk_receipt", given, RECEIVING)
    assert found[("temperature", "held_in_plant")]["value"] == verdict
    assert found[("temperature", "held_in_plant")]["high"] == 45


def test_a_rule_not_printed_in_the_typed_unit_gives_no_verdict(core):
    given = {"milk_temp_c": typed("7", "C")}
    found = values(core, "milk_receipt", given, RECEIVING)
    assert found[("temperature", "held_in_plant")]["value"] == "not_assessed"


def test_a_figure_from_memory_neither_passes_nor_fails_milk(core):
    given = {"milk_temp_c": typed("20", "C"), "jurisdiction": "eu_uk"}
    found = answer(core, "milk_receipt", given, rules=RECEIVING)
    verdicts = {r["value"] for r in found["values"] if r["name"] == "temperature"}
    assert verdicts == {"not_assessed"}
    assert "note.figure_from_memory" in [row["key"] for row in found["notes"]]


@pytest.mark.parametrize(
    ("test", "verdict"),
    [("negative", "meets"), ("positive", "does_not_meet"), (None, "not_assessed")],
)
def test_a_drug_test_not_made_is_not_a_negative_one(core, test, verdict):
    given = {"milk_temp_c": 4}
    if test:
        given["drug_test"] = test
    found = values(core, "milk_receipt", given, RECEIVING)
    assert found[("drug_test", "every_load")]["value"] == verdict


def test_cells_meet_one_rule_and_not_the_other(core):
    # 750,000 in the US, 400,000 in the EU.
    given = {"milk_temp_c": 4, "somatic_cells_ml": 750000}
    us = values(core, "milk_receipt", given, RECEIVING)
    eu = values(core, "milk_receipt", {**given, "jurisdiction": "eu_uk"}, RECEIVING)
    assert us[("somatic_cells", "cow")]["value"] == "meets"
    assert eu[("somatic_cells", "cow")]["value"] == "does_not_meet"


def test_milk_at_four_degrees_may_wait_48_hours_in_the_old_uk_text(core):
    # SI 1995/1086, schedule 5: 36 h at 6 °C, 48 h at 4 °C.
    given = {"jurisdiction": "eu_uk", "milk_temp_c": 4, "milk_age_h": 40}
    found = values(core, "milk_receipt", given, RECEIVING)
    assert found[("age", "at_4_c")]["value"] == "meets"
    found = values(core, "milk_receipt", {**given, "milk_temp_c": 5}, RECEIVING)
    assert found[("age", "at_6_c")]["value"] == "does_not_meet"


def test_acidity_scales_agree_with_the_laboratory_pages(core):
    # 7 °SH is 0.1575 %, 15.75 °D, 17.5 °Th (two dairy laboratory pages).
    given = {"acidity_frac": typed("7", "soxhlet_henkel")}
    found = values(core, "acidity_units", given)
    assert found[("lactic_percent", None)]["value"] == pytest.approx(0.1575)
    assert found[("dornic", None)]["value"] == pytest.approx(15.75)
    assert found[("thorner", None)]["value"] == pytest.approx(17.5)


def test_a_titration_is_worked_by_hand(core):
    # 1.7 mL of 0.1 N on 10 mL: 1.7 × 0.009 g on 10 mL, 0.153 %.
    given = {"alkali_ml": 1.7}
    got = amount(core, "acidity_titration", given, "acidity_frac")
    assert got == pytest.approx(0.00153)


def test_no_sum_turns_acidity_into_ph(core):
    found = answer(core, "acidity_units", {"acidity_frac": 0.0016})
    assert all(row["unit"] != "pH" for row in found["values"])
    assert found["notes"][0]["key"] == "note.acidity_never_ph"


def test_pearsons_square_by_hand(core):
    # 100 kg of 4.0 % with skim of 0.0 % to 3.2 %: 400 / 3.2 is 125 kg in all.
    given = {
        "milk_kg": 100,
        "fat_frac": 0.04,
        "target_fat_frac": 0.032,
        "added_fat_frac": 0,
    }
    found = values(core, "standardise_fat", given)
    assert found[("added_kg", None)]["value"] == pytest.approx(25)
    assert found[("milk_share_frac", None)]["value"] == pytest.approx(0.8)


def test_cream_is_taken_off_by_hand(core):
    # 0.8 points over 36.8 points of 100 kg.
    given = {
        "milk_kg": 100,
        "fat_frac": 0.04,
        "target_fat_frac": 0.032,
        "added_fat_frac": 0.4,
        "way": "take_cream_off",
    }
    got = amount(core, "standardise_fat", given, "cream_off_kg")
    assert got == pytest.approx(80 / 36.8)


def test_protein_to_fat_follows_the_gouda_page(core):
    # Guelph: ratio 1.07; protein 3.3 % asks for 3.084 % fat.
    given = {"milk_kg": 100, "protein_frac": 0.033, "fat_frac": 0.04}
    got = amount(core, "standardise_ratio", given, "target_fat_frac")
    assert got == pytest.approx(0.03084, abs=5e-6)


def test_a_plate_count_is_held_against_the_grade_a_figure(core):
    # 100,000 /mL for a producer (Pasteurized Milk Ordinance table).
    given = {"milk_temp_c": 4, "plate_count_ml": 100000}
    us = values(core, "milk_receipt", given, RECEIVING)
    assert us[("plate_count", "grade_a_producer")]["value"] == "meets"
    given = {"jurisdiction": "eu_uk", "species": "goat", **given}
    eu = values(core, "milk_receipt", given, RECEIVING)
    # 1,500,000 for other species (Regulation 853/2004).
    assert eu[("plate_count", "other_species")]["high"] == 1500000


def test_milk_of_unknown_age_is_not_assessed(core):
    given = {"jurisdiction": "eu_uk", "milk_temp_c": 4}
    found = values(core, "milk_receipt", given, RECEIVING)
    assert found[("age", "at_4_c")]["value"] == "not_assessed"


def test_goats_milk_may_wait_72_hours_in_the_old_uk_text(core):
    given = {
        "jurisdiction": "eu_uk",
        "species": "goat",
        "milk_temp_c": 4,
        "milk_age_h": 72,
    }
    found = values(core, "milk_receipt", given, RECEIVING)
    assert found[("age", "ewe_goat_buffalo")]["value"] == "meets"


@pytest.mark.parametrize(
    ("given", "first", "then"),
    [
        # COMAR 10.15.09.08: 50 °F within 4 h of the start, 45 °F within 2 h of the end.
        ({"first_cooled_h": 4, "last_cooled_h": 2}, "meets", "meets"),
        ({"first_cooled_h": 4.1}, "does_not_meet", "not_assessed"),
        ({"last_cooled_h": 2.1}, "not_assessed", "does_not_meet"),
        # Cold milk of 3 h was cold in time; of 30 h nobody can tell.
        ({"milk_age_h": 3}, "meets", "not_assessed"),
        ({"milk_age_h": 30}, "not_assessed", "not_assessed"),
        # The log goes before what the age alone tells.
        ({"milk_age_h": 3, "first_cooled_h": 5}, "does_not_meet", "not_assessed"),
        ({}, "not_assessed", "not_assessed"),
    ],
)
def test_us_milk_was_cold_in_time_where_times_are_known(core, given, first, then):
    temp = {"milk_temp_c": {"typed": "42", "unit": "F"}}
    found = values(core, "milk_receipt", {**temp, **given}, RECEIVING)
    assert found[("cooling", "cooled_first")]["value"] == first
    assert found[("cooling", "cooled_then")]["value"] == then
    assert found[("cooling", "cooled_first")]["high"] == 4 * 3600
    assert found[("cooling", "cooled_then")]["high"] == 2 * 3600


@pytest.mark.parametrize(
    ("text", "age_h", "verdict"),
    [
        ("50", 3, "meets"),
        ("50.1", 3, "not_assessed"),  # it has an hour left
        ("50.1", 5, "does_not_meet"),
        ("50", 5, "not_assessed"),
    ],
)
def test_age_and_heat_alone_tell_of_cooling_what_they_can(core, text, age_h, verdict):
    given = {"milk_temp_c": {"typed": text, "unit": "F"}, "milk_age_h": age_h}
    found = values(core, "milk_receipt", given, RECEIVING)
    assert found[("cooling", "cooled_first")]["value"] == verdict


def test_european_milk_has_no_such_cooling(core):
    given = {"milk_temp_c": 4, "jurisdiction": "eu_uk", "first_cooled_h": 3}
    found = values(core, "milk_receipt", given, RECEIVING)
    assert ("cooling", "cooled_first") not in found


def test_receipt_without_the_rules_says_so(core):
    found = answer(core, "milk_receipt", {"milk_temp_c": 4})
    assert found["missing"] == ["rules"]


def test_milk_too_warm_for_the_table_is_told(core):
    given = {"milk_l": 100, "fat_frac": 0.04, "milk_temp_c": 42}
    found = answer(core, "milk_mass", given)
    assert found["notes"][0]["key"] == "note.density_outside_table"


def test_skim_stirred_in_meets_the_ratio_by_hand(core):
    # (4.28 - 3.3) / 0.034 = 28.82 kg of skim at 3.4 % protein, ratio 1.07.
    given = {
        "milk_kg": 100,
        "protein_frac": 0.033,
        "fat_frac": 0.04,
        "added_protein_frac": 0.034,
        "added_fat_frac": 0,
    }
    got = amount(core, "standardise_ratio", given, "added_kg")
    assert got == pytest.approx(0.98 / 0.034)
