"""What a hold goes by: which rule, what it asks of a vat, which gap counts.

A step may hold by the maker's own figures instead: they are laid out as a rule.

The longest gap between readings is this tool's own figure. A shorter one is a
maker's own to set; a longer one counts on the word of somebody who is named.
"""

from ...log.equipment_form import AGREED
from ...units.quantities import check_number
from ..milk import hold_product
from .own import OWN_HOLD, own_rule

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.heat import HeatGap
    from server.shapes.core.recipe import RecipeReading, RecipeStep
    from server.shapes.core.state import Rules, State


RULE = "us_heat_treatment"
MILK, AIR = "milk_temp_c", "air_space_temp_c"
# By quantity, under which name `required` says what is asked of it.
NAMES = {MILK: "temp", AIR: "air_temp"}


def rounds_wanted(step: "RecipeStep") -> "list[RecipeReading]":
    """Return the readings of the milk that a recipe wants again and again in a hold.

    Args:
        step: step of the recipe.
    """
    return [
        reading
        for reading in step.get("readings", [])
        if reading["quantity"] == MILK and reading.get("every_s")
    ]


def hold_rule(step: "RecipeStep", rules: "Rules") -> "dict[str, Any] | None":
    """Return the rule by which a step's hold is judged, or None.

    Args:
        step: step of the recipe; its "rule" names one, else RULE, where it does
            not hold by the maker's own figures.
        rules: {rule id: the rule}.
    """
    told = step.get("heat_treatment")
    if not told:
        return None
    if isinstance(told, dict):
        return own_rule(step, told)
    return rules.get(step.get("rule") or RULE)


def required(
    state: "State", step: "RecipeStep", rule: "dict[str, Any]", unit: str
) -> "dict[str, Any] | None":
    """Return what a vat must show for a hold with this milk, or None.

    Args:
        state: State of the make.
        step: step of the recipe that holds.
        rule: the rule that it goes by.
        unit: "F" or "C".

    Returns:
        {"temp", "air_temp"} in `unit`; air_temp None where it is not asked.
    """
    product, chosen = hold_product(state), vat_row(rule, step["lasts"]["value"], unit)
    if chosen is None:
        return None
    temp = chosen["min_temp"][unit]["value"] + _supplement(rule, chosen, unit, product)
    airspace = rule.get("airspace")
    rise = None
    if airspace and "vat" in airspace["vessels"]:
        rise = airspace["rise"].get(unit)
    return {"temp": temp, "air_temp": None if rise is None else temp + rise["value"]}


def vat_row(
    rule: "dict[str, Any]", hold_s: float, unit: "str | None" = None
) -> "dict[str, Any] | None":
    """Return the row of a rule that a vat's hold of this length goes by, or None.

    Args:
        rule: a heat treatment rule.
        hold_s: how long the step holds [s].
        unit: "F" or "C", which its temperature must be printed in; None for any.
    """
    chosen: "dict[str, Any] | None" = None
    for row in rule["rows"]:
        if row["kind"] != "milk" or "vat" not in row["vessels"]["value"]:
            continue
        if unit is not None and row["min_temp"].get(unit) is None:
            continue
        if row["hold_s"]["value"] > hold_s:
            continue
        if chosen is None or row["hold_s"]["value"] > chosen["hold_s"]["value"]:
            chosen = row
    return chosen


def is_supplemented(rule: "dict[str, Any]", product: "dict[str, Any]") -> bool:
    """Tell whether milk is known to be rich or sweetened, as a rule counts it.

    Args:
        rule: a heat treatment rule.
        product: see `hold_product`.
    """
    supplement, fat = rule.get("supplement"), product["fat_frac"]
    if not supplement:
        return False
    is_rich = fat is not None and fat >= supplement["fat_min_frac"]["value"]
    return is_rich or bool(product["is_sweetened"] and supplement["sweetened"])


def _supplement(
    rule: "dict[str, Any]", row: "dict[str, Any]", unit: str, product: "dict[str, Any]"
) -> float:
    if row["supplement"] != "applies" or not is_supplemented(rule, product):
        return 0.0
    rise: float = rule["supplement"]["rise"][unit]["value"]
    return rise


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
    if rule["id"] == OWN_HOLD:
        return gap  # what was agreed is about the law's rule
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
