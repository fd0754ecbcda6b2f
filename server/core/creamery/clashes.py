"""Two acts that want the same hands at the same time, while one can still move.

An act is an instant at which a wait ends and a hand is wanted: the vat has
reached its heat, the press is to be opened, the wheels come out of the brine.
Work that a person ends at will is no act: it takes its time where there is some.

Two acts clash when they fall this near together and nobody has said that they
are in different hands. Waits that follow each other in one make cannot clash,
nor those that one and the same step waits for: that is how the recipe runs.
"""

from ..figures.due import high_s, low_s, span_ms
from ..figures.plan import planned_by_recipe
from ..make import plan
from ..make.facts import is_hands_on

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.board import Act, Clash, ClashesIf, Move
    from server.shapes.core.recipe import Recipe, RecipeStep
    from server.shapes.core.state import Span
    from server.shapes.core.view import Timer, View


WITHIN_MS = 300000  # this near, two acts want two pairs of hands; our own judgement
AHEAD_MS = 86400000
MOST = 3  # more than a few are read by nobody
SHIFT_MS = 300000  # a start is moved by steps of this
SHIFTS = 24
NEW = ""  # the make that is not opened yet

_BY_ITSELF = ("time", "floc", "reading")


def acts(view: "View", steps: "list[RecipeStep]") -> "list[Act]":
    """Return the acts that a make will ask for, as far as its plan reaches.

    Args:
        view: View of the make.
        steps: steps of its recipe, in the order of the View.

    Returns:
        List of Act: {"make", "make_name", "vat", "what", "step", "title",
        "round", "rounds", "place", "label", "at_ms", "early_ms", "late_ms",
        "by", "wait", "since_ms", "next"}. what is "begin" of the step that
        follows, "end" where none begins then, or "timer"; early_ms and late_ms
        are the ends of the recipe's band, None for a timer; by has it in hand.
    """
    found = []
    next_of = _next_of(view)
    for place, shown in enumerate(view["steps"]):
        row = steps[place]
        if shown["status"] in ("ended", "skipped") or not _is_wait(row):
            continue
        found.append(_act_of(view, shown, row, next_of.get(shown["key"])))
    for timer in view["timers"]:
        if timer["stopped_ms"] is None:
            found.append(_act_of_timer(view, timer))
    return found


def clashes(found: "list[Act]", now_ms: int, until_ms: int) -> "list[Clash]":
    """Return the acts that fall together, each once, in the order of time.

    Args:
        found: list of Act of any makes.
        now_ms: now; what is due already is no longer ahead [ms].
        until_ms: how far to look [ms].

    Returns:
        List of {"at_ms", "acts" [Act], "move"}; move is {"act": its place in the
        list, "to_ms", "way": "later" or "earlier", "clears"} for the act with
        the widest band, None when no band leaves room.
    """
    rows = [(one["at_ms"], one["make"], one["wait"], one) for one in found]
    rows = sorted(
        [row for row in rows if now_ms < row[0] <= until_ms],
        key=lambda row: row[:3],
    )
    groups = _groups([row[3] for row in rows])
    return [
        {"at_ms": group[0]["at_ms"], "acts": group, "move": _move(group, now_ms)}
        for group in groups
    ]


def _groups(rows: "list[Act]") -> "list[list[Act]]":
    groups = []
    used = [False] * len(rows)
    for first, one in enumerate(rows):
        if used[first]:
            continue
        group = [one]
        places = [first]
        near = [
            place
            for place in range(first + 1, len(rows))
            if rows[place]["at_ms"] - one["at_ms"] <= WITHIN_MS and not used[place]
        ]
        # Two that do not clash with each other may both clash with a third.
        while True:
            mates = [
                place
                for place in near
                if place not in places
                and any(_is_clash(rows[place], mate) for mate in group)
            ]
            if not mates:
                break
            places.extend(mates)
            group.extend(rows[place] for place in mates)
        if len(group) > 1:
            for place in places:
                used[place] = True
            groups.append([rows[place] for place in sorted(places)])
    return groups


def planned_acts(recipe: "Recipe", start_ms: int) -> "list[Act]":
    """Return the acts of a make that would be opened at an instant.

    Args:
        recipe: a sound recipe.
        start_ms: when it would be opened [ms].

    Returns:
        List of Act of the make NEW.
    """
    steps = plan.in_order(recipe["steps"])
    times = planned_by_recipe(steps, start_ms)
    shown = [_planned(row, times[row["key"]]) for row in steps]
    make = {"id": NEW, "name": "", "vat": None}
    return acts({"make": make, "steps": shown, "timers": []}, steps)


def _planned(row: "RecipeStep", times: "Span") -> "dict[str, Any]":
    lasts = row.get("lasts")
    begin_ms = times["begin_ms"]
    return {
        "key": row["key"],
        "title": row["title"],
        "place": row.get("place"),
        "round": row.get("round"),
        "rounds": row.get("rounds"),
        "status": "waiting",
        "waits_on": row.get("after", []),
        "expected_begin_ms": begin_ms,
        "expected_end_ms": times["end_ms"],
        "end_low_ms": begin_ms + span_ms(low_s(lasts)) if lasts else None,
        "end_high_ms": begin_ms + span_ms(high_s(lasts)) if lasts else None,
    }


def clashes_if(
    found: "list[Act]", recipe: "Recipe", start_ms: int, now_ms: int
) -> "ClashesIf":
    """Return what a new make would clash with, and a start that clashes less.

    Args:
        found: list of Act of the makes that run.
        recipe: a sound recipe.
        start_ms: when the new make would be opened [ms].
        now_ms: now [ms].

    Returns:
        {"clashes": as from `clashes`, the first MOST, "count" of all, "better":
        {"start_ms", "count"} of the nearest start that has fewer, or None}.
    """
    new = planned_acts(recipe, start_ms)
    here = _with_new(found, new, 0, start_ms, now_ms)
    better = None
    least = len(here)
    for place in range(1, SHIFTS + 1):
        for shift_ms in (place * SHIFT_MS, -place * SHIFT_MS):
            if least == 0 or start_ms + shift_ms < now_ms:
                continue
            count = len(_with_new(found, new, shift_ms, start_ms, now_ms))
            if count < least:
                least = count
                better = {"start_ms": start_ms + shift_ms, "count": count}
    return {"clashes": here[:MOST], "count": len(here), "better": better}


def _with_new(
    found: "list[Act]", new: "list[Act]", shift_ms: int, start_ms: int, now_ms: int
) -> "list[Clash]":
    moved = []
    for one in new:
        act = dict(one)
        for name in ("at_ms", "early_ms", "late_ms", "since_ms"):
            act[name] = one[name] + shift_ms
        moved.append(act)
    until_ms = start_ms + shift_ms + AHEAD_MS
    return [
        row
        for row in clashes(found + moved, now_ms, until_ms)
        if any(act["make"] == NEW for act in row["acts"])
    ]


def _is_wait(row: "RecipeStep") -> bool:
    if not row.get("lasts"):
        return False
    by = row["end"]["by"]
    return by in _BY_ITSELF or (by == "person" and not is_hands_on(row))


def _next_of(view: "View") -> "dict[str, dict[str, Any]]":
    """Return for each step the first one that waits on it."""
    found = {}
    for shown in view["steps"]:
        for key in shown["waits_on"]:
            if key not in found:
                found[key] = shown
    return found


def _act_of(
    view: "View",
    shown: "dict[str, Any]",
    row: "RecipeStep",
    follower: "dict[str, Any] | None",
) -> "Act":
    at_ms = shown["expected_end_ms"]
    begins = follower is not None and follower["expected_begin_ms"] == at_ms
    named = follower if begins else shown
    since_ms = shown["expected_begin_ms"]
    task = None
    if shown["status"] == "running":
        task = shown["task"]
        # From the deadline, since a hold that began again runs from later.
        since_ms = shown["due_ms"] - span_ms(shown["lasts"]["value_s"])
    return {
        "make": view["make"]["id"],
        "make_name": view["make"]["name"],
        "vat": view["make"]["vat"],
        "what": "begin" if begins else "end",
        "step": named["key"],
        "title": named["title"],
        "round": named["round"],
        "rounds": named["rounds"],
        "place": named["place"],
        "label": None,
        "at_ms": at_ms,
        "early_ms": shown["end_low_ms"],
        "late_ms": shown["end_high_ms"],
        "by": None if task is None else task["by"],
        "wait": shown["key"],
        "since_ms": since_ms,
        "next": None if follower is None else follower["key"],
    }


def _act_of_timer(view: "View", timer: "Timer") -> "Act":
    return {
        "make": view["make"]["id"],
        "make_name": view["make"]["name"],
        "vat": view["make"]["vat"],
        "what": "timer",
        "step": timer["step"],
        "title": {"en": ""},
        "round": None,
        "rounds": None,
        "place": None,
        "label": timer["label"],
        "at_ms": timer["due_ms"],
        "early_ms": None,
        "late_ms": None,
        "by": None,
        "wait": timer["id"],
        "since_ms": timer["start_ms"],
        "next": None,
    }


def _is_clash(one: "Act", other: "Act") -> bool:
    if one["by"] and other["by"] and one["by"] != other["by"]:
        return False
    if one["make"] != other["make"]:
        return True
    # A timer beside a step of its own make is set for that very step.
    if one["what"] == "timer" or other["what"] == "timer":
        return False
    if one["next"] is not None and one["next"] == other["next"]:
        return False
    return one["since_ms"] < other["at_ms"] and other["since_ms"] < one["at_ms"]


def _move(group: "list[Act]", now_ms: int) -> "Move | None":
    best = None
    for place, act in enumerate(group):
        if act["early_ms"] is None:
            continue
        others = [one["at_ms"] for one in group if one is not act]
        for way, to_ms, clear_ms in (
            ("later", act["late_ms"], act["late_ms"] - max(others)),
            ("earlier", act["early_ms"], min(others) - act["early_ms"]),
        ):
            room_ms = abs(to_ms - act["at_ms"])
            is_that_way = (to_ms > act["at_ms"]) == (way == "later")
            if room_ms == 0 or not is_that_way or to_ms <= now_ms:
                continue
            clears = clear_ms > WITHIN_MS
            rank = (clears, way == "later", room_ms, -place)
            if best is None or rank > best[0]:
                move = {"act": place, "to_ms": to_ms, "way": way, "clears": clears}
                best = (rank, move)
    return None if best is None else best[1]
