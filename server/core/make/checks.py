"""Checks of the thermometer that a vat is held by: when the last was, when one is due.

Rules first.
1. A check is a reading of CHECK: at the ice point, or beside the reference. What it
   showed is another question, see `matters.watch.thermometer`.
2. A thermometer belongs to its vat: a check counts in every make of that vat. One of a
   practice make counts in that make alone.
3. Every how many days one is wanted is the creamery's setting (common practice, no
   source). Until it is set no check is overdue.
4. Where none is on record, one is wanted since the make was opened.
"""

from ..log.apart import ask
from ..log.equipment import in_effect
from ..log.opening import opening
from ..log.readings import every
from .facts import readings_in
from .practice import is_practice

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import Context, Entry, Fact, State
    from server.shapes.core.words import Keyed


CHECK = "check_temp_c"
EVERY = "check_every_days"
DAY_MS = 86400000


def checks_in(state: "State", fact: "Fact") -> "list[Entry]":
    """Return the checks that were made in a step, oldest first.

    Args:
        state: State of the make.
        fact: Fact of the step.
    """
    return readings_in(state, fact, CHECK)


def check_due_ms(context: "Context", at_ms: int) -> "int | None":
    """Return until when a make's thermometer is checked, as it stood at an instant.

    Args:
        context: Context of the make.
        at_ms: the instant; later checks do not count [ms].

    Returns:
        Instant [ms], also one that is past; None where no interval is set.
    """
    days, last_ms = _every_days(context["state"]), _last_ms(context, at_ms)
    if days is None:
        return None
    if last_ms is None:
        opened: "Any" = opening(context["state"])
        due_ms: int = opened["t_ms"]
        return due_ms
    return last_ms + days * DAY_MS


def overdue_check(context: "Context", at_ms: int) -> "Keyed | None":
    """Return the reason that a make's thermometer was not checked in time, or None.

    Args:
        context: Context of the make.
        at_ms: the instant at which it was to be checked [ms].

    Returns:
        {"key", "since_ms", "limit"}: "check_overdue", or "check_not_on_record" where
        there is none; since_ms is since when, limit the interval in days.
    """
    due_ms = check_due_ms(context, at_ms)
    if due_ms is None or due_ms > at_ms:
        return None
    is_known = _last_ms(context, at_ms) is not None
    return {
        "key": "check_overdue" if is_known else "check_not_on_record",
        "since_ms": due_ms,
        "limit": _every_days(context["state"]),
    }


def _every_days(state: "State") -> "int | None":
    days = in_effect(state).get(EVERY)
    if days is None or isinstance(days, (str, bool)) or days < 1:
        return None
    return int(days)


def _last_ms(context: "Context", at_ms: int) -> "int | None":
    desk, state = context["desk"], context["state"]
    found = _checked_ms(state, at_ms)
    for make_id in desk["makes"] if desk else []:
        other = desk["makes"][make_id]
        if other is not state and _shares_vat(other, state):
            found.extend(
                ask(desk, make_id, "learnt", None, _checked_ms, other, at_ms) or []
            )
    return max(found) if found else None


def _checked_ms(state: "State", at_ms: int) -> "list[int]":
    return [entry["t_ms"] for entry in every(state, CHECK) if entry["t_ms"] <= at_ms]


def _shares_vat(other: "State", state: "State") -> bool:
    both = [opening(other), opening(state)]
    if both[0] is None or both[1] is None or is_practice(other):
        return False
    vats = [opened["data"].get("vat") for opened in both if opened is not None]
    return bool(vats[0] == vats[1])
