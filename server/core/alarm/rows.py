"""From a View to what rings in it, before anybody has said a word about it."""

from ..step.alerts.step_alerts import OVERDUE_GRACE_S

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping
    from typing import Any

    from server.shapes.core.alarms import Alarm, Deadline
    from server.shapes.core.board import Broken
    from server.shapes.core.step import Step
    from server.shapes.core.view import Alert, Timer, View


RETURNED_S = 1800.0  # practice: how long what ended by itself stays listed
RINGING_ENDS = ("time", "floc")
_KIND = {
    "alert.step_late": "step_late",
    "alert.reading_overdue": "reading_overdue",
}
_PRIORITY = {"timer": 2, "step_due": 2, "step_late": 2, "reading_overdue": 3}
_NUMBERS = ("by_s", "quantity", "value", "low", "high", "unit")


def standing(view: "View", now_ms: int) -> "list[Alarm]":
    """Return the alarms that stand in one make, as if nobody had answered them.

    Args:
        view: View of the make.
        now_ms: now, by the server's clock [ms].

    Returns:
        List of Alarm, see `alarm_of`.
    """
    alarms = [_of_alert(view, alert) for alert in view["alerts"]]
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
            alarm["matter"] = "step_late/" + step["key"]
            alarm["id"] = view["make"]["id"] + "/" + alarm["matter"]
            alarm["kind"], alarm["key"] = "step_late", "alert.step_late"
            alarm["returned_ms"] = ended_by["at_ms"]
            alarm["numbers"] = {"by_s": step["timing"]["by_s"]}
            alarms.append(alarm)
    kept_ms = now_ms - int(RETURNED_S * 1000)
    return [
        alarm for alarm in alarms if kept_ms < (alarm["returned_ms"] or 0) <= now_ms
    ]


def deadlines(view: "View", now_ms: int) -> "list[Deadline]":
    """Return what falls due in one make, its instant known already.

    A prompt past its instant stays until its band is over; then it is an alarm.

    Args:
        view: View of the make.
        now_ms: now, by the server's clock [ms].

    Returns:
        List of {"make", "make_name", "vat", "step", "title", "kind", "label",
        "due_ms", "id", "rings"}; "rings" True for an alarm of this id at that
        very instant.
    """
    ahead = []
    for step in view["steps"]:
        if step["status"] != "running" or step["due_ms"] is None:
            continue
        rings = step["end"]["by"] in RINGING_ENDS
        is_prompt = not rings and step["timing"]["state"] != "late"
        if step["due_ms"] > now_ms or is_prompt:
            matter = "step_due/" + step["key"]
            due_ms = step["due_ms"]
            ahead.append(_deadline(view, matter, "step_due", step, due_ms, rings))
    for timer in view["timers"]:
        if timer["stopped_ms"] is None and timer["due_ms"] > now_ms:
            matter = "timer/" + timer["id"]
            deadline = _deadline(view, matter, "timer", None, timer["due_ms"], True)
            deadline["label"] = timer["label"]
            ahead.append(deadline)
    return ahead


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
        kind: "timer", "step_due", "step_late", "reading_overdue", "alert" or
            "unshown".
        priority: 1 act now, 2 soon, 3 when there is a hand.
        due_ms: the instant it is about [ms].
        rings_ms: since when it asks for an answer [ms].
        key: message key.
        step: key of its step, or None.

    Returns:
        Alarm: the arguments and "id", "make", "make_name", "vat", "title",
        "numbers", "do", "state" (one of STATES), "acknowledged", "shelved",
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
        "acknowledged": None,
        "shelved": None,
        "escalates_ms": None,
        "escalated": False,
        "returned_ms": None,
    }


def _deadline(
    view: "View",
    matter: str,
    kind: str,
    step: "Step | None",
    due_ms: int,
    rings: bool,
) -> "Deadline":
    make = view["make"]
    return {
        "id": make["id"] + "/" + matter,
        "make": make["id"],
        "make_name": make["name"],
        "vat": make["vat"],
        "step": None if step is None else step["key"],
        "title": None if step is None else step["title"],
        "kind": kind,
        "label": None,
        "due_ms": due_ms,
        "rings": rings,
    }


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
        _rings_ms(view, alert, kind),
        alert["key"],
        alert["step"],
    )
    numbers = dict(alert)
    alarm["numbers"] = {name: numbers[name] for name in _NUMBERS}
    alarm["do"] = alert["do"]
    return alarm


def _rings_ms(view: "View", alert: "Alert", kind: str) -> int:
    """Return since when an Alert asks: past the band, or past the grace."""
    if kind == "step_late":
        return view["now_ms"] - int((alert["by_s"] or 0.0) * 1000 + 0.5)
    if kind == "reading_overdue":
        return alert["since_ms"] + int(OVERDUE_GRACE_S * 1000)
    return alert["since_ms"]


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
        "step_due/" + step["key"],
        "step_due",
        _PRIORITY["step_due"],
        due_ms,
        due_ms,
        "alarm.step_due",
        step["key"],
    )
