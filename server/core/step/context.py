"""What every answer about a make's steps starts from, at one instant."""

from ..figures import plan as days
from ..figures.context import of_make
from ..log.opening import ending, opening
from ..log.standing import holds
from ..log.touches import keep, kept
from ..make import plan
from ..make.timers import stopped_at, timers
from ..matters.matters import matters

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Desk, Rules, State, ViewContext


def context_of(
    state: "State",
    now_ms: int,
    rules: "Rules | None" = None,
    desk: "Desk | None" = None,
) -> "ViewContext | None":
    """Return what all answers about a make start from, or None before its opening.

    Args:
        state: State of the make.
        now_ms: now, by the server's clock [ms].
        rules: {rule id: the rule}.
        desk: Desk, for what other makes teach; None where this make stands alone.

    Returns:
        The context that `steps.step_view` takes.
    """
    opened_entry = opening(state)
    if opened_entry is None:
        return None
    over = ending(state)
    if over is not None:  # a make that is over stands as it stood then
        now_ms = min(now_ms, over["t_ms"])
    context: "Any" = of_make(state, opened_entry, now_ms, rules, desk)
    ordered = _in_order(state, context["recipe"]["steps"])
    start_ms, lasts = opened_entry["t_ms"], context["lasts"]
    context.update(
        {
            "over": over is not None,
            "ordered": ordered,
            "planned": days.planned(ordered, lasts, start_ms),
            "expected": days.expected(
                ordered, context["facts"], lasts, start_ms, now_ms
            ),
            "timers": timers(state)
            if over is None
            else stopped_at(state, over["t_ms"]),
            "holds": holds(state),
            "matters": matters(context),
        }
    )
    return context


def _in_order(state: "State", steps: "list[RecipeStep]") -> "list[RecipeStep]":
    """Return the steps of a make in the order of `plan.in_order`, kept with it."""
    # A choice that is made at a step leaves the others' steps out.
    key = "/".join([step["key"] for step in steps])
    ordered: "list[RecipeStep] | None" = kept(state, "ordered", key)
    if ordered is None:
        ordered = plan.in_order(steps)
        keep(state, "ordered", key, ordered, [])
    return ordered
