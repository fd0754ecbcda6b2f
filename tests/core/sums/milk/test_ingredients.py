import math

import pytest

from tests.core.formulas.tables import table
from tests.core.sums.asking import amount, answer, band, typed, values


def test_part_of_a_pack_by_hand(core):
    # A pack of 50 units for 500 L: 300 L takes 0.6 of it.
    given = {"milk_l": 300, "pack_units": 50, "dose_units_per_l": 0.1}
    assert amount(core, "starter_packs", given, "packs") == pytest.approx(0.6)


def test_bulk_starter_follows_the_gouda_page(core):
    # 0.75 % of 515 kg (Guelph): 3.8625 kg.
    got = amount(core, "starter_bulk", {"milk_kg": 515}, "starter_kg")
    assert got == pytest.approx(3.8625)


def test_twice_the_starter_brings_the_acid_half_an_hour_sooner(core):
    # ln 2 over 1.36 per hour (Medvedova et al.): 0.51 h.
    row = values(core, "starter_change", {"dose_ratio": 2})[("earlier_s", None)]
    assert row["value"] == pytest.approx(math.log(2) / 1.36 * 3600)
    assert row["low"] < row["value"] < row["high"]


def test_half_the_starter_brings_it_later(core):
    got = amount(core, "starter_change", {"dose_ratio": 0.5}, "earlier_s")
    assert got == pytest.approx(-math.log(2) / 1.36 * 3600)


def test_rennet_goes_by_the_strength_on_the_bottle(core):
    # A supplier's page: 30 mL of 175 IMCU/mL in 100 L; Guelph: 10 volumes of water.
    given = {"milk_l": 100, "strength_imcu_per_ml": 175}
    found = values(core, "rennet_dose", given)
    assert found[("rennet_ml", None)]["value"] == pytest.approx(30)
    assert found[("water_ml", None)]["value"] == pytest.approx(300)


def test_rennet_by_soxhlet_strength_by_hand(core):
    # 1:15000 clots 15 L a millilitre in 40 min: 6.67 mL for 100 L.
    given = {
        "milk_l": 100,
        "strength_kind": "soxhlet",
        "strength_soxhlet": 15000,
    }
    got = amount(core, "rennet_dose", given, "rennet_ml")
    assert got == pytest.approx(100 / 15)


def test_one_strength_is_never_turned_into_the_other(core):
    given = {"milk_l": 100, "strength_soxhlet": 15000}
    found = answer(core, "rennet_dose", given)
    assert found["missing"] == ["strength_imcu_per_ml"]


def test_cut_is_three_times_the_floc_time_with_the_look_before(core):
    # Floc seen at 12 min, looks two minutes apart: 36 min; 10 × 2.5 to 12 × 3.5.
    row = values(core, "cut_time", {"floc_s": typed("12", "min")})[("cut_s", None)]
    assert [end / 60 for end in band(row)] == pytest.approx([25, 36, 42])


@pytest.mark.parametrize(
    ("minutes", "key"), [("5", "cut.floc_too_early"), ("26", "cut.floc_too_late")]
)
def test_a_floc_point_outside_its_window_is_told_with_its_cut(core, minutes, key):
    found = answer(core, "cut_time", {"floc_s": typed(minutes, "min")})
    # Three times: the only word on the cut, with what speaks against it.
    assert found["values"][0]["value"] == 3 * 60 * int(minutes)
    assert found["notes"][0]["key"] == "note." + key


def test_the_next_dose_by_hand(core):
    # 16 min, wanted 13, delay 2: 14 / 11 (Holter's form).
    given = {
        "floc_s": typed("16", "min"),
        "target_floc_s": typed("13", "min"),
        "rennet_ml": 100,
    }
    got = amount(core, "rennet_next", given, "next_rennet_ml")
    assert got == pytest.approx(1400 / 11)


@pytest.mark.parametrize(("dose", "word"), [(0.2, "meets"), (0.201, "does_not_meet")])
def test_calcium_chloride_is_judged_without_its_water(core, dose, word):
    # 21 CFR 133.138(b)(3): 20 g on 100 kg, which is 26.5 g of dihydrate.
    given = {"milk_kg": 100, "dose_g_per_kg": dose, "form": "dihydrate"}
    found = values(core, "calcium_chloride", given, ["us_identity"])
    assert found[("limit", "us_identity")]["value"] == word
    if dose == 0.2:
        weighed = found[("weigh_out_g", None)]["value"]
        assert weighed == pytest.approx(26.5, abs=0.01)


def test_a_solution_goes_by_its_label(core):
    # 20 g from 33 % at 1.32 kg/L: 20 / 0.33 / 1.32 mL.
    given = {
        "milk_kg": 100,
        "dose_g_per_kg": 0.2,
        "form": "solution",
        "solution_frac": 0.33,
        "solution_density_kg_l": 1.32,
    }
    got = amount(core, "calcium_chloride", given, "solution_ml", rules=["us_identity"])
    assert got == pytest.approx(20 / 0.33 / 1.32)


def test_colour_for_winter_milk_has_the_printed_range(core):
    # Guelph: 1 to 2 mL on 1000 kg.
    row = values(core, "colour", {"milk_kg": 1000})[("colour_ml", None)]
    assert (row["low"], row["high"]) == (1, 2)


def test_a_solution_without_its_label_is_asked_for(core):
    found = answer(core, "calcium_chloride", {"milk_kg": 100, "form": "solution"})
    assert found["missing"] == ["solution_frac"]


@pytest.mark.parametrize(
    "row", table("calcium_density")["densities"], ids=lambda row: str(row["frac"])
)
def test_a_solution_is_as_dense_as_a_reference_library_says(core, row):
    told = core(
        "formulas.milk.ingredients", "calcium_solution_density_kg_l", row["frac"]
    )
    rel = table("calcium_density")["tolerance_rel"]
    assert told == pytest.approx(row["kg_l"], rel=rel)


def test_a_solution_whose_label_tells_no_density_takes_the_usual_one(core):
    given = {"milk_kg": 100, "dose_g_per_kg": 0.2, "form": "solution"}
    given["solution_frac"] = 0.33
    found = answer(core, "calcium_chloride", given)
    (row,) = [row for row in found["values"] if row["name"] == "solution_ml"]
    # 20 g from 33 % at about 1.32 kg/L: 45.9 mL; the density is said to be recalled.
    assert row["value"] == pytest.approx(45.9, rel=5e-3)
    told = {row["name"]: row["status"] for row in found["rests_on"]}
    assert told["solution_density_kg_l"] == "memory"


def test_powdered_rennet_is_weighed(core):
    # 600 L at 52.5 IMCU/L of 2,100 IMCU/g: 31,500 / 2,100.
    given = {"milk_l": 600, "strength_kind": "imcu_powder", "strength_imcu_per_g": 2100}
    found = values(core, "rennet_dose", given)
    assert found[("rennet_g", None)]["value"] == pytest.approx(15)
    assert ("rennet_ml", None) not in found


def test_powder_by_soxhlet_is_weighed(core):
    # 1:100,000 is 1 g for 100 L in 40 min at 35 °C.
    given = {
        "milk_l": 250,
        "strength_kind": "soxhlet_powder",
        "strength_soxhlet": 100000,
    }
    assert amount(core, "rennet_dose", given, "rennet_g") == pytest.approx(2.5)


def test_tablets_are_counted_by_the_milk_that_one_sets(core):
    given = {"milk_l": 250, "strength_kind": "tablet", "tablet_sets_l": 100}
    assert amount(core, "rennet_dose", given, "rennet_tablets") == pytest.approx(2.5)


@pytest.mark.parametrize(
    ("kind", "name"),
    [("imcu_powder", "strength_imcu_per_g"), ("tablet", "tablet_sets_l")],
)
def test_each_form_asks_for_what_its_label_says(core, kind, name):
    found = answer(core, "rennet_dose", {"milk_l": 100, "strength_kind": kind})
    assert found["missing"] == [name]


def test_starter_of_a_pack_with_its_weight_is_weighed(core):
    # 0.6 of a pack of 250 g.
    given = {"milk_l": 300, "pack_units": 50, "dose_units_per_l": 0.1, "pack_g": 250}
    assert amount(core, "starter_packs", given, "starter_g") == pytest.approx(150)


def test_calcium_chloride_without_the_rule_gives_the_dose_and_no_verdict(core):
    found = answer(core, "calcium_chloride", {"milk_kg": 100, "form": "anhydrous"})
    assert [row["name"] for row in found["values"]] == ["anhydrous_g", "weigh_out_g"]
    assert found["notes"][-1]["key"] == "note.rules_not_here"


def test_soxhlet_needs_its_strength(core):
    found = answer(core, "rennet_dose", {"milk_l": 100, "strength_kind": "soxhlet"})
    assert found["missing"] == ["strength_soxhlet"]


def test_a_dose_that_would_more_than_double_is_told(core):
    given = {"floc_s": typed("25", "min"), "target_floc_s": typed("10", "min")}
    found = answer(core, "rennet_next", given)
    # (25 - 2) / (10 - 2) = 2.875.
    assert found["values"][0]["value"] == pytest.approx(2.875)
    assert found["notes"][0]["key"] == "note.factor_outside"
