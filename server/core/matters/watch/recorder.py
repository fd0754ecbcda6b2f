"""The chart's recorder beside the indicating thermometer: it never reads above it.

The newest pair of a step counts: who has set the recorder reads both again.
"""

from ...heat.hold.recorder import reads_above
from ...heat.hold.steps import INDICATOR, RECORDER
from ...make.facts import readings_in
from .seen import WAIT, seen

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.matters import Seen
    from server.shapes.core.recipe import RecipeGate
    from server.shapes.core.state import Context


def look(context: "Context", gate: "RecipeGate") -> "Seen | None":
    """Return how the recorder stands, or None where it does not read above.

    Args:
        context: Context of the make.
        gate: gate with the "step" in which both are read.

    Returns:
        Seen that says "above" or, while the two are not read, WAIT; a step that is
        over without them has a gap in its record, which is told elsewhere.
    """
    fact = context["facts"][gate["step"]]
    pair = [readings_in(context["state"], fact, name) for name in (INDICATOR, RECORDER)]
    if not pair[0] or not pair[1]:
        is_over = fact["status"] in ("ended", "skipped")
        return None if is_over else seen(WAIT)
    indicator, recorder = pair[0][-1], pair[1][-1]
    over = reads_above(indicator, recorder)
    if over is None:
        return None
    ids = [indicator["id"], recorder["id"]]
    return seen("above", max(indicator["t_ms"], recorder["t_ms"]), [over], ids)
