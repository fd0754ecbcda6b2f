"""The check of a hold's thermometer: overdue by the creamery's own interval or not.

It is told before the hold; of one that has begun the record says so, see
`step.steps`. It neither stops nor passes anything.
"""

from ...make.checks import check_due_ms, overdue_check
from .seen import seen

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.matters import Seen
    from server.shapes.core.recipe import RecipeGate
    from server.shapes.core.state import Context


def look(context: "Context", gate: "RecipeGate") -> "Seen | None":
    """Return how the check stands, or None where it is not overdue.

    Args:
        context: Context of the make.
        gate: gate with the "step" that holds.

    Returns:
        Seen that says "overdue".
    """
    if not _is_to_come(context, gate):
        return None
    reason = overdue_check(context, context["now_ms"])
    return None if reason is None else seen("overdue", reason["since_ms"], [reason])


def changes_ms(context: "Context", gate: "RecipeGate") -> "int | None":
    """Return when the check falls due, or None [ms].

    Args:
        context: Context of the make.
        gate: as for `look`.
    """
    if not _is_to_come(context, gate):
        return None
    return check_due_ms(context, context["now_ms"])


def _is_to_come(context: "Context", gate: "RecipeGate") -> bool:
    return context["facts"][gate["step"]]["status"] in ("waiting", "ready")
