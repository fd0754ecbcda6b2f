"""A hold: whether its readings meet what the milk's treatment asks of them.

Until the hold is over nothing is wrong; then the verdict is the answer. A hold that
was skipped, or is judged by no rule at hand, is not assessed.
"""

from ...heat.hold.verdict import hold_verdict
from ...log.kinds.columns import EQUIPMENT, FACTS, HEAT, MILK
from ...log.touches import keep, kept, of_step, topic
from ...recipe.parts import step_of
from .seen import WAIT, seen

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.matters import Seen
    from server.shapes.core.recipe import RecipeGate
    from server.shapes.core.state import Context


SAYS = {
    "reads_as_pasteurised": None,
    "meets_own_figures": None,
    "heat_treated_only": "not_met",
    "misses_own_figures": "not_met",
    "not_assessed": "not_assessed",
}
PHOSPHATASE = ("phosphatase_test", "milk_phosphatase_mu_l", "cheese_phosphatase_ug")


def look(context: "Context", gate: "RecipeGate") -> "Seen | None":
    """Return how a hold stands, or None where its readings meet what is asked.

    Args:
        context: Context of the make.
        gate: gate with the "step" that holds.

    Returns:
        Seen that says "not_met", "not_assessed" or WAIT.
    """
    fact = context["facts"][gate["step"]]
    if fact["ended_ms"] is None:
        if fact["status"] != "skipped":
            return seen(WAIT)
        return seen("not_assessed", fact["skipped_ms"], [{"key": "hold_skipped"}])
    state, key = context["state"], gate["key"]
    held: "list[Seen | None] | None" = kept(state, "matters", key)
    if held is None:
        # The answer in a list: None is one, too.
        held = [_of_verdict(context, gate, fact["ended_ms"])]
        keep(state, "matters", key, held, _words(gate["step"]))
    return held[0]


def _of_verdict(context: "Context", gate: "RecipeGate", ended_ms: int) -> "Seen | None":
    step: "Any" = step_of(context["recipe"], gate["step"])
    fact = context["facts"][gate["step"]]
    told = hold_verdict(context["state"], step, fact, context["rules"])
    if told is None:
        return seen("not_assessed", ended_ms, [{"key": "hold_rule_unknown"}])
    says = SAYS.get(told["class"], "not_assessed")
    return None if says is None else seen(says, ended_ms, told["reasons"])


def _words(key: str) -> "list[str]":
    words = of_step(key) + [FACTS, HEAT, MILK, EQUIPMENT]
    return words + [topic("reading_taken", name) for name in PHOSPHATASE]
