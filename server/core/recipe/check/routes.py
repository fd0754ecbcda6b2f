"""The check of a recipe's routes: each is a whole way from the milk to the store.

A route of pasteurised milk holds it by a rule, one of heat-treated milk by the
maker's own figures, one of raw milk not at all: else the make's steps would say
another thing than its treatment.
"""

from ..checks import mappings, problem
from ..figures import is_text
from ..route import DIFFERS, route
from ..steps.steps import check_steps
from ..treatments import TREATMENTS, check_names, is_own

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import Problem


def check_routes(recipe: "dict[str, Any]", ingredients: "list[str]") -> "list[Problem]":
    """Return what is wrong with the routes of a recipe that has more than one.

    Args:
        recipe: the recipe; its sources are a mapping, its milk is sound.
        ingredients: keys of the ingredients it defines.

    Returns:
        List of {"field", "key", "limit"}; what is wrong on several routes is told
        once.
    """
    steps, unsound = mappings("steps", recipe.get("steps"))
    problems = []
    for step in steps:
        problems.extend(_check_step(step))
    if problems or unsound or not all(_can_be_routed(step) for step in steps):
        return problems
    whole: "Any" = recipe
    for treatment in recipe["milk"].get("treatments") or [] if steps else []:
        routed: "Any" = route(whole, treatment)
        told = check_steps(routed, ingredients)
        told.extend(_check_hold(routed["steps"], treatment))
        problems.extend(each for each in told if each not in problems)
    return problems


def _check_step(step: "dict[str, Any]") -> "list[Problem]":
    field = "steps." + str(step.get("key"))
    problems = check_names(field + ".treatments", step.get("treatments"))
    differs = step.get("by_treatment")
    if differs is None:
        return problems
    field += ".by_treatment"
    if not isinstance(differs, dict):
        return problems + [problem(field, "not_a_mapping", None)]
    problems.extend(check_names(field, sorted(differs)))
    for treatment in sorted(differs):
        own = differs[treatment]
        if not isinstance(own, dict):
            problems.append(problem(field + "." + treatment, "not_a_mapping", None))
            continue
        for name in sorted(own):
            if name not in DIFFERS:
                path = field + "." + treatment + "." + name
                problems.append(problem(path, "unknown_field", None))
    return problems


def _can_be_routed(step: "dict[str, Any]") -> bool:
    after = step.get("after")
    return (
        is_text(step.get("key"))
        and isinstance(after, list)
        and all(is_text(key) for key in after)
    )


def _check_hold(steps: "list[dict[str, Any]]", treatment: str) -> "list[Problem]":
    holds = [step for step in steps if step.get("heat_treatment")]
    wrong = [
        step
        for step in holds
        if treatment == "raw" or is_own(step) != (treatment == "heat_treated")
    ]
    if wrong:
        field = "steps." + wrong[0]["key"] + ".heat_treatment"
        return [problem(field, "hold_of_other_treatment", treatment)]
    if not holds and treatment != TREATMENTS[-1]:
        return [problem("milk.treatments", "treatment_without_hold", treatment)]
    return []
