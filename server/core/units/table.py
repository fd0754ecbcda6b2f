"""Every unit, once: what it measures, its way to the base unit, its decimals.

A figure is kept in one unit; people type and read it in others of the same
dimension, and all of them convert here. A temperature and a difference of
temperatures are two dimensions: 5 °C is 41 °F, but a rise of 5 K is a rise of 9 °F.

Titratable acidity counts as lactic acid, g in 100 mL as a fraction: 0.16 % is
0.0016. The scales differ only in the strength of the alkali, so they convert
exactly among themselves. Titratable acidity and pH never convert.

The page has this table as data: after a change here run deploy/page_units.py.
"""

from ..numbers.bounds import require_number
from ..numbers.refused import require

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


def _unit(
    dimension: str,
    size: float = 1.0,
    zero: float = 0.0,
    per: float = 1.0,
    shown: "int | None" = None,
    typed: "int | None" = None,
) -> "dict[str, Any]":
    return {
        "dimension": dimension,
        "size": size,
        "per": per,
        "zero": zero,
        "shown": shown,
        "typed": typed,
    }


# size over per: one unit in the dimension's base unit, so that 57 % is 0.57 to the
# last digit; zero: the base value at zero. shown, typed: decimals of a figure worked
# out and of one typed, None where that depends on how large it is. Gallon, pound and
# inch are exact by definition; psi is lb × 9.80665 N over in².
UNITS: "dict[str, dict[str, Any]]" = {
    "C": _unit("temperature", shown=1, typed=1),
    "F": _unit("temperature", 5.0 / 9.0, -160.0 / 9.0, shown=1, typed=1),
    "K": _unit("rise", shown=2, typed=2),
    "F_rise": _unit("rise", 5.0 / 9.0, shown=2, typed=2),
    "K/s": _unit("rate"),
    "K/min": _unit("rate", per=60.0, shown=2, typed=2),
    "F/min": _unit("rate", 5.0 / 9.0, per=60.0, shown=2, typed=2),
    "L": _unit("volume", typed=2),
    "mL": _unit("volume", per=1000.0, typed=2),
    "gal": _unit("volume", 3.785411784, typed=2),
    "imp_gal": _unit("volume", 4.54609, typed=2),
    "kg": _unit("mass", typed=3),
    "g": _unit("mass", per=1000.0),
    "lb": _unit("mass", 0.45359237, typed=2),
    "oz": _unit("mass", 0.45359237 / 16.0, typed=2),
    "ug": _unit("mass", per=1e9),
    "Pa": _unit("pressure"),
    "kPa": _unit("pressure", 1000.0, typed=2),
    "bar": _unit("pressure", 100000.0, shown=2, typed=3),
    "psi": _unit("pressure", 0.45359237 * 9.80665 / 0.0254**2, shown=1, typed=1),
    "N": _unit("force"),
    "W": _unit("power"),
    "kW": _unit("power", 1000.0),
    "fraction lactic": _unit("acidity"),
    "lactic_percent": _unit("acidity", per=100.0, shown=3),
    "dornic": _unit("acidity", per=10000.0, shown=1, typed=1),
    "thorner": _unit("acidity", 9.0, per=100000.0, shown=1, typed=1),
    "soxhlet_henkel": _unit("acidity", 9.0, per=40000.0, shown=2),
    "fraction": _unit("share"),
    "%": _unit("share", per=100.0, shown=2, typed=3),
    "pH": _unit("pH", shown=2, typed=2),
    "pH_rise": _unit("rise of pH", shown=2, typed=2),
    "s": _unit("time", typed=0),
    "min": _unit("time", 60.0, typed=1),
    "h": _unit("time", 3600.0, typed=2),
    "d": _unit("time", 86400.0, typed=2),
    "1/h": _unit("growth"),
    "ms": _unit("instant"),
    "m": _unit("length", typed=3),
    "cm": _unit("length", per=100.0, shown=1, typed=2),
    "mm": _unit("length", per=1000.0, shown=0, typed=1),
    "in": _unit("length", 0.0254, shown=2, typed=3),
    "kg/m3": _unit("density", shown=1, typed=1),
    "kg/L": _unit("density", 1000.0, shown=4),
    "Baume": _unit("degrees Baumé", shown=1, typed=1),
    "salometer": _unit("degrees of the salometer", shown=1, typed=1),
    "g/L": _unit("mass in volume", shown=1),
    "g/kg": _unit("share", per=1000.0, shown=1),
    "kg/kg": _unit("share"),
    "mL/kg": _unit("volume in mass"),
    "mL/t": _unit("volume in mass", per=1000.0),
    "mL/L": _unit("volume in volume", per=1000.0),
    "L/L": _unit("volume in volume"),
    "mol/L": _unit("amount in volume"),
    "mU/L": _unit("activity in volume"),
    "IMCU/mL": _unit("clotting activity in volume", 1000.0),
    "IMCU/L": _unit("clotting activity in volume"),
    "IMCU/g": _unit("clotting activity in mass"),
    "tablet": _unit("tablets"),
    "pack": _unit("packs"),
    "pack/L": _unit("packs in volume"),
    "pack/kg": _unit("packs in mass"),
    "m2/s": _unit("diffusivity"),
    "g/m2/d": _unit("loss of an area"),
    "J/(kg K)": _unit("heat capacity"),
    "multiple": _unit("multiple"),
    "": _unit("count"),
}

# What is read of everyone in place of the unit that a figure is kept in.
READ_AS = {
    "fraction": "%",
    "fraction lactic": "lactic_percent",
    "K/s": "K/min",
    "Pa": "kPa",
}

# What a person may choose to read, the kept unit first.
CHOICES = {
    "temp_unit": ("C", "F"),
    "volume_unit": ("L", "gal", "imp_gal"),
    "mass_unit": ("kg", "lb"),
    "pressure_unit": ("kPa", "psi"),
}
# What else follows from a choice.
FOLLOWING = {"F": {"K": "F_rise", "K/min": "F/min"}}

# What the answers of the sums may be read in besides, by the kept unit; the first is
# usual: nobody reads a wheel in metres.
SUM_CHOICES = {
    "C": ("C", "F"),
    "kg": ("kg", "lb"),
    "L": ("L", "gal", "imp_gal"),
    "kPa": ("kPa", "bar", "psi"),
    "m": ("mm", "cm", "in"),
}

# What a figure kept in a unit may be typed in; the first is usual.
TYPED_IN = {
    "C": ("C", "F"),
    "K": ("K", "F_rise"),
    "K/min": ("K/min", "F/min"),
    "L": ("L", "gal", "imp_gal", "mL"),
    "mL": ("mL", "L"),
    "kg": ("kg", "lb", "g"),
    "g": ("g", "kg", "oz"),
    "kPa": ("kPa", "bar", "psi"),
    "fraction": ("%", "fraction"),
    "fraction lactic": (
        "lactic_percent",
        "dornic",
        "thorner",
        "soxhlet_henkel",
        "fraction lactic",
    ),
    "s": ("min", "h", "d", "s"),
    "h": ("h", "d"),
    "min": ("min", "h"),
    "m": ("mm", "cm", "in", "m"),
}

# What can be read off the tool at hand, by the unit: from how much on, in what steps.
# A syringe and a cylinder, a jug, a dip stick or a meter; a fine, a kitchen and a
# platform scale; the dial of a press. Practice, no source. A figure worked out is told
# no finer, and no coarser than a tenth of itself.
TOOLS: "dict[str, tuple[tuple[float, float], ...]]" = {
    "mL": ((0.0, 0.1), (10.0, 0.5), (50.0, 1.0), (250.0, 5.0), (1000.0, 10.0)),
    "L": ((0.0, 0.05), (5.0, 0.1), (10.0, 0.5), (20.0, 1.0), (500.0, 5.0)),
    "gal": ((0.0, 0.05), (2.0, 0.1), (20.0, 0.5), (50.0, 1.0)),
    "imp_gal": ((0.0, 0.05), (2.0, 0.1), (20.0, 0.5), (50.0, 1.0)),
    "g": ((0.0, 0.1), (50.0, 1.0), (1000.0, 5.0), (5000.0, 10.0)),
    "oz": ((0.0, 0.05), (10.0, 0.1), (50.0, 0.5)),
    "kg": ((0.0, 0.01), (10.0, 0.1), (50.0, 0.5), (100.0, 1.0)),
    "lb": ((0.0, 0.01), (5.0, 0.1), (100.0, 1.0)),
    "kPa": ((0.0, 0.5), (10.0, 1.0), (100.0, 5.0)),
    "bar": ((0.0, 0.01), (0.5, 0.05), (5.0, 0.1)),
    "psi": ((0.0, 0.1), (5.0, 0.5), (20.0, 1.0)),
    "pack": ((0.0, 0.05), (5.0, 0.1)),
    "tablet": ((0.0, 0.25),),
    "K": ((0.0, 0.1),),
    "F_rise": ((0.0, 0.1),),
}

# Decimals of an amount that is typed: below how much, and how many. A dose is read to
# three figures off a scale or a cylinder; one that no plan tells, as a small one.
TYPED_TO = ((10.0, 2), (100.0, 1))
TYPED_BEYOND = 0

# What it is called when a reading leaves its band, by its dimension: the form of the
# alert, and the form of drift that a recipe has words for on either side. A pH above
# its band means too little acid yet; a titration, too much.
DRIFTS = {
    "temperature": {
        "form": "temperature",
        "below": "temperature_low",
        "above": "temperature_high",
    },
    "pH": {"form": "acid", "below": "acid_fast", "above": "acid_slow"},
    "acidity": {"form": "acid", "below": "acid_slow", "above": "acid_fast"},
}
DRIFT_OF_OTHERS = {
    "form": "quantity",
    "below": "quantity_low",
    "above": "quantity_high",
}

# The unit of an amount, by that of a dose to the litre of the make's milk.
OF_ALL_MILK = {"L/L": "L", "kg/L": "kg"}


def typed_in(unit: str) -> "list[str]":
    """Return the units that a figure kept in a unit may be typed in, usual first.

    >>> typed_in("h")
    ['h', 'd']
    """
    return list(TYPED_IN.get(unit, (unit,)))


def drift_of(unit: str) -> "dict[str, str]":
    """Return what it is called when a reading in a unit leaves its band.

    >>> drift_of("pH")["above"]
    'acid_slow'
    """
    return DRIFTS.get(UNITS[unit]["dimension"], DRIFT_OF_OTHERS)


def convert(value: float, from_unit: str, to_unit: str) -> float:
    """Return a value in another unit of the same dimension.

    Args:
        value: number in `from_unit`.
        from_unit: a key of UNITS.
        to_unit: a key of UNITS of the same dimension.

    Returns:
        The value in `to_unit`.

    Raises:
        Refused: a unit is unknown, the dimensions differ, the value is not
            finite, or a temperature is below absolute zero.

    Source: international yard and pound agreement and the gallon definitions;
        acidity scales from two dairy laboratory pages that agree.
    Check: 161 °F is 71.67 °C; 7 °SH is 0.1575 % lactic.

    >>> convert(161, "F", "C")
    71.667
    >>> convert(7, "soxhlet_henkel", "dornic")
    15.75
    """
    for field, unit in (("from_unit", from_unit), ("to_unit", to_unit)):
        require(unit in UNITS, "unknown_unit", field, unit)
    start, end = UNITS[from_unit], UNITS[to_unit]
    dimension = start["dimension"]
    is_same = dimension == end["dimension"]
    require(is_same, "unknown_unit", "to_unit", to_unit, dimension)
    require_number("value", value)
    if from_unit == to_unit:
        return value
    base = value * start["size"] / start["per"] + start["zero"]
    if dimension == "temperature":
        require(base >= -273.15, "below_absolute_zero", "value", value)
    return (base - end["zero"]) * end["per"] / end["size"]
