import pytest
from CoolProp.CoolProp import PropsSI

from tests.core.formulas.tables import table

CASE = table("wash")
VAT = (CASE["vat"]["vat_kg"], CASE["vat"]["vat_cp_j_kg_k"], CASE["vat"]["vat_c"])
TOLERANCE = CASE["tolerance"]


def ask(core, name, *args):
    return core("formulas.curd.wash", name, *args)


@pytest.mark.parametrize("row", CASE["mixed"], ids=lambda row: f"{row['water_kg']} kg")
def test_water_warms_the_vat_to_the_published_temperature(core, row):
    got = ask(core, "mixed_temp_c", *VAT, row["water_kg"], row["water_c"])
    assert got == pytest.approx(row["mixed_c"], abs=TOLERANCE)


@pytest.mark.parametrize("row", CASE["mixed"], ids=lambda row: f"{row['water_kg']} kg")
def test_published_practice_lands_about_a_kelvin_lower(core, row):
    # Guelph's Gouda: 20 to 25 % water of 60 °C gives 36 to 38 °C.
    got = ask(core, "mixed_temp_c", *VAT, row["water_kg"], row["water_c"])
    assert 36 <= got - 1 <= 38.05


@pytest.mark.parametrize(
    "row", CASE["water_temps"], ids=lambda row: f"{row['water_kg']} kg"
)
def test_the_water_is_as_warm_as_published(core, row):
    args = (row["vat_kg"], 3900, 31, row["target_c"], row["water_kg"])
    got = ask(core, "water_temp_c", *args)
    assert got == pytest.approx(row["water_c"], abs=TOLERANCE)


def test_the_water_weighs_what_is_published(core):
    (row,) = CASE["water_masses"]
    got = ask(core, "water_kg", *VAT, row["target_c"], row["water_c"])
    assert got == pytest.approx(row["water_kg"], abs=TOLERANCE)


@pytest.mark.parametrize(("target_c", "water_c"), [(37, 60), (34, 45), (25, 12)])
def test_mass_temperature_and_mixture_undo_each_other(core, target_c, water_c):
    kg = ask(core, "water_kg", *VAT, target_c, water_c)
    assert ask(core, "mixed_temp_c", *VAT, kg, water_c) == pytest.approx(target_c)
    assert ask(core, "water_temp_c", *VAT, target_c, kg) == pytest.approx(water_c)


def test_water_into_water_mixes_as_enthalpy_tables_say(core):
    def enthalpy(temp_c):
        return PropsSI("H", "T", temp_c + 273.15, "P", 101325, "Water")

    mean = (70 * enthalpy(31) + 20 * enthalpy(60)) / 90
    expected = PropsSI("T", "H", mean, "P", 101325, "Water") - 273.15
    got = ask(core, "mixed_temp_c", 70, 4180, 31, 20, 60)
    # A steady 4180 J/(kg K) against the table's 4179 to 4185.
    assert got == pytest.approx(expected, abs=0.02)


def test_no_water_changes_nothing(core):
    assert ask(core, "mixed_temp_c", *VAT, 0, 60) == pytest.approx(31, rel=1e-12)


def test_a_vat_at_its_temperature_needs_no_water(core):
    assert ask(core, "water_kg", *VAT, 31, 60) == 0


def test_nine_tenths_go_in_first(core):
    plan = ask(core, "wash_plan", *VAT, 37, 60, 0.9)
    assert plan["first_kg"] == pytest.approx(0.9 * plan["water_kg"], rel=1e-12)
    # By hand: (70.3·3.9·31 + 15.402·4.18·60) / (70.3·3.9 + 15.402·4.18) = 36.51.
    assert plan["first_c"] == pytest.approx(36.51, abs=TOLERANCE)
    assert plan["basis"] == "wash.balance"


def test_without_losses_first_and_rest_make_the_whole(core):
    plan = ask(core, "wash_plan", *VAT, 37, 60, 0.9)
    args = (VAT[0], VAT[1], plan["first_kg"], plan["first_c"], 37, 60)
    rest = ask(core, "rest_kg", *args)
    assert plan["first_kg"] + rest == pytest.approx(plan["water_kg"], rel=1e-9)


def test_a_vat_that_lost_heat_gets_more_of_the_rest(core):
    plan = ask(core, "wash_plan", *VAT, 37, 60, 0.9)
    args = (VAT[0], VAT[1], plan["first_kg"])
    without = ask(core, "rest_kg", *args, plan["first_c"], 37, 60)
    with_loss = ask(core, "rest_kg", *args, plan["first_c"] - 1, 37, 60)
    # One kelvin of 70.3·3.9 + 15.4·4.18 kJ/K, at 4.18·23 kJ a kilogram: 3.52 kg.
    assert with_loss - without == pytest.approx(3.52, abs=TOLERANCE)


def test_a_vat_that_is_there_gets_no_more(core):
    assert ask(core, "rest_kg", VAT[0], VAT[1], 17, 37, 37, 60) == 0


@pytest.mark.parametrize(("water_c", "count"), [(59.9, 0), (60, 0), (60.1, 1)])
def test_water_hotter_than_the_recipe_allows_is_a_problem(core, water_c, count):
    problems = ask(core, "check_water_temp", water_c, 60)
    assert len(problems) == count
    assert all(
        problem == {"field": "water_c", "key": "above_limit", "limit": 60}
        for problem in problems
    )


@pytest.mark.parametrize(
    ("name", "args", "words"),
    [
        ("mixed_temp_c", (0, 3900, 31, 20, 60), "vat_kg 0 not_above 0"),
        ("mixed_temp_c", (70, 0, 31, 20, 60), "vat_cp_j_kg_k 0 not_above 0"),
        ("mixed_temp_c", (70, 3900, 31, -1, 60), "water_kg -1 below 0"),
        (
            "water_kg",
            (70, 3900, 31, 60, 60),
            "target_c 60 not_between_vat_and_water vat_c 31",
        ),
        (
            "water_kg",
            (70, 3900, 31, 30, 60),
            "target_c 30 not_between_vat_and_water vat_c 31",
        ),
        ("water_temp_c", (70, 3900, 31, 37, 0), "water_kg 0 not_above 0"),
        ("water_temp_c", (70, 3900, 31, 37, 5), "water_kg 5 water_not_liquid needed_c"),
        ("water_temp_c", (70, 3900, 31, 10, 5), "water_kg 5 water_not_liquid needed_c"),
        ("wash_plan", (70, 3900, 31, 37, 60, 90), "first_frac 90 above 1"),
        ("rest_kg", (70, 3900, -1, 36, 37, 60), "added_kg -1 below 0"),
        (
            "rest_kg",
            (70, 3900, 15, 38, 37, 60),
            "target_c 37 not_between_vat_and_water",
        ),
    ],
)
def test_an_impossible_wash_is_refused(core, name, args, words):
    with pytest.raises(ValueError, match=words):
        ask(core, name, *args)


@pytest.mark.parametrize("temp_c", [1, 10, 20, 40, 60, 80, 99])
def test_water_is_as_dense_as_the_steam_tables_say(core, temp_c):
    kg_m3 = PropsSI("D", "T", 273.15 + temp_c, "P", 101325, "Water")
    got = core("formulas.curd.wash", "water_density_kg_l", temp_c)
    assert got == pytest.approx(kg_m3 / 1000, abs=6e-5)


def test_ice_and_steam_have_no_density_here(core):
    for temp_c in (-0.1, 100.1):
        with pytest.raises(ValueError, match="temp_c"):
            core("formulas.curd.wash", "water_density_kg_l", temp_c)
