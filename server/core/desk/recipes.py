"""Recipes as they are written: what would leave a maker stranded at the vat."""

from ..figures.bound import check_bound
from ..recipe.recipe import check_recipe as check_form_and_meaning

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Sequence
    from typing import Any

    from server.shapes.core.words import Problem


def check_recipe(recipe: "Any") -> "Sequence[Problem]":
    """Return everything that is wrong with a recipe that is written now.

    Args:
        recipe: the recipe as received; JSON types only.

    Returns:
        List of {"field", "key", "limit"}, with the "value" where a sum that it
        names cannot answer, see `bound.check_bound`.
    """
    return check_form_and_meaning(recipe) or check_bound(recipe)
