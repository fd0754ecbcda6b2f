"""Makes kept apart: what one of them cannot answer must not silence the others.

Rules first.
1. A question over many makes asks each of them through `ask`. One that fails is
   noted in the desk, and the rest of the answer goes on without it.
2. What is caught is everything, on purpose: the cause is a fault of ours that
   nobody has thought of, and the timers of the other vats ring through it. Only
   a lack of memory is not, for then no answer can be trusted; nor a part of the
   core that has not come to this phone yet, for then the question is put again.
3. Nothing is hushed up. The board names the make until it can be shown again or is
   over, an alarm says that it no longer rings by itself, and whoever put a function
   into LISTENERS is told of each fault when it first comes: the server writes it
   down, the tests fail.
"""

from .opening import is_opened, is_over, opening, tank_opening
from .order import corrected_ms
from .standing import holds, make_state

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

    from server.shapes.core.board import Broken, BrokenWhy
    from server.shapes.core.state import Desk, Raw, State

# Functions (stream id, what could not be asked, the exception).
LISTENERS: "list[Any]" = []

MOST_LETTERS = 80
# What cannot be shown, the one that costs most first: "opening" is of an entry that
# cannot be read at all.
WHATS = (
    "opening",
    "view",
    "alarms",
    "due",
    "acts",
    "tank",
    "tank_due",
    "start",
    "trends",
    "learnt",
)
STOPS_ALARMS = ("opening", "view", "alarms")


def ask(
    desk: "Desk",
    stream: str,
    what: str,
    now_ms: "int | None",
    question: "Callable[..., Any]",
    *args: "Any",
) -> "Any":
    """Return the answer of one make, or None when it has none because of a fault.

    Args:
        desk: Desk; the fault is noted in it, or forgotten once it is over.
        stream: id of the make or tank; "" where it is of none alone.
        what: one of WHATS, or "clashes".
        now_ms: now [ms]; None where the question knows no now.
        question: function to call.
        *args: its arguments.

    Returns:
        What the question answers.
    """
    try:
        answer = question(*args)
    except (MemoryError, ImportError):
        raise
    except Exception as fault:
        _note(desk, stream, what, now_ms, fault)
        return None
    if desk.get("broken") and stream in desk["broken"]:
        desk["broken"][stream].pop(what, None)
    return answer


def _note(
    desk: "Desk", stream: str, what: str, now_ms: "int | None", fault: "Any"
) -> None:
    told = desk.setdefault("broken", {}).setdefault(stream, {})
    if what in told:
        return
    since_ms = desk["last_words"].get(stream) if now_ms is None else now_ms
    words = type(fault).__name__ + ": " + str(fault)
    told[what] = {"since_ms": since_ms, "fault": words[:MOST_LETTERS]}
    for listener in LISTENERS:
        listener(stream, what, fault)


def broken(desk: "Desk") -> "list[Broken]":
    """Return what cannot be shown of makes and tanks that are not over.

    Args:
        desk: Desk.

    Returns:
        List of {"make", "is_tank", "name", "batch", "vat", "practice", "opened_ms",
        "state", "is_open", "holds" (as of a make that can be shown; state is None
        where none is known), "what": one of WHATS or "clashes", "why": "fault",
        "newer" (of a newer app) or "unsound", "since_ms", "problems"
        [{"field", "key", "limit"}], "fault"}; one a make, in the order of their
        opening. make is "" and name None where no make is known to be the cause.
    """
    cases = []
    for stream in desk.get("broken", {}):
        told = desk["broken"][stream]
        for what in WHATS + ("clashes",):
            if what in told:
                cases.append(_case(desk, stream, what, "fault", told[what]))
                break
    for stream in desk["makes"]:
        raw = _raw_opening(desk["makes"][stream])
        if raw is not None:
            cases.append(_case(desk, stream, "opening", raw["why"], _of_raw(raw)))
    makes = desk["makes"]
    cases = [
        case for case in cases if not (case["make"] and is_over(makes[case["make"]]))
    ]
    return sorted(cases, key=lambda case: (case["opened_ms"], case["make"]))


def without_alarms(desk: "Desk") -> "list[Broken]":
    """Return the makes that no longer ring because they cannot be shown.

    Args:
        desk: Desk.

    Returns:
        Rows as of `broken`, practice left out.
    """
    return [
        silent
        for silent in broken(desk)
        if silent["make"]
        and silent["what"] in STOPS_ALARMS
        and not silent["is_tank"]
        and not silent["practice"]
    ]


def _of_raw(raw: "Raw") -> "dict[str, Any]":
    event = raw["event"]
    return {"since_ms": corrected_ms(event), "problems": raw["problems"][:3]}


def _raw_opening(state: "State") -> "Raw | None":
    """Return the opening of a make that cannot be read, where no other is known."""
    if not state["raw"] or is_opened(state):
        return None
    for line in state["log"]:
        raw = state["raw"].get(line["id"])
        if raw is not None and raw["event"]["kind"] in ("make_opened", "tank_opened"):
            return raw
    return None


def _case(
    desk: "Desk", stream: str, what: str, why: "BrokenWhy", told: "dict[str, Any]"
) -> "Broken":
    state = desk["makes"].get(stream)
    opened = _opened(state)
    data = opened["data"]
    return {
        "make": stream,
        "is_tank": opened["is_tank"],
        "name": _said(data, "name"),
        "batch": _said(data, "batch"),
        "vat": _said(data, "vat"),
        "practice": data.get("practice") is True,
        "opened_ms": opened["t_ms"],
        "state": None if state is None else make_state(state),
        "is_open": state is not None and not is_over(state),
        "holds": [] if state is None else holds(state),
        "what": what,
        "why": why,
        "since_ms": told["since_ms"],
        "problems": told.get("problems", []),
        "fault": told.get("fault"),
    }


def _opened(state: "State | None") -> "dict[str, Any]":
    unknown = {"is_tank": False, "data": {}, "t_ms": 0}
    if state is None:
        return unknown
    entry = opening(state) or tank_opening(state)
    if entry is not None:
        is_tank = opening(state) is None
        return {"is_tank": is_tank, "data": entry["data"], "t_ms": entry["t_ms"]}
    raw = _raw_opening(state)
    if raw is None:
        return unknown
    event = raw["event"]
    data = event.get("data")
    return {
        "is_tank": event["kind"] == "tank_opened",
        "data": data if isinstance(data, dict) else {},
        "t_ms": corrected_ms(event),
    }


def _said(data: "dict[str, Any]", name: str) -> "str | None":
    value = data.get(name)
    return value[:MOST_LETTERS] if isinstance(value, str) else None
