"""Units that a sum's inputs are typed in, beyond those that the formulas know.

Which unit a number is in is said, never guessed.
"""

from .conversions import convert as convert_known

WATER_KG_L = 0.98320  # kg/L at 60 °C, water. Source: steam tables (IAPWS).
WHEY_KG_L = 1.025  # kg/L, from memory; a litre more or less moves 0.1 K

# How a unit is named here, and in the table of the formulas.
NAMES = {
    "C": "c",
    "F": "f",
    "K": "k",
    "F_rise": "rise_f",
    "L": "l",
    "mL": "ml",
    "gal": "us_gal",
    "imp_gal": "imp_gal",
    "kg": "kg",
    "g": "g",
    "lb": "lb",
    "oz": "oz",
    "kPa": "kpa",
    "Pa": "pa",
    "bar": "bar",
    "psi": "psi",
    "fraction lactic": "lactic_frac",
    "lactic_percent": "lactic_percent",
    "dornic": "dornic",
    "thorner": "thorner",
    "soxhlet_henkel": "soxhlet_henkel",
}

# (kind, size): the inch is exact by definition.
SIZES = {
    "fraction": ("share", 1.0),
    "%": ("share", 0.01),
    "s": ("time", 1.0),
    "min": ("time", 60.0),
    "h": ("time", 3600.0),
    "d": ("time", 86400.0),
    "m": ("length", 1.0),
    "cm": ("length", 0.01),
    "mm": ("length", 0.001),
    "in": ("length", 0.0254),
}

# What people read in place of the unit that a figure is kept in: (kept, shown,
# the same two for a difference). Only a temperature has a difference of its own.
SHOWN = (
    ("C", "F", "K", "F_rise"),
    ("K", "F_rise", "K", "F_rise"),
    ("L", "gal", "L", "gal"),
    ("L", "imp_gal", "L", "imp_gal"),
    ("kg", "lb", "kg", "lb"),
    ("kPa", "psi", "kPa", "psi"),
)


def shown() -> "list[dict]":
    """Return how figures are shown in the units that people may choose.

    A value is value × scale + offset, a difference of values is × scale alone.

    Returns:
        List of {"from", "to", "scale", "offset"}.
    """
    return [
        {
            "from": kept,
            "to": to,
            "scale": convert(1.0, kept_rise, to_rise),
            "offset": convert(0.0, kept, to),
        }
        for kept, to, kept_rise, to_rise in SHOWN
    ]


def convert(amount: float, from_unit: str, to_unit: str) -> float:
    """Return a number in another unit of the same kind.

    Args:
        amount: number in `from_unit`.
        from_unit: a unit of NAMES or SIZES.
        to_unit: a unit of the same kind.

    Returns:
        The number in `to_unit`.

    Raises:
        ValueError: a unit is unknown, or the kinds differ.

    >>> convert(90, "min", "h")
    1.5
    """
    if from_unit == to_unit:
        return amount
    if from_unit in NAMES and to_unit in NAMES:
        return convert_known(amount, NAMES[from_unit], NAMES[to_unit])
    first = SIZES.get(from_unit)
    second = SIZES.get(to_unit)
    if first is None or second is None or first[0] != second[0]:
        raise ValueError("unit %r is not a unit of %r" % (from_unit, to_unit))
    return amount * first[1] / second[1]
