"""What a phone's own calendar should ring for: the deadlines nobody stands by for.

A locked phone with no network rings only from its own calendar or clock. Short
steps are watched by whoever does them; a pressing overnight, a brine, a store
are not.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.step import Step
    from server.shapes.core.view import Timer, View


LONG_S = 14400.0  # practice: a deadline this far from its begin is not waited for


def calendar(view: "View", step_key: "str | None" = None) -> "list[dict[str, Any]]":
    """Return the entries for a calendar file of one make, in the order they come.

    Args:
        view: View of the make.
        step_key: only this step, however short; None for all that are long.

    Returns:
        List of {"name", "what" ("step_end", "step_begin", "timer"), "title",
        "label", "at_ms", "late_ms", "sure"}: "late_ms" the end of the band or
        None; "sure" False for an instant that rests on a forecast [ms].
    """
    now_ms = view["now_ms"]
    entries = []
    for step in view["steps"]:
        if step_key is None or step["key"] == step_key:
            entries.extend(_of_step(view, step, step_key is not None))
    if step_key is None:
        for timer in view["timers"]:
            if timer["stopped_ms"] is None and _is_long(timer):
                entry = _entry("timer/" + timer["id"], "timer", timer["due_ms"])
                entry["label"] = timer["label"]
                entries.append(entry)
    ahead = [entry for entry in entries if entry["at_ms"] > now_ms]
    return sorted(ahead, key=lambda entry: (entry["at_ms"], entry["name"]))


def _is_long(timer: "Timer") -> bool:
    return _is_far(timer["start_ms"], timer["due_ms"])


def _is_far(from_ms: int, due_ms: int) -> bool:
    return due_ms - from_ms >= LONG_S * 1000


def _of_step(view: "View", step: "Step", asked: bool) -> "list[dict[str, Any]]":
    begun = step["begun"] if step["status"] == "running" else None
    due_ms = step["due_ms"]
    if (begun and due_ms is not None) and (asked or _is_far(begun["at_ms"], due_ms)):
        entry = _entry("step_end/" + step["key"], "step_end", due_ms)
        entry["title"] = step["title"]
        entry["late_ms"] = step["end_high_ms"]
        return [entry]
    if step["status"] in ("waiting", "ready"):
        at_ms = step["expected_begin_ms"]
        # What begins after the day's hands-on work calls people back.
        if asked or at_ms > view["day"]["expected_end_ms"]:
            entry = _entry("step_begin/" + step["key"], "step_begin", at_ms)
            entry["title"] = step["title"]
            entry["sure"] = False
            return [entry]
    return []


def _entry(name: str, what: str, at_ms: int) -> "dict[str, Any]":
    return {
        "name": name,
        "what": what,
        "title": None,
        "label": None,
        "at_ms": at_ms,
        "late_ms": None,
        "sure": True,
    }
