"""Which steps hold the milk hot, and the two thermometers that such a vat has.

Apart from the rule, which comes with the core's later part.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.recipe import Recipe, RecipeStep


INDICATOR, RECORDER = "indicator_temp_c", "recorder_temp_c"


def hold_steps(recipe: "Recipe") -> "list[RecipeStep]":
    """Return the steps of a recipe that hold the milk hot, by a rule or not.

    Args:
        recipe: a sound recipe.
    """
    return [step for step in recipe["steps"] if step.get("heat_treatment")]
