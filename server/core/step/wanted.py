"""What a View wants of a quantity now: what a typed value is held against."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Sequence
    from typing import Any

    from server.shapes.core.step import Step
    from server.shapes.core.view import View

# A press is set to its figure: half or twice as much is no drift (common practice, no
# source). What warms, sours or is poured in parts is far off until it is there.
TIMES_OFF = {"press_gauge_kpa": 2.0}


def wanted_now(
    view: "View", quantity: str, size: "str | None" = None
) -> "list[tuple[float, float]]":
    """Return the bands that running steps want of a quantity, as they are shown.

    Args:
        view: the View that is in sight.
        quantity: key of `quantities.QUANTITIES`.
        size: size of wheel that is read; None for any.

    Returns:
        List of (low, high) in the quantity's own unit; one figure is both.
    """
    told: "list[tuple[float, float]]" = []
    for step in view["steps"]:
        if step["status"] == "running":
            told.extend(_of_step(step, quantity, size))
    return told


def _of_step(
    step: "Step", quantity: str, size: "str | None"
) -> "list[tuple[float, float]]":
    told = [
        _band(target["value"], target["low"], target["high"])
        for target in step["targets"]
        if target["quantity"] == quantity
        and (size is None or target["size"] in (None, size))
        and target["value"] is not None
    ]
    if step["end"].get("quantity") == quantity:
        end: "Any" = step["end"]
        ends = (end.get("at_least"), end.get("at_most"))
        told += [(one, one) for one in ends if one is not None]
    return told


def _band(
    value: float, low: "float | None", high: "float | None"
) -> "tuple[float, float]":
    return value if low is None else low, value if high is None else high


def far_from(
    quantity: str, value: float, wanted: "Sequence[tuple[float, float]]"
) -> "float | None":
    """Return the end of a wanted band nearest to a value that lies far off all.

    Args:
        quantity: key of `quantities.QUANTITIES`.
        value: the value, in the quantity's own unit.
        wanted: bands (low, high) that are wanted of it, in the same unit.

    Returns:
        None where it lies in a band or near one, or none is wanted.
    """
    times = TIMES_OFF.get(quantity)
    if times is None or not wanted:
        return None
    ends = [min(max(value, low), high) for low, high in wanted]
    end = min(ends, key=lambda one: abs(value - one))
    return end if value >= times * end or end >= times * value else None
