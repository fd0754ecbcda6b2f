import pytest


def test_one_millilitre_of_tenth_normal_alkali_is_nine_milligrams(core):
    # 0.009 g lactic acid in a 9 mL sample is 0.1 %.
    got = core("units.titration", "lactic_frac", 1, 0.1, 9)
    assert got == pytest.approx(0.001, rel=1e-12)


@pytest.mark.parametrize(
    ("alkali_mol_l", "unit"),
    [(0.25, "soxhlet_henkel"), (0.1, "thorner"), (1 / 9, "dornic")],
)
def test_each_degree_is_one_millilitre_of_its_own_alkali_in_100(
    core, alkali_mol_l, unit
):
    # Soxhlet-Henkel N/4, Thörner N/10, Dornic N/9. Dornic counts in 10 mL by
    # tenths of a millilitre, which is the same.
    frac = core("units.titration", "lactic_frac", 1, alkali_mol_l, 100)
    there = core("units.table", "convert", frac, "fraction lactic", unit)
    assert there == pytest.approx(1, rel=1e-12)


@pytest.mark.parametrize(
    ("args", "words"),
    [
        ((-1, 0.1, 10), "alkali_ml -1 below 0"),
        ((1, 0, 10), "alkali_mol_l 0 not_above 0"),
        ((1, 0.1, 0), "sample_ml 0 not_above 0"),
    ],
)
def test_an_impossible_titration_is_refused(core, args, words):
    with pytest.raises(ValueError, match=words):
        core("units.titration", "lactic_frac", *args)
