"""The check of what a recipe's steps say to do now, in sentences that name figures."""

from ..checks import check_choice, check_text
from ..route import route
from ..sentence import nameable, named

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.recipe import Recipe, RecipeStep
    from server.shapes.core.words import Problem


def check_sentences(recipe: "Recipe") -> "list[Problem]":
    """Return what is wrong with the sentences of a recipe, on each of its routes.

    Args:
        recipe: the recipe, sound but for them: only a sound step has figures to name.

    Returns:
        List of {"field", "key", "limit"}; what is wrong on several routes is told
        once.
    """
    problems: "list[Problem]" = []
    routes = [route(recipe, each) for each in recipe["milk"].get("treatments") or []]
    for routed in [recipe] + routes:
        for step in routed["steps"]:
            told = _of_step(step)
            problems.extend(each for each in told if each not in problems)
    return problems


def _of_step(step: "RecipeStep") -> "list[Problem]":
    problems: "list[Problem]" = []
    sentences = step.get("now") or []
    known = nameable(step) if sentences else []
    for index, sentence in enumerate(sentences):
        field = "steps." + step["key"] + ".now." + str(index)
        problems.extend(check_text(field, sentence))
        for language in sorted(sentence):
            for name in named(sentence[language]):
                where = field + "." + language
                problems.extend(check_choice(where, name, known, "unknown"))
    return problems
