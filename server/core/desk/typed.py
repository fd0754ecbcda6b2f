"""What was typed, read in the unit that it was typed in."""

from ..creamery import kept
from ..log.readings import last_of
from ..log.typed import read_field as read_field
from ..units.readings import read_typed as read_typed_value

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import Desk


def last_reading(
    desk: "Desk", make_id: str, quantity: str, size: "str | None" = None
) -> "dict[str, Any] | None":
    """Return the newest reading of a quantity: what a new one is compared with.

    Args:
        desk: Desk.
        make_id: UUID of the make or tank.
        quantity: key of `quantities.QUANTITIES`.
        size: size of wheel that was weighed or analysed; None for any.

    Returns:
        {"value", "at_ms"}, in the quantity's own unit, or None.
    """
    state = desk["makes"].get(make_id)
    entry = None if state is None else last_of(state, quantity, size)
    if entry is None:
        return None
    return {"value": entry["data"]["value"], "at_ms": entry["t_ms"]}


def read_reading(
    desk: "Desk",
    make_id: str,
    quantity: str,
    typed: str,
    typed_unit: str,
    size: "str | None",
    now_ms: int,
) -> "dict[str, Any]":
    """Return what a reading typed now means, beside the last and what is wanted.

    Args:
        desk: Desk.
        make_id: UUID of the make or tank.
        quantity: key of `quantities.QUANTITIES`.
        typed: text as typed, comma or point.
        typed_unit: unit it was typed in; "" for the quantity's own.
        size: size of wheel that is weighed or analysed; None for any.
        now_ms: now, by the server's clock [ms].

    Returns:
        {"value", "problems", "ask"}, see `readings.read_typed`; ask is "far", too,
        with the nearest figure, where the value lies far from all that is wanted.
    """
    before = last_reading(desk, make_id, quantity, size)
    last = None if before is None else before["value"]
    # Loaded with the first pad: the app starts without it.
    from ..step.wanted import far_from, wanted_now

    shown = kept.view(desk, make_id, now_ms)
    wanted = [] if shown is None else wanted_now(shown, quantity, size)
    told = read_typed_value(quantity, typed, typed_unit, last, wanted)
    if told["ask"] is None and not told["problems"]:
        end = far_from(quantity, told["value"], wanted)
        told["ask"] = None if end is None else {"key": "far", "limit": end}
    return told


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
