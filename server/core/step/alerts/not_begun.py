"""A step that stands ready and is not begun, past the time that its place allows.

Rules first.
1. It counts from when all that it waits on was over. A make that was only opened
   waits for nobody.
2. What is done beside another step is due when it would hold up what waits on both.
3. What a later step has been begun before was passed over: it is due at once.
4. What a matter stops is told by the matter.
What to do is what the step before says of its own lateness: its state goes on.
"""

from ...figures.due import high_s, span_ms
from ...figures.grace import begin_s
from .alert import alert_of, what_to_do

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import ViewContext
    from server.shapes.core.step import Step
    from server.shapes.core.view import Alert
    from server.shapes.core.words import Words


def begin_alerts(
    context: "ViewContext", step: "RecipeStep", shown: "Step"
) -> "list[Alert]":
    """Return the alert of a step that stands ready for too long, if it does.

    Args:
        context: as for `steps.step_view`.
        step: step of the recipe that stands ready.
        shown: its Step of the View.
    """
    due_ms = _due_ms(context, step)
    if due_ms is None or shown["stopped_by"]:
        return []
    rings_ms = due_ms + span_ms(begin_s(step))
    if context["now_ms"] <= rings_ms:
        return []
    return [
        alert_of(
            "begin/" + step["key"],
            "time",
            "check",
            "begin_late",
            due_ms,
            step=step["key"],
            by_s=(context["now_ms"] - due_ms) / 1000.0,
            rings_ms=rings_ms,
            do=_do(context, step),
        )
    ]


def _due_ms(context: "ViewContext", step: "RecipeStep") -> "int | None":
    """Return when a ready step is to begin, or None where nothing waits for it [ms]."""
    over = [_over_ms(context, key) for key in step.get("after", [])]
    ready_ms = max([ms for ms in over if ms is not None], default=None)
    if ready_ms is None:
        return None
    behind = [
        other
        for other in context["recipe"]["steps"]
        if step["key"] in other.get("after", [])
    ]
    if any(context["facts"][one["key"]]["begun_ms"] is not None for one in behind):
        return ready_ms
    beside = [
        key
        for other in behind
        for key in other["after"]
        if key != step["key"] and _over_ms(context, key) is None
    ]
    if not beside:
        return ready_ms
    lasts = context["lasts"][step["key"]]
    ends_ms = max(_ends_ms(context, key) for key in beside)
    return max(ready_ms, ends_ms - (span_ms(high_s(lasts)) if lasts else 0))


def _ends_ms(context: "ViewContext", key: str) -> int:
    # What runs is taken at its word: the expected end moves on while it is late.
    due_ms = context["facts"][key]["due_ms"]
    return context["expected"][key]["end_ms"] if due_ms is None else due_ms


def _over_ms(context: "ViewContext", key: str) -> "int | None":
    fact = context["facts"][key]
    return fact["skipped_ms"] if fact["ended_ms"] is None else fact["ended_ms"]


def _do(context: "ViewContext", step: "RecipeStep") -> "Words | None":
    """Return what the steps before say of being late, the latest of them first."""
    for other in reversed(context["ordered"]):
        if other["key"] in step.get("after", []):
            said = what_to_do(other, "time_late")
            if said is not None:
                return said
    return None
