"""What falls due in one make, in its brine and in its store: one Due each.

A Due is a prompt, not an alarm: it says what wants a hand and when.
"""

from ..figures.brining import load_due_ms
from ..figures.due import span_ms
from ..log import run
from ..log.opening import opening, tank_opening
from ..make.practice import is_practice
from ..numbers.dates import day_of
from ..step.alerts.overdue import told_by_other
from ..step.focus import next_thing_ms

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.board import Due, DueLevel, DueWhat, DueWhen
    from server.shapes.core.state import Desk, Entry, State
    from server.shapes.core.step import Step, StepMark
    from server.shapes.core.view import Timer, View


SOON_MS = 3600000
MARKS: "dict[DueLevel, StepMark]" = {
    "later": "waiting",
    "due": "due",
    "check": "late",
}


def when_of(due: "Due", now_ms: int, tz_min: int) -> "DueWhen":
    """Return in which part of the list a Due stands: the nearer, the more narrow.

    Args:
        due: a Due.
        now_ms: now [ms].
        tz_min: the reader's time zone east of UTC [min]; a day ends at midnight there.
    """
    if due["level"] == "check":
        return "late"
    if due["level"] == "due":
        return "now"
    if due["due_ms"] - now_ms <= SOON_MS:
        return "hour"
    is_today = day_of(due["due_ms"], tz_min) == day_of(now_ms, tz_min)
    return "today" if is_today else "days"


def dues(view: "View", now_ms: int) -> "list[Due]":
    """Return what falls due in one make.

    Args:
        view: View of the make.
        now_ms: now [ms].

    Returns:
        List of Due: {"make", "make_name", "practice", "step", "title", "round",
        "rounds", "what", "timer", "label", "quantity", "tank", "load",
        "wheels", "size", "due_ms", "late_ms", "level", "mark", "when", "leads",
        "task"}. what is
        "step_begin", "step_end", "reading", "turn", "timer" or "unload";
        late_ms is until when the recipe lets it wait, or None; level is
        "later", "due" or "check" where it is late; mark says the same, and that a
        step is "ready", in the word of a shape; when is None until the board
        knows whose day it is, see `when_of`; leads is False until it has sorted
        them, see `lead`.
    """
    told: "list[Due]" = []
    for step in view["steps"]:
        if step["stopped_by"]:
            # It wants a decision first, which its matter asks for.
            told.extend(_of_readings(view, step, now_ms))
        elif step["status"] == "ready":
            told.append(_due(view, step, "step_begin", now_ms, now_ms))
        elif step["status"] == "running":
            told.extend(_of_end(view, step, now_ms))
            told.extend(_of_readings(view, step, now_ms))
            told.extend(_of_turn(view, step, now_ms))
    for timer in view["timers"]:
        if timer["stopped_ms"] is None:
            told.append(_of_timer(view, timer, now_ms))
    return told


def lead(sorted_dues: "list[Due]") -> None:
    """Mark the first Due of each step: it stands for the step.

    Beside a turn stands the tap that says it was done, so a turn leads none.

    Args:
        sorted_dues: list of Due in the order of the list; changed in place.
    """
    led = []
    for due in sorted_dues:
        step = (due["make"], due["step"])
        if due["step"] is not None and due["what"] != "turn" and step not in led:
            due["leads"] = True
            led.append(step)


def _is_late(step: "Step") -> bool:
    return bool(step["timing"]["state"] == "late")


def _of_end(view: "View", step: "Step", now_ms: int) -> "list[Due]":
    ends_ms = step["due_ms"]
    if ends_ms is None and step["button"]["act"] == "end":
        ends_ms = next_thing_ms(step, now_ms)
    if ends_ms is None:
        return []
    due = _due(view, step, "step_end", ends_ms, now_ms, _is_late(step))
    due["late_ms"] = None if step["due_ms"] is None else step["end_high_ms"]
    return [due]


def _of_readings(view: "View", step: "Step", now_ms: int) -> "list[Due]":
    told = []
    for quantity, due_ms, is_overdue in _readings_due(step):
        is_over = _is_late(step) or is_overdue
        due = _due(view, step, "reading", due_ms, now_ms, is_over)
        due["quantity"] = quantity
        told.append(due)
    return told


def _of_turn(view: "View", step: "Step", now_ms: int) -> "list[Due]":
    turn = step["turn"]
    if turn is None:
        return []
    # Late by a whole round, not by a minute: nothing spoils in between.
    is_late = now_ms > turn["due_ms"] + span_ms(turn["every_s"])
    return [_due(view, step, "turn", turn["due_ms"], now_ms, is_late)]


def _of_timer(view: "View", timer: "Timer", now_ms: int) -> "Due":
    due = _due(view, None, "timer", timer["due_ms"], now_ms)
    due["label"] = timer["label"]
    due["timer"] = timer["id"]
    return due


def of_tank(
    desk: "Desk",
    stream: str,
    told_of: "list[tuple[str, str]]",
    now_ms: int,
) -> "list[Due]":
    """Return the wheels that are to come out of one brine tank.

    Wheels whose step of the recipe still runs are told by that step.

    Args:
        desk: Desk.
        stream: id of the tank; of a make there is nothing to tell.
        told_of: (make, size) of the wheels that a step tells of, see `in_brine`.
        now_ms: now [ms].

    Returns:
        List of Due with "tank", "load", "wheels" and "size".
    """
    makes = desk["makes"]
    tank = makes[stream]
    if tank_opening(tank) is None:
        return []
    out = [entry["data"]["load"] for entry in run.entries(tank, "tank_unloaded")]
    told = []
    for entry in run.entries(tank, "tank_loaded"):
        data = entry["data"]
        of_step = (data["load_make"], data["size"]) in told_of
        if entry["id"] in out or of_step or is_practice(makes.get(data["load_make"])):
            continue
        due_ms = load_due_ms(desk, entry, now_ms)
        if due_ms is not None:
            told.append(_of_load(makes, stream, entry, due_ms, now_ms))
    return told


def _of_load(
    makes: "dict[str, State]", stream: str, entry: "Entry", due_ms: int, now_ms: int
) -> "Due":
    data = entry["data"]
    tank = tank_opening(makes[stream])
    make = opening(makes.get(data["load_make"]))
    due = _due(None, None, "unload", due_ms, now_ms)
    due["make"] = data["load_make"]
    due["make_name"] = None if make is None else make["data"]["name"]
    due["tank"] = stream
    due["label"] = None if tank is None else tank["data"]["name"]
    due["load"], due["wheels"] = entry["id"], data["wheels"]
    due["size"] = data["size"]
    return due


def in_brine(view: "View") -> "list[tuple[str, str]]":
    """Return (make, size) of the wheels in brine that a running step tells of.

    Args:
        view: View of the make.
    """
    return [
        (view["make"]["id"], step["size"] or "")
        for step in view["steps"]
        if step["status"] == "running" and step["place"] == "brine"
    ]


def _readings_due(step: "Step") -> "list[tuple[str, int, bool]]":
    """Return (quantity, instant, is overdue) of what must be read, each once."""
    due: "dict[str, tuple[str, int, bool]]" = {}
    for reading in step["readings"]:
        if reading["due_ms"] is None or not (reading["required"] or reading["every_s"]):
            continue
        if told_by_other(reading, step["readings"]):
            continue
        quantity = reading["quantity"]
        if quantity not in due or reading["due_ms"] < due[quantity][1]:
            is_overdue = reading["overdue_s"] > reading["grace_s"]
            due[quantity] = (quantity, reading["due_ms"], is_overdue)
    return sorted(due.values())


def _due(
    view: "View | None",
    step: "Step | None",
    what: "DueWhat",
    due_ms: int,
    now_ms: int,
    is_late: bool = False,
) -> "Due":
    level: "DueLevel" = "later"
    if due_ms <= now_ms:
        level = "check" if is_late else "due"
    return {
        "make": "" if view is None else view["make"]["id"],
        "make_name": None if view is None else view["make"]["name"],
        "practice": view is not None and view["make"]["practice"],
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
        "mark": "ready" if what == "step_begin" else MARKS[level],
        "when": None,
        "leads": False,
        "task": None if step is None else step["task"],
    }
