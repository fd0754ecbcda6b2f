"""Figures of a recipe: a value with its band, unit, source and status.

A figure never stands without saying where it comes from, so that a reader can
tell a published value from common practice, memory or this project's own sums.
"""

from ..units.quantities import check_number
from .bindings import check_by
from .words import is_text as is_text

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import Problem


# "L/L" and "kg/L" are per litre of the make's milk: see `own.scaled_figure`.
UNITS = (
    "C",
    "F",
    "K",
    "F_rise",
    "s",
    "h",
    "m",
    "kg",
    "g",
    "L",
    "mL",
    "pack",
    "kg/kg",
    "g/kg",
    "mL/kg",
    "pack/kg",
    "kg/L",
    "g/L",
    "mL/L",
    "pack/L",
    "L/L",
    "fraction",
    "fraction lactic",
    "pH",
    "kPa",
    "multiple",
    "m2/s",
)

# What its band is: of the recipe, or the limit of a rule that it rests on.
BANDS = ("recipe", "rule")

STATUSES = ("read", "abstract", "practice", "memory", "derived")

MOST = 1000000000.0  # of a figure in any unit


def check_figure(
    field: str,
    figure: object,
    sources: "dict[str, Any]",
    units: "list[str] | None",
    low: "float | None" = None,
    high: "float | None" = None,
    may_be_open: bool = False,
) -> "list[Problem]":
    """Return everything that is wrong with one figure.

    Args:
        field: readable path to report, such as "steps.heat.lasts".
        figure: the figure as received.
        sources: the recipe's sources by key.
        units: units that make sense here, or None when any known unit does.
        low: smallest that its value and its band may be, or None.
        high: largest, or None.
        may_be_open: whether it may leave its value to the sum that it names.

    Returns:
        List of {"field", "key", "limit"}.
    """
    if not isinstance(figure, dict):
        return [{"field": field, "key": "missing", "limit": None}]
    low = -MOST if low is None else low
    high = MOST if high is None else high
    is_open = may_be_open and figure.get("by") and figure.get("value") is None
    problems = [] if is_open else _check_numbers(field, figure, low, high)
    note = figure.get("note")
    if note is not None and not isinstance(note, str):
        problems.append({"field": field + ".note", "key": "not_text", "limit": None})
    problems.extend(_check_unit(field + ".unit", figure.get("unit"), units))
    source = figure.get("source")
    if not is_text(source):
        problems.append({"field": field + ".source", "key": "missing", "limit": None})
    elif source not in sources:
        problems.append(
            {"field": field + ".source", "key": "unknown_source", "limit": source}
        )
    problems.extend(check_status(field + ".status", figure.get("status")))
    if figure.get("range_of") not in (None,) + BANDS:
        path = field + ".range_of"
        problems.append({"field": path, "key": "not_a_choice", "limit": list(BANDS)})
    return problems + check_by(field + ".by", figure.get("by"))


def check_status(field: str, status: object) -> "list[Problem]":
    """Return what is wrong with the status of a figure or a source.

    Args:
        field: readable path to report.
        status: the status as received.

    Returns:
        List of {"field", "key", "limit"}.
    """
    if not is_text(status):
        return [{"field": field, "key": "missing", "limit": None}]
    if status not in STATUSES:
        return [{"field": field, "key": "unknown_status", "limit": list(STATUSES)}]
    return []


def _check_unit(field: str, unit: "Any", units: "list[str] | None") -> "list[Problem]":
    if not is_text(unit):
        return [{"field": field, "key": "missing", "limit": None}]
    if unit not in UNITS:
        return [{"field": field, "key": "unknown_unit", "limit": unit}]
    if units is not None and unit not in units:
        return [{"field": field, "key": "wrong_unit", "limit": list(units)}]
    return []


def _check_numbers(
    field: str, figure: "dict[str, Any]", least: float, most: float
) -> "list[Problem]":
    problems = check_number(field + ".value", figure.get("value"), least, most)
    for name in ("low", "high"):
        if figure.get(name) is not None:
            path = field + "." + name
            problems.extend(check_number(path, figure[name], least, most))
    if problems:
        return problems
    value = figure["value"]
    low = figure.get("low")
    high = figure.get("high")
    if low is not None and low > value:
        problems.append({"field": field + ".low", "key": "above", "limit": value})
    if high is not None and high < value:
        problems.append({"field": field + ".high", "key": "below", "limit": value})
    return problems
