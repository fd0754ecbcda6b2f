"""The same act recorded on two phones: both kept, the earliest holds.

Two helpers may press the same step while neither has the network. Nothing is
dropped: the later entry stands beside the first until a person says whether it
was the same act or really happened twice.
"""

from . import run
from .facts import who

DUPLICATE_KINDS = ("step_begun", "step_ended")


def duplicates(state: dict, step_key: str) -> "list[dict]":
    """Return the same step begun or ended on two phones, where nobody has judged it.

    The earliest entry holds; the later one is kept and shown beside it.

    Args:
        state: State of the make.
        step_key: key of the step.

    Returns:
        List of {"step", "kind", "first", "later"}; each of the two
        {"id", "at_ms", "by"}.
    """
    found = []
    for kind in DUPLICATE_KINDS:
        listed = run.entries(state, kind, step_key)
        for later in listed[1:]:
            if later["device"] == listed[0]["device"]:
                continue
            if verdict_on_duplicate(state, later["id"]) is None:
                found.append(
                    {
                        "step": step_key,
                        "kind": kind,
                        "first": who(listed[0]),
                        "later": who(later),
                    }
                )
    return found


def verdict_on_duplicate(state: dict, event_id: str) -> "bool | None":
    """Return whether a person judged a later entry to be the same act.

    Args:
        state: State of the make.
        event_id: id of the later entry.

    Returns:
        True for the same act, False for really twice, None for no word yet; the
        last standing word counts.
    """
    for line in reversed(state["judged"].get(event_id, [])):
        if not run.is_struck(state, line["id"]):
            return state["events"][line["id"]]["data"]["same"]
    return None
