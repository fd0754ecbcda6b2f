"""What falls due in one make, in its brine and in its store: one row each.

A row is a prompt, not an alarm: it says what wants a hand and when.
"""

from ..log import run
from ..log.opening import opening, recipe_of, tank_opening
from ..make.practice import is_practice
from ..step.step_alerts import OVERDUE_GRACE_S
from ..step.view import next_thing_ms

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.board import Due
    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import State
    from server.shapes.core.view import View


def due_rows(found: "View", state: "State", now_ms: int) -> "list[Due]":
    """Return what falls due in one make.

    Args:
        found: View of the make.
        state: its State.
        now_ms: now [ms].

    Returns:
        List of Due: {"make", "make_name", "practice", "step", "title", "round",
        "rounds", "what", "timer", "label", "quantity", "tank", "load",
        "wheels", "size", "due_ms", "late_ms", "level", "task"}. what is
        "step_begin", "step_end", "reading", "turn", "timer" or "unload";
        late_ms is until when the recipe lets it wait, or None; level is
        "later", "due" or "check" where it is late.
    """
    rows = []
    recipe_steps = recipe_of(state)["steps"]
    for place, step in enumerate(found["steps"]):
        if step["status"] == "ready":
            rows.append(_row(found, step, "step_begin", now_ms, now_ms))
        if step["status"] != "running":
            continue
        is_late = step["timing"]["state"] == "late"
        ends_ms = step["due_ms"]
        if ends_ms is None and step["button"]["act"] == "end":
            ends_ms = next_thing_ms(step, now_ms)
        if ends_ms is not None:
            row = _row(found, step, "step_end", ends_ms, now_ms, is_late)
            row["late_ms"] = late_ms(step)
            rows.append(row)
        for quantity, due_ms, overdue_s in _readings_due(step):
            is_over = is_late or overdue_s > OVERDUE_GRACE_S
            row = _row(found, step, "reading", due_ms, now_ms, is_over)
            row["quantity"] = quantity
            rows.append(row)
        rows.extend(_turn(found, step, recipe_steps[place], state, now_ms))
    for timer in found["timers"]:
        if timer["stopped_ms"] is None:
            row = _row(found, None, "timer", timer["due_ms"], now_ms)
            row["label"] = timer["label"]
            row["timer"] = timer["id"]
            rows.append(row)
    return rows


def tank_rows(
    makes: "dict[str, dict[str, Any]]",
    stream: str,
    told: "list[tuple[str, str]]",
    now_ms: int,
) -> "list[Due]":
    """Return the wheels that are to come out of one brine tank.

    Wheels whose step of the recipe still runs are told by that step.

    Args:
        makes: {stream id: State}, makes and tanks alike.
        stream: id of the tank; of a make there is nothing to tell.
        told: (make, size) of the wheels that a step tells of, see `in_brine`.
        now_ms: now [ms].

    Returns:
        List of Due with "tank", "load", "wheels" and "size".
    """
    opened = tank_opening(makes[stream])
    if opened is None:
        return []
    rows = []
    out = [
        entry["data"]["load"] for entry in run.entries(makes[stream], "tank_unloaded")
    ]
    for entry in run.entries(makes[stream], "tank_loaded"):
        data = entry["data"]
        if is_practice(makes.get(data["load_make"])):
            continue
        of_step = (data["load_make"], data["size"]) in told
        if data.get("days") is None or entry["id"] in out or of_step:
            continue
        due_ms = entry["t_ms"] + int(data["days"] * 86400000)
        row = _row(None, None, "unload", due_ms, now_ms)
        row["make"] = data["load_make"]
        row["make_name"] = _name_of(makes, data["load_make"])
        row["tank"], row["label"] = stream, opened["data"]["name"]
        row["load"], row["wheels"] = entry["id"], data["wheels"]
        row["size"] = data["size"]
        rows.append(row)
    return rows


def late_ms(step: "dict[str, Any]") -> "int | None":
    """Return until when a running step may last by its recipe, or None [ms].

    Args:
        step: Step of the View, running.
    """
    return None if step["due_ms"] is None else step["end_high_ms"]


def in_brine(found: "View", state: "State") -> "list[tuple[str, str]]":
    """Return (make, size) of the wheels in brine that a running step tells of.

    Args:
        found: View of the make.
        state: its State.
    """
    rows = recipe_of(state)["steps"]
    return [
        (found["make"]["id"], rows[place].get("size"))
        for place, step in enumerate(found["steps"])
        if step["status"] == "running" and step["place"] == "brine"
    ]


def _name_of(makes: "dict[str, dict[str, Any]]", make_id: str) -> "str | None":
    opened = opening(makes.get(make_id))
    return None if opened is None else opened["data"]["name"]


def _turn(
    found: "View",
    step: "dict[str, Any]",
    row: "RecipeStep",
    state: "State",
    now_ms: int,
) -> "list[Due]":
    """Return when the wheels of a step want turning again, as its recipe says."""
    if not row.get("turns"):
        return []
    begun_ms = step["begun"]["at_ms"]
    last_ms = begun_ms
    for entry in run.entries(state, "wheel_turned"):
        named = entry["data"].get("step")
        if entry["t_ms"] >= begun_ms and named in (None, step["key"]):
            last_ms = entry["t_ms"]
    for part in row["turns"]:
        until = part.get("until")
        every_ms = int(part["every"]["value"] * 1000)
        # The last part has no end.
        if until is None or last_ms < begun_ms + int(until["value"] * 1000):
            break
    due_ms = last_ms + every_ms
    turn = _row(found, step, "turn", due_ms, now_ms, now_ms > due_ms + every_ms)
    return [turn]


def _readings_due(step: "dict[str, Any]") -> "list[tuple[str, int, float]]":
    """Return (quantity, instant, overdue) of what must be read, each once."""
    due: "dict[str, tuple[Any, ...]]" = {}
    for reading in step["readings"]:
        if reading["due_ms"] is None or not (reading["required"] or reading["every_s"]):
            continue
        quantity = reading["quantity"]
        if quantity not in due or reading["due_ms"] < due[quantity][1]:
            due[quantity] = (quantity, reading["due_ms"], reading["overdue_s"])
    return sorted(due.values())


def _row(
    found: "View | None",
    step: "dict[str, Any] | None",
    what: str,
    due_ms: int,
    now_ms: int,
    is_late: bool = False,
) -> "Due":
    level = "later"
    if due_ms <= now_ms:
        level = "check" if is_late else "due"
    return {
        "make": "" if found is None else found["make"]["id"],
        "make_name": None if found is None else found["make"]["name"],
        "practice": found is not None and found["make"]["practice"],
        "step": None if step is None else step["key"],
        "title": {"en": ""} if step is None else step["title"],
        "round": None if step is None else step["round"],
        "rounds": None if step is None else step["rounds"],
        "what": what,
        "timer": None,
        "label": None,
        "quantity": None,
        "tank": None,
        "load": None,
        "wheels": None,
        "size": None,
        "due_ms": due_ms,
        "late_ms": None,
        "level": level,
        "task": None if step is None else step["task"],
    }
