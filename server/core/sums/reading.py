"""Read what was typed for a sum: into its own units, refused or asked about.

Nothing is rounded, clamped or guessed. A value that cannot be true is a problem
with its limit; one that is merely unlikely is taken, and asked about once more
unless it came with "sure".
"""

from ..numbers.problems import problem
from ..numbers.refused import Refused
from ..units.quantities import check_number
from ..units.readings import parse
from ..units.table import convert

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import Problem, SumProblem


def read_given(item: "dict[str, Any]", given: "dict[str, Any]") -> "dict[str, Any]":
    """Return the value of one input as it was given.

    Args:
        item: the input.
        given: {"typed", "unit"}, {"value", "unit"} or, for a table,
            {"rows": list of {column: typed or number}, "unit"}; "sure" true
            once the maker stands by an unlikely value.

    Returns:
        {"value", "typed", "problems", "ask"}: value None with problems; typed is
        [number, unit] as given, so that a rule can be judged in that unit.
    """
    if not isinstance(given, dict):
        return _refused(item, "not_a_mapping", None, given)
    if item["kind"] == "choice":
        return _read_choice(item, given)
    if item["kind"] == "series":
        return _read_series(item, given)
    return _read_number(item, given)


def _reading(
    value: "Any" = None,
    typed: "list[Any] | None" = None,
    problems: "list[SumProblem] | tuple[()]" = (),
    ask: "list[Problem] | tuple[()]" = (),
) -> "dict[str, Any]":
    return {
        "value": value,
        "typed": typed,
        "problems": list(problems),
        "ask": list(ask),
    }


def _refused(
    item: "dict[str, Any]",
    key: str,
    limit: "Any",
    value: "Any",
    typed: "list[Any] | None" = None,
) -> "dict[str, Any]":
    wrong = problem(item["name"], key, value, limit, item["unit"])
    return _reading(None, typed, [wrong])


def _read_choice(item: "dict[str, Any]", given: "dict[str, Any]") -> "dict[str, Any]":
    word = given.get("value", given.get("typed"))
    if word in item["choices"]:
        return _reading(word)
    return _refused(item, "not_a_choice", item["choices"], word)


def _read_number(item: "dict[str, Any]", given: "dict[str, Any]") -> "dict[str, Any]":
    raw = given.get("typed", given.get("value"))
    amount = parse(raw) if isinstance(raw, str) else raw
    if amount is None or check_number(item["name"], amount, None, None):
        return _refused(item, "not_a_number", None, raw)
    unit = given.get("unit") or item["unit"]
    if unit != item["unit"] and unit not in item["units"]:
        return _refused(item, "unknown_unit", item["units"], raw)
    typed = [amount, unit]
    try:
        number = convert(amount, unit, item["unit"])
    except Refused as refusal:
        return _refused(item, refusal.key, None, raw, typed)
    return _within_limits(item, number, typed, bool(given.get("sure")))


def _within_limits(
    item: "dict[str, Any]", number: float, typed: "list[Any]", is_sure: bool
) -> "dict[str, Any]":
    limits = check_number(item["name"], number, item["low"], item["high"])
    if limits:
        return _refused(item, limits[0]["key"], limits[0]["limit"], number, typed)
    is_count = item["kind"] == "count"
    if is_count and number != int(number):
        return _refused(item, "not_whole", None, number, typed)
    ask = [] if is_sure else _ask(item, number)
    return _reading(int(number) if is_count else number, typed, [], ask)


def _ask(item: "dict[str, Any]", number: float) -> "list[Problem]":
    if item["ask_low"] is not None and number < item["ask_low"]:
        limit = item["ask_low"]
        return [{"field": item["name"], "key": "unlikely_low", "limit": limit}]
    if item["ask_high"] is not None and number > item["ask_high"]:
        limit = item["ask_high"]
        return [{"field": item["name"], "key": "unlikely_high", "limit": limit}]
    return []


def _read_series(item: "dict[str, Any]", given: "dict[str, Any]") -> "dict[str, Any]":
    rows = given.get("rows", given.get("value"))
    if not isinstance(rows, list):
        return _refused(item, "not_a_list", None, rows)
    if len(rows) < item["low"]:
        return _refused(item, "too_few", item["low"], len(rows))
    if len(rows) > item["high"]:
        return _refused(item, "too_many", item["high"], len(rows))
    table = _reading()
    values = []
    for index, cells in enumerate(rows):
        start = "%s.%d." % (item["name"], index + 1)
        values.append(_read_cells(item, start, cells, given, table))
    if not table["problems"]:
        table["problems"].extend(_not_rising(item, values))
    if not table["problems"]:
        table["value"] = values
    return table


def _read_cells(
    item: "dict[str, Any]",
    start: str,
    cells: "Any",
    given: "dict[str, Any]",
    table: "dict[str, Any]",
) -> "dict[str, Any]":
    """Return the values of one row; what is wrong with it goes to the table."""
    values: "dict[str, Any]" = {}
    for column in item["columns"]:
        name = column["name"]
        cell = cells.get(name) if isinstance(cells, dict) else None
        reading = _read_cell(column, cell, given)
        for told in reading["problems"] + reading["ask"]:
            told["field"] = start + name
        table["problems"].extend(reading["problems"])
        table["ask"].extend(reading["ask"])
        values[name] = reading["value"]
    return values


def _read_cell(
    column: "dict[str, Any]", cell: "Any", given: "dict[str, Any]"
) -> "dict[str, Any]":
    if cell is None or cell == "":
        if column["optional"]:
            return _reading()
        return _refused(column, "not_a_number", None, cell)
    part = {"value": cell, "sure": given.get("sure")}
    if given.get("unit") in column["units"]:
        part["unit"] = given["unit"]
    return read_given(column, part)


def _not_rising(
    item: "dict[str, Any]", values: "list[dict[str, Any]]"
) -> "list[SumProblem]":
    column = item["columns"][0]
    if not column["rises"]:
        return []
    problems = []
    for index in range(1, len(values)):
        before, at = values[index - 1]["at_min"], values[index]["at_min"]
        if at <= before:
            field = "%s.%d.at_min" % (item["name"], index + 1)
            unit = column["unit"]
            problems.append(problem(field, "not_rising", at, before, unit))
    return problems
