"""What counts down in a make: its running steps and timers, the next first."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.step import Step
    from server.shapes.core.view import Countdown, Timer


def countdowns(steps: "list[Step]", timers: "list[Timer]") -> "list[Countdown]":
    """Return what counts down in a make, by its instant.

    Args:
        steps: steps of the View.
        timers: its stand-alone timers.

    Returns:
        List of {"step", "timer", "label", "due_ms"}: of a step its key, of a timer
        its id and label.
    """
    told: "list[Countdown]" = [
        {
            "step": step["key"],
            "timer": None,
            "label": None,
            "due_ms": step["due_ms"],
        }
        for step in steps
        if step["status"] == "running" and step["due_ms"] is not None
    ]
    told.extend(
        {
            "step": None,
            "timer": timer["id"],
            "label": timer["label"],
            "due_ms": timer["due_ms"],
        }
        for timer in timers
        if timer["stopped_ms"] is None
    )
    return sorted(told, key=_rank)


def _rank(countdown: "Countdown") -> "tuple[int, str]":
    return (countdown["due_ms"], countdown["step"] or countdown["timer"] or "")
