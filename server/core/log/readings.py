"""What was read off instruments in a make or tank: in a span, the last, each once."""

from . import run
from .order import sort_key

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import Entry, State


def every(state: "State", quantity: str) -> "list[Entry]":
    """Return all readings of a quantity, oldest first.

    Args:
        state: State.
        quantity: key of `quantities.QUANTITIES`.

    Returns:
        List of entries, see `run.entries`. Not to be changed.
    """
    return run.entries(state, "reading_taken", quantity)


def within(
    state: "State",
    quantity: str,
    from_ms: "int | None",
    until_ms: "int | None" = None,
) -> "list[Entry]":
    """Return the readings of a quantity in a span, its ends included, oldest first.

    Args:
        state: State.
        quantity: key of `quantities.QUANTITIES`.
        from_ms: first instant [ms], or None for no such end.
        until_ms: last instant [ms], or None for no such end.

    Returns:
        List of entries, see `run.entries`.
    """
    return [
        entry
        for entry in every(state, quantity)
        if (from_ms is None or from_ms <= entry["t_ms"])
        and (until_ms is None or entry["t_ms"] <= until_ms)
    ]


def together(
    state: "State",
    quantities: "tuple[str, ...]",
    from_ms: "int | None",
    until_ms: "int | None" = None,
) -> "list[Entry]":
    """Return the readings of several quantities in a span as one row, oldest first.

    Args:
        state: State.
        quantities: keys of `quantities.QUANTITIES`.
        from_ms: first instant [ms], or None for no such end.
        until_ms: last instant [ms], or None for no such end.
    """
    entries = []
    for quantity in quantities:
        entries.extend(within(state, quantity, from_ms, until_ms))
    return sorted(entries, key=sort_key)


def one_an_instant(entries: "list[Entry]") -> "list[Entry]":
    """Return the entries with one for each instant: the later entry counts.

    Args:
        entries: see `run.entries`, oldest first.
    """
    kept: "list[Entry]" = []
    for entry in entries:
        if kept and kept[-1]["t_ms"] == entry["t_ms"]:
            kept[-1] = entry
        else:
            kept.append(entry)
    return kept


def last(state: "State", quantity: str) -> "Entry | None":
    """Return the newest reading of a quantity, or None.

    Args:
        state: State.
        quantity: key of `quantities.QUANTITIES`.
    """
    return run.last(state, "reading_taken", quantity)


def last_of(state: "State", quantity: str, size: "str | None") -> "Entry | None":
    """Return the newest reading of a quantity, of wheels of a size; None of any size.

    Args:
        state: State of the make or tank.
        quantity: key of `quantities.QUANTITIES`.
        size: key of a size of wheel, or None.
    """
    if size is None:
        return last(state, quantity)
    entries = [
        entry for entry in every(state, quantity) if entry["data"].get("place") == size
    ]
    return entries[-1] if entries else None


def last_value(state: "State", quantity: str) -> "Any":
    """Return what was read of a quantity last, in its own unit, or None.

    Args:
        state: State.
        quantity: key of `quantities.QUANTITIES`.
    """
    entry = last(state, quantity)
    return None if entry is None else entry["data"]["value"]
