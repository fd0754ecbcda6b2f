"""What was typed for one field of an entry, read and checked by the table of kinds."""

from ..units.readings import parse
from ..units.table import convert
from .kinds.body import check_data
from .kinds.table import KINDS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import Problem


def read_field(
    kind: str, field: str, typed: str, unit: str = "", kept: str = ""
) -> "dict[str, Any]":
    """Return the number that was typed for a field, or what is wrong with it.

    Args:
        kind: a key of KINDS.
        field: name of a number of its body.
        typed: text as typed, comma or point.
        unit: unit it was typed in; "" for the field's own.
        kept: unit that it is kept in, where an entry says so beside it, such as a
            dose's; "" for the field's own.

    Returns:
        {"value", "problems", "ask"}: value None when there are problems; ask is
        None, since only readings have a value before them to be compared with.
    """
    number = parse(typed)
    if number is None:
        return refused([{"field": field, "key": "not_a_number", "limit": None}])
    kept = kept or _own_unit(kind, field)
    if unit and kept and unit != kept:
        number = convert(number, unit, kept)
    return checked(kind, field, number)


def _own_unit(kind: str, field: str) -> str:
    for form in KINDS[kind]["fields"]:
        if form["name"] == field:
            return form["unit"] or ""
    return ""


def checked(kind: str, field: str, number: float) -> "dict[str, Any]":
    """Return a number for a field, or what is wrong with it.

    Args:
        kind: a key of KINDS.
        field: name of a number of its body.
        number: in the field's own unit.

    Returns:
        As `read_field`.
    """
    is_count = any(
        form["name"] == field and form["type"] == "int"
        for form in KINDS[kind]["fields"]
    )
    if is_count and number == int(number):
        number = int(number)
    problems = check_data(kind, {field: number}, {field: True})
    if problems:
        return refused(problems)
    return {"value": number, "problems": [], "ask": None}


def refused(problems: "list[Problem]") -> "dict[str, Any]":
    """Return the answer to what cannot be kept as it was typed.

    Args:
        problems: what is wrong with it.
    """
    return {"value": None, "problems": problems, "ask": None}
