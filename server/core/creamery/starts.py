"""When to open a make: what it would clash with, and a start that clashes less."""

from ..figures.due import high_s, low_s, span_ms
from ..figures.plan import planned_by_recipe
from ..make.plan import in_order
from .acts import acts
from .clashes import AHEAD_MS, MOST, clashes

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.board import Act, BetterStart, Clash, ClashesIf
    from server.shapes.core.recipe import Recipe, RecipeStep
    from server.shapes.core.state import Span

SHIFT_MS = 300000  # a start is moved by steps of this
SHIFTS = 24
NEW = ""  # the make that is not opened yet


def planned_acts(recipe: "Recipe", start_ms: int) -> "list[Act]":
    """Return the acts of a make that would be opened at an instant.

    Args:
        recipe: a sound recipe.
        start_ms: when it would be opened [ms].

    Returns:
        List of Act of the make NEW.
    """
    steps = in_order(recipe["steps"])
    times = planned_by_recipe(steps, start_ms)
    shown = [_planned(step, times[step["key"]]) for step in steps]
    make = {"id": NEW, "name": "", "vat": None}
    return acts({"make": make, "steps": shown, "timers": []}, steps)


def _planned(step: "RecipeStep", times: "Span") -> "dict[str, Any]":
    lasts = step.get("lasts")
    begin_ms = times["begin_ms"]
    return {
        "key": step["key"],
        "title": step["title"],
        "place": step.get("place"),
        "round": step.get("round"),
        "rounds": step.get("rounds"),
        "status": "waiting",
        "waits_on": step.get("after", []),
        "expected_begin_ms": begin_ms,
        "expected_end_ms": times["end_ms"],
        "end_low_ms": begin_ms + span_ms(low_s(lasts)) if lasts else None,
        "end_high_ms": begin_ms + span_ms(high_s(lasts)) if lasts else None,
    }


def clashes_if(
    running: "list[Act]", recipe: "Recipe", start_ms: int, now_ms: int
) -> "ClashesIf":
    """Return what a new make would clash with, and a start that clashes less.

    Args:
        running: list of Act of the makes that run.
        recipe: a sound recipe.
        start_ms: when the new make would be opened [ms].
        now_ms: now [ms].

    Returns:
        {"clashes": as from `clashes`, the first MOST, "count" of all, "better":
        {"start_ms", "count"} of the nearest start that has fewer, or None}.
    """
    new = planned_acts(recipe, start_ms)
    here = _with_new(running, new, start_ms, 0, now_ms)
    better: "BetterStart | None" = None
    for shift_ms in _shifts():
        least = len(here) if better is None else better["count"]
        if least == 0 or start_ms + shift_ms < now_ms:
            continue
        count = len(_with_new(running, new, start_ms, shift_ms, now_ms))
        if count < least:
            better = {"start_ms": start_ms + shift_ms, "count": count}
    return {"clashes": here[:MOST], "count": len(here), "better": better}


def _shifts() -> "list[int]":
    """Return by how much a start may move, the nearest first [ms]."""
    steps = range(1, SHIFTS + 1)
    return [sign * step * SHIFT_MS for step in steps for sign in (1, -1)]


def _with_new(
    running: "list[Act]", new: "list[Act]", start_ms: int, shift_ms: int, now_ms: int
) -> "list[Clash]":
    until_ms = start_ms + shift_ms + AHEAD_MS
    moved = [_moved(act, shift_ms) for act in new]
    return [
        clash
        for clash in clashes(running + moved, now_ms, until_ms)
        if any(act["make"] == NEW for act in clash["acts"])
    ]


def _moved(act: "Act", shift_ms: int) -> "Act":
    moved: "Any" = dict(act)
    for name in ("at_ms", "early_ms", "late_ms", "since_ms"):
        moved[name] = moved[name] + shift_ms
    return moved
