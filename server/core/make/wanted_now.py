"""What running steps want of a quantity now: what a typed value is held against."""

from ..log import run
from ..log.opening import recipe_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import State


def wanted_now(state: "State", quantity: str) -> "list[tuple[float, float]]":
    """Return the bands that running steps want of a quantity, by the recipe's word.

    Args:
        state: State of the make or tank.
        quantity: key of `quantities.QUANTITIES`.

    Returns:
        List of (low, high) in the quantity's own unit; one figure is both.
    """
    recipe = recipe_of(state)
    told: "list[tuple[float, float]]" = []
    for step in recipe["steps"] if recipe else []:
        if _runs(state, step["key"]):
            told.extend(_band(figure) for figure in _figures(step, quantity))
    return told


def _runs(state: "State", key: str) -> bool:
    return bool(run.entries(state, "step_begun", key)) and not run.entries(
        state, "step_ended", key
    )


def _figures(step: "RecipeStep", quantity: str) -> "list[Any]":
    figures: "list[Any]" = [
        target["figure"]
        for target in step.get("targets", [])
        if target["quantity"] == quantity
    ]
    if step["end"].get("quantity") == quantity:
        figures += [step["end"].get("at_least"), step["end"].get("at_most")]
    return [figure for figure in figures if figure and figure["value"] is not None]


def _band(figure: "Any") -> "tuple[float, float]":
    low, high = figure.get("low"), figure.get("high")
    return (
        figure["value"] if low is None else low,
        figure["value"] if high is None else high,
    )
