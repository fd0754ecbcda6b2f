"""The chart of a hold beside the step in which it is marked."""

from ...heat.hold.chart import chart_fields
from ...heat.hold.clock import hold_until_ms
from ...heat.hold.recorder import reads_above
from ...heat.hold.rule import hold_rule
from ...heat.hold.steps import INDICATOR, RECORDER, hold_steps
from ...make.facts import last_reading

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.heat import ChartBeside
    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Fact, ViewContext


def chart_beside(
    context: "ViewContext", step: "RecipeStep", fact: "Fact"
) -> "ChartBeside":
    """Return what is known for the chart that a step marks.

    Args:
        context: as for `steps.step_view`.
        step: step of the recipe.
        fact: its Fact.

    Returns:
        {"fields": answer of `chart_fields`, "recorder": the reason where it reads
        above the indicator, else None}.
    """
    told: "ChartBeside" = {"fields": [], "recorder": None}
    state, rules = context["state"], context["rules"]
    for hold in hold_steps(context["recipe"]):
        rule, of_hold = hold_rule(hold, rules), context["facts"][hold["key"]]
        begun_ms = of_hold["begun_ms"]
        if rule is not None and begun_ms is not None:
            until_ms = hold_until_ms(state, hold, begun_ms, of_hold["ended_ms"], rules)
            told["fields"] = chart_fields(state, of_hold, rule, until_ms)
    indicator = last_reading(context["state"], fact, INDICATOR)
    recorder = last_reading(context["state"], fact, RECORDER)
    if indicator is not None and recorder is not None:
        told["recorder"] = reads_above(indicator, recorder)
    return told
