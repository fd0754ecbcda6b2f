"""The form of an entry that says what the creamery has, without its limits."""

from ..recipe.checks import MAX_KEY
from ..units.quantities import check_number

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import Problem

# What is agreed with the authority, and under which key with whom.
AGREED = {"gap_max_s": "gap_agreed_with"}

MOST_KEYS = 100
LONGEST = 80  # letters of a row of words
BESIDE = ("typed",)  # what stands beside the values in a mapping


def check_entry(data: "dict[str, Any]") -> "list[Problem]":
    """Return what is wrong with the form of an `equipment_set` entry.

    Args:
        data: {"key", "value", "agreed_with"} and what was typed.

    Returns:
        List of {"field", "key", "limit"}; the limits of a key are looked at by
        `sums.equipment.check_limits`, before an entry is recorded.
    """
    key = data["key"]
    if key in BESIDE or key in AGREED.values():
        return [{"field": "key", "key": "unknown", "limit": key}]
    problems = check_plain(key, data["value"])
    if key in AGREED and not problems:
        problems = check_words("agreed_with", data.get("agreed_with") or "")
    return problems


def check_mapping(field: str, equipment: "dict[str, Any]") -> "list[Problem]":
    """Return what is wrong with the form of what an opening freezes.

    Args:
        field: where it stands in the opening.
        equipment: {key: value} and "typed", as received.

    Returns:
        List of {"field", "key", "limit"}.
    """
    if len(equipment) > MOST_KEYS:
        return [{"field": field, "key": "too_many", "limit": MOST_KEYS}]
    problems: "list[Problem]" = []
    for key in sorted(equipment):
        path = field + "." + key
        if len(key) > MAX_KEY:
            problems.append({"field": field, "key": "too_long", "limit": MAX_KEY})
        elif key == "typed":
            problems.extend(_check_typed(path, equipment[key]))
        elif isinstance(equipment[key], str):
            # Words that say nothing are as good as left out, and so is null.
            problems.extend(_check_told(path, equipment[key]))
        elif equipment[key] is not None:
            problems.extend(check_plain(path, equipment[key]))
    return problems


def _check_typed(field: str, typed: "Any") -> "list[Problem]":
    if not isinstance(typed, dict):
        return [{"field": field, "key": "not_a_mapping", "limit": None}]
    if len(typed) > MOST_KEYS:
        return [{"field": field, "key": "too_many", "limit": MOST_KEYS}]
    problems: "list[Problem]" = []
    for key in sorted(typed):
        pair = typed[key]
        if not isinstance(pair, list) or len(pair) != 2:
            path = field + "." + key
            problems.append({"field": path, "key": "not_a_list", "limit": None})
        else:
            for told in pair:
                problems.extend(_check_told(field + "." + key, told))
    return problems


def _check_told(field: str, told: object) -> "list[Problem]":
    if not isinstance(told, str):
        return [{"field": field, "key": "not_text", "limit": None}]
    if len(told) > LONGEST:
        return [{"field": field, "key": "too_long", "limit": LONGEST}]
    return []


def check_plain(key: str, value: "Any") -> "list[Problem]":
    """Return what makes a value none at all: neither words, number nor yes or no.

    Args:
        key: field to report.
        value: the value as received.
    """
    if isinstance(value, str):
        return check_words(key, value)
    if value is True or value is False:
        return []
    return check_number(key, value, None, None)


def check_words(field: str, value: "Any") -> "list[Problem]":
    """Return what is wrong with words that must say something.

    Args:
        field: name to report.
        value: the words as received.
    """
    if not isinstance(value, str):
        return [{"field": field, "key": "not_text", "limit": None}]
    if not value.strip():
        return [{"field": field, "key": "missing", "limit": None}]
    if len(value) > LONGEST:
        return [{"field": field, "key": "too_long", "limit": LONGEST}]
    return []
