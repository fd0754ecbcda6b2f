"""What a View wants of a quantity now: what a typed value is held against."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.step import Step
    from server.shapes.core.view import View


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
