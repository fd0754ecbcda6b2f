"""A part of a recipe by its key: a step, a mould."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.recipe import Recipe, RecipeMould, RecipeStep


def step_of(recipe: "Recipe", key: "str | None") -> "RecipeStep | None":
    """Return a step of a recipe, or None.

    Args:
        recipe: a sound recipe.
        key: key of the step.
    """
    for step in recipe["steps"]:
        if step["key"] == key:
            return step
    return None


def mould_of(recipe: "Recipe | None", size: "str | None") -> "RecipeMould | None":
    """Return the mould of a size of wheel, or None.

    Args:
        recipe: a sound recipe, or None where it is not known here.
        size: size of wheel.
    """
    for mould in recipe.get("moulds", []) if recipe else []:
        if mould["size"] == size:
            return mould
    return None
