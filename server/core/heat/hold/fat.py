"""Does the fat of the milk decide how hot a hold must be?

21 CFR 1240.61, footnote 1: with 10 % of fat or more, or sweetened, the temperature
of the 30 min row is raised. Where nobody has said how rich the milk is, the verdict
stays open however well it was held, so it is asked for before the hold. Where the
rule makes no difference, or the milk is sweetened and so raised already, it is not.
"""

from ...log.opening import opening
from ..milk import hold_product
from .rule import hold_rule, is_supplemented, vat_row
from .steps import hold_steps

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import Recipe, RecipeStep
    from server.shapes.core.state import Rules, State


FAT = "fat_frac"


def fat_decides(state: "State", step: "RecipeStep", rules: "Rules") -> bool:
    """Tell whether the milk's fat, not entered yet, decides the row of a hold.

    Args:
        state: State of the make.
        step: step of the recipe.
        rules: {rule id: the rule}.
    """
    rule = hold_rule(step, rules)
    if rule is None or opening(state) is None or not step.get("lasts"):
        return False
    product = hold_product(state)
    row = vat_row(rule, step["lasts"]["value"])
    if row is None or row["supplement"] != "applies" or product[FAT] is not None:
        return False
    return not is_supplemented(rule, product)


def asks_fat(
    state: "State", recipe: "Recipe", step: "RecipeStep", rules: "Rules"
) -> bool:
    """Tell whether a step is to ask for the fat: the hold, or the one before it.

    Args:
        state: State of the make.
        recipe: its recipe.
        step: a step of it.
        rules: {rule id: the rule}.
    """
    if any(reading["quantity"] == FAT for reading in step.get("readings", [])):
        return False  # it asks by itself
    return any(
        _comes_before(step, hold) and fat_decides(state, hold, rules)
        for hold in hold_steps(recipe)
    )


def _comes_before(step: "RecipeStep", hold: "Any") -> bool:
    return step["key"] == hold["key"] or step["key"] in hold.get("after", [])
