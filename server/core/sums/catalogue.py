"""All sums, gathered: their order, their layout as JSON, and one by its key."""

from . import (
    acid,
    brine,
    composition,
    heat,
    heat_treatment,
    ingredients,
    milk,
    press,
    store,
    trends,
    wash,
    yields,
)
from .answer import answer

# In the order of a make.
TOPICS = (
    milk,
    heat,
    heat_treatment,
    ingredients,
    acid,
    wash,
    press,
    yields,
    brine,
    store,
    composition,
    trends,
)


def rows() -> "list[dict]":
    """Return every sum with its work, in the order of a make."""
    found: "list[dict]" = []
    for topic in TOPICS:
        found.extend(topic.ROWS)
    return found


def find(key: str) -> "dict | None":
    """Return one sum, or None.

    Args:
        key: its key.
    """
    for topic in TOPICS:
        for row in topic.ROWS:
            if row["key"] == key:
                return row
    return None


def layout() -> "list[dict]":
    """Return every sum as JSON types: what to ask for, what it gives.

    Returns:
        List of {"key", "topic", "inputs", "outputs"} in the order of a make;
        inputs that nobody is asked for are left out.
    """
    found = []
    for row in rows():
        found.append(
            {
                "key": row["key"],
                "topic": row["topic"],
                "inputs": [item for item in row["inputs"] if not item["hidden"]],
                "outputs": row["outputs"],
            }
        )
    return found


def work_out(key: str, given: dict, known: dict, rules: dict) -> dict:
    """Return the Answer to one sum, see `answer.answer`.

    Args:
        key: key of the sum.
        given: what was typed.
        known: what a make knows.
        rules: {rule id: the rule}.
    """
    row = find(key)
    if row is None:
        return _not_answered(key, "key", "unknown_sum", None, "key %r is no sum" % key)
    if not isinstance(given, dict):
        text = "given %r is not a mapping" % (given,)
        return _not_answered(key, "given", "not_a_mapping", None, text)
    unknown = [name for name in given if not _has(row, name)]
    if unknown:
        name = sorted(unknown)[0]
        text = "%s is not asked for by %s" % (name, key)
        return _not_answered(key, name, "unknown_input", None, text)
    return answer(row, given, known, rules)


def _has(row, name):
    return any(item["name"] == name and not item["hidden"] for item in row["inputs"])


def _not_answered(key, field, word, limit, text):
    return {
        "key": key,
        "values": [],
        "rests_on": [],
        "status": None,
        "notes": [],
        "problems": [
            {"field": field, "key": word, "limit": limit, "value": None, "text": text}
        ],
        "ask": [],
        "missing": [],
    }
