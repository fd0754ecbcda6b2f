import math

import pytest

from server.core.formulas.milk import ingredients


def ask(core, name, *args):
    return core("formulas.milk.ingredients", name, *args)


def test_part_of_a_pack_stays_a_fraction(core):
    # A pack of 50 units for 500 L; 300 L is three fifths of the milk.
    assert ask(core, "starter_packs", 300, 0.1, 50) == pytest.approx(0.6, rel=1e-12)


def test_gouda_bulk_starter(core):
    # 0.75 % (A. Hill, Guelph, Gouda) of 515 kg: 3.8625 kg by hand.
    got = ask(core, "bulk_starter_kg", 515, 0.0075)
    assert got == pytest.approx(3.8625, rel=1e-12)


@pytest.mark.parametrize(
    ("name", "rest"),
    [
        ("starter_packs", (0.1, 50)),
        ("bulk_starter_kg", (0.0075,)),
        ("calcium_chloride_g", (0.15, "dihydrate")),
        ("colour_ml", (2,)),
    ],
)
def test_a_dose_scales_with_the_milk(core, name, rest):
    one, three = ask(core, name, 100, *rest), ask(core, name, 300, *rest)
    assert three == pytest.approx(3 * one, rel=1e-12)
    assert ask(core, name, 0, *rest) == 0


def test_twice_the_starter_brings_the_acid_half_an_hour_earlier(core):
    # ln 2 / 1.36 per hour = 0.5097 h.
    got = ask(core, "acid_shift_s", 2, 1.36 / 3600) / 3600
    assert got == pytest.approx(0.5097, abs=5e-5)


def test_half_the_starter_is_as_late_as_twice_is_early(core):
    early, late = [ask(core, "acid_shift_s", x, 4e-4) for x in (2, 0.5)]
    assert early == pytest.approx(-late, rel=1e-12)
    assert ask(core, "acid_shift_s", 1, 4e-4) == 0


def test_twenty_grams_anhydrous_are_26_5_of_the_dihydrate(core):
    # Molar masses 110.98 and 147.01: 20 × 147.01 / 110.98 = 26.4931.
    got = ask(core, "calcium_chloride_g", 100, 0.2, "dihydrate")
    assert got == pytest.approx(26.4931, abs=5e-5)


def test_the_dihydrate_is_the_salt_and_two_waters():
    # Atomic weights: Ca 40.078, Cl 35.453, H 1.008, O 15.999.
    salt = 40.078 + 2 * 35.453
    water = 2 * 1.008 + 15.999
    # Both molar masses are rounded to 0.01.
    assert pytest.approx(salt, abs=0.01) == ingredients.CALCIUM_CHLORIDE_G_MOL
    assert pytest.approx(salt + 2 * water, abs=0.01) == ingredients.DIHYDRATE_G_MOL


@pytest.mark.parametrize("form", ["anhydrous", "dihydrate"])
def test_weighing_out_and_reading_back_agree(core, form):
    weighed = ask(core, "calcium_chloride_g", 512, 0.15, form)
    got = ask(core, "anhydrous_g", weighed, form)
    assert got == pytest.approx(512 * 0.15, rel=1e-12)


def test_a_third_strength_solution(core):
    # 20 g / (0.33 × 1.32 g/mL) = 45.914 mL.
    got = ask(core, "calcium_solution_ml", 20, 0.33, 1.32)
    assert got == pytest.approx(45.914, abs=5e-4)


@pytest.mark.parametrize(
    ("weighed_g", "form", "over"),
    [
        (20, "anhydrous", False),
        (20.1, "anhydrous", True),
        (26.49, "dihydrate", False),
        (30, "dihydrate", True),
    ],
)
def test_the_legal_limit_counts_as_anhydrous(core, weighed_g, form, over):
    # 21 CFR 133.138(b)(3): 0.02 % of 100 kg of milk is 20 g anhydrous.
    anhydrous = ask(core, "anhydrous_g", weighed_g, form)
    problems = ask(core, "check_calcium_chloride", anhydrous, 100, 0.0002)
    assert bool(problems) == over
    if over:
        (problem,) = problems
        assert (problem["field"], problem["key"]) == ("anhydrous_g", "above_limit")
        assert problem["limit"] == pytest.approx(20, rel=1e-12)


@pytest.mark.parametrize("milk_kg", [0.7, 103, 515, 1234.5, 2999.9])
def test_a_dose_worked_out_to_the_limit_meets_it(core, milk_kg):
    weighed = ask(core, "calcium_chloride_g", milk_kg, 0.2, "dihydrate")
    anhydrous = ask(core, "anhydrous_g", weighed, "dihydrate")
    assert ask(core, "check_calcium_chloride", anhydrous, milk_kg, 0.0002) == []


def test_winter_annatto(core):
    # 2 mL for 1000 kg (A. Hill, Guelph, Gouda): 1.03 mL for 515 kg.
    assert ask(core, "colour_ml", 515, 2) == pytest.approx(1.03, rel=1e-12)


@pytest.mark.parametrize(
    ("name", "args", "words"),
    [
        ("starter_packs", (-1, 0.1, 50), "milk_l -1 below 0"),
        ("starter_packs", (300, 0.1, 0), "pack_units 0 not_above 0"),
        ("bulk_starter_kg", (515, 0.75), "starter_frac 0.75 above 0.1"),
        ("acid_shift_s", (0, 1), "dose_ratio 0 not_above 0"),
        ("acid_shift_s", (2, 0), "growth_per_s 0 not_above 0"),
        ("calcium_chloride_g", (100, 0.2, "flakes"), "form 'flakes' not_a_choice"),
        ("calcium_chloride_g", (100, -0.2, "dihydrate"), "dose_g_per_kg -0.2 below"),
        ("anhydrous_g", (-3, "dihydrate"), "weighed_g -3 below 0"),
        ("calcium_solution_ml", (20, 33, 1.32), "solution_frac 33 above 0.45"),
        ("calcium_solution_ml", (20, 0, 1.32), "solution_frac 0 not_above 0"),
        ("check_calcium_chloride", (20, 0, 0.0002), "milk_kg 0 not_above 0"),
        ("colour_ml", (515, -2), "dose_ml_per_t -2 below 0"),
    ],
)
def test_an_impossible_ingredient_is_refused(core, name, args, words):
    with pytest.raises(ValueError, match=words):
        ask(core, name, *args)


def test_the_shift_is_natural_not_decimal(core):
    assert ask(core, "acid_shift_s", math.e, 1) == pytest.approx(1, rel=1e-12)
