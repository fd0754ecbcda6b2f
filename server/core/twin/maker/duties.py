"""What a step of a recipe means for the milk: read off what it holds.

A recipe says in words what is done, and in fields what is read, added and reached.
The fields are enough: who is to read the litres drained has drained them.
"""

from ..where import is_press, is_turn, reads, target

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep

ABOVE_K, BELOW_K = 0.4, 0.6  # a maker aims a little beyond what ends the step
AIR_ABOVE_K = 1.5
GRAIN_MM = 9.0


def at_begin(step: "RecipeStep", air_c: "float | None") -> "list[dict[str, Any]]":
    """Return what is done to the milk when a step begins.

    Args:
        step: step of a recipe.
        air_c: what the air space must have where milk is held hot [°C], or None.
    """
    if step.get("heat_treatment"):
        return _hold(step, air_c)
    by = step["end"]["by"]
    if by == "reading":
        return _towards(step, air_c)
    if by == "judged" and step.get("place") == "vat":
        return [{"kind": "cut", "size_mm": GRAIN_MM}]
    return _at_place(step)


def at_end(step: "RecipeStep") -> "list[dict[str, Any]]":
    """Return what is done to the milk when a step ends.

    Args:
        step: step of a recipe.
    """
    if step.get("heat_treatment"):
        return [{"kind": "stop"}]
    if step["end"].get("quantity") == "milk_temp_c" and step["end"].get("at_most"):
        return [{"kind": "stop"}]
    if step.get("place") == "brine":
        return [{"kind": "shelf", "size": step.get("size")}]
    return []


def _hold(step: "RecipeStep", air_c: "float | None") -> "list[dict[str, Any]]":
    figure = target(step, "milk_temp_c")
    return [] if figure is None else [_heat(figure["value"], air_c)]


def _heat(to_c: float, air_c: "float | None") -> "dict[str, Any]":
    warm_c = None if air_c is None else air_c + AIR_ABOVE_K
    return {"kind": "heat", "to_c": to_c + ABOVE_K, "air_c": warm_c}


def _towards(step: "RecipeStep", air_c: "float | None") -> "list[dict[str, Any]]":
    end: "Any" = step["end"]
    least, most = end.get("at_least"), end.get("at_most")
    if end["quantity"] == "milk_temp_c":
        if least:
            return [_heat(least["value"], air_c)]
        return [{"kind": "cool", "to_c": most["value"] - BELOW_K}]
    if end["quantity"] == "water_temp_c" and least:
        return [{"kind": "warm_water", "to_c": least["value"] + 2.0}]
    if reads(step, "water_added_l"):
        figure = target(step, "water_temp_c")
        water = [] if figure is None else [_temper(figure["value"])]
        return water + [{"kind": "new_wash"}]
    return []


def _temper(to_c: float) -> "dict[str, Any]":
    return {"kind": "temper_water", "to_c": to_c}


def _at_place(step: "RecipeStep") -> "list[dict[str, Any]]":
    place = step.get("place")
    if place == "vat":
        return [{"kind": "to_vat"}]
    if place == "table":
        return [{"kind": "table"}]
    if is_press(step):
        return []
    if is_turn(step):
        return [{"kind": "release"}, {"kind": "turn"}]
    if place == "brine":
        return [{"kind": "brine", "size": step.get("size")}]
    if place == "store":
        coats = "coating" in (step.get("cautions") or [])
        return [{"kind": "shelf"}] + ([{"kind": "coat"}] if coats else [])
    return []
