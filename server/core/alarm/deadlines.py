"""From a View to what falls due in it, its instant known already."""

from ..step.alerts.timely import end_id
from .raised import RINGING_ENDS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.alarms import Deadline
    from server.shapes.core.step import Step
    from server.shapes.core.view import View


def deadlines(view: "View", now_ms: int) -> "list[Deadline]":
    """Return what falls due in one make, its instant known already.

    A prompt past its instant stays until its band is over; then it is an alarm.

    Args:
        view: View of the make.
        now_ms: now, by the server's clock [ms].

    Returns:
        List of {"make", "make_name", "vat", "step", "title", "kind", "mark",
        "label", "due_ms", "id", "rings"}; mark is the step's, and of a timer
        "running"; "rings" True for an alarm of this id at that
        very instant.
    """
    ahead = []
    for step in view["steps"]:
        if step["status"] != "running" or step["due_ms"] is None:
            continue
        rings = step["end"]["by"] in RINGING_ENDS
        is_prompt = not rings and step["timing"]["state"] != "late"
        if step["due_ms"] > now_ms or is_prompt:
            matter = end_id(step["key"])
            due_ms = step["due_ms"]
            ahead.append(_deadline(view, matter, "step_due", step, due_ms, rings))
    for timer in view["timers"]:
        if timer["stopped_ms"] is None and timer["due_ms"] > now_ms:
            matter = "timer/" + timer["id"]
            deadline = _deadline(view, matter, "timer", None, timer["due_ms"], True)
            deadline["label"] = timer["label"]
            ahead.append(deadline)
    return ahead


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
        "mark": "running" if step is None else step["mark"],
        "label": None,
        "due_ms": due_ms,
        "rings": rings,
    }
