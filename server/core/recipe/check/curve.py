"""The check of a recipe's own curve of pH over time, where it has one."""

from ...units.quantities import check_number
from ..checks import check_choice, mappings, problem
from ..figures import check_status, is_text

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import Problem


LEAST_POINTS = 2
MOST_POINTS = 60
LATEST_S = 31536000.0


def check_curve(
    recipe: "dict[str, Any]", sources: "dict[str, dict[str, Any]]"
) -> "list[Problem]":
    """Return everything that is wrong with the optional "curve" of a recipe.

    Args:
        recipe: the recipe as received; "curve" is {"times_s", "phs", "source",
            "status", "start_step"}, times from the begin of that step [s].
        sources: the recipe's sources by key.

    Returns:
        List of {"field", "key", "limit"}; empty without a curve.
    """
    curve = recipe.get("curve")
    if curve is None:
        return []
    if not isinstance(curve, dict):
        return [problem("curve", "not_a_mapping", None)]
    problems = _check_points(curve)
    steps = mappings("steps", recipe.get("steps"))[0]
    keys = [step["key"] for step in steps if is_text(step.get("key"))]
    start = curve.get("start_step")
    problems.extend(check_choice("curve.start_step", start, keys, "unknown_step"))
    source = curve.get("source")
    problems.extend(check_choice("curve.source", source, sources, "unknown_source"))
    problems.extend(check_status("curve.status", curve.get("status")))
    return problems


def _check_points(curve: "dict[str, Any]") -> "list[Problem]":
    times_s: "Any" = curve.get("times_s")
    phs: "Any" = curve.get("phs")
    problems: "list[Problem]" = []
    for name, points in (("times_s", times_s), ("phs", phs)):
        field = "curve." + name
        if not isinstance(points, list):
            problems.append(problem(field, "not_a_list", None))
        elif not LEAST_POINTS <= len(points) <= MOST_POINTS:
            problems.append(problem(field, "wrong_count", [LEAST_POINTS, MOST_POINTS]))
    if problems:
        return problems
    if len(times_s) != len(phs):
        return [problem("curve.phs", "wrong_count", len(times_s))]
    for index in range(len(times_s)):
        label = "." + str(index)
        problems.extend(
            check_number("curve.times_s" + label, times_s[index], 0.0, LATEST_S)
        )
        problems.extend(check_number("curve.phs" + label, phs[index], 0.0, 14.0))
    return problems or _check_order(times_s, phs)


def _check_order(times_s: "list[float]", phs: "list[float]") -> "list[Problem]":
    problems = []
    for index in range(1, len(times_s)):
        label = "." + str(index)
        if times_s[index] <= times_s[index - 1]:
            field = "curve.times_s" + label
            problems.append(problem(field, "not_rising", times_s[index - 1]))
        if phs[index] > phs[index - 1]:
            problems.append(problem("curve.phs" + label, "rises", phs[index - 1]))
    if not problems and phs[-1] == phs[0]:
        problems.append(problem("curve.phs", "never_falls", phs[0]))
    return problems
