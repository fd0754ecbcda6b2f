"""What a figure that a sum answers rests on, so that it may be kept between Views.

A View is worked out at each tap, and most taps change no figure: to gather what goes
into a sum costs more than to know that nothing of it was touched. A sum that is not
listed is asked at each View; what its inputs are then decides, see `ask`. What other
makes teach is not told by words of this one: see `known.learnt`.
"""

from ..log.kinds.columns import EQUIPMENT, FACTS, MILK
from ..log.touches import topic
from ..recipe.own import figure_at, names

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.recipe import Binding, Recipe, RecipeStep


def _read(*quantities: str) -> "list[str]":
    return [topic("reading_taken", quantity) for quantity in quantities]


_IN_VAT = _read("milk_temp_c", "curd_temp_c", "whey_drained_l", "water_added_l")
_OF_VAT = [MILK, EQUIPMENT, FACTS] + _IN_VAT

RESTS_ON = {
    "rennet_dose": [MILK, EQUIPMENT, topic("ingredient_added", "rennet")],
    "starter_packs": [MILK, EQUIPMENT, topic("ingredient_added", "starter")],
    "calcium_chloride": [
        MILK,
        EQUIPMENT,
        topic("ingredient_added", "calcium_chloride"),
    ],
    "cut_time": [EQUIPMENT, FACTS],
    "press_programme": [EQUIPMENT],
    "bed_weights": [MILK, EQUIPMENT, FACTS] + _read("bed_load_kg"),
    "heat_time": _OF_VAT + _read("jacket_temp_c"),
    "wash_water": _OF_VAT + _read("water_temp_c"),
    "wash_temp": _OF_VAT + _read("water_temp_c"),
    "brine_time": [EQUIPMENT, FACTS]
    + _read("brine_salt_frac", "water_salt_ratio", "cheese_salt_frac"),
}


def rests_on(by: "Binding | None") -> "list[str] | None":
    """Return what a figure rests on, in words of `touches`; None where not known.

    Args:
        by: which sum answers it, see `recipe.bindings`; None for the recipe's own,
            which rests on the milk at most.
    """
    return [MILK] if by is None else RESTS_ON.get(by["sum"])


def bound(recipe: "Recipe", step: "RecipeStep") -> "list[str]":
    """Return the names of the figures of a step that a sum answers.

    Args:
        recipe: a sound recipe.
        step: its step.
    """
    told = []
    for name in names(step):
        figure = figure_at(recipe, step, name)
        if figure is not None and figure.get("by") is not None:
            told.append(name)
    return told
