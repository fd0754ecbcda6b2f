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


def read_given(row: "dict[str, Any]", given: "dict[str, Any]") -> "dict[str, Any]":
    """Return the value of one input as it was given.

    Args:
        row: the input.
        given: {"typed", "unit"}, {"value", "unit"} or, for a table,
            {"rows": list of {column: typed or number}, "unit"}; "sure" true
            once the maker stands by an unlikely value.

    Returns:
        {"value", "typed", "problems", "ask"}: value None with problems; typed is
        [number, unit] as given, so that a rule can be judged in that unit.
    """
    found: "dict[str, Any]" = {"value": None, "typed": None, "problems": [], "ask": []}
    if not isinstance(given, dict):
        found["problems"].append(_problem(row, "not_a_mapping", None, given))
    elif row["kind"] == "choice":
        _read_choice(row, given, found)
    elif row["kind"] == "series":
        _read_series(row, given, found)
    else:
        _read_number(row, given, found)
    return found


def _problem(
    row: "dict[str, Any]",
    key: str,
    limit: "float | list[str] | None",
    value: "float | str | None",
) -> "SumProblem":
    return problem(row["name"], key, value, limit, row["unit"])


def _read_choice(
    row: "dict[str, Any]", given: "dict[str, Any]", found: "dict[str, Any]"
) -> None:
    word = given.get("value", given.get("typed"))
    if word in row["choices"]:
        found["value"] = word
    else:
        found["problems"].append(_problem(row, "not_a_choice", row["choices"], word))


def _read_number(
    row: "dict[str, Any]", given: "dict[str, Any]", found: "dict[str, Any]"
) -> None:
    raw = given.get("typed", given.get("value"))
    amount = parse(raw) if isinstance(raw, str) else raw
    unit = given.get("unit") or row["unit"]
    if amount is None or check_number(row["name"], amount, None, None):
        found["problems"].append(_problem(row, "not_a_number", None, raw))
        return
    if unit != row["unit"] and unit not in row["units"]:
        found["problems"].append(_problem(row, "unknown_unit", row["units"], raw))
        return
    found["typed"] = [amount, unit]
    try:
        number = convert(amount, unit, row["unit"])
    except Refused as refusal:
        found["problems"].append(_problem(row, refusal.key, None, raw))
        return
    limits = check_number(row["name"], number, row["low"], row["high"])
    if limits:
        found["problems"].append(
            _problem(row, limits[0]["key"], limits[0]["limit"], number)
        )
    elif row["kind"] == "count" and number != int(number):
        found["problems"].append(_problem(row, "not_whole", None, number))
    else:
        found["value"] = int(number) if row["kind"] == "count" else number
        if not given.get("sure"):
            found["ask"].extend(_ask(row, number))


def _ask(row: "dict[str, Any]", number: float) -> "list[Problem]":
    if row["ask_low"] is not None and number < row["ask_low"]:
        limit = row["ask_low"]
        return [{"field": row["name"], "key": "unlikely_low", "limit": limit}]
    if row["ask_high"] is not None and number > row["ask_high"]:
        limit = row["ask_high"]
        return [{"field": row["name"], "key": "unlikely_high", "limit": limit}]
    return []


def _read_series(
    row: "dict[str, Any]", given: "dict[str, Any]", found: "dict[str, Any]"
) -> None:
    rows = given.get("rows", given.get("value"))
    if not isinstance(rows, list):
        found["problems"].append(_problem(row, "not_a_list", None, rows))
        return
    for key, limit, wrong in (
        ("too_few", row["low"], len(rows) < row["low"]),
        ("too_many", row["high"], len(rows) > row["high"]),
    ):
        if wrong:
            found["problems"].append(_problem(row, key, limit, len(rows)))
            return
    read = []
    for place, cells in enumerate(rows):
        read.append(_read_cells(row, place, cells, given, found))
    if not found["problems"]:
        found["problems"].extend(_not_rising(row, read))
    if not found["problems"]:
        found["value"] = read


def _read_cells(
    row: "dict[str, Any]",
    place: int,
    cells: "dict[str, Any]",
    given: "dict[str, Any]",
    found: "dict[str, Any]",
) -> "dict[str, Any]":
    read: "dict[str, Any]" = {}
    for column in row["columns"]:
        name = column["name"]
        cell = cells.get(name) if isinstance(cells, dict) else None
        if cell is None or cell == "":
            read[name] = None
            if not column["optional"]:
                path = "%s.%d.%s" % (row["name"], place + 1, name)
                wrong = _problem(row, "not_a_number", None, cell)
                wrong["field"] = path
                found["problems"].append(wrong)
            continue
        part = {"value": cell, "sure": given.get("sure")}
        if given.get("unit") in column["units"]:
            part["unit"] = given["unit"]
        got = read_given(column, part)
        for row_of in (got["problems"], got["ask"]):
            for item in row_of:
                item["field"] = "%s.%d.%s" % (row["name"], place + 1, name)
        found["problems"].extend(got["problems"])
        found["ask"].extend(got["ask"])
        read[name] = got["value"]
    return read


def _not_rising(
    row: "dict[str, Any]", read: "list[dict[str, Any]]"
) -> "list[SumProblem]":
    column = row["columns"][0]
    if not column["rises"]:
        return []
    problems = []
    for place in range(1, len(read)):
        before = read[place - 1]["at_min"]
        if read[place]["at_min"] <= before:
            wrong = _problem(column, "not_rising", before, read[place]["at_min"])
            wrong["field"] = "%s.%d.at_min" % (row["name"], place + 1)
            problems.append(wrong)
    return problems
