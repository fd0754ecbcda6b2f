from itertools import pairwise

import iapws
import pytest
from CoolProp.CoolProp import PropsSI

from server.core.formulas.milk import milk
from tests.core.formulas.tables import table

DENSITY = table("milk_density")
HEAT = table("specific_heat")
DENSITY_ROWS = [
    pytest.param(row, temp_c, kg_l, id=f"{row['name']}, {temp_c} °C")
    for row in DENSITY["rows"]
    for temp_c, kg_l in zip(DENSITY["temps_c"], row["densities_kg_l"], strict=True)
]


def density(core, fat_frac, snf_frac, temp_c):
    return core("formulas.milk.milk", "density_kg_l", fat_frac, snf_frac, temp_c)


@pytest.mark.parametrize(("row", "temp_c", "kg_l"), DENSITY_ROWS)
def test_density_is_the_published_one(core, row, temp_c, kg_l):
    got = density(core, row["fat_frac"], row["snf_frac"], temp_c)
    assert got == pytest.approx(kg_l, abs=DENSITY["tolerance_kg_l"])


@pytest.mark.parametrize("temp_c", [4.4, 10, 15, 20, 30, 38.9])
def test_milk_without_solids_has_the_density_of_water(core, temp_c):
    expected = PropsSI("D", "T", temp_c + 273.15, "P", 101325, "Water") / 1000
    # Water's curve is drawn straight between the temperatures of the table.
    assert density(core, 0, 0, temp_c) == pytest.approx(expected, abs=5e-4)


def test_density_of_milk_agrees_with_the_sum_of_its_components(core):
    # Walstra's component densities at 20 °C (from memory): 1030.0 kg/m3.
    assert density(core, 0.04, 0.0895, 20) == pytest.approx(1.0300, abs=5e-4)


def test_density_agrees_with_the_rule_for_15_degrees(core):
    # d15 = 100 / (F/0.93 + SNF/1.608 + W), read on a trade page:
    # 100 / (4.301075 + 5.565920 + 87.05) = 1.03179. A rule of thumb, to 0.001.
    assert density(core, 0.04, 0.0895, 15) == pytest.approx(1.0318, abs=1e-3)


@pytest.mark.parametrize(("warm_c", "cool_c"), [(44, 20), (38.9, 20), (44, 38.9)])
def test_milk_thins_with_warmth_at_the_published_slope(core, warm_c, cool_c):
    fall = density(core, 0.04, 0.0895, warm_c) - density(core, 0.04, 0.0895, cool_c)
    # -0.00038 per K over 18 to 44 °C is printed to two figures.
    assert fall / (warm_c - cool_c) == pytest.approx(-0.00038, abs=4e-5)


@pytest.mark.parametrize("edge_c", [4.4, 10, 20, 38.9])
def test_density_has_no_step_at_the_temperatures_of_the_table(core, edge_c):
    below = density(core, 0.036, 0.086, edge_c - 1e-6)
    above = density(core, 0.036, 0.086, edge_c + 1e-6)
    assert below == pytest.approx(above, abs=1e-8)


def test_cold_milk_is_denser_than_warm(core):
    densities = [density(core, 0.04, 0.0895, temp_c) for temp_c in range(45)]
    assert all(a > b for a, b in pairwise(densities))


@pytest.mark.parametrize(
    ("args", "words"),
    [
        ((0.5, 0.09, 20), "fat_frac 0.5 above 0.4"),
        ((4.0, 0.09, 20), "fat_frac 4.0 above 0.4"),
        ((0.04, 8.5, 20), "snf_frac 8.5 above 0.2"),
        ((0.04, 0.09, 63), "temp_c 63 above 44"),
        ((0.04, 0.09, -1), "temp_c -1 below 0"),
    ],
)
def test_density_outside_its_range_is_refused(core, args, words):
    with pytest.raises(ValueError, match=words):
        density(core, *args)


def test_a_hundred_litres_at_1_030_is_103_kg(core):
    assert core("formulas.milk.milk", "mass_kg", 100, 1.030) == pytest.approx(103.0)


def test_a_us_gallon_of_milk_weighs_the_buyers_8_6_pounds(core):
    # 8.6 lb/gal is 1.0305 kg/L: 8.6 × 0.45359237 / 3.785411784.
    kg = core("formulas.milk.milk", "mass_kg", 3.785411784, 1.0305)
    assert kg / 0.45359237 == pytest.approx(8.6, abs=5e-4)


def test_volume_undoes_mass(core):
    kg = core("formulas.milk.milk", "mass_kg", 512.5, 1.0287)
    assert core("formulas.milk.milk", "volume_l", kg, 1.0287) == pytest.approx(512.5)


def test_the_wrong_temperature_costs_more_than_half_a_per_cent(core):
    cold, warm = density(core, 0.04, 0.0895, 15), density(core, 0.04, 0.0895, 32)
    # Volume read at 32 °C with the density of 15 °C: +0.6 % mass, one figure.
    assert cold / warm - 1 == pytest.approx(0.006, abs=5e-4)


@pytest.mark.parametrize("name", ["mass_kg", "volume_l"])
def test_negative_milk_and_weightless_milk_are_refused(core, name):
    with pytest.raises(ValueError, match="-1 below 0"):
        core("formulas.milk.milk", name, -1, 1.03)
    with pytest.raises(ValueError, match="density_kg_l 0 not_above 0"):
        core("formulas.milk.milk", name, 1, 0)


@pytest.mark.parametrize("row", HEAT["rows"], ids=lambda row: row["name"])
def test_specific_heat_agrees_with_an_independent_rule(core, row):
    got = core(
        "formulas.milk.milk", "specific_heat_j_kg_k", row["fat_frac"], row["snf_frac"]
    )
    expected = row["kj_kg_k"] * 1000
    assert got == pytest.approx(expected, rel=HEAT["tolerance_rel"])


@pytest.mark.parametrize(
    ("fat_frac", "snf_frac", "kj_kg_k"),
    # 4.18 (water + 0.5 fat + 0.3 solids), worked by hand to three decimals.
    [(0.04, 0.0895, 3.835), (0.0002, 0.089, 3.919), (0, 0, 4.18), (0, 1, 1.254)],
)
def test_specific_heat_follows_its_rule(core, fat_frac, snf_frac, kj_kg_k):
    got = core("formulas.milk.milk", "specific_heat_j_kg_k", fat_frac, snf_frac)
    assert got == pytest.approx(kj_kg_k * 1000, abs=0.5)


def test_specific_heat_of_more_than_everything_is_refused(core):
    with pytest.raises(ValueError, match=r"snf_frac 0\.5 above 0\.4"):
        core("formulas.milk.milk", "specific_heat_j_kg_k", 0.6, 0.5)


@pytest.mark.parametrize("temp_c", [20, 40, 60])
def test_water_takes_the_heat_that_steam_tables_say(temp_c):
    water = iapws.IAPWS97(T=temp_c + 273.15, P=0.101325)
    # Steady 4180 stands for 4179 to 4185: within 0.15 %.
    assert pytest.approx(water.cp * 1000, rel=1.5e-3) == milk.WATER_CP_J_KG_K


def test_kinds_of_dairy_order_by_their_water():
    kinds = [
        milk.CHEESE_CP_J_KG_K,
        milk.CURD_CP_J_KG_K,
        milk.MILK_CP_J_KG_K,
        milk.WHEY_CP_J_KG_K,
        milk.WATER_CP_J_KG_K,
    ]
    assert kinds == sorted(kinds)
