"""What is this milk? The one answer, and what follows from it.

Rules first.
1. A word never makes milk pasteurised: only a hold that a rule was met in does.
   Milk to be pasteurised is "undecided" until then, and is handled as if it were
   not. Where its hold is over and not met, it is "heat_treated".
2. Heat-treated milk is "heat_treated" whatever its hold showed: the maker's own
   figures make nothing pasteurised. A word may always make less of milk.
3. Milk whose hold was skipped is as it came: "raw". Milk that was held hot is no
   longer raw, whatever is said of it later.
4. What follows from a class is data: server/rules/milk_classes.json.
"""

from ..log import run
from ..log.again import ends_of, opened_again
from ..log.kinds.columns import EQUIPMENT, FACTS, HEAT, MILK
from ..log.opening import opening, recipe_of, treatment_entry
from ..log.touches import keep, kept, topic
from .hold.steps import hold_steps
from .treatment import heated_since_ms, hold_ended_ms, treatment

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.heat import ClassName, MilkClass
    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Entry, Rules, State


RULES = "milk_classes"

RESTS_ON = [FACTS, HEAT, MILK, EQUIPMENT] + [
    topic("reading_taken", quantity)
    for quantity in (
        "phosphatase_test",
        "milk_phosphatase_mu_l",
        "cheese_phosphatase_ug",
    )
]


def milk_class(state: "State", rules: "Rules") -> "MilkClass | None":
    """Return what the milk of a make is, or None before its opening.

    Args:
        state: State of the make.
        rules: {rule id: the rule}.

    Returns:
        {"class": "pasteurised", "heat_treated", "raw" or "undecided", "why": key,
        "since_ms", "treatment", "step": key of the hold or None}; since_ms is since
        when that is known [ms].
    """
    known: "MilkClass | None" = kept(state, "milk_class", "all")
    if known is None:
        known = _milk_class(state, rules)
        if known is not None:
            keep(state, "milk_class", "all", known, RESTS_ON)
    return known


def follows(milk: "MilkClass | None", rules: "Rules") -> "dict[str, Any] | None":
    """Return what follows from a class by the rules, or None where they say nothing.

    Args:
        milk: answer of `milk_class`.
        rules: {rule id: the rule}.

    Returns:
        The row of its class in milk_classes.json: "curing", "identity", "staph",
        "tests", "label" and "release_role".
    """
    table = rules.get(RULES)
    if milk is None or table is None:
        return None
    for row in table["rows"]:
        if row["key"] == milk["class"]:
            told: "dict[str, Any]" = row
            return told
    return None


def _milk_class(state: "State", rules: "Rules") -> "MilkClass | None":
    chosen, opened, recipe = treatment(state), opening(state), recipe_of(state)
    if chosen is None or opened is None or recipe is None:
        return None
    said = treatment_entry(state) or opened
    holds = hold_steps(recipe)
    if chosen == "raw":
        heated_ms = heated_since_ms(state)
        if heated_ms is not None:
            return _told(state, "heat_treated", "was_heated", heated_ms)
        return _told(state, "raw", "chosen_raw", said["t_ms"])
    if not holds:
        if chosen == "heat_treated":
            return _told(state, "heat_treated", "chosen_heat_treated", said["t_ms"])
        return _told(state, "undecided", "no_hold", opened["t_ms"])
    tried = [_of_hold(state, step, rules, chosen, said) for step in holds]
    for each in tried:
        if each["class"] == "pasteurised":
            return each
    return tried[-1]


def _told(
    state: "State",
    name: "ClassName",
    why: str,
    since_ms: int,
    step: "str | None" = None,
) -> "MilkClass":
    chosen: "Any" = treatment(state)
    return {
        "class": name,
        "why": why,
        "since_ms": since_ms,
        "treatment": chosen,
        "step": step,
    }


def _of_hold(
    state: "State", step: "RecipeStep", rules: "Rules", chosen: str, said: "Entry"
) -> "MilkClass":
    key = step["key"]
    # A hold that is held again is judged by its last end.
    ends = ends_of(state, key, opened_again(state, rules))
    ended_ms = ends[0]["t_ms"] if ends else None
    begun_ms = _at_ms(state, "step_begun", key) or ended_ms
    if begun_ms is None:
        skipped_ms = _at_ms(state, "step_skipped", key)
        if skipped_ms is not None and hold_ended_ms(state) is None:
            return _told(state, "raw", "hold_skipped", skipped_ms, key)
        return _before(state, chosen, "hold_awaited", said["t_ms"], key)
    fact: "Any" = {"begun_ms": begun_ms, "ended_ms": ended_ms}
    # Loaded when a hold is there to judge: the app starts without it.
    from .hold.verdict import hold_verdict

    verdict = hold_verdict(state, step, fact, rules)
    if verdict is None:
        return _before(state, chosen, "no_rule", begun_ms, key)
    if ended_ms is None:
        return _before(state, chosen, "hold_running", begun_ms, key)
    name, why = _judged(verdict, chosen)
    return _told(state, name, why, ended_ms, key)


def _before(
    state: "State", chosen: str, why: str, since_ms: int, key: str
) -> "MilkClass":
    name: "ClassName" = "heat_treated" if chosen == "heat_treated" else "undecided"
    return _told(state, name, why, since_ms, key)


def _judged(verdict: "Any", chosen: str) -> "tuple[ClassName, str]":
    name = verdict["class"]
    if chosen == "heat_treated":
        # A word may make less of a hold that a rule was met in, never more.
        return "heat_treated", OWN_WHY.get(name, "chosen_heat_treated")
    if name == "reads_as_pasteurised":
        return "pasteurised", "hold_met"
    if name == "not_assessed":
        return "undecided", "hold_not_assessed"
    keys = [reason["key"] for reason in verdict["reasons"]]
    if "phosphatase_positive" in keys:
        return "heat_treated", "phosphatase_positive"
    return "heat_treated", "hold_not_met"


OWN_WHY = {
    "meets_own_figures": "own_hold_met",
    "misses_own_figures": "own_hold_not_met",
    "not_assessed": "own_hold_not_assessed",
}


def _at_ms(state: "State", kind: str, key: str) -> "int | None":
    entries = run.entries(state, kind, key)
    return entries[0]["t_ms"] if entries else None
