"""Units that milk, heat, pressure and acidity are read in.

The core computes in the first unit of each kind; everything else is converted
at the edge. A temperature and a difference of temperatures are two kinds:
5 °C is 41 °F, but a rise of 5 K is a rise of 9 °F.

Titratable acidity counts as lactic acid, g in 100 mL as a fraction: 0.16 % is
0.0016. The scales differ only in the strength of the alkali, so they convert
exactly among themselves. Titratable acidity and pH never convert.
"""

from ..numbers.bounds import require_above, require_number
from ..numbers.readings import require, require_at_least

LACTIC_KG_MOL = 0.090  # The trade's round figure: 1 mL of 0.1 N is 0.009 g.

# unit: (kind, size of one unit in the kind's base unit, base value at zero).
# Gallon, pound and inch are exact by definition; psi is lb × 9.80665 N over in².
UNITS = {
    "c": ("temperature", 1.0, 0.0),
    "f": ("temperature", 5.0 / 9.0, -160.0 / 9.0),
    "k": ("rise", 1.0, 0.0),
    "rise_f": ("rise", 5.0 / 9.0, 0.0),
    "l": ("volume", 1.0, 0.0),
    "ml": ("volume", 0.001, 0.0),
    "us_gal": ("volume", 3.785411784, 0.0),
    "imp_gal": ("volume", 4.54609, 0.0),
    "kg": ("mass", 1.0, 0.0),
    "g": ("mass", 0.001, 0.0),
    "lb": ("mass", 0.45359237, 0.0),
    "oz": ("mass", 0.45359237 / 16.0, 0.0),
    "pa": ("pressure", 1.0, 0.0),
    "kpa": ("pressure", 1000.0, 0.0),
    "bar": ("pressure", 100000.0, 0.0),
    "psi": ("pressure", 0.45359237 * 9.80665 / 0.0254**2, 0.0),
    "lactic_frac": ("acidity", 1.0, 0.0),
    "lactic_percent": ("acidity", 0.01, 0.0),
    "dornic": ("acidity", 0.0001, 0.0),
    "thorner": ("acidity", 0.00009, 0.0),
    "soxhlet_henkel": ("acidity", 0.000225, 0.0),
}


def convert(value: float, from_unit: str, to_unit: str) -> float:
    """Return a value in another unit of the same kind.

    Args:
        value: number in `from_unit`.
        from_unit: a key of UNITS.
        to_unit: a key of UNITS of the same kind.

    Returns:
        The value in `to_unit`.

    Raises:
        ValueError: a unit is unknown, the kinds differ, the value is not finite,
            or a temperature is below absolute zero.

    Source: international yard and pound agreement and the gallon definitions;
        acidity scales from two dairy laboratory pages that agree.
    Check: 161 °F is 71.67 °C; 7 °SH is 0.1575 % lactic.

    >>> convert(161, "f", "c")
    71.667
    >>> convert(7, "soxhlet_henkel", "dornic")
    15.75
    """
    for field, unit in (("from_unit", from_unit), ("to_unit", to_unit)):
        require(unit in UNITS, field, unit, "is not a known unit")
    kind, size, zero = UNITS[from_unit]
    to_kind, to_size, to_zero = UNITS[to_unit]
    require(kind == to_kind, "to_unit", to_unit, "is %s, not %s" % (to_kind, kind))
    require_number("value", value)
    if from_unit == to_unit:
        return value
    base = value * size + zero
    if kind == "temperature":
        require(base >= -273.15, "value", value, "is below absolute zero, -273.15 C")
    return (base - to_zero) / to_size


def lactic_frac(alkali_ml: float, alkali_mol_l: float, sample_ml: float) -> float:
    """Return titratable acidity as lactic acid from a titration.

    Args:
        alkali_ml: alkali used to the pink end point [mL]; 0 or more.
        alkali_mol_l: strength of the alkali [mol/L]; above 0.
        sample_ml: milk or whey titrated [mL]; above 0.

    Returns:
        Lactic acid, g in 100 mL as a fraction [0..1].

    Raises:
        ValueError: an amount is negative, or strength or sample is not above 0.

    Source: 1 mL of 0.1 N alkali answers 0.009 g lactic acid (dairy laboratory
        pages).
    Check: 1.6 mL of N/9 on 10 mL is 16 °D.

    >>> lactic_frac(1.6, 1 / 9, 10)
    0.0016
    """
    require_at_least("alkali_ml", alkali_ml, 0)
    require_above("alkali_mol_l", alkali_mol_l, 0)
    require_above("sample_ml", sample_ml, 0)
    return alkali_ml * alkali_mol_l * LACTIC_KG_MOL / sample_ml
