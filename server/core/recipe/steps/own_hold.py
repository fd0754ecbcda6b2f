"""A hold by the maker's own figures: how hot, how the air above, how long and why.

The figures stand in each unit by itself, as the figures of a rule do: a reading is
compared as it was typed. How long it lasts is the step's own "lasts".
"""

from ..checks import check_text, problem
from ..figures import check_figure
from ..treatments import OWN

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import Problem


# What each is in, by the unit that the thermometer is marked in.
TEMPS = {"F": "F", "C": "C"}
RISES = {"F": "F_rise", "C": "K"}
HOTTEST = {"F": 302.0, "C": 150.0}
MOST_GAP_S = 3600.0


def check_own_hold(
    path: str, step: "dict[str, Any]", sources: "dict[str, Any]"
) -> "list[Problem]":
    """Return what is wrong with a step's hold by the maker's own figures.

    Args:
        path: where the step stands in the recipe.
        step: the step.
        sources: the recipe's sources.
    """
    told = step.get("heat_treatment")
    if not isinstance(told, dict):
        return []
    field = path + ".heat_treatment"
    if told.get("by") != OWN:
        return [problem(field + ".by", "not_a_choice", [OWN])]
    problems = check_text(field + ".why", told.get("why"))
    if step.get("lasts") is None:
        problems.append(problem(path + ".lasts", "missing", None))
    if step.get("rule") is not None:
        # A hold goes by one or by the other.
        problems.append(problem(path + ".rule", "unknown_field", None))
    for unit in ("F", "C"):
        problems.extend(_check_unit(field, told, unit, sources))
    gap = told.get("gap_max_s")
    name = field + ".gap_max_s"
    return problems + check_figure(name, gap, sources, ["s"], 1, MOST_GAP_S)


def _check_unit(
    field: str, told: "dict[str, Any]", unit: str, sources: "dict[str, Any]"
) -> "list[Problem]":
    problems = []
    for name, units in (("temp", TEMPS), ("air_rise", RISES)):
        figures = told.get(name)
        if name == "air_rise" and figures is None:
            continue  # the air may be left out of it
        figure = figures.get(unit) if isinstance(figures, dict) else None
        path = field + "." + name + "." + unit
        problems.extend(
            check_figure(path, figure, sources, [units[unit]], 0.0, HOTTEST[unit])
        )
    return problems
