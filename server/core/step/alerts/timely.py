"""Alerts on the time of a step: past its band, or at its end before the band begins."""

from ...figures.due import span_ms
from .alert import alert_of, what_to_do

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.step import Step
    from server.shapes.core.view import Alert


ACT_SHARE = 0.25  # overrun of a step, as a share of its length, that asks to act


def time_alerts(step: "Step") -> "list[Alert]":
    """Return the alert of a running step that is past its band of time.

    Args:
        step: Step of the View.
    """
    if step["timing"]["state"] != "late":
        return []
    by_s = step["timing"]["by_s"]
    lasts_s = step["lasts"]["value_s"] if step["lasts"] else 0.0
    low_s, high_s = _band_s(step)
    level = "act" if by_s > ACT_SHARE * lasts_s else "check"
    return [
        alert_of(
            end_id(step["key"]),
            "time",
            level,
            "step_late",
            step["due_ms"],
            step=step["key"],
            by_s=by_s,
            low=low_s,
            high=high_s,
            unit="s",
            rings_ms=step["end_high_ms"],
            do=what_to_do(step, "time_late"),
        )
    ]


def end_id(key: str) -> str:
    """Return the name of the end of a step: due first, late then, one matter.

    Args:
        key: key of the step.
    """
    return "step_end/" + key


def early_alerts(step: "Step") -> "list[Alert]":
    """Return the alert of a step that came to its end sooner than its band allows.

    Only where the recipe says what to do then; of a step that goes by the clock it
    is said where somebody wants to end it.

    Args:
        step: Step of the View that runs.
    """
    do = what_to_do(step, "time_early")
    if do is None or step["timing"]["state"] != "early":
        return []
    low_s, high_s = _band_s(step)
    return [
        alert_of(
            "step_early/" + step["key"],
            "time",
            "check",
            "step_early",
            step["begun"] and step["begun"]["at_ms"],
            step=step["key"],
            by_s=step["timing"]["by_s"],
            low=low_s,
            high=high_s,
            unit="s",
            do=do,
        )
    ]


def _band_s(step: "Step") -> "tuple[float, float]":
    """Return the band that the step is late against; of a setting, from the rennet."""
    from_ms: "Any" = step["begun"] and step["begun"]["at_ms"]
    if step["due_basis"] == "floc" and step["floc"]:
        from_ms = step["floc"]["added_ms"]
    elif step["lasts"] and step["due_ms"] is not None:
        # From the deadline, since a hold that began again runs from later.
        from_ms = step["due_ms"] - span_ms(step["lasts"]["value_s"])
    low_ms: "Any" = step["end_low_ms"]
    high_ms: "Any" = step["end_high_ms"]
    return (low_ms - from_ms) / 1000.0, (high_ms - from_ms) / 1000.0
