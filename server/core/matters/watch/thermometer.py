"""The indicating thermometer beside a check thermometer: out by more than its error.

Both are read in one step, and compared in the unit that the rule prints its error
in. Who has set or changed the thermometer reads both again.
"""

from ...heat.hold.rule import hold_rule
from ...heat.hold.steps import INDICATOR
from ...heat.thermometer import as_typed
from ...make.checks import checks_in
from ...make.facts import readings_in
from .seen import seen

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.matters import Seen
    from server.shapes.core.recipe import RecipeGate
    from server.shapes.core.state import Context, Entry


F_IN_K = 1.8
# A difference of two readings of one decimal is not exact in doubles.
TINY = 1e-9


def look(context: "Context", gate: "RecipeGate") -> "Seen | None":
    """Return how the thermometer stands, or None where it is not known to be out.

    Args:
        context: Context of the make.
        gate: gate with the "step" in which both are read; its rule is that of the
            hold, unless it names one.

    Returns:
        Seen that says "out_of_check"; None, too, where no check was read: how often
        one is wanted is agreed with the authority.
    """
    fact = context["facts"][gate["step"]]
    state = context["state"]
    pair = [readings_in(state, fact, INDICATOR), checks_in(state, fact)]
    most_f = _most_f(context, gate)
    if most_f is None or not pair[0] or not pair[1]:
        return None
    indicator, check = pair[0][-1], pair[1][-1]
    off_f = _off_f(indicator, check)
    if abs(off_f) <= most_f + TINY:
        return None
    off_k, most_k = abs(off_f) / F_IN_K, most_f / F_IN_K
    reason = {"key": "thermometer_off", "value": off_k, "limit": most_k}
    since_ms = max(indicator["t_ms"], check["t_ms"])
    return seen("out_of_check", since_ms, [reason], [indicator["id"], check["id"]])


def _most_f(context: "Context", gate: "RecipeGate") -> "float | None":
    """Return the error that the rule allows an indicating thermometer [°F]."""
    step: "Any" = {"heat_treatment": True, "rule": gate.get("rule")}
    rule = hold_rule(step, context["rules"])
    allowed = (rule or {}).get("thermometers", {}).get("indicating_error", {}).get("F")
    if allowed is None or allowed["status"] == "memory":
        return None
    value: float = allowed["value"]
    return value


def _off_f(indicator: "Entry", check: "Entry") -> float:
    """Return by how much the indicator reads above the check thermometer [°F]."""
    typed: "list[Any]" = [as_typed(entry, "F") for entry in (indicator, check)]
    if None not in typed:
        off_f: float = typed[0] - typed[1]
        return off_f
    off_k: float = indicator["data"]["value"] - check["data"]["value"]
    return off_k * F_IN_K
