"""The clock of a hold: since when all that was read is hot enough by the rule.

It runs from the first reading of an unbroken row in which milk and air space are
hot enough. One reading below begins it again: while it is low, from that reading;
then from the first that is hot enough.
"""

from ..log.opening import opening
from ..log.readings import within
from .milk import hold_product
from .readings import hold_readings
from .rule import hold_rule, required
from .thermometer import as_typed, typed_unit

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Fact, Rules, State
    from server.shapes.core.step import Target


def hold_start_ms(
    state: "State",
    step: "RecipeStep",
    begun_ms: int,
    ended_ms: "int | None",
    rules: "Rules",
) -> int:
    """Return the instant that a hold's clock runs from.

    Args:
        state: State of the make.
        step: step of the recipe.
        begun_ms: when it began [ms].
        ended_ms: when it ended [ms], or None.
        rules: {rule id: the rule}.

    Returns:
        Instant [ms]; the step's begin for any other step, without its rule, and
        while nothing was read.
    """
    rule = hold_rule(step, rules)
    if rule is None or opening(state) is None or not step.get("lasts"):
        return begun_ms
    hold = hold_readings(state, begun_ms, ended_ms)
    product = hold_product(state)
    wanted = required(rule, hold["unit"], product, step["lasts"]["value"])
    if wanted is None:
        return begun_ms
    return _last_start_ms(hold["rows"], wanted, begun_ms)


def _last_start_ms(
    readings: "list[dict[str, Any]]", wanted: "dict[str, Any]", begun_ms: int
) -> int:
    start_ms = begun_ms
    is_low = False
    has_begun = False
    for reading in readings:
        if _is_below(reading, wanted):
            start_ms = reading["at_ms"]
            is_low = True
        elif reading["temp"] is not None and (is_low or not has_begun):
            start_ms = reading["at_ms"]
            is_low = False
            has_begun = True
    return start_ms


def _is_below(reading: "dict[str, Any]", wanted: "dict[str, Any]") -> bool:
    if reading["temp"] is not None and reading["temp"] < wanted["temp"]:
        return True
    air = reading["air_temp"]
    return (
        wanted["air_temp"] is not None and air is not None and air < wanted["air_temp"]
    )


def met_in_own_unit(
    state: "State", step: "RecipeStep", fact: "Fact", rules: "Rules", target: "Target"
) -> bool:
    """Tell whether a reading below a target's band meets the rule as it was typed.

    A recipe's band is in Celsius, and a rule prints each unit for itself: 145 °F
    is enough although it is 62.8 °C.

    Args:
        state: State of the make.
        step: step of the recipe.
        fact: its Fact.
        rules: {rule id: the rule}.
        target: a target of the Step, with its last reading.
    """
    rule = hold_rule(step, rules)
    names = {"milk_temp_c": "temp", "air_space_temp_c": "air_temp"}
    if rule is None or target["quantity"] not in names or opening(state) is None:
        return False
    last = target["last"]
    for entry in within(state, target["quantity"], fact["begun_ms"], fact["ended_ms"]):
        if last is None or entry["id"] != last["id"]:
            continue
        unit = typed_unit(entry)
        product = hold_product(state)
        wanted = required(rule, unit, product, step["lasts"]["value"])
        typed = as_typed(entry, unit)
        limit = None if wanted is None else wanted[names[target["quantity"]]]
        return typed is not None and limit is not None and typed >= limit
    return False
