"""Figures of a recipe: a value with its band, unit, source and status.

A figure never stands without saying where it comes from, so that a reader can
tell a published value from common practice, memory or this project's own sums.
"""

from ..units.quantities import check_number
from .sum_keys import SUM_KEYS

# "L/L" and "kg/L" are per litre of the make's milk: see `scaled_figure`.
UNITS = (
    "C",
    "K",
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

STATUSES = ("read", "abstract", "practice", "memory", "derived")

MOST = 1000000000.0  # of a figure in any unit

_PER_LITRE = {"L/L": "L", "kg/L": "kg"}


def scaled_figure(figure: dict, milk_l: float) -> dict:
    """Return a figure given per litre of milk as one for a whole make.

    Args:
        figure: a figure of a recipe.
        milk_l: the make's milk [L].

    Returns:
        New figure in L or kg when the figure was per litre of milk ("L/L",
        "kg/L"); otherwise a copy. Source and status stay.

    >>> scaled_figure({"value": 0.25, "low": 0.2, "high": None, "unit": "L/L"}, 600.0)[
    ...     "value"
    ... ]
    150.0
    """
    scaled = {}
    for name in figure:
        scaled[name] = figure[name]
    unit = _PER_LITRE.get(figure["unit"])
    if unit is None:
        return scaled
    scaled["unit"] = unit
    for name in ("low", "value", "high"):
        if figure.get(name) is not None:
            scaled[name] = figure[name] * milk_l
    return scaled


def check_figure(
    field: str,
    figure: object,
    sources: dict,
    units: "list | None",
    low: "float | None" = None,
    high: "float | None" = None,
) -> "list[dict]":
    """Return everything that is wrong with one figure.

    Args:
        field: readable path to report, such as "steps.heat.lasts".
        figure: the figure as received.
        sources: the recipe's sources by key.
        units: units that make sense here, or None when any known unit does.
        low: smallest that its value and its band may be, or None.
        high: largest, or None.

    Returns:
        List of {"field", "key", "limit"}.
    """
    if not isinstance(figure, dict):
        return [{"field": field, "key": "missing", "limit": None}]
    low = -MOST if low is None else low
    high = MOST if high is None else high
    problems = _check_numbers(field, figure, low, high)
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
    return problems + _check_by(field + ".by", figure.get("by"))


def _check_by(field, by):
    """Return what is wrong with the sum that a figure is answered by, if one is."""
    if by is None:
        return []
    if not isinstance(by, dict):
        return [{"field": field, "key": "not_a_mapping", "limit": None}]
    problems = []
    if by.get("sum") not in SUM_KEYS:
        problems.append(
            {"field": field + ".sum", "key": "unknown_sum", "limit": by.get("sum")}
        )
    values = by.get("value")
    for value in values if isinstance(values, list) and values else [values]:
        if not is_text(value):
            problems.append(
                {"field": field + ".value", "key": "missing", "limit": None}
            )
    for name in ("of", "size"):
        if by.get(name) is not None and not is_text(by[name]):
            problems.append(
                {"field": field + "." + name, "key": "not_text", "limit": None}
            )
    return problems


def check_status(field: str, status: object) -> "list[dict]":
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


def is_text(value: object) -> bool:
    """Tell whether a value is text with something to read in it."""
    return isinstance(value, str) and value.strip() != ""


def _check_unit(field, unit, units):
    if not is_text(unit):
        return [{"field": field, "key": "missing", "limit": None}]
    if unit not in UNITS:
        return [{"field": field, "key": "unknown_unit", "limit": unit}]
    if units is not None and unit not in units:
        return [{"field": field, "key": "wrong_unit", "limit": list(units)}]
    return []


def _check_numbers(field, figure, least, most):
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
