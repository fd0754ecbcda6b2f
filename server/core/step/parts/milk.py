"""The milk of a make for every screen: how it is treated, what it is, what follows."""

from ...heat.milk_class import RESTS_ON, RULES, follows, milk_class
from ...heat.treatment import treatment_view
from ...log.touches import keep, kept

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.heat import MilkFollows, MilkView
    from server.shapes.core.state import Rules, State


def milk_view(state: "State", rules: "Rules") -> "MilkView | None":
    """Return the milk of a make, or None before its opening.

    Args:
        state: State of the make.
        rules: {rule id: the rule}.

    Returns:
        {"is": answer of `milk_class`, "treatment": answer of `treatment_view`,
        "follows": None where the rules say nothing}.
    """
    told: "MilkView | None" = kept(state, "milk_view", "all")
    if told is not None:
        return told
    milk, treatment = milk_class(state, rules), treatment_view(state)
    if milk is None or treatment is None:
        return None
    row = follows(milk, rules)
    told = {
        "is": milk,
        "treatment": treatment,
        "follows": None if row is None else _follows(row, rules),
    }
    keep(state, "milk_view", "all", told, RESTS_ON)
    return told


def _follows(row: "dict[str, Any]", rules: "Rules") -> "MilkFollows":
    days = _curing(row, rules)
    return {
        "curing_days": None if days is None else days["days"]["value"],
        "curing_min_temp": None
        if days is None
        else {unit: days["min_temp"][unit]["value"] for unit in ("F", "C")},
        "curing_by": _law(row["curing"]),
        "tests": [_law(test["wanted"], test["key"]) for test in row["tests"]],
        "label": _law(row["label"]["wanted"], row["label"]["key"]),
        "release_role": row["release_role"]["value"],
    }


def _curing(row: "dict[str, Any]", rules: "Rules") -> "dict[str, Any] | None":
    rule = rules.get(rules[RULES]["curing_rule"]["value"])
    for days in rule["rows"] if rule else []:
        if days["key"] == row["curing"]["value"]:
            told: "dict[str, Any]" = days
            return told
    return None


def _law(figure: "dict[str, Any]", key: "str | None" = None) -> "Any":
    told = {
        "wanted": figure["value"],
        "section": figure.get("section"),
        "status": figure["status"],
    }
    if key is not None:
        told["key"] = key
    return told
