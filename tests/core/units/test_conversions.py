import pint
import pytest

from server.core.units.conversions import UNITS
from tests.core.formulas.tables import table

ACIDITY = table("titratable_acidity")
LEGAL = table("legal_temperatures")
# Our unit beside the name that Pint, an independent library, gives it.
PINT = {
    "c": "degC",
    "f": "degF",
    "k": "delta_degC",
    "rise_f": "delta_degF",
    "l": "liter",
    "ml": "milliliter",
    "us_gal": "gallon",
    "imp_gal": "imperial_gallon",
    "kg": "kilogram",
    "g": "gram",
    "lb": "pound",
    "oz": "ounce",
    "pa": "pascal",
    "kpa": "kilopascal",
    "bar": "bar",
    "psi": "psi",
}
REGISTRY = pint.UnitRegistry()
PAIRS = [(a, b) for a in UNITS for b in UNITS if UNITS[a][0] == UNITS[b][0]]


def convert(core, value, from_unit, to_unit):
    return core("units.conversions", "convert", value, from_unit, to_unit)


@pytest.mark.parametrize("row", ACIDITY["rows"])
def test_acidity_scales_convert_as_published(core, row):
    got = convert(core, row["value"], row["from"], row["to"])
    assert got == pytest.approx(row["expected"], rel=ACIDITY["tolerance_rel"])


@pytest.mark.parametrize("row", LEGAL["rows"])
def test_legal_temperatures_convert_without_rounding_up(core, row):
    got = convert(core, row["f"], "f", "c")
    assert got == pytest.approx(row["c"], abs=LEGAL["tolerance_c"])


@pytest.mark.parametrize(
    ("from_unit", "to_unit"), [(a, b) for a, b in PAIRS if a in PINT and b in PINT]
)
def test_units_convert_as_an_independent_library_does(core, from_unit, to_unit):
    quantity = REGISTRY.Quantity(37.5, PINT[from_unit])
    expected = quantity.to(PINT[to_unit]).magnitude
    # Both work in doubles; a few last digits are lost on the way.
    assert convert(core, 37.5, from_unit, to_unit) == pytest.approx(expected, rel=1e-12)


@pytest.mark.parametrize(("from_unit", "to_unit"), PAIRS)
def test_a_conversion_and_back_is_the_value(core, from_unit, to_unit):
    there = convert(core, 12.25, from_unit, to_unit)
    assert convert(core, there, to_unit, from_unit) == pytest.approx(12.25, rel=1e-12)


def test_a_hundred_us_gallons_by_the_buyers_rule_is_390_kg(core):
    # 100 US gal at 8.6 lb/gal: 860 lb × 0.45359237 = 390.0894 kg.
    assert convert(core, 860, "lb", "kg") == pytest.approx(390.0894, abs=5e-5)


def test_minus_forty_is_the_same_in_both_scales(core):
    assert convert(core, -40, "f", "c") == pytest.approx(-40, rel=1e-12)


def test_a_rise_has_no_offset(core):
    assert convert(core, 9, "rise_f", "k") == pytest.approx(5, rel=1e-12)


def test_an_unchanged_unit_keeps_the_value_as_typed(core):
    assert convert(core, 0.1, "psi", "psi") == 0.1


@pytest.mark.parametrize(
    ("value", "from_unit", "to_unit", "words"),
    [
        (1, "stone", "kg", "from_unit 'stone' is not a known unit"),
        (1, "kg", "stone", "to_unit 'stone' is not a known unit"),
        (1, "kg", "l", "to_unit 'l' is volume, not mass"),
        (1, "c", "k", "to_unit 'k' is rise, not temperature"),
        (-460, "f", "c", "value -460 is below absolute zero, -273.15 C"),
        (None, "f", "c", "value None is not a number"),
    ],
)
def test_a_conversion_that_makes_no_sense_is_refused(
    core, value, from_unit, to_unit, words
):
    with pytest.raises(ValueError, match=words):
        convert(core, value, from_unit, to_unit)


def test_no_unit_turns_titratable_acidity_into_ph():
    assert not [unit for unit in UNITS if "ph" in unit]


def test_one_millilitre_of_tenth_normal_alkali_is_nine_milligrams(core):
    # 0.009 g lactic acid in a 9 mL sample is 0.1 %.
    got = core("units.conversions", "lactic_frac", 1, 0.1, 9)
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
    frac = core("units.conversions", "lactic_frac", 1, alkali_mol_l, 100)
    assert convert(core, frac, "lactic_frac", unit) == pytest.approx(1, rel=1e-12)


@pytest.mark.parametrize(
    ("args", "words"),
    [
        ((-1, 0.1, 10), "alkali_ml -1 is below 0"),
        ((1, 0, 10), "alkali_mol_l 0 is not above 0"),
        ((1, 0.1, 0), "sample_ml 0 is not above 0"),
    ],
)
def test_an_impossible_titration_is_refused(core, args, words):
    with pytest.raises(ValueError, match=words):
        core("units.conversions", "lactic_frac", *args)
