"""Ask one sum as a screen would; typed texts in, the answer's values out."""

import json
from pathlib import Path

RULES = {
    rule["id"]: rule
    for rule in (
        json.loads(path.read_text("utf-8"))
        for path in sorted(
            (Path(__file__).resolve().parents[3] / "server" / "rules").glob("*.json")
        )
    )
}


def answer(core, key, given, known=None, rules=()):
    """Return the Answer; plain numbers and words stand for typed values."""
    asked = {
        name: value if isinstance(value, dict) else {"value": value}
        for name, value in given.items()
    }
    chosen = {name: RULES[name] for name in rules}
    return core("sums.catalogue", "work_out", key, asked, known or {}, chosen)


def values(core, key, given, rules=()):
    """Return {(name, of): value row} of an answer that has no problem."""
    found = answer(core, key, given, rules=rules)
    assert found["problems"] == []
    assert found["missing"] == []
    return {(row["name"], of_words(row)): row for row in found["values"]}


def of_words(row):
    """Return what a value is of in a word: "wash_2", "press_1.300", "small"."""
    if row["nth"] is not None:
        return f"{row['of']}_{row['nth']}"
    if row["across_m"] is not None:
        return f"{row['of']}.{row['across_m'] * 1000:.0f}"
    return row["of"]


def amount(core, key, given, name, of=None, rules=()):
    return values(core, key, given, rules)[(name, of)]["value"]


def band(row):
    return (row["low"], row["value"], row["high"])


def table(names, *rows):
    return {"rows": [dict(zip(names, row, strict=True)) for row in rows]}


def typed(text, unit=None):
    return {"typed": text} if unit is None else {"typed": text, "unit": unit}
