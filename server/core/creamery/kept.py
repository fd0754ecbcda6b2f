"""The makes that a desk keeps: filed event by event, shown as Views.

A desk is one plain dict; views are kept in it until an event or the clock makes
them stale, since a tap must not pay for the makes that it does not touch.
"""

from ..known.learnt import taught
from ..log import run
from ..log.apart import ask
from ..log.kinds.event import can_be_kept, check_event, is_newer
from ..log.order import corrected_ms
from ..log.touches import forget
from ..step.view import view as view_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import Desk, Event, State, Why
    from server.shapes.core.view import View
    from server.shapes.core.words import Problem


def new() -> "Desk":
    """Return an empty desk: {"makes", "views", "last_words"}; see `set_rules`."""
    return {"makes": {}, "views": {}, "last_words": {}}


def take(desk: "Desk", events: "list[Any]") -> "dict[str, Any]":
    """File events of any makes, in any order; doubles are harmless.

    Args:
        desk: Desk; changed in place.
        events: list of events.

    Returns:
        {"changed": ids of makes that changed, "problems": [{"id", "why"}]};
        an event that is not sound is told here and, where it can be, kept raw
        beside the others of its make, see `run.keep_raw`.
    """
    changed = []
    problems = []
    for event in events:
        why = _check(desk, event)
        if why:
            event_id = event.get("id") if isinstance(event, dict) else None
            problems.append({"id": event_id, "why": why})
        new = _keep_raw(desk, event, why) if why else file(desk, event)
        if new and event["make"] not in changed:
            changed.append(event["make"])
    return {"changed": changed, "problems": problems}


def _check(desk: "Desk", event: "Any") -> "list[Problem]":
    try:
        return check_event(event)
    except ImportError:
        # On a phone the check of recipes comes with the core's later part. An entry
        # that is taken has passed it where it was recorded, or a person let it in.
        problems = check_event(event, "recipe")
        if not problems:
            desk.setdefault("unchecked", []).append(event["make"])
        return problems


def check_recipes(desk: "Desk") -> None:
    """Check what was taken before the check of recipes was there.

    A make whose opening is not sound is filed anew, as if the check had been there
    from the beginning.

    Args:
        desk: Desk; changed in place.
    """
    for make_id in desk.pop("unchecked", []):
        state = desk["makes"][make_id]
        events: "list[Any]" = list(state["events"].values())
        openings = [event for event in events if event["kind"] == "make_opened"]
        if not any(_check(desk, event) for event in openings):
            continue
        events += [state["raw"][name]["event"] for name in state["raw"]]
        for answers in (desk.get("broken", {}), desk.get("acts", {})):
            answers.pop(make_id, None)
        desk["makes"][make_id] = run.new_state(make_id)
        take(desk, events)


def _keep_raw(desk: "Desk", event: "Any", why: "list[Problem]") -> bool:
    if not can_be_kept(event):
        return False
    state = _state_of(desk, event["make"])
    name: "Why" = "newer" if is_newer(event) else "unsound"
    if not run.keep_raw(state, event, name, why):
        return False
    _heard(desk, event)
    return True


def file(desk: "Desk", event: "Event") -> bool:
    """File one event that is known to be sound.

    Args:
        desk: Desk; changed in place.
        event: sound event.

    Returns:
        True when it was new.
    """
    if not run.take(_state_of(desk, event["make"]), event):
        return False
    _heard(desk, event)
    return True


def _state_of(desk: "Desk", make_id: str) -> "State":
    if make_id not in desk["makes"]:
        desk["makes"][make_id] = run.new_state(make_id)
    return desk["makes"][make_id]


def _heard(desk: "Desk", event: "Event") -> None:
    make_id = event["make"]
    desk["views"].pop(make_id, None)
    for other in taught(desk, event):
        forget(desk["makes"][other])
        desk["views"].pop(other, None)
    at_ms = corrected_ms(event)
    if at_ms > desk["last_words"].get(make_id, 0):
        desk["last_words"][make_id] = at_ms


def view(desk: "Desk", make_id: str, now_ms: int) -> "View | None":
    """Return the View of one make, or None when its opening is not known.

    None, too, for a make that cannot be shown: the board names it, see `apart`.

    Args:
        desk: Desk.
        make_id: UUID of the make.
        now_ms: now, by the server's clock [ms].
    """
    state = desk["makes"].get(make_id)
    if state is None:
        return None
    kept = desk["views"].get(make_id)
    if kept is not None and _is_fresh(kept, now_ms):
        return kept
    rules = desk.get("rules")
    shown = ask(desk, make_id, "view", now_ms, view_of, state, now_ms, rules, desk)
    if shown is not None:
        desk["views"][make_id] = shown
        desk.setdefault("acts", {}).pop(make_id, None)
    return shown


def _is_fresh(kept: "View", now_ms: int) -> bool:
    change_ms = kept["next_change_ms"]
    return kept["now_ms"] <= now_ms and (change_ms is None or now_ms < change_ms)
