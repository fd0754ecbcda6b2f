"""What leads a hold: what is asked, when to read next, how it stands, what lacks."""

from ...log.equipment import in_effect
from .asked import asked
from .chart import chart_fields
from .clock import hold_until_ms, hold_walk
from .fat import fat_decides
from .own import OWN_HOLD
from .rounds import hold_rounds, quantities
from .rule import NAMES, gap_of, hold_rule, vat_row
from .says import how_it_stands, is_whole

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.heat import HoldLast, HoldLead, HoldRound
    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Fact, Rules, State
    from server.shapes.core.words import Keyed


def hold_lead(
    state: "State", step: "RecipeStep", fact: "Fact", rules: "Rules", now_ms: int
) -> "HoldLead | None":
    """Return what leads a hold that is to begin or runs; None for any other step.

    Args:
        state: State of the make.
        step: step of the recipe.
        fact: its Fact with its deadline.
        rules: {rule id: the rule}.
        now_ms: now [ms].

    Returns:
        HoldLead; None too where its rule is not at hand, or it is over.
    """
    rule = hold_rule(step, rules)
    if rule is None or fact["ended_ms"] is not None or not step.get("lasts"):
        return None
    told: "HoldLead" = {
        "rule": rule["id"],
        "is_own": rule["id"] == OWN_HOLD,
        "asked": asked(state, step, rules),
        "gap": gap_of(rule, in_effect(state)),
        "together": quantities(rule),
        "rounds": hold_rounds(state, step, fact, rule),
        "last": [],
        "due_ms": None,
        "lost_ms": None,
        "end_ms": fact["due_ms"],
        "is_whole": False,
        "says": [],
    }
    walked = None
    if fact["begun_ms"] is not None:
        walked = hold_walk(state, step, fact["begun_ms"], None, rules)
    if walked is not None:
        _lead(told, fact, walked, now_ms)
    told["says"].extend(_lacking(state, step, fact, rules, rule))
    return told


def _lead(
    told: "HoldLead", fact: "Fact", walked: "dict[str, Any]", now_ms: int
) -> None:
    rounds = told["rounds"]
    due = [each["due_ms"] for each in rounds if each["due_ms"] is not None]
    lost = [each["lost_ms"] for each in rounds if each["lost_ms"] is not None]
    told["is_whole"] = is_whole(rounds)
    told["due_ms"] = min(due) if due else None
    told["lost_ms"] = min(lost) if lost and due else None
    told["says"] = how_it_stands(fact, walked, rounds, now_ms)
    told["last"] = [
        _last(each, told, walked["unit"]) for each in rounds if each["last"]
    ]


def _last(each: "HoldRound", told: "HoldLead", unit: str) -> "HoldLast":
    last: "Any" = each["last"]
    shown: "Any" = each["shown"]
    wanted: "Any" = told["asked"][shown["unit"]]
    limit = None if wanted is None else wanted[NAMES[each["quantity"]]]
    typed = shown["typed"]
    return {
        "quantity": each["quantity"],
        "value": last["value"],
        "at_ms": last["at_ms"],
        # After a whole hold the milk may cool.
        "is_low": not told["is_whole"]
        and typed is not None
        and limit is not None
        and typed < limit,
        "is_other_unit": shown["unit"] != unit,
    }


def _lacking(
    state: "State",
    step: "RecipeStep",
    fact: "Fact",
    rules: "Rules",
    rule: "dict[str, Any]",
) -> "list[Keyed]":
    """Return what the verdict will lack however well the milk is held."""
    told: "list[Keyed]" = []
    row = vat_row(rule, step["lasts"]["value"])
    if row is not None and fat_decides(state, step, rules):
        fat = rule["supplement"]["fat_min_frac"]["value"]
        raised = {
            unit: row["min_temp"][unit]["value"]
            + rule["supplement"]["rise"][unit]["value"]
            for unit in row["min_temp"]
        }
        told.append({"key": "fat_decides", "fat_frac": fat, "raised": raised})
    begun_ms = fact["begun_ms"]
    if begun_ms is None:
        return told
    until_ms = hold_until_ms(state, step, begun_ms, None, rules)
    missing = [
        each["field"]
        for each in chart_fields(state, fact, rule, until_ms)
        if each["required"] and each["value"] is None and each["field"] in ENTERED
    ]
    if missing:
        told.append({"key": "chart_lacks", "missing": missing})
    return told


# What a person can enter beforehand; the rest comes with the readings.
ENTERED = ("plant_name", "product_amount")
