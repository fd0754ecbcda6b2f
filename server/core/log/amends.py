"""Corrections and strikes: what an entry says once those that name it are heard.

Do not touch: `_is_struck` looks at most DEEPEST strikes deep, since two events could
each strike the other.
"""

from ..units.quantities import check_number
from .kinds.body import check_data
from .kinds.envelope import EARLIEST_MS, LATEST_MS
from .order import corrected_ms

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import Effective, Event, State
    from server.shapes.core.words import Problem


DEEPEST = 8

# Fields of the envelope that a correction may set besides those of `data`.
CORRECTABLE_ENVELOPE = ("at_ms",)
# What a correction may never touch: what the entry is about.
UNCORRECTABLE = (
    "recipe",
    "step",
    "quantity",
    "ingredient",
    "key",
    "practice",
    "matter",
    "way",
)


def is_struck(state: "State", event_id: str) -> bool:
    """Tell whether an event is struck out by a strike that itself stands.

    Args:
        state: State.
        event_id: id of the event.
    """
    return _is_struck(state, event_id, 0)


def standing_amends(state: "State", event_id: str) -> "list[Event]":
    """Return the corrections of an event that stand, oldest first.

    Args:
        state: State.
        event_id: id of the corrected event.

    Returns:
        List of the correcting events.
    """
    standing = []
    for line in state["amends"].get(event_id, []):
        if not _is_struck(state, line["id"], 0):
            standing.append(state["events"][line["id"]])
    return standing


def effective(state: "State", event: "Event") -> "Effective":
    """Return an event as its standing corrections leave it.

    A correction that would make the entry impossible, or that changes what the
    entry is about, is kept in the record and has no effect.

    Args:
        state: State.
        event: an event of this make.

    Returns:
        {"t_ms", "data"}: corrected instant [ms] and body.
    """
    now: "Effective" = {"t_ms": corrected_ms(event), "data": event["data"]}
    for amend in standing_amends(state, event["id"]):
        now = corrected(event["kind"], now, amend["data"].get("set", {}))
    return now


def corrected(kind: str, before: "Effective", changes: "dict[str, Any]") -> "Effective":
    """Return {"t_ms", "data"} after one correction, or as before if it cannot be.

    Args:
        kind: key of `kinds.table.KINDS`.
        before: {"t_ms", "data"}.
        changes: the fields that the correction sets; at_ms is an instant by
            the server's clock [ms].
    """
    if check_correction(kind, before["data"], changes):
        return before
    t_ms = before["t_ms"]
    data = dict(before["data"])
    for name in changes:
        if name == "at_ms":
            t_ms = int(changes[name])
        else:
            data[name] = changes[name]
    # What was typed tells of the value before, so it goes with it.
    if ("value" in changes or "mass_kg" in changes) and "typed" not in changes:
        data.pop("typed", None)
        data.pop("typed_unit", None)
    return {"t_ms": t_ms, "data": data}


def check_correction(
    kind: str, data: "dict[str, Any]", changes: "dict[str, Any]"
) -> "list[Problem]":
    """Return what speaks against a correction of an entry.

    Args:
        kind: kind of the entry.
        data: its body now.
        changes: the fields that the correction sets.

    Returns:
        List of {"field", "key", "limit"}.
    """
    if not isinstance(changes, dict) or not changes:
        return [{"field": "set", "key": "missing", "limit": None}]
    problems: "list[Problem]" = []
    after = dict(data)
    for name in changes:
        if name in CORRECTABLE_ENVELOPE:
            problems.extend(check_number(name, changes[name], EARLIEST_MS, LATEST_MS))
        elif name in UNCORRECTABLE:
            problems.append({"field": name, "key": "not_correctable", "limit": None})
        else:
            after[name] = changes[name]
    return problems + check_data(kind, after, changes)


def _is_struck(state: "State", event_id: str, depth: int) -> bool:
    if depth >= DEEPEST:
        return False
    for line in state["strikes"].get(event_id, []):
        if not _is_struck(state, line["id"], depth + 1):
            return True
    return False
