"""All makes at once: how each stands, and what is due next across them."""

from .clashes import AHEAD_MS, MOST, clashes
from .due import due_rows, tank_rows

OPEN = ("running", "held")
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
    "task",
)


def board(
    views: "list[dict]",
    last_words: dict,
    now_ms: int,
    ahead: "list[dict]",
    makes: dict,
) -> dict:
    """Return the Board over the Views of all makes.

    Args:
        views: list of View.
        last_words: {make id: instant of its newest event [ms]}.
        now_ms: now [ms].
        ahead: list of Act of the makes that run, see `clashes.acts`.
        makes: {stream id: State}, makes and tanks alike.

    Returns:
        Board as DEVELOPERS.md lays it out: makes that still run first, the
        newest opening first; due sorted by when it must happen; the first
        clashes of the day ahead and how many there are.
    """
    running = [found for found in views if found["make"]["state"] in OPEN]
    due = tank_rows(makes, running, now_ms)
    changes = []
    for found in running:
        due.extend(due_rows(found, makes[found["make"]["id"]], now_ms))
        if found["next_change_ms"] is not None:
            changes.append(found["next_change_ms"])
    # Of all else the View tells when it changes.
    changes.extend(
        row["due_ms"]
        for row in due
        if row["what"] in ("turn", "unload") and row["due_ms"] > now_ms
    )
    together = clashes(ahead, now_ms, now_ms + AHEAD_MS)
    return {
        "now_ms": now_ms,
        "next_change_ms": min(changes) if changes else None,
        "makes": sorted([_summary(found, last_words) for found in views], key=_rank),
        "due": sorted(due, key=_due_rank),
        "clashes": together[:MOST],
        "clash_count": len(together),
    }


def _due_rank(row):
    # Total, since the phone's sort shuffles what is equal.
    about = row["timer"] or row["load"] or row["step"]
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
        "practice": make["practice"],
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
