"""What was typed, read in the unit that it was typed in."""

from ..units.readings import read_typed as read_typed_value

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


def read_typed(
    quantity: str, typed: str, typed_unit: str, last: "float | None" = None
) -> "dict[str, Any]":
    """Return what a typed text means, see `readings.read_typed`.

    Args:
        quantity: key of `quantities.QUANTITIES`.
        typed: text as typed, comma or point.
        typed_unit: unit it was typed in; "" for the quantity's own.
        last: the reading before, in the quantity's own unit, or None.
    """
    return read_typed_value(quantity, typed, typed_unit, last)
