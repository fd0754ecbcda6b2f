"""All makes at once: how each stands, and what is due next across them."""

from .view import next_thing_ms

FOCUS_FIELDS = (
    "key",
    "title",
    "status",
    "due_ms",
    "timing",
    "main",
    "button",
    "place",
    "round",
    "rounds",
)


def board(views: "list[dict]", last_words: dict, now_ms: int) -> dict:
    """Return the Board over the Views of all makes.

    Args:
        views: list of View.
        last_words: {make id: instant of its newest event [ms]}.
        now_ms: now [ms].

    Returns:
        Board as DEVELOPERS.md lays it out: makes that still run first, the
        newest opening first; due sorted by when it must happen.
    """
    makes = [_summary(found, last_words) for found in views]
    due = []
    changes = []
    for found in views:
        if found["make"]["state"] in ("running", "held"):
            due.extend(_due(found, now_ms))
            if found["next_change_ms"] is not None:
                changes.append(found["next_change_ms"])
    return {
        "now_ms": now_ms,
        "next_change_ms": min(changes) if changes else None,
        "makes": sorted(makes, key=_rank),
        "due": sorted(due, key=_due_rank),
    }


def _due_rank(row):
    # Total, since the phone's sort shuffles what is equal.
    about = row["timer"] or row["step"]
    return (row["due_ms"], row["make"], row["what"], about, row["quantity"] or "")


def _rank(make):
    over = make["state"] in ("closed", "abandoned")
    return (over, -make["opened_ms"], make["id"])


def _summary(found, last_words):
    make = found["make"]
    focus = None
    for step in found["steps"]:
        if step["key"] == found["focus"]:
            focus = {name: step[name] for name in FOCUS_FIELDS}
    running = [
        {name: step[name] for name in FOCUS_FIELDS}
        for step in found["steps"]
        if step["status"] == "running"
    ]
    return {
        "id": make["id"],
        "name": make["name"],
        "batch": make["batch"],
        "state": make["state"],
        "vat": make["vat"],
        "opened_ms": make["opened_ms"],
        "recipe_title": make["recipe_title"],
        "focus": focus,
        "running": running,
        "alerts": found["alerts"],
        "day": found["day"],
        "whole": found["whole"],
        "last_word_ms": last_words.get(make["id"]),
    }


def _due(found, now_ms):
    rows = []
    for step in found["steps"]:
        if step["status"] == "ready":
            rows.append(_row(found, step, "step_begin", now_ms, now_ms, None))
        if step["status"] != "running":
            continue
        if step["due_ms"] is not None:
            rows.append(_row(found, step, "step_end", step["due_ms"], now_ms, None))
        elif step["button"]["act"] == "end":
            wants_ms = next_thing_ms(step, now_ms)
            rows.append(_row(found, step, "step_end", wants_ms, now_ms, None))
        for quantity, due_ms in _readings_due(step):
            rows.append(_row(found, step, "reading", due_ms, now_ms, quantity))
    for timer in found["timers"]:
        if timer["stopped_ms"] is None:
            row = _row(found, None, "timer", timer["due_ms"], now_ms, None)
            row["label"] = timer["label"]
            row["timer"] = timer["id"]
            rows.append(row)
    return rows


def _readings_due(step):
    """Return (quantity, instant) of what must be read, each quantity once."""
    due: "dict[str, int]" = {}
    for reading in step["readings"]:
        if reading["due_ms"] is None or not (reading["required"] or reading["every_s"]):
            continue
        quantity = reading["quantity"]
        due[quantity] = min(reading["due_ms"], due.get(quantity, reading["due_ms"]))
    return sorted(due.items())


def _row(found, step, what, due_ms, now_ms, quantity):
    late = step is not None and step["timing"]["state"] == "late"
    level = "later"
    if due_ms <= now_ms:
        level = "check" if late else "due"
    return {
        "make": found["make"]["id"],
        "make_name": found["make"]["name"],
        "step": None if step is None else step["key"],
        "title": {"en": ""} if step is None else step["title"],
        "round": None if step is None else step["round"],
        "rounds": None if step is None else step["rounds"],
        "what": what,
        "timer": None,
        "label": None,
        "quantity": quantity,
        "due_ms": due_ms,
        "level": level,
    }
