"""What every answer about a make's steps starts from, at one instant."""

from ..figures import plan as days
from ..figures.context import of_make
from ..log.opening import ending, opening
from ..log.standing import holds
from ..make import plan
from ..make.timers import timers

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

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
    ordered = plan.in_order(context["recipe"]["steps"])
    start_ms, lasts = opened_entry["t_ms"], context["lasts"]
    context.update(
        {
            "over": over is not None,
            "ordered": ordered,
            "planned": days.planned(ordered, lasts, start_ms),
            "expected": days.expected(
                ordered, context["facts"], lasts, start_ms, now_ms
            ),
            "timers": timers(state),
            "holds": holds(state),
        }
    )
    return context
