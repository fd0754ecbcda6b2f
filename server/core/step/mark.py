"""How a step stands, in the one word that every screen has a mark for.

Rules first.
1. What a matter stops wants a decision first: that is told before how late it is.
2. A running step is late past its own band of time, see `steps.timing`.
3. It is due where something it waited for has come: its own end, a reading, a look at
   the curd, a turn. What is done in it at once, as an addition, is the work itself.
4. A step that stands ready is that, however long: its alert tells since when.
"""

from .alerts.overdue import told_by_other

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import Fact
    from server.shapes.core.step import ReadingWanted, StepMark

OF_STATUS: "dict[str, StepMark]" = {
    "ended": "done",
    "running": "running",
    "skipped": "skipped",
    "ready": "ready",
    "waiting": "waiting",
}


def brief_mark(fact: "Fact") -> "StepMark":
    """Return the mark of a step by its status alone.

    Args:
        fact: Fact of the step.
    """
    return OF_STATUS[fact["status"]]


def mark(shown: "dict[str, Any]", now_ms: int) -> "StepMark":
    """Return the mark of a step.

    Args:
        shown: the Step of the View with its button.
        now_ms: now [ms].

    Returns:
        "waiting", "ready", "running", "due", "late", "stopped", "done" or "skipped".
    """
    if shown["button"]["act"] == "stopped":
        # Of what waits for other steps anyway, the gate is not what holds it up.
        return "waiting" if shown["status"] == "waiting" else "stopped"
    if shown["status"] == "running":
        if shown["timing"]["state"] == "late":
            return "late"
        if any(due_ms <= now_ms for due_ms in _instants(shown)):
            return "due"
    return OF_STATUS[shown["status"]]


def _instants(shown: "dict[str, Any]") -> "list[int]":
    """Return when what a running step waits for comes [ms]."""
    instants = [shown["due_ms"]]
    if shown["button"]["act"] == "judge":
        instants.append(shown["judge"]["from_ms"])
    if shown["turn"]:
        instants.append(shown["turn"]["due_ms"])
    rows = shown["readings"]
    instants.extend(
        row["due_ms"] for row in rows if _counts(row) and not told_by_other(row, rows)
    )
    return [instant for instant in instants if instant is not None]


def _counts(reading: "ReadingWanted") -> bool:
    return bool(reading["required"] or reading["every_s"])
