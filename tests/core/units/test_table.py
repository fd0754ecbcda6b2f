import pint
import pytest

from server.core.log.kinds.table import KINDS
from server.core.recipe import figures
from server.core.recipe.steps.steps import DRIFT_FORMS
from server.core.sums import catalogue
from server.core.units.quantities import QUANTITIES
from server.core.units.table import (
    CHOICES,
    FOLLOWING,
    READ_AS,
    SUM_CHOICES,
    TOOLS,
    TYPED_IN,
    UNITS,
    drift_of,
)
from server.shapes import people
from tests.core.formulas.tables import table

ACIDITY = table("titratable_acidity")
LEGAL = table("legal_temperatures")
# Our unit beside the name that Pint, an independent library, gives it.
PINT = {
    "C": "degC",
    "F": "degF",
    "K": "delta_degC",
    "F_rise": "delta_degF",
    "K/s": "delta_degC / second",
    "K/min": "delta_degC / minute",
    "F/min": "delta_degF / minute",
    "L": "liter",
    "mL": "milliliter",
    "gal": "gallon",
    "imp_gal": "imperial_gallon",
    "kg": "kilogram",
    "g": "gram",
    "lb": "pound",
    "oz": "ounce",
    "ug": "microgram",
    "Pa": "pascal",
    "kPa": "kilopascal",
    "bar": "bar",
    "psi": "psi",
    "fraction": "dimensionless",
    "%": "percent",
    "s": "second",
    "min": "minute",
    "h": "hour",
    "d": "day",
    "m": "meter",
    "cm": "centimeter",
    "mm": "millimeter",
    "in": "inch",
    "kg/m3": "kilogram / meter ** 3",
    "kg/L": "kilogram / liter",
    "g/kg": "gram / kilogram",
    "kg/kg": "kilogram / kilogram",
    "mL/kg": "milliliter / kilogram",
    "mL/t": "milliliter / metric_ton",
    "mL/L": "milliliter / liter",
    "L/L": "liter / liter",
}
REGISTRY = pint.UnitRegistry()
PAIRS = [
    (a, b)
    for a in UNITS
    for b in UNITS
    if UNITS[a]["dimension"] == UNITS[b]["dimension"]
]


def convert(core, value, from_unit, to_unit):
    return core("units.table", "convert", value, from_unit, to_unit)


@pytest.mark.parametrize("row", ACIDITY["rows"])
def test_acidity_scales_convert_as_published(core, row):
    got = convert(core, row["value"], row["from"], row["to"])
    assert got == pytest.approx(row["expected"], rel=ACIDITY["tolerance_rel"])


@pytest.mark.parametrize("row", LEGAL["rows"])
def test_legal_temperatures_convert_without_rounding_up(core, row):
    got = convert(core, row["f"], "F", "C")
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
    assert convert(core, -40, "F", "C") == pytest.approx(-40, rel=1e-12)


def test_a_rise_has_no_offset(core):
    assert convert(core, 9, "F_rise", "K") == pytest.approx(5, rel=1e-12)


def test_an_unchanged_unit_keeps_the_value_as_typed(core):
    assert convert(core, 0.1, "psi", "psi") == 0.1


@pytest.mark.parametrize(
    ("value", "from_unit", "to_unit", "words"),
    [
        (1, "stone", "kg", "from_unit 'stone' unknown_unit"),
        (1, "kg", "stone", "to_unit 'stone' unknown_unit"),
        (1, "kg", "L", "to_unit 'L' unknown_unit 'mass'"),
        (1, "C", "K", "to_unit 'K' unknown_unit 'temperature'"),
        (-460, "F", "C", "value -460 below_absolute_zero"),
        (None, "F", "C", "value None not_a_number"),
    ],
)
def test_a_conversion_that_makes_no_sense_is_refused(
    core, value, from_unit, to_unit, words
):
    with pytest.raises(ValueError, match=words):
        convert(core, value, from_unit, to_unit)


def test_no_unit_turns_titratable_acidity_into_ph():
    assert [u for u in UNITS if UNITS[u]["dimension"] == "pH"] == ["pH"]


@pytest.mark.parametrize("unit", sorted(TYPED_IN))
def test_what_is_typed_in_several_units_is_of_one_dimension(unit):
    assert unit in TYPED_IN[unit]
    assert {UNITS[one]["dimension"] for one in TYPED_IN[unit]} == {
        UNITS[unit]["dimension"]
    }


def test_what_is_read_in_place_of_a_unit_is_of_its_dimension():
    pairs = [*READ_AS.items()]
    pairs += [(kept, one) for kept, *others in CHOICES.values() for one in others]
    pairs += [(kept, one) for kept, some in SUM_CHOICES.items() for one in some]
    pairs += [pair for more in FOLLOWING.values() for pair in more.items()]
    assert [
        pair
        for pair in pairs
        if UNITS[pair[0]]["dimension"] != UNITS[pair[1]]["dimension"]
    ] == []


def test_what_may_be_read_may_be_typed():
    for kept, *others in CHOICES.values():
        assert set(others) <= set(TYPED_IN[kept])


def test_the_server_takes_the_units_that_people_may_choose():
    assert {
        "temp_unit": people.TEMP_UNITS,
        "volume_unit": people.VOLUME_UNITS,
        "mass_unit": people.MASS_UNITS,
        "pressure_unit": people.PRESSURE_UNITS,
    } == CHOICES


def units_named():
    """Yield each unit that quantities, recipes and sums are kept in."""
    yield from (row["unit"] for row in QUANTITIES.values() if "unit" in row)
    yield from figures.UNITS
    for row in KINDS.values():
        yield from (field["unit"] for field in row["fields"] if field["unit"])
    for row in catalogue.rows():
        for item in row["inputs"]:
            yield from item["units"]
            for column in item["columns"] or []:
                yield from column["units"]
        for output in row["outputs"]:
            for unit in (output["unit"], output["ends"]):
                yield from [unit] if isinstance(unit, str) else []


def test_every_unit_that_the_core_names_is_in_the_table():
    words = {"key"}  # no figure at all
    assert set(units_named()) - words - set(UNITS) == set()


def test_a_share_by_mass_is_a_share_however_it_is_written(core):
    assert convert(core, 0.0075, "kg/kg", "%") == pytest.approx(0.75, rel=1e-12)
    assert convert(core, 1.5, "g/kg", "fraction") == pytest.approx(0.0015, rel=1e-12)


def test_every_unit_says_in_what_form_its_readings_drift():
    for unit, row in UNITS.items():
        drift = drift_of(unit)
        assert {drift["below"], drift["above"]} <= set(DRIFT_FORMS), unit
        assert (drift["form"] == "temperature") == (row["dimension"] == "temperature")


def test_too_little_acid_is_a_high_ph_and_a_low_titration():
    assert drift_of("pH")["above"] == "acid_slow"
    assert drift_of("fraction lactic")["below"] == "acid_slow"
    assert drift_of("dornic") == drift_of("fraction lactic")


def test_a_tools_steps_grow_with_the_amount_and_each_has_a_unit():
    for unit, steps in TOOLS.items():
        assert unit in UNITS
        assert steps[0][0] == 0.0
        assert list(steps) == sorted(steps)
        assert [step for _, step in steps] == sorted(step for _, step in steps)
