"""Readings that are overdue: those that are due together are one matter.

How late one may come is its own, see `figures.grace`. What is wanted at the end of a
step is asked for by the end itself, which rings when it is due, or once it is late.
"""

from ..parts.step_parts import quantities_of
from .alert import alert_of, what_to_do

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.step import ReadingWanted, Step
    from server.shapes.core.view import Alert
    from server.shapes.core.words import Words


ACT_OVERDUE_S = 600.0  # a reading without an interval this late asks to act


def overdue_alerts(step: "Step") -> "list[Alert]":
    """Return the alert of the readings that a running step waits for, if any.

    Args:
        step: Step of the View.

    Returns:
        List of Alert, at most one; since when the newest round of them was due, so
        that a word about an earlier round is no word about this one.
    """
    rows = step["readings"]
    due = [row for row in rows if _counts(step, row) and not told_by_other(row, rows)]
    late = [row for row in due if row["overdue_s"] > row["grace_s"]]
    if not late:
        return []
    since_ms, names = _since_ms(late), quantities_of(due)
    is_urgent = any(row["overdue_s"] > act_after_s(row) for row in late)
    return [
        alert_of(
            "overdue/" + step["key"],
            "record",
            "act" if is_urgent else "check",
            "reading_overdue" if len(names) == 1 else "readings_overdue",
            since_ms,
            step=step["key"],
            quantity=names[0] if len(names) == 1 else None,
            value=None if len(names) == 1 else len(names),
            by_s=max(row["overdue_s"] for row in late),
            rings_ms=min(rings_ms(row) for row in late if _due_ms(row) >= since_ms),
            do=_do(step, names),
        )
    ]


def act_after_s(reading: "ReadingWanted") -> float:
    """Return how late a reading must be for its alert to ask to act [s].

    Args:
        reading: a reading that a step wants.
    """
    if reading["lost_ms"] is not None:
        return max(0, reading["lost_ms"] - _due_ms(reading)) / 1000.0
    late_s: float = reading["every_s"] or ACT_OVERDUE_S
    return max(late_s, 2.0 * reading["grace_s"])


def rings_ms(reading: "ReadingWanted") -> int:
    """Return since when an overdue reading is an alert [ms].

    Args:
        reading: a reading that is due.
    """
    return _due_ms(reading) + int(reading["grace_s"] * 1000)


def told_by_other(reading: "ReadingWanted", readings: "list[ReadingWanted]") -> bool:
    """Tell whether a reading is read in the round of another that is due as well.

    Args:
        reading: reading that is due.
        readings: all that its step wants.
    """
    return any(
        other["quantity"] == reading["goes_with"]
        and other["due_ms"] is not None
        and reading["due_ms"] is not None
        and other["due_ms"] <= reading["due_ms"]
        for other in readings
    )


def _counts(step: "Step", reading: "ReadingWanted") -> bool:
    """Tell whether a reading is due, and not asked for by the step's own end."""
    if not (reading["required"] or reading["every_s"]) or not reading["overdue_s"]:
        return False
    return reading["when"] != "end" or step["end_high_ms"] is None


def _since_ms(late: "list[ReadingWanted]") -> int:
    """Return when the newest round of overdue readings fell due [ms].

    A round is read one after the other, so what falls due within the grace of the
    newest belongs to it.
    """
    newest = max(late, key=_due_ms)
    from_ms = _due_ms(newest) - int(newest["grace_s"] * 1000)
    return min(_due_ms(row) for row in late if _due_ms(row) >= from_ms)


def _due_ms(reading: "ReadingWanted") -> int:
    return reading["due_ms"] or 0


def _do(step: "Step", names: "list[str]") -> "Words | None":
    """Return the remedy of the first that has one of its own, else the step's."""
    general = what_to_do(step, "record_missing")
    for name in names:
        own = what_to_do(step, "record_missing", name)
        if own != general:
            return own
    return general
