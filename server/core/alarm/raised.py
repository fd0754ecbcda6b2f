"""From a View to what rings in it, before anybody has said a word about it."""

from ..matters.matters import ACT, is_open
from ..step.alerts.timely import end_id

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping
    from typing import Any

    from server.shapes.core.alarms import Alarm, Level
    from server.shapes.core.board import Broken
    from server.shapes.core.matters import Matter
    from server.shapes.core.step import Step
    from server.shapes.core.view import Alert, Timer, View


RETURNED_S = 1800.0  # practice: how long what ended by itself stays listed
RINGING_ENDS = ("time", "floc")
_KIND = {
    "alert.step_late": "step_late",
    "alert.begin_late": "begin_late",
    "alert.reading_overdue": "reading_overdue",
    "alert.readings_overdue": "reading_overdue",
}
_PRIORITY = {
    "timer": 2,
    "step_due": 2,
    "step_late": 2,
    "begin_late": 2,
    "reading_overdue": 3,
}
_NUMBERS = ("by_s", "due_ms", "quantity", "value", "low", "high", "unit")


def standing(view: "View", now_ms: int) -> "list[Alarm]":
    """Return the alarms that stand in one make, as if nobody had answered them.

    Args:
        view: View of the make.
        now_ms: now, by the server's clock [ms].

    Returns:
        List of Alarm, see `alarm_of`.
    """
    alarms = [_of_alert(view, alert) for alert in view["alerts"]]
    alarms.extend(_of_matter(view, matter) for matter in view["matters"])
    alarms.extend(_of_step(view, step, now_ms) for step in view["steps"])
    # Not by its Alert, which goes with an ended step: the timer is still over.
    alarms.extend(_of_timer(view, timer, now_ms) for timer in view["timers"])
    return [alarm for alarm in alarms if alarm is not None]


def ended(view: "View", now_ms: int) -> "list[Alarm]":
    """Return the alarms of one make that ended lately, as if nobody had answered.

    Args:
        view: View of the make.
        now_ms: now, by the server's clock [ms].

    Returns:
        List of Alarm with "returned_ms".
    """
    alarms = []
    for timer in view["timers"]:
        stopped_ms = timer["stopped_ms"]
        if stopped_ms is not None and stopped_ms >= timer["due_ms"]:
            alarm = _timer_due(view, timer)
            alarm["returned_ms"] = stopped_ms
            alarms.append(alarm)
    for step in view["steps"]:
        ended_by = step["ended"]
        if ended_by is not None and step["timing"]["state"] == "late":
            alarm = _step_due(view, step)
            alarm["kind"], alarm["key"] = "step_late", "alert.step_late"
            alarm["rings_ms"] = step["end_high_ms"] or alarm["due_ms"]
            alarm["returned_ms"] = ended_by["at_ms"]
            alarm["numbers"] = {"by_s": step["timing"]["by_s"]}
            alarms.append(alarm)
    kept_ms = now_ms - int(RETURNED_S * 1000)
    return [
        alarm for alarm in alarms if kept_ms < (alarm["returned_ms"] or 0) <= now_ms
    ]


def unshown(broken: "Broken") -> "Alarm":
    """Return the alarm of a make that cannot be shown, so that nothing in it rings.

    Args:
        broken: see `apart.broken`.
    """
    make = {"id": broken["make"], "name": broken["name"], "vat": broken["vat"]}
    return alarm_of(
        {"make": make, "steps": []},
        "unshown/" + broken["what"],
        "unshown",
        1,
        # An answer counts for as long as it lasts, on whichever phone it was given.
        broken["opened_ms"],
        broken["since_ms"] or broken["opened_ms"],
        "alarm.unshown",
        None,
    )


def alarm_of(
    view: "Mapping[str, Any]",
    matter: str,
    kind: str,
    priority: int,
    due_ms: int,
    rings_ms: int,
    key: str,
    step: "str | None",
) -> "Alarm":
    """Return an Alarm that nobody has answered yet.

    Args:
        view: View of its make.
        matter: what the alarm is about, the same on every phone.
        kind: "timer", "step_due", "step_late", "begin_late", "reading_overdue",
            "alert", "matter" or "unshown".
        priority: 1 act now, 2 soon, 3 when there is a hand.
        due_ms: the instant it is about [ms].
        rings_ms: since when it asks for an answer [ms].
        key: message key.
        step: key of its step, or None.

    Returns:
        Alarm: the arguments and "id", "make", "make_name", "vat", "title",
        "numbers", "do", "state" (one of STATES), "is_open" where it wants an
        answer, "mark" that it is shown by, "acknowledged", "shelved",
        "escalates_ms", "escalated", "returned_ms".
    """
    titles = [each["title"] for each in view["steps"] if each["key"] == step]
    make = view["make"]
    return {
        "id": make["id"] + "/" + matter,
        "make": make["id"],
        "make_name": make["name"],
        "vat": make["vat"],
        "matter": matter,
        "kind": kind,
        "priority": priority,
        "step": step,
        "title": titles[0] if titles else None,
        "due_ms": due_ms,
        "rings_ms": rings_ms,
        "key": key,
        "numbers": {},
        "do": None,
        "state": "unacknowledged",
        "is_open": True,
        "mark": mark_of(priority),
        "acknowledged": None,
        "shelved": None,
        "escalates_ms": None,
        "escalated": False,
        "returned_ms": None,
    }


def mark_of(priority: int) -> "Level":
    """Return the mark that an alarm which wants an answer is shown by.

    Args:
        priority: 1 act now, 2 soon, 3 when there is a hand.
    """
    return "act" if priority == 1 else "check"


def _of_alert(view: "View", alert: "Alert") -> "Alarm | None":
    """Return the alarm of an Alert; None for one that is only shown."""
    kind = _KIND.get(alert["key"], "alert")
    is_urgent = alert["level"] == "act"
    if alert["key"] == "alert.timer_due" or (kind == "alert" and not is_urgent):
        return None
    alarm = alarm_of(
        view,
        alert["id"],
        kind,
        1 if is_urgent else _PRIORITY[kind],
        alert["since_ms"],
        alert["since_ms"] if alert["rings_ms"] is None else alert["rings_ms"],
        alert["key"],
        alert["step"],
    )
    numbers = dict(alert)
    alarm["numbers"] = {name: numbers[name] for name in _NUMBERS}
    alarm["do"] = alert["do"]
    return alarm


def _of_matter(view: "View", matter: "Matter") -> "Alarm | None":
    """Return the alarm of a matter that asks to act; None for any other."""
    since_ms = matter["since_ms"]
    if not is_open(matter) or matter["level"] != ACT or since_ms is None:
        return None
    alarm = alarm_of(
        view,
        matter["alert"],
        "matter",
        1,
        matter["told_ms"] or since_ms,
        since_ms,
        "matter." + matter["key"],
        matter["step"],
    )
    alarm["do"] = matter["do"]
    return alarm


def _of_timer(view: "View", timer: "Timer", now_ms: int) -> "Alarm | None":
    if timer["stopped_ms"] is not None or timer["due_ms"] > now_ms:
        return None
    alarm = _timer_due(view, timer)
    alarm["numbers"]["by_s"] = (now_ms - timer["due_ms"]) / 1000.0
    return alarm


def _timer_due(view: "View", timer: "Timer") -> "Alarm":
    alarm = alarm_of(
        view,
        "timer/" + timer["id"],
        "timer",
        _PRIORITY["timer"],
        timer["due_ms"],
        timer["due_ms"],
        "alert.timer_due",
        timer["step"],
    )
    alarm["numbers"] = {"value": timer["label"]}
    return alarm


def _of_step(view: "View", step: "Step", now_ms: int) -> "Alarm | None":
    """Return the alarm of a step that is due to the minute and not late yet."""
    if step["status"] != "running" or not step["full"] or step["due_ms"] is None:
        return None
    if step["end"]["by"] not in RINGING_ENDS or step["due_ms"] > now_ms:
        return None
    if step["timing"]["state"] == "late":
        return None
    alarm = _step_due(view, step)
    alarm["numbers"] = {"by_s": (now_ms - step["due_ms"]) / 1000.0}
    return alarm


def _step_due(view: "View", step: "Step") -> "Alarm":
    due_ms = step["due_ms"] or step["expected_end_ms"]
    return alarm_of(
        view,
        end_id(step["key"]),
        "step_due",
        _PRIORITY["step_due"],
        due_ms,
        due_ms,
        "alarm.step_due",
        step["key"],
    )
