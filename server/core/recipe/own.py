"""The recipe's own figures, by name, scaled to the milk of a make.

A figure of a step has a name: "lasts"; "target/<quantity>", with "/<size>" where
it is of one size of wheel; "end/at_least" and "end/at_most"; "turn/<place>";
"dose/<ingredient>". What answers a figure is asked by that name, see `figures`.
"""

from ..units.table import OF_ALL_MILK

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.figures import OwnFigure
    from server.shapes.core.recipe import (
        Figure,
        Ingredient,
        OpenFigure,
        Recipe,
        RecipeStep,
        RecipeTarget,
    )
    from server.shapes.core.state import Milk


SIDES = ("at_least", "at_most")


def target_name(target: "RecipeTarget") -> str:
    """Return the name of a target of a step.

    Args:
        target: target of a recipe's step.
    """
    size = target.get("size")
    return "target/" + target["quantity"] + ("" if size is None else "/" + size)


def names(step: "RecipeStep") -> "list[str]":
    """Return the names of all figures that a step has, in the order of the recipe.

    Args:
        step: step of a sound recipe.
    """
    told = ["lasts"] if step.get("lasts") else []
    told.extend(target_name(target) for target in step.get("targets", []))
    told.extend("end/" + side for side in SIDES if step["end"].get(side))
    told.extend("turn/" + str(index) for index in range(len(step.get("turns") or [])))
    told.extend("dose/" + key for key in step.get("adds", []))
    return told


def figure_at(
    recipe: "Recipe", step: "RecipeStep", name: str
) -> "Figure | OpenFigure | None":
    """Return the figure of that name as it stands in the recipe, or None.

    Args:
        recipe: a sound recipe.
        step: its step; of a dose any step will do.
        name: see the module's first words.
    """
    kind, _, rest = name.partition("/")
    if kind == "lasts":
        return step.get("lasts")
    if kind == "end":
        end = step["end"]
        return end.get("at_least") if rest == "at_least" else end.get("at_most")
    if kind == "turn":
        return step["turns"][int(rest)]["every"]
    if kind == "dose":
        dosed = ingredient(recipe, rest)
        return None if dosed is None else dosed["dose"]["amount"]
    for target in step.get("targets", []):
        if target_name(target) == name:
            return target["figure"]
    return None


def ingredient(recipe: "Recipe", key: str) -> "Ingredient | None":
    """Return an ingredient of a recipe, or None.

    Args:
        recipe: a sound recipe.
        key: its key.
    """
    for candidate in recipe.get("ingredients", []):
        if candidate["key"] == key:
            return candidate
    return None


def own_figure(
    recipe: "Recipe",
    step: "RecipeStep",
    name: str,
    milk: "Milk",
    opened_l: float,
) -> "OwnFigure | None":
    """Return a recipe's own figure for the milk of a make, or None.

    Args:
        recipe: a sound recipe.
        step: its step.
        name: see the module's first words.
        milk: answer of `plan.milk_in`.
        opened_l: milk that the make was opened for [L].

    Returns:
        {"value", "low", "high", "unit", "source", "status", "by", "range_of"};
        what the recipe leaves open is None.
    """
    figure = figure_at(recipe, step, name)
    if figure is None:
        return None
    if name.startswith("dose/"):
        dosed = ingredient(recipe, name[len("dose/") :])
        return None if dosed is None else _dose(dosed, milk)
    # What was measured is judged by what the make was opened for.
    judged = name.startswith("target/milk_volume_l")
    scaled: "Any" = scaled_figure(dict(figure), opened_l if judged else milk["milk_l"])
    return {
        "value": scaled["value"],
        "low": scaled.get("low"),
        "high": scaled.get("high"),
        "unit": scaled["unit"],
        "source": scaled["source"],
        "status": scaled["status"],
        "by": scaled.get("by"),
        "range_of": scaled.get("range_of") or "recipe",
    }


def _dose(dosed: "Ingredient", milk: "Milk") -> "OwnFigure":
    figure = dosed["dose"]["amount"]
    times = {"kg_milk": milk["milk_kg"], "l_milk": milk["milk_l"]}
    value = figure["value"] * times.get(dosed["dose"]["per"], 1.0)
    low, high = tolerated(value, dosed.get("tolerance_frac"))
    return {
        "value": value,
        "low": low,
        "high": high,
        "unit": dosed["unit"],
        "source": figure["source"],
        "status": figure["status"],
        "by": figure.get("by"),
        "range_of": "recipe",
    }


def tolerated(
    value: float, share: "float | None"
) -> "tuple[float | None, float | None]":
    """Return the ends of a tolerance round a value; None each without one.

    Args:
        value: the value.
        share: the tolerance as a share of it, or None.
    """
    if share is None:
        return None, None
    return value * (1.0 - share), value * (1.0 + share)


def scaled_figure(figure: "dict[str, Any]", milk_l: float) -> "dict[str, Any]":
    """Return a figure given per litre of milk as one for a whole make.

    Args:
        figure: a figure of a recipe.
        milk_l: the make's milk [L].

    Returns:
        New figure in L or kg when the figure was per litre of milk ("L/L",
        "kg/L"); otherwise a copy. Source and status stay.

    >>> scaled_figure({"value": 0.25, "low": 0.2, "high": None, "unit": "L/L"}, 600.0)[
    ...     "value"
    ... ]
    150.0
    """
    scaled = {}
    for name in figure:
        scaled[name] = figure[name]
    unit = OF_ALL_MILK.get(figure["unit"])
    if unit is None:
        return scaled
    scaled["unit"] = unit
    for name in ("low", "value", "high"):
        if figure.get(name) is not None:
            scaled[name] = figure[name] * milk_l
    return scaled
