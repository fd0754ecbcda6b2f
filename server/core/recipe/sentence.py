"""Sentences of a recipe that name figures of their step, as in "Draw off {…}".

A name in braces is a figure's own, see `own`: "target/curd_temp_c". Of a wash whose
water is worked out, POURED names what is to be poured next.
"""

from .own import names

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.recipe import RecipeStep


POURED = ("pour/water_added_l", "pour/water_temp_c")


def named(text: str) -> "list[str]":
    """Return the names in braces of a sentence, in its order.

    Args:
        text: the sentence in one language.
    """
    return [part.partition("}")[0] for part in text.split("{")[1:]]


def nameable(step: "RecipeStep") -> "list[str]":
    """Return what a sentence of a step may name.

    Args:
        step: step of the recipe, its figures sound.
    """
    told = names(step)
    if "target/water_added_l" in told:
        told.extend(POURED)
    return told
