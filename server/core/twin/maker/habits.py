"""What a maker goes by: what they are told, else the recipe's figure, else habit.

Who plays a make may hand in `told`, which asks the product; then the maker does
what its screen would say. Without it the recipe's own figures are enough.
"""

import math

from ..begin import MILK_KG_L
from ..where import target

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import Ingredient, RecipeMould, RecipeStep
    from server.shapes.core.twin import Asked, Maker

# Pressure on the cheese by round; farmhouse practice, no source.
PRESS_PA = (7000.0, 13000.0, 22000.0)
BED_KG_L = 0.06  # weights on the curd bed for a litre of milk; invented
WASH_L_L = 0.1


def told(
    maker: "Maker", step: "RecipeStep", name: str, size: "str | None" = None
) -> "Asked | None":
    """Return what the maker is told of a figure, or None.

    Args:
        maker: the work.
        step: the step in hand.
        name: a quantity, an ingredient, "lasts", or "round": see `round_of`.
        size: size of wheel, or None.
    """
    asks = maker["told"]
    if asks is None:
        return None
    return asks(maker["events"], maker["twin"]["now_ms"], step["key"], name, size)


def dose(maker: "Maker", step: "RecipeStep", row: "Ingredient") -> "Asked":
    """Return how much of an ingredient goes in.

    Args:
        maker: the work.
        step: the step in hand.
        row: the recipe's ingredient.
    """
    asked = told(maker, step, row["key"])
    if asked is not None:
        return asked
    milk_l = milk(maker)
    per = milk_l * MILK_KG_L if row["dose"]["per"] == "kg_milk" else milk_l
    return {"value": row["dose"]["amount"]["value"] * per, "unit": row["unit"]}


def milk(maker: "Maker") -> float:
    """Return the milk that the maker knows of [L]: as metered, else as planned."""
    known: float = maker["seen"].get("milk_volume_l", maker["plan"]["milk_l"])
    return known


def lasts_s(maker: "Maker", step: "RecipeStep") -> float:
    """Return how long a step is to last [s].

    Args:
        maker: the work.
        step: the step in hand.
    """
    asked = told(maker, step, "lasts")
    figure = step.get("lasts")
    if asked is not None:
        return asked["value"]
    return figure["value"] if figure else 0.0


def round_of(maker: "Maker", step: "RecipeStep") -> "Asked | None":
    """Return when the screen asks for the next round of a hold, or None.

    Args:
        maker: the work.
        step: the step in hand.

    Returns:
        {"value": instant [ms], "unit"}; value None once all that it asks was read.
    """
    return told(maker, step, "round") if step.get("heat_treatment") else None


def gauge_kpa(maker: "Maker", step: "RecipeStep", mould: "RecipeMould") -> float:
    """Return what the press's gauge is set to for a size [kPa].

    Args:
        maker: the work.
        step: the step in hand.
        mould: the recipe's mould of that size.
    """
    asked = told(maker, step, "press_gauge_kpa", mould["size"])
    if asked is not None:
        return asked["value"]
    has = maker["twin"]["plant"]
    aim_pa = PRESS_PA[min(step.get("round", 1), len(PRESS_PA)) - 1]
    across = mould["diameter_m"]["value"] / has["bore_m"]
    return math.ceil(aim_pa * across * across / has["lever_ratio"] / 1000.0)


def litres(maker: "Maker", step: "RecipeStep", quantity: str) -> float:
    """Return the litres of whey or water that a step is to have.

    Args:
        maker: the work.
        step: the step in hand.
        quantity: "whey_drained_l" or "water_added_l".
    """
    asked = told(maker, step, quantity)
    if asked is not None:
        return asked["value"]
    figure = target(step, quantity)
    if figure is None:
        return WASH_L_L * milk(maker)
    times: float = milk(maker) if figure["unit"] == "L/L" else 1.0
    return figure["value"] * times


def as_told(
    maker: "Maker", step: "RecipeStep", act: "dict[str, Any]"
) -> "dict[str, Any]":
    """Return an act with the figure that the maker is told of it.

    Args:
        maker: the work.
        step: the step in hand.
        act: see `acts.act`; the water of a wash is as warm as the screen says.
    """
    if act["kind"] != "temper_water":
        return act
    asked = told(maker, step, "water_temp_c")
    return act if asked is None else dict(act, to_c=asked["value"])


def bed_kg(maker: "Maker", step: "RecipeStep") -> float:
    """Return the weights that go on the curd bed [kg].

    Args:
        maker: the work.
        step: the step in hand.
    """
    asked = told(maker, step, "bed_load_kg")
    return BED_KG_L * milk(maker) if asked is None else asked["value"]


def air_c(recipe: "Any") -> "float | None":
    """Return what the air space must have where this recipe holds milk hot, or None."""
    for step in recipe["steps"]:
        figure = target(step, "air_space_temp_c")
        if step.get("heat_treatment") and figure is not None:
            found: float = figure["value"]
            return found
    return None
