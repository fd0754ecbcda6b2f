import pytest


def test_the_yield_implies_the_fat_of_the_cheese(core):
    fat = core("formulas.curd.mass_balance", "cheese_fat_frac", 0.034, 0.92, 0.10430)
    assert fat == pytest.approx(0.2999, abs=5e-5)


def test_fat_not_kept_is_in_the_whey(core):
    # .08 * 3.4 kg in 100 - 10.43 kg of whey: .304 %.
    whey = core("formulas.curd.mass_balance", "whey_kg", 100.0, 0.0, 10.43)
    assert (1 - 0.92) * 3.4 / whey == pytest.approx(0.00304, abs=5e-6)


def test_fat_kept_turns_the_yield_around(core):
    kept = core("formulas.curd.mass_balance", "kept_frac", 100.0, 0.034, 10.43, 0.29990)
    assert kept == pytest.approx(0.92, abs=1e-4)


@pytest.mark.parametrize(
    ("out_kg", "verdict"),
    [
        (97.0, "accounted"),
        (100.0, "accounted"),
        (103.0, "accounted"),
        (96.9, "some_missing"),
        (103.1, "more_than_went_in"),
    ],
)
def test_a_make_is_accounted_for_within_three_per_cent(core, out_kg, verdict):
    found = core("formulas.curd.mass_balance", "account", 100.0, out_kg, 0.97, 1.03)
    assert found["basis"] == verdict
    assert (found["low"], found["high"]) == (0.97, 1.03)


def test_fat_in_cheese_and_whey_closes(core):
    out = core(
        "formulas.curd.mass_balance",
        "component_kg",
        [[10.43, 0.2999], [89.57, 0.00304]],
    )
    found = core("formulas.curd.mass_balance", "account", 3.4, out, 0.97, 1.03)
    assert found["value"] == pytest.approx(1.0, abs=1e-3)  # four printed figures
    assert found["basis"] == "accounted"


def test_more_cheese_than_milk_and_water_is_refused(core):
    with pytest.raises(ValueError, match="cheese_kg 120 above 100"):
        core("formulas.curd.mass_balance", "whey_kg", 100, 0, 120)
