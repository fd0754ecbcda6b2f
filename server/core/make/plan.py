"""Which step waits on which, which one closes the day, and the milk in the make."""

from ..formulas.milk import milk as milk_formulas
from ..log.readings import every, last
from ..log.touches import WITH_VOLUME_MS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Milk, State


# Cow's milk before it has been tested; used only to turn a metered volume into
# mass, where 0.1 % of fat is worth 0.1 kg in 1,000. Source: GOFF density table,
# row 4.00 fat 8.95 SNF.
USUAL_FAT_FRAC = 0.04
USUAL_SNF_FRAC = 0.0895
USUAL_TEMP_C = 4.4


def in_order(steps: "list[RecipeStep]") -> "list[RecipeStep]":
    """Return the steps so that each stands after all that it waits on.

    Args:
        steps: steps of a sound recipe, see `recipe.check_recipe`.

    Returns:
        The same steps, reordered; recipe order is kept where it can be.
    """
    left = list(steps)
    placed = {}
    ordered = []
    while left:
        waiting = []
        for step in left:
            if all(key in placed for key in step.get("after", [])):
                ordered.append(step)
                placed[step["key"]] = True
            else:
                waiting.append(step)
        if len(waiting) == len(left):
            raise ValueError("steps wait on each other in a circle")
        left = waiting
    return ordered


def closing_step(steps: "list[RecipeStep]") -> "RecipeStep":
    """Return the last hands-on step of the make day; the last step if none says so.

    Args:
        steps: steps in the order of `in_order`; at least one.
    """
    for step in steps:
        if step.get("closes_day"):
            return step
    return steps[-1]


def milk_in(state: "State", opened: "dict[str, Any]") -> "Milk":
    """Return the mass of milk in the make and what that rests on.

    A weighed mass goes before a metered volume, and a metered volume before
    the volume that was planned when the make was opened.

    Args:
        state: State of the make.
        opened: body of its make_opened event.

    Returns:
        {"milk_kg", "milk_l", "milk_from": "mass" | "volume" | "opened",
        "density_kg_l"}; density None when weighed without a volume.
    """
    mass = last(state, "milk_mass_kg")
    volume = last(state, "milk_volume_l")
    temp = last(state, "milk_temp_c")
    if mass is not None:
        return {
            "milk_kg": mass["data"]["value"],
            "milk_l": opened["milk_l"] if volume is None else volume["data"]["value"],
            "milk_from": "mass",
            "density_kg_l": None,
        }
    # The volume is metered cold, on receipt; a later reading of the hot vat is
    # not the temperature that belongs to it.
    temp_c = USUAL_TEMP_C
    if volume is not None and temp is not None:
        temp_c = _temp_at(state, volume["t_ms"], USUAL_TEMP_C)
    density = milk_formulas.density_kg_l(USUAL_FAT_FRAC, USUAL_SNF_FRAC, temp_c)
    litres = opened["milk_l"] if volume is None else volume["data"]["value"]
    return {
        "milk_kg": litres * density,
        "milk_l": litres,
        "milk_from": "opened" if volume is None else "volume",
        "density_kg_l": density,
    }


def _temp_at(state: "State", at_ms: int, otherwise: float) -> float:
    """Return the milk temperature read nearest to an instant, within an hour."""
    nearest = None
    for entry in every(state, "milk_temp_c"):
        gap = abs(entry["t_ms"] - at_ms)
        if gap <= WITH_VOLUME_MS and (nearest is None or gap < nearest[0]):
            nearest = (gap, entry["data"]["value"])
    if nearest is None or not 0.0 <= nearest[1] <= 44.0:  # the table's range
        return otherwise
    return nearest[1]
