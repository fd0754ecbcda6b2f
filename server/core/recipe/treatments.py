"""What is done to the milk before the make: which ways a recipe allows.

A way of treatment is chosen when a make is opened; each has its own route through
the recipe, see `route`. A recipe from before there was a choice knows one way.
"""

from .checks import check_choice, problem

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping
    from typing import Any

    from server.shapes.core.recipe import Recipe, Treatment
    from server.shapes.core.words import Problem


TREATMENTS: "tuple[Treatment, ...]" = ("pasteurised", "heat_treated", "raw")
OWN = "own"


def allowed(recipe: "Recipe") -> "list[Treatment]":
    """Return the treatments that a recipe allows, in its own order.

    Args:
        recipe: a sound recipe.
    """
    return list(recipe["milk"].get("treatments") or [usual(recipe)])


def usual(recipe: "Recipe") -> "Treatment":
    """Return the treatment that a recipe is usually made with.

    Args:
        recipe: a sound recipe.
    """
    milk = recipe["milk"]
    told = milk.get("usual_treatment") or milk.get("heat_class")
    # A recipe of before there was a choice may have said anything, or nothing.
    for treatment in TREATMENTS:
        if treatment == told:
            return treatment
    return "pasteurised"


def is_own(step: "Mapping[str, Any]") -> bool:
    """Tell whether a step holds the milk by the maker's own figures, not by a rule.

    Args:
        step: step of a recipe.
    """
    told = step.get("heat_treatment")
    return isinstance(told, dict) and told.get("by") == OWN


def check_treatments(milk: "Mapping[str, Any]") -> "list[Problem]":
    """Return what is wrong with the treatments that a recipe allows.

    Args:
        milk: the recipe's "milk", a mapping.

    Returns:
        List of {"field", "key", "limit"}.
    """
    told, most = milk.get("treatments"), milk.get("usual_treatment")
    if told is None and most is None:
        return []
    if not isinstance(told, list) or not told:
        return [problem("milk.treatments", "missing", None)]
    problems = check_names("milk.treatments", told)
    return problems + check_choice(
        "milk.usual_treatment", most, told, "treatment_not_allowed"
    )


def check_names(field: str, named: "Any") -> "list[Problem]":
    """Return what is wrong with a list of treatments.

    Args:
        field: readable path of the list.
        named: the list as received; None for all of them.

    Returns:
        List of {"field", "key", "limit"}.
    """
    if named is None:
        return []
    if not isinstance(named, list) or not named:
        return [problem(field, "missing", None)]
    problems = []
    for name in named:
        problems.extend(check_choice(field, name, TREATMENTS, "unknown_treatment"))
    if not problems and len(set(named)) < len(named):
        problems.append(problem(field, "duplicate", None))
    return problems
