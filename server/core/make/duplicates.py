"""The same act recorded on two phones: both kept, the earliest holds.

Two helpers may press the same step while neither has the network. Nothing is
dropped: the later entry stands beside the first until a person says whether it
was the same act or really happened twice.
"""

from ..log import amends, run
from ..log.again import was_decided_between
from .facts import who

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Entry, Event, State
    from server.shapes.core.view import ToJudge


STEP_KINDS = ("step_begun", "step_ended")


def duplicates(state: "State", step: "RecipeStep") -> "list[ToJudge]":
    """Return what two phones recorded of the same act, where nobody has judged it.

    A step begun or ended, and an ingredient added in it. The earliest entry
    holds; the later one is kept and shown beside it. Of an ingredient both
    count until a person says that they are the same.

    Args:
        state: State of the make.
        step: step of the recipe.

    Returns:
        List of {"step", "kind", "first", "later"}; each of the two
        {"id", "at_ms", "by"}.
    """
    step_key = step["key"]
    acts = [(kind, run.entries(state, kind, step_key)) for kind in STEP_KINDS]
    for name in step.get("adds", []):
        acts.append(("ingredient_added", _added(state, name, step_key)))
    unjudged: "list[ToJudge]" = []
    for kind, listed in acts:
        for later in listed[1:]:
            if not _is_twice(state, step_key, listed[0], later):
                continue
            if verdict_on_duplicate(state, later["id"]) is None:
                unjudged.append(
                    {
                        "step": step_key,
                        "kind": kind,
                        "first": who(listed[0]),
                        "later": who(later),
                    }
                )
    return unjudged


def first_of(state: "State", event: "Event") -> "str | None":
    """Return the id of the entry that an event of another phone repeats, or None.

    Args:
        state: State of the make.
        event: an event of it.
    """
    data = event["data"]
    if event["kind"] in STEP_KINDS:
        listed = run.entries(state, event["kind"], data["step"])
    elif event["kind"] == "ingredient_added" and data.get("step"):
        listed = _added(state, data["ingredient"], data["step"])
    else:
        return None
    for entry in listed[1:]:
        step = data.get("step") or ""
        if entry["id"] == event["id"] and _is_twice(state, step, listed[0], entry):
            return listed[0]["id"]
    return None


def _is_twice(state: "State", key: str, first: "Entry", later: "Entry") -> bool:
    if later["device"] == first["device"]:
        return False
    return not was_decided_between(state, key, first["t_ms"], later["t_ms"])


def _added(state: "State", name: str, step_key: str) -> "list[Entry]":
    listed = run.entries(state, "ingredient_added", name)
    return [entry for entry in listed if entry["data"].get("step") == step_key]


def verdict_on_duplicate(state: "State", event_id: str) -> "bool | None":
    """Return whether a person judged a later entry to be the same act.

    Args:
        state: State of the make.
        event_id: id of the later entry.

    Returns:
        True for the same act, False for really twice, None for no word yet; the
        last standing word counts.
    """
    for line in reversed(state["judged"].get(event_id, [])):
        if not amends.is_struck(state, line["id"]):
            return state["events"][line["id"]]["data"]["same"]
    return None
