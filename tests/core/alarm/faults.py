"""What is told of each fault of the twin: as which matter, and in time or not."""

from tests.core.alarm import rings
from tests.core.alarm.mendable import MENDABLE

# What only a rule's own hold can show is played on the route that has it.
BY_RULE = ("recorder_above_indicator",)
MIN_MS = 60_000.0


def outcome(recipe, seed, name):
    """Play a make with a fault, beside the same make without it.

    Args:
        recipe: a sound recipe.
        seed: of the make.
        name: key of the twin's faults.

    Returns:
        {"told": the first row that is the right matter or None, "at_min": when,
        "until_min": until when it can be mended, both from the opening, "in_time",
        "again": right ones told a second time, "times": how many right ones,
        "others": what rang of other matters, "why": why until then}.
    """
    treatment = "pasteurised" if name in BY_RULE else None
    made = rings.played(recipe, seed, [name], treatment)
    known = _usual(recipe, seed, treatment)
    rows = [
        row
        for row in rings.told(made)
        if row["kind"] not in rings.SET
        and (row["what"], row["step"], row["quantity"]) not in known
    ]
    row = MENDABLE[name]
    right = [one for one in rows if _is_right(one, row["matters"])]
    until_ms = _until_ms(made, row)
    first = min(right, key=lambda one: one["at_ms"]) if right else None
    return {
        "told": first,
        "at_min": first and (first["at_ms"] - rings.START_MS) / MIN_MS,
        "until_min": until_ms and (until_ms - rings.START_MS) / MIN_MS,
        "in_time": first is not None
        and (until_ms is None or first["at_ms"] <= until_ms),
        "again": rings.twice(right),
        "times": len(right),
        "others": [one for one in rows if one["rings"] and one not in right],
        "why": row["why"],
    }


_TOLD = {}


def _usual(recipe, seed, treatment):
    """Return what is told of the make without a fault, played once for all faults."""
    key = (id(recipe), seed, treatment)
    if key not in _TOLD:
        rows = rings.told(rings.played(recipe, seed, (), treatment))
        _TOLD[key] = {(row["what"], row["step"], row["quantity"]) for row in rows}
    return _TOLD[key]


def tags(row):
    """Return the words that a told row answers to."""
    what, found = row["what"], set()
    if row["quantity"]:
        found.add(row["quantity"])
    if what.startswith("acid"):
        found.add("acid")
    if row["id"].startswith("matter/"):
        found.add(row["id"].split("/", 1)[1])
    by_word = {"step_late": "late", "step_early": "early", "floc_window": "floc"}
    word = by_word.get(what, what.split("_")[0])
    return found | {word, f"{word}/{row['step']}", what}


def _is_right(row, matters):
    return any(tag.startswith(word) for tag in tags(row) for word in matters)


def _until_ms(made, row):
    kind = {"begin": "step_begun", "end": "step_ended"}[row["moment"]]
    for event, course in zip(made["events"], made["course"], strict=True):
        if event["kind"] == kind and event["data"]["step"] == row["until"]:
            return course["at_ms"] + 1000.0 * row["add_s"]
    return None
