"""A step that is done again: a decision opens it anew, and its earlier ends are past.

What was done before stays in the record. Which ways of a matter open its step again
is data of the rules of matters.
"""

from . import run
from .opening import recipe_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import Entry, Rules, State


def opened_again(state: "State", rules: "Rules") -> "dict[str, int]":
    """Return since when steps are open again: {step key: instant [ms]}.

    Args:
        state: State of the make.
        rules: {rule id: the rule}.
    """
    recipe, table = recipe_of(state), rules.get("matters")
    told: "dict[str, int]" = {}
    if recipe is None or table is None:
        return told
    for gate in recipe.get("gates", []):
        for entry in run.entries(state, "matter_decided", gate["key"]):
            if _opens(table, gate["watch"], entry["data"]["way"]):
                told[gate["step"]] = entry["t_ms"]
    return told


def ends_of(state: "State", key: str, again: "dict[str, int]") -> "list[Entry]":
    """Return the ends of a step that count, the oldest first.

    Args:
        state: State of the make.
        key: key of the step.
        again: answer of `opened_again`.
    """
    entries = run.entries(state, "step_ended", key)
    if key not in again:
        return entries
    return [entry for entry in entries if entry["t_ms"] > again[key]]


def was_decided_between(state: "State", key: str, from_ms: int, until_ms: int) -> bool:
    """Tell whether a matter of a step was decided in a span: two acts, not one twice.

    Args:
        state: State of the make.
        key: key of the step.
        from_ms: the earlier act [ms].
        until_ms: the later act [ms].
    """
    recipe = recipe_of(state)
    for gate in recipe.get("gates", []) if recipe else []:
        if gate["step"] != key:
            continue
        for entry in run.entries(state, "matter_decided", gate["key"]):
            if from_ms <= entry["t_ms"] <= until_ms:
                return True
    return False


def _opens(table: "dict[str, Any]", watch: str, way: str) -> bool:
    return any(
        told["way"] == way and told.get("opens_step_again", False)
        for row in table["rows"]
        if row["watch"] == watch
        for told in row["ways"]
    )
