"""What every answer about a make starts from: its facts, and its figures as asked."""

from ..log.opening import recipe_of
from ..make import plan
from ..make.facts import facts
from . import due
from .figure import figure

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import Context, Desk, Entry, Rules, State


def of_make(
    state: "State",
    opened: "Entry",
    now_ms: int,
    rules: "Rules | None" = None,
    desk: "Desk | None" = None,
) -> "Context":
    """Return the Context of a make at an instant.

    Args:
        state: State of the make.
        opened: entry of its opening.
        now_ms: now, by the server's clock [ms].
        rules: {rule id: the rule}, or None.
        desk: Desk, for what other makes teach; None where this make stands alone.

    Returns:
        {"state", "desk", "recipe", "opened", "facts", "lasts", "milk", "rules",
        "now_ms"}, and for `figure` alone "figures", "asking", "cut", "round",
        "nested" and "scenes".
    """
    recipe: "Any" = recipe_of(state)
    rules = {} if rules is None else rules
    context: "Any" = {
        "state": state,
        "desk": _alone(state) if desk is None else desk,
        "recipe": recipe,
        "opened": opened["data"],
        "facts": facts(state, recipe["steps"], recipe.get("figures", {}), rules),
        "milk": plan.milk_in(state, opened["data"]),
        "rules": rules,
        "now_ms": now_ms,
        "figures": {},
        "asking": [],
        "cut": [],
        "round": [],
        "nested": [],
        "scenes": {},
    }
    # The look-ups of `known` lie below figures, so they are handed the way to ask.
    context["figure"] = lambda step, name: figure(context, step, name)
    context["lasts"] = due.all_lasts(context)
    context["facts"] = due.with_due(context, context["facts"], context["lasts"])
    return context


def _alone(state: "State") -> "Desk":
    return {"makes": {state["make"]: state}, "views": {}, "last_words": {}}
