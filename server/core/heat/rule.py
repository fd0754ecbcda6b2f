"""The rule that a hold goes by: which one, what it asks of a vat, which gap counts.

The longest gap between readings is this tool's own figure. A shorter one is a
maker's own to set; a longer one counts on the word of somebody who is named.
"""

from ..log.equipment_form import AGREED
from ..units.quantities import check_number

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.heat import HeatGap
    from server.shapes.core.recipe import Recipe, RecipeStep
    from server.shapes.core.state import Rules


RULE = "us_heat_treatment"


def hold_steps(recipe: "Recipe") -> "list[RecipeStep]":
    """Return the steps of a recipe that hold the milk hot by a rule.

    Args:
        recipe: a sound recipe.
    """
    return [step for step in recipe["steps"] if step.get("heat_treatment")]


def hold_rule(step: "RecipeStep", rules: "Rules") -> "dict[str, Any] | None":
    """Return the rule by which a step's hold is judged, or None.

    Args:
        step: step of the recipe; its "rule" names one, else RULE.
        rules: {rule id: the rule}.
    """
    if not step.get("heat_treatment"):
        return None
    return rules.get(step.get("rule") or RULE)


def required(
    rule: "dict[str, Any]", unit: str, product: "dict[str, Any]", hold_s: float
) -> "dict[str, Any] | None":
    """Return what a vat must show for a hold of this length, or None.

    Args:
        rule: a heat treatment rule.
        unit: "F" or "C".
        product: see `hold_product`.
        hold_s: how long the step holds [s].

    Returns:
        {"temp", "air_temp"} in `unit`; air_temp None where it is not asked.
    """
    chosen = None
    for row in rule["rows"]:
        if row["kind"] != "milk" or "vat" not in row["vessels"]["value"]:
            continue
        if row["min_temp"].get(unit) is None or row["hold_s"]["value"] > hold_s:
            continue
        if chosen is None or row["hold_s"]["value"] > chosen["hold_s"]["value"]:
            chosen = row
    if chosen is None:
        return None
    temp = chosen["min_temp"][unit]["value"] + _supplement(rule, chosen, unit, product)
    airspace = rule.get("airspace")
    rise = None
    if airspace and "vat" in airspace["vessels"]:
        rise = airspace["rise"].get(unit)
    return {"temp": temp, "air_temp": None if rise is None else temp + rise["value"]}


def _supplement(
    rule: "dict[str, Any]", row: "dict[str, Any]", unit: str, product: "dict[str, Any]"
) -> float:
    supplement = rule.get("supplement")
    if not supplement or row["supplement"] != "applies":
        return 0.0
    fat = product["fat_frac"]
    is_rich = fat is not None and fat >= supplement["fat_min_frac"]["value"]
    if is_rich or (product["is_sweetened"] and supplement["sweetened"]):
        return supplement["rise"][unit]["value"]
    return 0.0


def gap_of(rule: "dict[str, Any]", equipment: "dict[str, Any]") -> "HeatGap":
    """Return the longest gap between readings that counts, and on whose word.

    Args:
        rule: a heat treatment rule.
        equipment: see `equipment.in_effect`.

    Returns:
        {"gap_s", "is_own", "agreed_with", "refused_s"}: is_own where it is not
        the rule's; refused_s is one that was entered and does not count, since
        it is longer and nobody is named, else None.
    """
    usual_s = rule["gap_max_s"]["value"]
    gap: "HeatGap" = {
        "gap_s": usual_s,
        "is_own": False,
        "agreed_with": None,
        "refused_s": None,
    }
    own_s: "Any" = equipment.get("gap_max_s")
    if check_number("gap_max_s", own_s, 1, 3600):
        return gap
    who = equipment.get(AGREED["gap_max_s"])
    who = who.strip() if isinstance(who, str) else ""
    if own_s > usual_s and not who:
        gap["refused_s"] = own_s
        return gap
    gap["gap_s"], gap["is_own"], gap["agreed_with"] = own_s, True, who or None
    return gap


def with_gap(rule: "dict[str, Any]", gap_max_s: "float | None") -> "dict[str, Any]":
    """Return a rule with the gap between readings that was agreed, if one was.

    The gap is this tool's own setting, to be agreed with the inspector; nothing
    else of a rule can be set.

    Args:
        rule: a heat treatment rule.
        gap_max_s: longest gap agreed [s], or None.
    """
    if check_number("gap_max_s", gap_max_s, 1, 3600):
        return rule
    agreed = dict(rule)
    figure = dict(rule["gap_max_s"])
    figure["value"] = gap_max_s
    agreed["gap_max_s"] = figure
    return agreed
