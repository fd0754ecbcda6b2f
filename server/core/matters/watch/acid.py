"""Acid: a pH that must be reached by a time after a step began, by a published mark.

A reading at or below the mark before its time answers it. A reading round its time
that is above does not meet it; where nothing was read round its time the mark was
missed, and what the pH would have been is not worked out from its neighbours.

Where no pH was read in time, what the recipe reads instead answers: titratable
acidity, by its own least figure where a source has one. Without such a figure the
acid is not assessed: the two are never turned into each other.
"""

from ...log.readings import within
from ...make.instruments import is_measured
from .seen import WAIT, seen

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.matters import Seen
    from server.shapes.core.recipe import RecipeGate, RecipeInstead
    from server.shapes.core.state import Context, Entry


def look(context: "Context", gate: "RecipeGate") -> "Seen | None":
    """Return how the acid stands against a mark, or None where it was reached.

    Args:
        context: Context of the make.
        gate: gate with "from_step", whose begin the time counts from, the
            "quantity" read, and the "rule" and "row" of the mark; "window_s" where
            the recipe has its own; "instead" where something else may be read.

    Returns:
        Seen that says "too_slow", "missed", "not_assessed" or WAIT.
    """
    mark = _mark(context, gate)
    begun = context["facts"][gate["from_step"]]["begun"]
    if mark is None or begun is None:
        return seen(WAIT)
    from_ms = begun["t_ms"]
    at_ms = from_ms + int(mark["at_s"]["value"] * 1000)
    window_ms = int(mark["window_s"] * 1000)
    read = within(context["state"], gate["quantity"], from_ms, at_ms + window_ms)
    if any(entry["data"]["value"] <= mark["ph_most"]["value"] for entry in read):
        return None
    if not read and not _is_measured(context, gate):
        return None  # without its instrument nobody can miss it
    timely = [entry for entry in read if entry["t_ms"] >= at_ms - window_ms]
    if timely:
        return _too_slow(timely[-1], mark, from_ms)
    instead = gate.get("instead")
    if instead is not None:
        span = (at_ms - window_ms, at_ms + window_ms)
        other = within(context["state"], instead["quantity"], span[0], span[1])
        if other:
            return _by_other(other[-1], instead, from_ms)
    if context["now_ms"] <= at_ms + window_ms:
        return seen(WAIT, None, [], [begun["id"]])
    missed = {"key": "mark_missed", "value": mark["at_s"]["value"]}
    return seen("missed", at_ms + window_ms, [missed], [begun["id"]])


def _is_measured(context: "Context", gate: "RecipeGate") -> bool:
    """Tell whether what a gate goes by, or what may be read instead, can be read."""
    names = [gate["quantity"]]
    if gate.get("instead") is not None:
        names.append(gate["instead"]["quantity"])
    return any(is_measured(context["state"], name) for name in names)


def _by_other(entry: "Entry", instead: "RecipeInstead", from_ms: int) -> "Seen | None":
    """Return how the acid stands by what was read in place of the pH."""
    least, value = instead.get("least"), entry["data"]["value"]
    reason = {
        "key": "acidity_without_limit",
        "value": value,
        "after_s": (entry["t_ms"] - from_ms) / 1000.0,
    }
    if least is None:
        return seen("not_assessed", entry["t_ms"], [reason], [entry["id"]])
    if value >= least["value"]:
        return None
    reason.update(key="acidity_not_reached", limit=least["value"])
    return seen("too_slow", entry["t_ms"], [reason], [entry["id"]])


def _mark(context: "Context", gate: "RecipeGate") -> "dict[str, Any] | None":
    """Return the row of the mark with its "window_s", or None where no rule has it.

    A recipe may say how far from its time a reading still answers the mark, where
    its wheels cannot be reached before.
    """
    rule = context["rules"].get(gate["rule"])
    if rule is None:
        return None
    for row in rule["rows"]:
        if row["key"] == gate["row"]:
            window = gate.get("window_s") or rule["window_s"]
            return dict(row, window_s=window["value"])
    return None


def _too_slow(entry: "Entry", mark: "dict[str, Any]", from_ms: int) -> "Seen":
    reason = {
        "key": "ph_not_reached",
        "value": entry["data"]["value"],
        "limit": mark["ph_most"]["value"],
        "after_s": (entry["t_ms"] - from_ms) / 1000.0,
    }
    return seen("too_slow", entry["t_ms"], [reason], [entry["id"]])


def changes_ms(context: "Context", gate: "RecipeGate") -> "int | None":
    """Return when a mark is missed unless something is read, or None [ms].

    Args:
        context: Context of the make.
        gate: as for `look`.
    """
    mark = _mark(context, gate)
    from_ms = context["facts"][gate["from_step"]]["begun_ms"]
    if mark is None or from_ms is None:
        return None
    after_s = mark["at_s"]["value"] + mark["window_s"]
    return from_ms + int(after_s * 1000) + 1
