"""What a person judges at a step: the curd by eye, hand and knife."""

from ...units.quantities import check_number
from ..checks import check_choice, problem

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import Problem


# The words of an event's judgement, too: the table of events reads them here.
JUDGEMENTS = (
    "not_flocculated",
    "flocculated",
    "soft",
    "clean_break",
    "past_it",
    "uneven",
    "even",
    "not_knitted",
    "knitted",
)


def check_judgements(field: str, judgements: "Any") -> "list[Problem]":
    """Return what is wrong with a list of judgements.

    Args:
        field: where it stands in the recipe.
        judgements: the list.
    """
    if not isinstance(judgements, list) or not judgements:
        return [problem(field, "missing", None)]
    problems = []
    for word in judgements:
        problems.extend(check_choice(field, word, JUDGEMENTS, "unknown_judgement"))
    return problems


def check_judge(path: str, step: "dict[str, Any]") -> "list[Problem]":
    """Return what is wrong with what a step asks a person to judge.

    Args:
        path: where the step stands in the recipe.
        step: the step.
    """
    judge = step.get("judge")
    if judge is None:
        return []
    if not isinstance(judge, dict):
        return [problem(path + ".judge", "not_a_mapping", None)]
    field = path + ".judge"
    problems = check_judgements(field + ".choices", judge.get("choices"))
    if judge.get("from_frac") is not None:
        problems.extend(check_number(field + ".from_frac", judge["from_frac"], 0, 1))
    return problems
