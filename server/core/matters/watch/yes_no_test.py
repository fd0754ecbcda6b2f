"""A test of the milk that says yes or no: missing, or positive.

A positive result outlasts any negative one that is read after it: a second sample
does not make the first untrue. It goes only where it is struck, or a maker says that
the confirmed test was negative.
"""

from ...log.readings import every
from ...recipe.parts import step_of
from .seen import WAIT, seen

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.matters import Seen
    from server.shapes.core.recipe import RecipeGate
    from server.shapes.core.state import Context


def look(context: "Context", gate: "RecipeGate") -> "Seen | None":
    """Return how a test stands, or None where it is negative.

    Args:
        context: Context of the make.
        gate: gate with the "quantity" of the test and the "step" that asks for it.

    Returns:
        Seen that says "positive", "missing" once the milk has left the step, or
        WAIT.
    """
    entries = every(context["state"], gate["quantity"])
    found = [entry for entry in entries if entry["data"]["value"] == "positive"]
    if found:
        ids = [entry["id"] for entry in found]
        return seen("positive", found[-1]["t_ms"], [], ids)
    if entries:
        return None
    moved_ms = _moved_ms(context, gate["step"])
    return seen(WAIT) if moved_ms is None else seen("missing", moved_ms)


def _moved_ms(context: "Context", key: str) -> "int | None":
    """Return when the milk left a step: it was over, or a later one began [ms]."""
    fact = context["facts"][key]
    instants = [fact["ended_ms"], fact["skipped_ms"]]
    recipe, is_later = context["recipe"], False
    for step in recipe["steps"]:
        if is_later:
            instants.append(context["facts"][step["key"]]["begun_ms"])
        is_later = is_later or step is step_of(recipe, key)
    known = [ms for ms in instants if ms is not None]
    return min(known) if known else None
