"""What a hold asks of its two thermometers, as the recipe's targets take it over.

A recipe prints its band once, in Celsius; a rule prints each unit for itself. So the
low end of the band is the rule's, in the unit that this make's thermometer reads:
66 °C or 150 °F of air, never what one of them is in the other. Rich milk is asked
more, and then the recipe's aim moves up with it. A reading in the other unit is
held against what the rule prints in that one.
"""

from ...log.opening import opening
from ...log.readings import within
from ...units.table import convert
from ..thermometer import as_typed, typed_unit
from .readings import hold_readings
from .rule import NAMES, hold_rule, required

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.heat import HoldAsked
    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Entry, Fact, Rules, State
    from server.shapes.core.step import Target


def asked(
    state: "State", step: "RecipeStep", rules: "Rules"
) -> "dict[str, HoldAsked | None]":
    """Return what a hold asks, in each unit that its rule is printed in.

    Args:
        state: State of the make.
        step: step of the recipe.
        rules: {rule id: the rule}.

    Returns:
        {"F", "C"}: {"temp", "air_temp"} or None, see `rule.required`.
    """
    rule = hold_rule(step, rules)
    told: "dict[str, Any]" = {"F": None, "C": None}
    if rule is None or not step.get("lasts"):
        return told
    for unit in told:
        told[unit] = required(state, step, rule, unit)
    return told


def bound(
    state: "State",
    step: "RecipeStep",
    fact: "Fact",
    rules: "Rules",
    quantity: str,
    figure: "Any",
) -> "Any":
    """Return the figure of a hold's target with the rule's own low end.

    Args:
        state: State of the make.
        step: step of the recipe.
        fact: its Fact.
        rules: {rule id: the rule}.
        quantity: of the target.
        figure: the target's figure in Celsius; not changed.

    Returns:
        A copy where the rule asks something of it, else the figure itself.
    """
    name = NAMES.get(quantity)
    if name is None or opening(state) is None or figure["value"] is None:
        return figure
    begun_ms: "Any" = fact["begun_ms"]
    until_ms = begun_ms if begun_ms is None else fact["ended_ms"]
    unit = hold_readings(state, begun_ms, until_ms)["unit"]
    told = asked(state, step, rules)[unit]
    limit: "Any" = None if told is None else told[name]  # type: ignore[literal-required]
    if limit is None:
        return figure
    return _raised(figure, convert(limit, unit, "C"))


def _raised(figure: "Any", low_c: float) -> "Any":
    low = figure["low"]
    # A rule's Celsius are rounded up: less than a degree off, the aim stays.
    more_k = 0.0 if low is None or low_c - low < 1.0 else low_c - low
    moved = dict(figure)
    moved["low"] = low_c
    moved["value"] = max(figure["value"] + more_k, low_c)
    if figure["high"] is not None:
        moved["high"] = max(figure["high"] + more_k, moved["value"])
    return moved


def met_in_own_unit(
    state: "State", step: "RecipeStep", fact: "Fact", rules: "Rules", target: "Target"
) -> bool:
    """Tell whether a reading below a target's band meets the rule as it was typed.

    The band is the rule's in the unit of most readings: 145 °F is enough although it
    is 62.8 °C, and of a hold read in Celsius 63 °C are asked.

    Args:
        state: State of the make.
        step: step of the recipe.
        fact: its Fact.
        rules: {rule id: the rule}.
        target: a target of the Step, with its last reading.
    """
    name, last = NAMES.get(target["quantity"]), target["last"]
    if name is None or last is None or opening(state) is None:
        return False
    for entry in within(state, target["quantity"], fact["begun_ms"], fact["ended_ms"]):
        if entry["id"] == last["id"]:
            return _meets(entry, asked(state, step, rules), name)
    return False


def _meets(entry: "Entry", told: "dict[str, HoldAsked | None]", name: str) -> bool:
    unit = typed_unit(entry)
    typed, wanted = as_typed(entry, unit), told[unit]
    limit: "Any" = None if wanted is None else wanted[name]  # type: ignore[literal-required]
    return typed is not None and limit is not None and typed >= limit
