"""The check of how often the wheels of a step are turned."""

from ...units.quantities import check_number
from ..checks import mappings, problem

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import Problem


# Wheels are turned in these places, often between the recipe's own steps.
TURNED_AT = ("table", "press", "brine", "store")
LONGEST_S = 315360000.0  # ten years: no cheese is older


def check_turns(
    path: str, step: "dict[str, Any]", sources: "dict[str, Any]"
) -> "list[Problem]":
    """Return everything that is wrong with the turning that a step asks for.

    A step may ask for it in parts, such as daily for two weeks and then twice a
    week: each part but the last says until when after the step's begin it holds.

    Args:
        path: where the step stands in the recipe.
        step: the step; its "turns" is a list of {"every", "until"}.
        sources: the recipe's sources.

    Returns:
        List of {"field", "key", "limit"}.
    """
    if step.get("turns") is None:
        return []
    # Loaded when a recipe is checked: the app starts without it.
    from ..figures import check_figure

    field = path + ".turns"
    parts, problems = mappings(field, step["turns"])
    if not parts and not problems:
        return [problem(field, "missing", None)]
    before_s = 0
    for index, part in enumerate(parts):
        at = field + "." + str(index)
        wrong = check_figure(at + ".every", part.get("every"), sources, ["s"])
        if not wrong:
            value = part["every"]["value"]
            wrong = check_number(at + ".every.value", value, 60, LONGEST_S)
        is_last = index == len(parts) - 1
        until: "Any" = part.get("until")
        if is_last and until is not None:
            wrong = wrong + [problem(at + ".until", "unknown_field", None)]
        elif not is_last:
            until_problems = check_figure(at + ".until", until, sources, ["s"])
            if not until_problems:
                low = before_s + 1
                value = until["value"]
                until_problems = check_number(
                    at + ".until.value", value, low, LONGEST_S
                )
                before_s = until["value"]
            wrong = wrong + until_problems
        problems = problems + wrong
    return problems
