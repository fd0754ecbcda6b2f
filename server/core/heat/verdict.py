"""The verdict on a hold: what its readings meet, and what that means for the cheese.

The chart of the plant is the record that counts. What is kept here tells the fields
that the rule asks for as far as they are entered here.
"""

from ..log.equipment import in_effect
from ..log.opening import opening
from ..log.readings import last
from ..units.notes import with_units
from .clock import hold_start_ms
from .milk import hold_product, phosphatase
from .readings import hold_readings
from .rule import gap_of, hold_rule, with_gap

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.heat import Verdict
    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Fact, Rules, State


# What a chart must hold, by the required keys of the rules' chart fields.
CHART = (
    "date",
    "plant_name",
    "product_name",
    "product_amount",
    "hold_extent",
    "indicating_reading",
    "airspace_reading",
    "operator_initials",
)


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
        As `verdict`, with "start_ms" the clock's start, [ms], and "gap" as
        `gap_of` tells it; None for any other step, before it began, or without
        its rule.
    """
    rule = hold_rule(step, rules)
    opened = opening(state)
    if rule is None or fact["begun_ms"] is None or opened is None:
        return None
    hold = hold_readings(state, fact["begun_ms"], fact["ended_ms"])
    product = hold_product(state)
    product["phosphatase"] = phosphatase(state, rule)
    chart = hold_chart(state, opened["data"], hold["rows"])
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
    from ..formulas.heat.pasteurisation import heat_verdict

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


def hold_chart(
    state: "State", opened: "dict[str, Any]", readings: "list[dict[str, Any]]"
) -> "dict[str, Any]":
    """Return which fields of the chart record are entered here as well.

    Args:
        state: State of the make.
        opened: body of its make_opened event; what it has is looked up anew,
            since more may have been entered after it.
        readings: the "rows" of `hold_readings`.

    Returns:
        {chart field: whether it is}.
    """
    amounts = ("milk_volume_l", "milk_mass_kg")
    equipment = in_effect(state)
    return {
        "date": bool(opened),
        "plant_name": bool(equipment.get("plant_name")),
        "product_name": True,
        "product_amount": any(last(state, name) for name in amounts),
        "hold_extent": len(readings) > 1,
        "indicating_reading": any(reading["temp"] is not None for reading in readings),
        "airspace_reading": any(
            reading["air_temp"] is not None for reading in readings
        ),
        "operator_initials": bool(readings),
        "recorder_number": bool(equipment.get("recorder_number")),
    }
