"""The milk in a hold: how rich it is, and what the laboratory finds of it.

Phosphatase comes days later, from the milk or from the cheese. A number is tried
against the rule's own limits; a test that says a word is taken at it. One positive
result outweighs any number of negative ones.
"""

from ..log.equipment import in_effect
from ..log.readings import every, last_value
from ..units.quantities import check_number

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import State


def hold_product(state: "State") -> "dict[str, Any]":
    """Return what is known of the milk in the vat, for the rule.

    Args:
        state: State of the make.
    """
    equipment = in_effect(state)
    return {
        "vessel": "vat",
        "fat_frac": last_value(state, "fat_frac"),
        "is_sweetened": equipment.get("sweetened") == "yes",
        "extra_hold_s": _extra_s(equipment),
    }


def extra_hold_s(state: "State", step: "RecipeStep") -> float:
    """Return how much longer a hold is than its row says, for filling and emptying.

    Args:
        state: State of the make.
        step: step of the recipe.

    Returns:
        Time [s]; 0 for a hold by the maker's own figures, which the law's longer
        hold is not about.
    """
    return 0 if isinstance(step["heat_treatment"], dict) else _extra_s(in_effect(state))


def _extra_s(equipment: "dict[str, Any]") -> float:
    extra_s: "Any" = equipment.get("extra_hold_s")
    return 0 if check_number("extra_hold_s", extra_s, 0, 86400) else extra_s


def phosphatase(state: "State", rule: "dict[str, Any]") -> "str | None":
    """Return what the tests for phosphatase say by a rule, or None without any.

    A number between the rule's limits for different cheeses says nothing, nor
    does one that the rule has no limit for, or only one from memory.

    Args:
        state: State of the make.
        rule: a heat treatment rule.

    Returns:
        "negative", "positive" or None.
    """
    words = [entry["data"]["value"] for entry in every(state, "phosphatase_test")]
    limits = rule.get("phosphatase") or {}
    for quantity, judge in (
        ("milk_phosphatase_mu_l", _milk_word),
        ("cheese_phosphatase_ug", _cheese_word),
    ):
        for entry in every(state, quantity):
            words.append(judge(limits, entry["data"]["value"]))
    for word in ("positive", "negative"):
        if word in words:
            return word
    return None


def _milk_word(limits: "dict[str, Any]", value: float) -> "str | None":
    limit = limits.get("milk_max_mu_l")
    if limit is None or limit["status"] == "memory":
        return None
    return "negative" if value < limit["value"] else "positive"


def _cheese_word(limits: "dict[str, Any]", value: float) -> "str | None":
    printed = [
        limits[name]["value"]
        for name in limits
        if name.endswith("_max_ug_phenol") and limits[name]["status"] != "memory"
    ]
    if not printed:
        return None
    if value <= min(printed):
        return "negative"
    return "positive" if value > max(printed) else None
