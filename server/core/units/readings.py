"""From what was typed on the pad to a value, or to what is wrong with it.

The text as typed is kept in the event beside the value, so that a legal reading
can always be judged in the unit the thermometer shows.
"""

from .quantities import (
    QUANTITIES,
    check_number,
    check_value,
    is_jump,
    needs_second_look,
)
from .table import READ_AS, convert, typed_in

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Sequence
    from typing import Any


# A share is kept as 0..1 and typed in percent, of lactic acid too.
PERCENT = "%"


# A temperature this far from what is wanted may still be one that drifts.
OFF_K = 5.0
OTHER = {"C": "F", "F": "C"}


def read_typed(
    quantity: str,
    typed: str,
    typed_unit: str,
    last: "float | None" = None,
    wanted: "Sequence[tuple[float, float]]" = (),
) -> "dict[str, Any]":
    """Return the value of a typed text in the quantity's own unit.

    Comma and point are the same. Nothing is rounded, clamped or guessed: a
    second separator, a letter or an empty text is a problem.

    Args:
        quantity: key of QUANTITIES.
        typed: text as typed.
        typed_unit: unit it was typed in; "" for the quantity's own.
        last: the reading before, in the quantity's own unit, or None.
        wanted: bands (low, high) that are wanted of it now, in its own unit.

    Returns:
        {"value", "problems", "ask"}: value None when there are problems; ask
        is "other_unit" where the number would fit in that one, the soft limit it
        lies outside of, "jump" with the last value where it lies far from that,
        or None.
    """
    entry = QUANTITIES.get(quantity)
    if entry is None:
        return _wrong("quantity", "unknown", quantity)
    if entry["type"] == "choice":
        problems = check_value(quantity, typed)
        return {"value": None if problems else typed, "problems": problems, "ask": None}
    number = parse(typed)
    if number is None:
        return _wrong("value", "not_a_number", typed)
    problems = check_number("value", number, None, None)
    if problems:
        return {"value": None, "problems": problems, "ask": None}
    unit = typed_unit or entry["unit"]
    if unit == PERCENT:
        unit = READ_AS.get(entry["unit"], unit)
    if unit != entry["unit"] and unit not in typed_in(entry["unit"]):
        return _wrong("typed_unit", "unknown_unit", typed_unit)
    try:
        number = convert(number, unit, entry["unit"])
    except ValueError:  # colder than any thing can be
        return _wrong("value", "below", entry["low"])
    problems = check_value(quantity, number)
    if problems:
        return {"value": None, "problems": problems, "ask": None}
    ask = _fits_other_unit(parse(typed), unit, entry["unit"], wanted)
    if ask is None:
        ask = needs_second_look(quantity, number)
    if ask is None and last is not None and is_jump(quantity, number, last):
        ask = {"key": "jump", "limit": last}
    return {"value": number, "problems": [], "ask": ask}


def _fits_other_unit(
    number: "Any", unit: str, kept: str, wanted: "Sequence[tuple[float, float]]"
) -> "dict[str, Any] | None":
    """Ask where a temperature is far from what is wanted and would fit in the other."""
    other = OTHER.get(unit)
    if kept != "C" or other is None or not wanted:
        return None
    as_said = number if unit == "C" else convert(number, unit, "C")
    as_other = number if other == "C" else convert(number, other, "C")
    if _is_near(as_said, wanted) or not _is_near(as_other, wanted):
        return None
    return {"key": "other_unit", "limit": other}


def _is_near(value: float, wanted: "Sequence[tuple[float, float]]") -> bool:
    return any(low - OFF_K <= value <= high + OFF_K for low, high in wanted)


def _wrong(field: str, key: str, limit: str) -> "dict[str, Any]":
    problem = {"field": field, "key": key, "limit": limit}
    return {"value": None, "problems": [problem], "ask": None}


def parse(typed: str) -> "float | None":
    """Return the number a text stands for, or None.

    >>> parse("6,45")
    6.45
    """
    text = typed.strip().replace(",", ".")
    digits = text[1:] if text[:1] in ("-", "+") else text
    if digits.count(".") > 1:
        return None
    bare = digits.replace(".", "")
    if not bare:
        return None
    for letter in bare:
        if letter not in "0123456789":
            return None
    return float(text)
