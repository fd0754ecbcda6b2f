import pytest


def test_pearsons_square(core):
    # Cream 40 %, skim 0.02 %, wanted 3.5 %: 3.48 parts of cream in 39.98.
    got = core("formulas.milk.standardise", "blend_share", 0.40, 0.0002, 0.035)
    assert got == pytest.approx(3.48 / 39.98, rel=1e-12)


@pytest.mark.parametrize(("target", "share"), [(0.40, 1), (0.0002, 0)])
def test_a_blend_may_be_one_of_its_two(core, target, share):
    got = core("formulas.milk.standardise", "blend_share", 0.40, 0.0002, target)
    assert got == pytest.approx(share, abs=1e-15)


def test_skim_added_to_all_the_milk_meets_the_fat(core):
    added = core("formulas.milk.standardise", "added_kg", 515, 0.041, 0.0002, 0.034)
    fat_kg = 515 * 0.041 + added * 0.0002
    assert fat_kg / (515 + added) == pytest.approx(0.034, rel=1e-12)


def test_cream_taken_off_keeps_the_fat_balance(core):
    cream = core("formulas.milk.standardise", "cream_off_kg", 515, 0.041, 0.40, 0.034)
    assert (515 * 0.041 - cream * 0.40) / (515 - cream) == pytest.approx(0.034)


def test_gouda_milk_by_protein_fat_ratio(core):
    # A. Hill, Guelph, Gouda: ratio 1.07; 3.3 / 1.07 = 3.084 by hand.
    got = core("formulas.milk.standardise", "fat_for_ratio_frac", 0.033, 1.07)
    assert got == pytest.approx(0.03084, abs=5e-6)


@pytest.mark.parametrize(
    ("protein", "fat", "added_protein", "added_fat"),
    [(0.033, 0.04, 0.034, 0.0002), (0.034, 0.028, 0.021, 0.40)],
)
def test_what_is_added_for_the_ratio_counts_its_own_protein(
    core, protein, fat, added_protein, added_fat
):
    args = (200, protein, fat, added_protein, added_fat, 1.07)
    added = core("formulas.milk.standardise", "added_for_ratio_kg", *args)
    protein_kg = 200 * protein + added * added_protein
    fat_kg = 200 * fat + added * added_fat
    assert added > 0
    assert protein_kg / fat_kg == pytest.approx(1.07, rel=1e-12)


def test_milk_at_its_ratio_needs_nothing(core):
    args = (200, 0.03, 0.03, 0.034, 0.0, 1.0)
    assert core("formulas.milk.standardise", "added_for_ratio_kg", *args) == 0


@pytest.mark.parametrize(
    ("name", "args", "words"),
    [
        ("blend_share", (0.04, 0.04, 0.04), "second_frac 0.04 equals_first"),
        ("blend_share", (0.40, 0.03, 0.02), "target_frac 0.02 below 0.03"),
        ("added_kg", (100, 0.04, 0.0, 0.0), "target_frac 0.0 not_reached_by 0.0"),
        ("added_kg", (100, 0.04, 0.0, 0.05), "target_frac 0.05 above 0.04"),
        ("cream_off_kg", (100, 0.04, 0.03, 0.02), "cream_frac 0.03 not_above 0.04"),
        ("cream_off_kg", (100, 0.04, 0.4, 0.05), "target_frac 0.05 above 0.04"),
        ("fat_for_ratio_frac", (0.033, 0), "protein_fat_ratio 0 not_above 0"),
        (
            "added_for_ratio_kg",
            (100, 0.033, 0.04, 0.021, 0.4, 1.07),
            "protein_fat_ratio 1.07 not_reached",
        ),
    ],
)
def test_standardising_that_cannot_be_done_is_refused(core, name, args, words):
    with pytest.raises(ValueError, match=words):
        core("formulas.milk.standardise", name, *args)
