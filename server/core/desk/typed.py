"""What was typed: read in the unit that it was typed in, and shown in others."""

from ..units.readings import read_typed as read_typed_value
from ..units.shown import convert as convert
from ..units.shown import shown


def units() -> "list[dict]":
    """Return how figures are shown in the units that people may choose.

    Returns:
        List of {"from", "to", "scale", "offset"}, see `sums.units.shown`.
    """
    return shown()


def read_typed(
    quantity: str, typed: str, typed_unit: str, last: "float | None" = None
) -> dict:
    """Return what a typed text means, see `readings.read_typed`.

    Args:
        quantity: key of `quantities.QUANTITIES`.
        typed: text as typed, comma or point.
        typed_unit: unit it was typed in; "" for the quantity's own.
        last: the reading before, in the quantity's own unit, or None.
    """
    return read_typed_value(quantity, typed, typed_unit, last)
