"""Days of curing: as many whole days, warm enough, as the milk's class asks for.

What counts is what a thermometer showed. Two things are kept apart: days that have
not passed yet, and days that have passed without being shown.
"""

from ...heat.milk_class import RULES, follows, milk_class
from ...known.wheel.store import KNOWN, PLACES
from ...log.kinds.columns import FACTS
from ...log.touches import keep, kept, topic
from .near import near_since_ms
from .seen import WAIT, seen

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.matters import Seen
    from server.shapes.core.recipe import RecipeGate
    from server.shapes.core.state import Context


DAY_MS = 86400000


def look(context: "Context", gate: "RecipeGate") -> "Seen | None":
    """Return how the days of curing stand, or None where enough of them are shown.

    Args:
        context: Context of the make.
        gate: gate with the "step" in which the wheels lie.

    Returns:
        Seen that says "days_left", "not_shown" or, as long as the wheels could not
        leave anyway, WAIT.
    """
    row = _row(context)
    if row is None:
        return None
    start_ms = _known(context, "curing_start_ms")
    if start_ms is None:
        return _not_moulded(context, gate)
    shown = _shown_days(context, gate["key"])
    wanted, days = row["days"]["value"], (context["now_ms"] - start_ms) // DAY_MS
    if shown >= wanted or _is_met(context):
        return None
    reason = {"key": "curing_days", "value": shown, "limit": wanted}
    over = start_ms + wanted * DAY_MS
    if days >= wanted:
        return seen("not_shown", over, [reason])
    reason["until_ms"] = over
    near_ms = near_since_ms(context, gate["step"])
    if near_ms is None:
        return seen(WAIT, None, [reason])
    return seen("days_left", near_ms, [reason])


def _not_moulded(context: "Context", gate: "RecipeGate") -> "Seen | None":
    """Return how it stands where no moulding was entered: no cheese, or no day one."""
    begun_ms = context["facts"][gate["step"]]["begun_ms"]
    if begun_ms is None:
        return None
    return seen("not_shown", begun_ms, [{"key": "curing_start_unknown"}])


def changes_ms(context: "Context", gate: "RecipeGate") -> "int | None":
    """Return when the days asked for will have passed, or None [ms].

    Args:
        context: Context of the make.
        gate: as for `look`.
    """
    row = _row(context)
    start_ms = _known(context, "curing_start_ms")
    if row is None or start_ms is None:
        return None
    return int(start_ms + row["days"]["value"] * DAY_MS)


def _row(context: "Context") -> "dict[str, Any] | None":
    """Return the row of curing that the milk's class asks for, or None."""
    rules = context["rules"]
    told = follows(milk_class(context["state"], rules), rules)
    wanted = None if told is None else told["curing"]["value"]
    rule = rules.get(rules[RULES]["curing_rule"]["value"]) if wanted else None
    for row in rule["rows"] if rule else []:
        if row["key"] == wanted:
            found: "dict[str, Any]" = row
            return found
    return None


def _is_met(context: "Context") -> bool:
    """Tell whether the step's own end by the days has come: both are one answer.

    The time since the last reading counts for as long as one that comes now would
    bridge it.
    """
    met_ms = _known(context, "curing_met_ms")
    return met_ms is not None and context["now_ms"] >= met_ms


def _shown_days(context: "Context", key: str) -> int:
    """Return the whole days that readings show; they go on by readings alone."""
    state = context["state"]
    held: "int | None" = kept(state, "matters", key)
    if held is None:
        held = int(_known(context, "cured_days") or 0)
        words = [topic("reading_taken", place) for place in PLACES]
        keep(state, "matters", key, held, words + [FACTS])
    return held


def _known(context: "Context", name: str) -> "Any":
    """Return what the make knows of its store, as its sums are told it."""
    scene: "Any" = {"context": context}
    for part in ("state", "recipe", "now_ms"):
        scene[part] = context[part]
    told = KNOWN[name](scene)
    return None if told is None else told["value"]
