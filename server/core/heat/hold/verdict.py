"""The verdict on a hold: what its readings meet, and what that means for the cheese.

The chart of the plant is the record that counts. What is kept here tells the fields
that the rule asks for as far as they are entered here.
"""

from ...log.equipment import in_effect
from ...log.opening import opening
from ...units.notes import with_units
from ..milk import hold_product, phosphatase
from .clock import hold_start_ms, hold_until_ms
from .own import OWN_HOLD
from .readings import hold_readings
from .rule import gap_of, hold_rule, with_gap

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.heat import Verdict
    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Fact, Rules, State


# Own figures that are met make nothing pasteurised, so they have words of their own.
OWN_CLASS = {
    "reads_as_pasteurised": "meets_own_figures",
    "heat_treated_only": "misses_own_figures",
}


def hold_verdict(
    state: "State", step: "RecipeStep", fact: "Fact", rules: "Rules"
) -> "Verdict | None":
    """Return what the readings of a hold meet, as far as it has gone.

    Args:
        state: State of the make.
        step: step of the recipe.
        fact: its Fact.
        rules: {rule id: the rule}.

    Returns:
        As `verdict`, with "start_ms" the clock's start, [ms], "gap" as `gap_of`
        tells it and "chart" as `chart_fields` does; the class of a hold by own
        figures is one of OWN_CLASS or "not_assessed". None for any other step,
        before it began, or without its rule.
    """
    rule = hold_rule(step, rules)
    opened = opening(state)
    if rule is None or fact["begun_ms"] is None or opened is None:
        return None
    # Loaded when a hold is there to judge: the app starts without it.
    from .chart import chart_fields
    from .recorder import beside_chart

    until_ms = hold_until_ms(state, step, fact["begun_ms"], fact["ended_ms"], rules)
    hold = hold_readings(state, fact["begun_ms"], until_ms)
    product = hold_product(state)
    is_own = rule["id"] == OWN_HOLD
    # Neither the test nor the law's longer hold is about the maker's own figures.
    product["phosphatase"] = None if is_own else phosphatase(state, rule)
    if is_own:
        product["extra_hold_s"] = 0
    fields = chart_fields(state, fact, rule, until_ms)
    chart = {each["field"]: each["value"] is not None for each in fields}
    gap = gap_of(rule, in_effect(state))
    told: "Any" = verdict(
        with_gap(rule, gap["gap_s"]),
        hold["rows"],
        hold["unit"],
        product,
        chart,
        fact["ended_ms"] is not None,
    )
    told["start_ms"] = hold_start_ms(
        state, step, fact["begun_ms"], fact["ended_ms"], rules
    )
    told["gap"] = gap
    told["chart"] = fields
    told["warnings"].extend(beside_chart(state, fact))
    if is_own:
        told["class"] = OWN_CLASS.get(told["class"], told["class"])
        told["meaning"] = "handle_as_unpasteurised"
    return told


def verdict(
    rule: "dict[str, Any]",
    readings: "list[dict[str, Any]]",
    unit: str,
    product: "dict[str, Any]",
    chart: "dict[str, Any]",
    is_over: bool,
) -> "dict[str, Any]":
    """Return what readings of one batch meet, with what it means for the cheese.

    Args:
        rule: a heat treatment rule.
        readings: list of {"at_ms", "temp", "air_temp", "recorder_temp"}.
        unit: "F" or "C", what the thermometer reads.
        product: as `pasteurisation.heat_verdict` takes it.
        chart: {chart field: whether it is noted}.
        is_over: whether the hold has ended; one that still runs may yet meet the
            rule, so it is not assessed rather than not met.

    Returns:
        {"rule", "unit", "class", "reasons", "warnings", "hold", "if_not_met",
        "meaning"}; the meaning is "counts_as_pasteurised",
        "handle_as_unpasteurised" or "decide_before_use".
    """
    # Loaded when a hold is there to judge: the app starts without it.
    from ...formulas.heat.pasteurisation import heat_verdict

    judged = heat_verdict(readings, unit, product, chart, rule)
    if not is_over and judged["class"] == "heat_treated_only":
        judged["class"] = "not_assessed"
        judged["reasons"] = [{"key": "hold_not_over"}] + judged["reasons"]
    return {
        "rule": rule["id"],
        "unit": unit,
        "class": judged["class"],
        "reasons": [with_units(reason, unit) for reason in judged["reasons"]],
        "warnings": [with_units(warning, unit) for warning in judged["warnings"]],
        "hold": judged["hold"],
        "if_not_met": judged["if_not_met"],
        "meaning": {
            "reads_as_pasteurised": "counts_as_pasteurised",
            "heat_treated_only": "handle_as_unpasteurised",
            "not_assessed": "decide_before_use",
        }[judged["class"]],
    }
