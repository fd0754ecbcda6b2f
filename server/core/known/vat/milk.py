"""What a make knows of its milk: how much, how rich, tested, by whose rules."""

from ...heat.hold.rule import gap_of, hold_rule
from ...heat.hold.steps import hold_steps
from ...heat.milk import phosphatase
from ...log.readings import last, within
from ...units.readings import parse
from ..origins import from_equipment, from_make, from_recipe, of_figure

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

    from server.shapes.core.state import Entry, KnownValue, Scene

RULES_OF = ("us", "eu_uk")


def read_last(quantity: str) -> "Callable[[Scene], KnownValue | None]":
    """Return a look-up of the newest reading of a quantity.

    Args:
        quantity: key of `quantities.QUANTITIES`.
    """

    def look_up(scene: "Scene") -> "KnownValue | None":
        entry = last(scene["state"], quantity)
        return None if entry is None else as_read(entry)

    return look_up


def as_read(entry: "Entry") -> "KnownValue":
    """Return a reading, as typed too where it was typed in Fahrenheit.

    Args:
        entry: reading_taken.
    """
    data = entry["data"]
    told = from_make(data["value"])
    if data.get("typed_unit") == "F" and data.get("typed") is not None:
        told["typed"] = [parse(data["typed"]), "F"]
    return told


def _milk_l(scene: "Scene") -> "KnownValue":
    milk = scene["context"]["milk"]
    if milk["milk_from"] == "opened":
        return from_recipe(milk["milk_l"], "derived", "milk_planned")
    return from_make(milk["milk_l"])


def _milk_kg(scene: "Scene") -> "KnownValue":
    weighed = _weighed_kg(scene)
    if weighed is not None:
        return weighed
    kg = scene["context"]["milk"]["milk_kg"]
    return from_recipe(kg, "derived", "volume_times_usual_density")


def _weighed_kg(scene: "Scene") -> "KnownValue | None":
    milk = scene["context"]["milk"]
    return from_make(milk["milk_kg"]) if milk["milk_from"] == "mass" else None


_fat_tested_frac = read_last("fat_frac")


def _fat_frac(scene: "Scene") -> "KnownValue | None":
    tested = _fat_tested_frac(scene)
    figure = scene["recipe"]["milk"].get("fat_frac")
    return of_figure(figure) if tested is None and figure is not None else tested


def _milk_temp_c(scene: "Scene") -> "KnownValue | None":
    """Return the milk's temperature as of this step: what is heated later is not."""
    entries = within(scene["state"], "milk_temp_c", None, scene["fact"]["ended_ms"])
    return as_read(entries[-1]) if entries else None


def _jurisdiction(scene: "Scene") -> "KnownValue | None":
    """Return whose rule the recipe's hold goes by."""
    for step in scene["recipe"]["steps"]:
        rule = step.get("rule") or ""
        for word in RULES_OF:
            if rule.startswith(word + "_"):
                return from_recipe(word, "derived", "rule_of_recipe")
    return None


def _hold_rule(scene: "Scene") -> "dict[str, Any] | None":
    for step in hold_steps(scene["recipe"]):
        rule = hold_rule(step, scene["context"]["rules"])
        if rule is not None:
            return rule
    return None


def _gap_max_s(scene: "Scene") -> "KnownValue | None":
    """Return the gap between readings that counts in the make's own hold."""
    rule = _hold_rule(scene)
    gap = None if rule is None else gap_of(rule, scene["equipment"])
    return from_equipment(gap["gap_s"]) if gap and gap["is_own"] else None


def _phosphatase(scene: "Scene") -> "KnownValue | None":
    """Return what the laboratory found, by the rule that judges the hold."""
    rule = _hold_rule(scene)
    word = None if rule is None else phosphatase(scene["state"], rule)
    return None if word is None else from_make(word)


KNOWN = {
    "jurisdiction": _jurisdiction,
    "milk_l": _milk_l,
    "milk_kg": _milk_kg,
    "weighed_kg": _weighed_kg,
    "fat_frac": _fat_frac,
    "fat_tested_frac": _fat_tested_frac,
    "snf_frac": read_last("snf_frac"),
    "protein_frac": read_last("protein_frac"),
    "milk_temp_c": _milk_temp_c,
    "gap_max_s": _gap_max_s,
    "phosphatase": _phosphatase,
    "milk_age_h": read_last("milk_age_h"),
    "drug_test": read_last("drug_test"),
    "acidity_frac": read_last("titratable_acidity_frac"),
}
