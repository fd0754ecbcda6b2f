"""How a step ends: by a person, the clock, a reading, a judgement or the curd."""

from ..checks import check_choice, problem
from ..figures import check_figure
from .judgements import check_judgements
from .turns import LONGEST_S
from .wanted import check_quantity, target_units

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import Problem


ENDS = ("person", "time", "reading", "judged", "floc")


def check_lasts(
    path: str, step: "dict[str, Any]", sources: "dict[str, Any]"
) -> "list[Problem]":
    """Return what is wrong with how long a step lasts.

    Args:
        path: where the step stands in the recipe.
        step: the step.
        sources: the recipe's sources.
    """
    field = path + ".lasts"
    lasts = step.get("lasts")
    if lasts is None:
        return []
    problems = check_figure(field, lasts, sources, ["s"], 0, LONGEST_S)
    if step.get("heat_treatment") and isinstance(lasts, dict) and lasts.get("by"):
        # How long a hold lasts is the rule's and the recipe's word, no sum's.
        problems.append(problem(field + ".by", "unknown_field", None))
    return problems


def check_end(
    path: str, step: "dict[str, Any]", recipe: "dict[str, Any]", keys: "list[str]"
) -> "list[Problem]":
    """Return what is wrong with what ends a step.

    Args:
        path: where the step stands in the recipe.
        step: the step.
        recipe: the recipe; its sources are a mapping.
        keys: keys of all its steps.
    """
    end = step.get("end")
    field = path + ".end"
    if not isinstance(end, dict):
        return [problem(field, "missing", None)]
    problems = check_choice(field + ".by", end.get("by"), ENDS, "unknown_end")
    if problems:
        return problems
    if end["by"] == "time" and step.get("lasts") is None:
        return [problem(path + ".lasts", "missing", None)]
    if end["by"] == "reading":
        return _check_end_reading(field, end, recipe["sources"])
    if end["by"] == "judged":
        return check_judgements(field + ".judgement", end.get("judgement"))
    if end["by"] == "floc":
        return _check_end_floc(field, end, recipe, keys)
    return []


def _check_end_reading(
    field: str, end: "dict[str, Any]", sources: "dict[str, dict[str, Any]]"
) -> "list[Problem]":
    problems = check_quantity(field + ".quantity", end.get("quantity"))
    units = None if problems else target_units(end["quantity"])
    given = [name for name in ("at_least", "at_most") if end.get(name) is not None]
    if not given:
        return problems + [problem(field + ".at_least", "missing", None)]
    for name in given:
        problems.extend(check_figure(field + "." + name, end[name], sources, units))
    return problems


def _check_end_floc(
    field: str, end: "dict[str, Any]", recipe: "dict[str, Any]", keys: "list[str]"
) -> "list[Problem]":
    problems = check_choice(
        field + ".from_step", end.get("from_step"), keys, "unknown_step"
    )
    figures = recipe.get("figures")
    if not isinstance(figures, dict) or figures.get("floc_factor") is None:
        problems.append(problem("figures.floc_factor", "missing", None))
    return problems
