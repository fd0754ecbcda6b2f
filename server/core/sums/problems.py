"""What is wrong with the values of a sum, told of what the sum asked for.

A formula speaks of its own arguments; a sum may ask for one under another name and
in another unit, or for something else that it follows from.
"""

from ..numbers.problems import of_refusal
from ..numbers.refused import Refused
from ..units.table import UNITS, convert

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import SumProblem


def problem_of(sum_row: "dict[str, Any]", refusal: Refused) -> "SumProblem":
    """Return the problem that a refusal tells, of what the sum asks for.

    Args:
        sum_row: the sum.
        refusal: what a formula raised.

    Returns:
        Problem, see `numbers.problems.problem`.
    """
    problem = of_refusal(refusal)
    field = refusal.field
    if field in sum_row["follows"]:
        problem["field"] = sum_row["follows"][field]
        problem["of"] = field
        return problem
    name = sum_row["called"].get(field, field)
    for item in sum_row["inputs"]:
        if item["name"] == name:
            problem["field"] = name
            return _as_asked(problem, item)
    return problem


def _as_asked(problem: "SumProblem", item: "dict[str, Any]") -> "SumProblem":
    """Put value and limit into the unit of the input, or of a column of it."""
    if problem["unit"] == "":
        return problem
    dimension = UNITS[problem["unit"]]["dimension"]
    for part in [item] + (item["columns"] or []):
        if UNITS[part["unit"]]["dimension"] == dimension:
            _convert(problem, part["unit"])
            break
    return problem


def _convert(problem: "SumProblem", unit: str) -> None:
    start = problem["unit"]
    problem["value"] = _in_unit(problem["value"], start, unit)
    problem["limit"] = _in_unit(problem["limit"], start, unit)
    problem["unit"] = unit


def _in_unit(figure: "Any", start: str, unit: str) -> "Any":
    """Return a number, or the two ends of a range, in another unit."""
    if isinstance(figure, list):
        return [convert(end, start, unit) for end in figure]
    return convert(figure, start, unit) if isinstance(figure, (int, float)) else figure
