import pytest

from tests.core.formulas.tables import table

CASE = table("rennet")
REL = CASE["tolerance_rel"]


def ask(core, name, *args):
    return core("formulas.milk.rennet", name, *args)


def test_the_suppliers_dose_comes_out_of_the_bottles_strength(core):
    row = CASE["supplier_dose"]
    args = (row["milk_l"], row["imcu_per_l"], row["imcu_per_ml"])
    assert ask(core, "rennet_ml", *args) == pytest.approx(row["rennet_ml"], rel=1e-12)


def test_a_bottle_twice_as_strong_is_dosed_by_half(core):
    single = ask(core, "rennet_ml", 500, 40, 200)
    assert ask(core, "rennet_ml", 500, 40, 400) == pytest.approx(single / 2)


def test_soxhlet_strength_is_milk_clotted_in_forty_minutes(core):
    row = CASE["soxhlet"]
    args = (row["milk_ml"], row["rennet_ml"], row["clot_s"], 2400)
    got = ask(core, "soxhlet_strength", *args)
    assert got == pytest.approx(row["strength"], rel=1e-12)


def test_the_soxhlet_dose_is_the_published_one(core):
    row = CASE["soxhlet_dose"]
    args = (row["milk_l"], row["strength"], row["clot_s"], 2400)
    got = ask(core, "soxhlet_rennet_ml", *args)
    assert got == pytest.approx(row["rennet_ml"], rel=REL)


def test_a_soxhlet_dose_clots_in_the_time_it_was_made_for(core):
    rennet_ml = ask(core, "soxhlet_rennet_ml", 0.5, 15000, 900, 2400)
    args = (500, rennet_ml, 900, 2400)
    assert ask(core, "soxhlet_strength", *args) == pytest.approx(15000)


def test_a_label_that_means_45_minutes_gives_a_larger_dose(core):
    forty = ask(core, "soxhlet_rennet_ml", 100, 15000, 2400, 2400)
    longer = ask(core, "soxhlet_rennet_ml", 100, 15000, 2400, 2700)
    assert longer / forty == pytest.approx(45 / 40)


def test_gouda_rennet_goes_in_ten_volumes_of_water(core):
    # 190 mL for 1000 kg (A. Hill, Guelph, Gouda).
    assert ask(core, "dilution_water_ml", 190, 10) == 1900


@pytest.mark.parametrize(
    ("name", "args", "words"),
    [
        ("rennet_ml", (-1, 40, 200), "milk_l -1 below 0"),
        ("rennet_ml", (100, 40, 0), "strength_imcu_per_ml 0 not_above 0"),
        ("soxhlet_strength", (500, 0, 160, 2400), "rennet_ml 0 not_above 0"),
        ("soxhlet_rennet_ml", (1, 0, 1, 1), "strength_soxhlet 0 not_above 0"),
        ("dilution_water_ml", (10, 0), "times 0 not_above 0"),
    ],
)
def test_impossible_rennet_is_refused(core, name, args, words):
    with pytest.raises(ValueError, match=words):
        ask(core, name, *args)
