"""Which cautions a person has still to see today.

Rules first.
1. Who has seen what is a fact of the person, not of a phone, a step or a make:
   `cautions_seen` in any make counts for `SEEN_MS`, then a new day has begun.
2. A caution stands before its step, so that it is read before hands are at it. It
   never covers work that runs, is late or rings: there it stands beside it.
3. Being alone is nobody's step: it is owed at night to whoever is the only one that
   entered anything for an hour.
"""

from ..log import run
from ..log.equipment import in_effect
from ..matters.matters import ACT, is_open
from ..recipe.hazards import OF_READINGS, caution, cautions_of_reading

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import Desk
    from server.shapes.core.step import Caution, Step
    from server.shapes.core.view import Reader, StepCautions, View

# A make's longest day of work; the next morning is another. Our own judgement, no
# source.
SEEN_MS = 57600000  # 16 h
# Our own judgement, no source: who has heard of nobody for so long works alone.
ALONE_MS = 3600000
MINUTE_MS = 60000
DAY_MIN = 1440
NIGHT_FROM_MIN = 1200  # 20:00
NIGHT_UNTIL_MIN = 360  # 06:00


def owed(
    desk: "Desk", shown: "View", now_ms: int, reader: "Reader"
) -> "list[StepCautions]":
    """Return the cautions that a person has still to see at a make.

    Args:
        desk: Desk.
        shown: View of the make.
        now_ms: now, by the server's clock [ms].
        reader: {"person", "tz_min"}.

    Returns:
        List of {"step", "quantity", "stands", "owed"}: of each step where work is at
        hand, then, with step None, of each reading that is taken with a chemical.
        What is owed nothing is left out.
    """
    seen = _seen(desk, reader["person"], now_ms)
    equipment = in_effect(desk["makes"][shown["make"]["id"]])
    alone = _is_alone(desk, reader, now_ms)
    rows = []
    for step in shown["steps"]:
        if step["status"] in ("ready", "running"):
            stands = "before" if _may_cover(shown, step, now_ms) else "beside"
            found = _of_step(step, equipment, alone)
            rows.append(_row(step["key"], None, stands, found, seen))
    for quantity in sorted(OF_READINGS):
        found = cautions_of_reading(quantity, equipment)
        rows.append(_row(None, quantity, "beside", found, seen))
    return [row for row in rows if row["owed"]]


def _row(
    step: "str | None",
    quantity: "str | None",
    stands: "Any",
    found: "list[Caution]",
    seen: "list[str]",
) -> "StepCautions":
    left: "list[Caution]" = []
    for one in found:
        if one["id"] not in seen and one["id"] not in [other["id"] for other in left]:
            left.append(one)
    return {"step": step, "quantity": quantity, "stands": stands, "owed": left}


def _of_step(step: "Step", equipment: "Any", alone: bool) -> "list[Caution]":
    found = list(step["cautions"])
    for wanted in step["readings"]:
        found.extend(cautions_of_reading(wanted["quantity"], equipment))
    return found + ([caution("alone")] if alone else [])


def _seen(desk: "Desk", person: str, now_ms: int) -> "list[str]":
    """Return the ids of the cautions that a person has seen today."""
    seen = []
    for make_id in _heard_since(desk, now_ms - SEEN_MS):
        for entry in run.entries(desk["makes"][make_id], "cautions_seen"):
            if entry["by"] == person and entry["t_ms"] > now_ms - SEEN_MS:
                seen.extend(entry["data"]["cautions"])
    return seen


def _heard_since(desk: "Desk", since_ms: int) -> "list[str]":
    """Return the makes with an entry since an instant; most of a season have none."""
    return [
        make_id
        for make_id in desk["makes"]
        if desk["last_words"].get(make_id, 0) > since_ms
    ]


def _may_cover(shown: "View", step: "Step", now_ms: int) -> bool:
    """Tell whether a screen of cautions may stand before a step."""
    if step["status"] != "ready":
        return False
    for alert in shown["alerts"]:
        if alert["acknowledged"] is None and (
            alert["level"] == "act" or alert["form"] == "time"
        ):
            return False
    for matter in shown["matters"]:
        is_unanswered = is_open(matter) and matter["acknowledged"] is None
        if is_unanswered and matter["level"] == ACT:
            return False
    return not any(due_ms <= now_ms for due_ms in _dues(shown))


def _dues(shown: "View") -> "list[int]":
    """Return when what runs in a make is over: it rings, or is about to be late."""
    steps = [one["due_ms"] for one in shown["steps"] if one["status"] == "running"]
    timers = [one["due_ms"] for one in shown["timers"] if one["stopped_ms"] is None]
    return [due_ms for due_ms in steps + timers if due_ms is not None]


def _is_alone(desk: "Desk", reader: "Reader", now_ms: int) -> bool:
    minute = (now_ms // MINUTE_MS + reader["tz_min"]) % DAY_MIN
    if NIGHT_UNTIL_MIN <= minute < NIGHT_FROM_MIN:
        return False
    since_ms = now_ms - ALONE_MS
    return not any(
        _is_another_there(desk, make_id, reader["person"], since_ms)
        for make_id in _heard_since(desk, since_ms)
    )


def _is_another_there(desk: "Desk", make_id: str, person: str, since_ms: int) -> bool:
    state = desk["makes"][make_id]
    for index in range(len(state["log"]) - 1, -1, -1):
        line = state["log"][index]
        if line["t_ms"] <= since_ms:
            return False
        event = state["events"].get(line["id"])
        if event is not None and event["person"] != person:
            return True
    return False
