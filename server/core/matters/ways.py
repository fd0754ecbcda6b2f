"""In which ways a matter may be decided, and by whom: what the rule leaves open.

A way is a decision of its own, or another entry that changes the fact: milk is
handled in another class by `treatment_changed`. Such a way is open only where the
recipe has that route and the milk can still go it.
"""

from ..heat.treatment import check_change
from ..log.kinds.columns import ROLES

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.matters import Way, WayEvent
    from server.shapes.core.state import Context


TREATMENT = "treatment_changed"


def ways_of(context: "Context", row: "dict[str, Any]") -> "list[Way]":
    """Return the ways that are open in a matter.

    Args:
        context: Context of the make.
        row: row of the rules of matters.

    Returns:
        List of {"way", "role", "roles", "needs_why", "lifts", "event"}; lifts names
        what is stopped no longer once it is decided so; event is {"kind", "data"} of
        the entry that decides, or None for `matter_decided`.
    """
    ways = []
    for told in row["ways"]:
        event = _event(told)
        if event is not None and check_change(context["state"], event["data"]):
            continue
        ways.append(_way(told, event))
    return ways


def _way(told: "dict[str, Any]", event: "WayEvent | None") -> "Way":
    return {
        "way": told["way"],
        "role": told["role"],
        "roles": list(ROLES[ROLES.index(told["role"]) :]),
        "needs_why": told["needs_why"],
        "lifts": told.get("lifts", []),
        "event": event,
    }


def _event(told: "dict[str, Any]") -> "WayEvent | None":
    treatment = told.get("treatment")
    if treatment is None:
        return None
    return {"kind": TREATMENT, "data": {"treatment": treatment}}


def role_of_way(rules: "dict[str, Any] | None", way: "Any") -> "str | None":
    """Return the least role that may decide in a way, or None where no rule has it.

    Where rows differ the higher role holds.

    Args:
        rules: the rules of matters, or None.
        way: the way.
    """
    found = [
        told["role"]
        for row in (rules["rows"] if rules else [])
        for told in row["ways"]
        if told["way"] == way
    ]
    return max(found, key=ROLES.index) if found else None
