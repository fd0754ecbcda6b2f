"""The state of one make: a fold over its events, whatever order they come in.

Rules first.
1. An event is never changed. A correction or a strike is another event that
   names it; both stay.
2. The state of a set of events is one thing: the order of arrival, doubles and
   gaps do not matter. So nothing here asks "what is the state now?" when an
   event is taken; each event is only filed.
3. Taking one event touches that event's files, never the whole log.

How. Each valid event becomes an entry (its effective time, person and body)
in the list of its topic: "step_begun/heat", "reading_taken/ph". Lists are kept
in the total order of `order`. When a correction or a strike arrives, the entry
it is about is taken out and filed anew. When it arrives before that entry, it
waits in `amends` or `strikes` and is found when the entry comes; see `amends`.

4. What was worked out and is kept beside is forgotten when an event may have
   changed it: see `touches`.
5. An event that this app cannot read, because it is of a newer app or not sound, is
   kept as it came (`raw`): it stands in the log and changes nothing else.
"""

from .amends import DEEPEST, effective, is_struck
from .kinds.table import CHANGING, KINDS
from .order import corrected_ms, insert, remove
from .touches import topic, touch

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import Entry, Event, Line, State, Why
    from server.shapes.core.view import Unread
    from server.shapes.core.words import Problem


def new_state(make_id: str) -> "State":
    """Return the state of a make of which nothing is known yet.

    Args:
        make_id: UUID of the make.

    Returns:
        State: {"make", "events", "raw", "log", "lists", "amends", "strikes",
        "judged", "kept"}; JSON types only.
    """
    return {
        "make": make_id,
        "events": {},
        "raw": {},
        "log": [],
        "lists": {},
        "amends": {},
        "strikes": {},
        "judged": {},
        "kept": {},
    }


def take(state: "State", event: "Event") -> bool:
    """File one event; the same event again changes nothing.

    Args:
        state: State; changed in place.
        event: a sound event of this make, see `kinds.event.check_event`.

    Returns:
        True when the state changed.
    """
    if event["id"] in state["events"] or event["kind"] not in KINDS:
        return False
    state["events"][event["id"]] = event
    insert(state["log"], _line(event))
    kind = event["kind"]
    ref = event.get("ref") or ""
    if kind == "entry_corrected":
        insert(state["amends"].setdefault(ref, []), _line(event))
        _file_again(state, ref)
    elif kind == "entry_struck":
        insert(state["strikes"].setdefault(ref, []), _line(event))
        _file_again(state, ref)
    elif kind == "duplicate_judged":
        insert(state["judged"].setdefault(ref, []), _line(event))
    _file(state, event)
    touch(state, event)
    return True


def keep_raw(
    state: "State", event: "Event", why: "Why", problems: "list[Problem]"
) -> bool:
    """Keep an event that cannot be read; the same event again changes nothing.

    Args:
        state: State; changed in place.
        event: an event of this make with a sound envelope.
        why: "newer" or "unsound".
        problems: what is wrong with it, see `kinds.event.check_event`.

    Returns:
        True when the state changed.
    """
    if event["id"] in state["events"] or event["id"] in state["raw"]:
        return False
    state["raw"][event["id"]] = {"event": event, "why": why, "problems": problems}
    insert(state["log"], _line(event))
    return True


def unread(state: "State") -> "Unread":
    """Return how many entries of a make are kept and cannot be shown.

    Args:
        state: State.

    Returns:
        {"newer", "unsound"}: of a newer app, and all others.
    """
    counts: "Unread" = {"newer": 0, "unsound": 0}
    for event_id in state["raw"]:
        counts[state["raw"][event_id]["why"]] += 1
    return counts


def entries(state: "State", kind: str, name: "str | None" = None) -> "list[Entry]":
    """Return the standing entries of a topic, oldest first.

    Args:
        state: State.
        kind: key of `kinds.table.KINDS`.
        name: the step, quantity, ingredient, ... of the topic, where the kind
            is filed by one; None for every other kind.

    Returns:
        List of {"id", "t_ms", "device", "seq", "by", "data", "ref"}. Not to be
        changed.
    """
    # Asked thousands of times for one answer: the topic is put together here, since
    # a call would cost a phone as much as the look-up.
    return state["lists"].get(kind if name is None else kind + "/" + name, [])


def last(state: "State", kind: str, name: "str | None" = None) -> "Entry | None":
    """Return the newest standing entry of a topic, or None.

    Args:
        state: State.
        kind: key of `kinds.table.KINDS`.
        name: as for `entries`.
    """
    standing = entries(state, kind, name)
    return standing[-1] if standing else None


def _line(event: "Event") -> "Line":
    return {
        "id": event["id"],
        "t_ms": corrected_ms(event),
        "device": event["device"],
        "seq": event["seq"],
    }


def _topic_of(kind: str, data: "dict[str, Any]") -> str:
    field = KINDS[kind]["topic"]
    return topic(kind, None if field is None else data.get(field) or "")


def _file(state: "State", event: "Event") -> None:
    if is_struck(state, event["id"]):
        return
    now = effective(state, event)
    entry: "Entry" = {
        "id": event["id"],
        "t_ms": now["t_ms"],
        "device": event["device"],
        "seq": event["seq"],
        "by": event["person"],
        "data": now["data"],
        "ref": event.get("ref"),
    }
    name = _topic_of(event["kind"], now["data"])
    insert(state["lists"].setdefault(name, []), entry)


def _unfile(state: "State", event: "Event") -> None:
    # A correction may have moved it to another topic of its kind: 28 small
    # wheels that were large ones.
    for name in state["lists"]:
        if name.split("/")[0] == event["kind"]:
            remove(state["lists"][name], event["id"])


def _file_again(state: "State", event_id: str) -> None:
    """File anew what a correction or strike is about, at whatever depth."""
    for _ in range(DEEPEST):
        event = state["events"].get(event_id)
        if event is None:
            return
        _unfile(state, event)
        _file(state, event)
        if event["kind"] not in CHANGING:
            return
        event_id = event.get("ref") or ""
