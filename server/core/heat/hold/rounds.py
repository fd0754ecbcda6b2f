"""The rounds of a hold: milk and air space read together, in time for each to count.

Rules first.
1. Two readings count as one unbroken hold when they lie no further apart than the
   rule's gap, or the one that was agreed. So the next is asked for before the gap is
   used up: by a quarter of it, a minute at most (our own judgement, no source). A
   recipe with a hold of its own may want them more often than its own gap.
2. Nothing is credited after the last reading: the last round is asked for when the
   hold's time is up, and only it makes the hold whole.
3. A round is entered as two readings of one instant. Where only one of the two was
   taken, the other stays due.
"""

from ...log.equipment import in_effect
from ...log.readings import within
from ..thermometer import as_typed, typed_unit
from .own import OWN_HOLD
from .rule import AIR, MILK, gap_of, rounds_wanted

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.heat import HoldRound, Shown
    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Entry, Fact, State
    from server.shapes.core.words import ReadingLast


LEAD_SHARE = 0.25
MOST_LEAD_S = 60.0


def quantities(rule: "dict[str, Any]") -> "list[str]":
    """Return what a round of a hold reads, in the order in which it is asked for.

    Args:
        rule: a heat treatment rule.
    """
    airspace = rule.get("airspace")
    return [MILK, AIR] if airspace and "vat" in airspace["vessels"] else [MILK]


def hold_rounds(
    state: "State", step: "RecipeStep", fact: "Fact", rule: "dict[str, Any]"
) -> "list[HoldRound]":
    """Return when each thermometer of a hold is to be read next.

    Args:
        state: State of the make.
        step: step of the recipe.
        fact: its Fact with its deadline, of a step that is to begin or runs.
        rule: the rule that it goes by.

    Returns:
        List of HoldRound, milk first; due_ms None before the begin and once it was
        read at the hold's end, lost_ms None before the first reading [ms]. Empty
        where the recipe asks for no rounds.
    """
    if not rounds_wanted(step):
        return []
    gap_s = gap_of(rule, in_effect(state))["gap_s"]
    every_s = _every_s(step, rule, gap_s)
    told: "list[HoldRound]" = []
    for name in quantities(rule):
        read: "list[Entry]" = []
        if fact["begun_ms"] is not None:
            read = within(state, name, fact["begun_ms"], fact["ended_ms"])
        last = read[-1] if read else None
        last_ms = None if last is None else last["t_ms"]
        told.append(
            {
                "quantity": name,
                "every_s": every_s,
                "gap_s": gap_s,
                "due_ms": _due_ms(last_ms, fact, every_s),
                "lost_ms": None if last_ms is None else last_ms + int(gap_s * 1000),
                "last": None if last is None else _last(last),
                "shown": None if last is None else _shown(last),
            }
        )
    return told


def _last(entry: "Entry") -> "ReadingLast":
    value, at_ms = entry["data"]["value"], entry["t_ms"]
    return {"id": entry["id"], "value": value, "at_ms": at_ms}


def _shown(entry: "Entry") -> "Shown":
    unit = typed_unit(entry)
    return {"typed": as_typed(entry, unit), "unit": unit}


def _every_s(step: "RecipeStep", rule: "dict[str, Any]", gap_s: float) -> float:
    every_s = gap_s - min(MOST_LEAD_S, gap_s * LEAD_SHARE)
    if rule["id"] != OWN_HOLD:
        return every_s
    own: "list[Any]" = [reading["every_s"] for reading in rounds_wanted(step)]
    return float(min([every_s] + own))


def _due_ms(last_ms: "int | None", fact: "Fact", every_s: float) -> "int | None":
    end_ms = fact["due_ms"]
    if last_ms is None:
        return fact["begun_ms"]
    next_ms = last_ms + int(every_s * 1000)
    if end_ms is None:
        return next_ms
    return None if last_ms >= end_ms else min(next_ms, end_ms)
