"""What is wanted of a step, for the look-ups: its figures, asked of what lies above."""

from ..recipe.own import own_figure

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping
    from typing import Any

    from server.shapes.core.state import Scene


def wanted(
    scene: "Scene", name: str, step: "Mapping[str, Any] | None" = None
) -> "dict[str, Any] | None":
    """Return a figure of a step, or None where nobody has one of that name.

    A sum may answer it. Where a sum so asks for its own figure, the recipe's own
    comes back, see `figures.figure`.

    Args:
        scene: see `inputs.scene`.
        name: name of the figure, see `recipe.own`.
        step: step of the recipe; None for the one that asks.

    Returns:
        {"value", "low", "high", "unit", "status", "source"} at least.
    """
    asked: "Any" = scene["step"] if step is None else step
    context = scene["context"]
    if context.get("figure") is not None:
        told = context["figure"](asked, name)
    else:
        opened_l = scene["opened"]["milk_l"]
        told = own_figure(scene["recipe"], asked, name, context["milk"], opened_l)
    return None if told is None or told["value"] is None else dict(told)
