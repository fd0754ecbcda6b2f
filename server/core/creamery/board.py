"""All makes at once: how each stands, and what is due next across them."""

from ..log import run
from ..log.apart import ask, broken
from ..log.opening import discarding, is_opened, is_over
from ..step.in_store import can_brine
from .clashes import AHEAD_MS, MOST, SOON_MS, clashes
from .due import dues, in_brine, lead, of_tank, when_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.board import Act, Board, Due, MakeSummary
    from server.shapes.core.state import Desk, State
    from server.shapes.core.step import Step, StepSummary
    from server.shapes.core.view import Unread, View

# Who comes the next morning still reads that a make was discarded; our own judgement.
GONE_MS = 2 * 86400000


def board(
    desk: "Desk", views: "list[View]", now_ms: int, ahead: "list[Act]", tz_min: int = 0
) -> "Board":
    """Return the Board over the Views of all makes.

    Args:
        desk: Desk.
        views: list of View, of every make that can be shown.
        now_ms: now [ms].
        ahead: list of Act of the makes that run, see `acts.acts`.
        tz_min: the reader's time zone east of UTC [min].

    Returns:
        Board: makes that still run first, the
        newest opening first; due sorted by when it must happen; the first
        clashes of the day ahead and how many there are; what cannot be shown.
    """
    makes = desk["makes"]
    running = [view for view in views if view["make"]["is_open"]]
    due = sorted(_due(desk, running, now_ms), key=_due_rank)
    lead(due)
    for prompt in due:
        prompt["when"] = when_of(prompt, now_ms, tz_min)
    changes = [
        view["next_change_ms"] for view in running if view["next_change_ms"] is not None
    ]
    # Of all else the View tells when it changes.
    changes.extend(
        prompt["due_ms"]
        for prompt in due
        if prompt["what"] in ("turn", "unload") and prompt["due_ms"] > now_ms
    )
    until_ms = now_ms + AHEAD_MS
    together = ask(desk, "", "clashes", now_ms, clashes, ahead, now_ms, until_ms) or []
    changes.extend(
        clash["at_ms"] - SOON_MS for clash in together if not clash["is_soon"]
    )
    gone_ms = [_told_until_ms(desk, view) for view in views]
    changes.extend(until for until in gone_ms if until > now_ms)
    return {
        "now_ms": now_ms,
        "next_change_ms": min(changes) if changes else None,
        "makes": sorted([_summary(view, desk, now_ms) for view in views], key=_rank),
        "ripening": _ripening(views),
        "due": due,
        "clashes": together[:MOST],
        "clash_count": len(together),
        "broken": broken(desk),
        "unread": _unread(makes),
    }


def _ripening(views: "list[View]") -> "list[str]":
    """Return the makes whose wheels are out of the press, the newest first."""
    makes = [view["make"] for view in views]
    # Practice waits where there is real cheese.
    ripe = [make for make in makes if make["store_step"] and not make["practice"]]
    ripe = sorted(ripe, key=lambda make: (-make["opened_ms"], make["id"]))
    return [make["id"] for make in ripe]


def _due(desk: "Desk", running: "list[View]", now_ms: int) -> "list[Due]":
    """Return what falls due, each make and each tank asked apart from the others."""
    makes = desk["makes"]
    due: "list[Due]" = []
    told: "list[tuple[str, str]]" = []
    for view in running:
        make_id = view["make"]["id"]
        answer = ask(desk, make_id, "due", now_ms, _due_of, view, now_ms)
        due.extend(answer[0] if answer else [])
        told.extend(answer[1] if answer else [])
    for stream in sorted(makes):
        due.extend(
            ask(desk, stream, "tank_due", now_ms, of_tank, desk, stream, told, now_ms)
            or []
        )
    return due


def _due_of(view: "View", now_ms: int) -> "tuple[list[Due], list[tuple[str, str]]]":
    return dues(view, now_ms), in_brine(view)


def _unread(makes: "dict[str, State]") -> "Unread":
    """Return how many entries of makes that are shown and not over cannot be."""
    count: "Unread" = {"newer": 0, "unsound": 0}
    for stream in makes:
        state = makes[stream]
        # Of a make whose opening is among them, that is told already.
        if state["raw"] and is_opened(state) and not is_over(state):
            told = run.unread(state)
            count["newer"] += told["newer"]
            count["unsound"] += told["unsound"]
    return count


def _due_rank(due: "Due") -> "tuple[int, str, str, str, str]":
    # Total, since the phone's sort shuffles what is equal.
    about = due["timer"] or due["load"] or due["step"] or ""
    return (
        due["due_ms"],
        due["make"],
        due["what"],
        about,
        due["quantity"] or "",
    )


def _rank(make: "MakeSummary") -> "tuple[bool, int, str]":
    return (not make["is_open"], -make["opened_ms"], make["id"])


def _told_until_ms(desk: "Desk", view: "View") -> int:
    """Return until when Now tells that a make was discarded; 0 of any other [ms]."""
    gone = discarding(desk["makes"][view["make"]["id"]])
    return 0 if gone is None else gone["t_ms"] + GONE_MS


def _summary(view: "View", desk: "Desk", now_ms: int) -> "MakeSummary":
    make = view["make"]
    focus = None
    for step in view["steps"]:
        if step["key"] == view["focus"]:
            focus = _brief(step)
    running = [_brief(step) for step in view["steps"] if step["status"] == "running"]
    return {
        "id": make["id"],
        "name": make["name"],
        "batch": make["batch"],
        "practice": make["practice"],
        "state": make["state"],
        "is_open": make["is_open"],
        "on_now": make["is_open"] or _told_until_ms(desk, view) > now_ms,
        "vat": make["vat"],
        "opened_ms": make["opened_ms"],
        "recipe_title": make["recipe_title"],
        # Practice waits where there is real cheese.
        "store_step": None if make["practice"] else make["store_step"],
        "can_brine": can_brine(make),
        "focus": focus,
        "running": running,
        "alerts": view["alerts"],
        "matters": view["matters"],
        "day": view["day"],
        "whole": view["whole"],
        "band": view["band"],
        "last_word_ms": desk["last_words"].get(make["id"]),
        "unread": view["unread"],
    }


def _brief(step: "Step") -> "StepSummary":
    return {
        "key": step["key"],
        "title": step["title"],
        "status": step["status"],
        "mark": step["mark"],
        "due_ms": step["due_ms"],
        "timing": step["timing"],
        "main": step["main"],
        "button": step["button"],
        "place": step["place"],
        "round": step["round"],
        "rounds": step["rounds"],
        "task": step["task"],
    }
