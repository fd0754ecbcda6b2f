"""Wheels of all makes whose salt was measured: what they teach of the brine."""

from ...formulas.usual import PRESSED_MOISTURE_FRAC
from ...log import run
from ...log.apart import ask
from ...log.opening import recipe_of
from ...log.readings import last_value, within
from ...make.practice import is_practice
from ...recipe.parts import mould_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import Recipe
    from server.shapes.core.state import Desk, Entry, State

MOST_WHEELS = 40


def analysed_wheels(
    desk: "Desk", until_ms: "int | None" = None
) -> "list[dict[str, Any]]":
    """Return the wheels of all real makes whose salt was measured, newest last.

    Args:
        desk: Desk.
        until_ms: only what was measured by this instant counts [ms]; None for all.

    Returns:
        List of {"salt_frac", "brined_s", "diameter_m", "height_m",
        "moisture_frac", "brine_frac"} as `brining.calibrated_diffusion` takes it.
    """
    wheels: "list[dict[str, Any]]" = []
    for stream in sorted(desk["makes"]):
        state = desk["makes"][stream]
        recipe = recipe_of(state)
        if recipe is not None and not is_practice(state):
            told = ask(
                desk, stream, "learnt", None, _wheels_of, state, recipe, until_ms
            )
            wheels.extend(told or [])
    return wheels[-MOST_WHEELS:]


def _wheels_of(
    state: "State", recipe: "Recipe", until_ms: "int | None"
) -> "list[dict[str, Any]]":
    wheels = [
        _analysed(state, recipe, entry)
        for entry in within(state, "cheese_salt_frac", None, until_ms)
    ]
    return [wheel for wheel in wheels if wheel is not None]


def _analysed(
    state: "State", recipe: "Recipe", entry: "Entry"
) -> "dict[str, Any] | None":
    size = entry["data"].get("place")
    mould = mould_of(recipe, size)
    brined = _brined(state, recipe, size)
    if mould is None or brined is None or entry["data"]["value"] <= 0.0:
        return None
    return {
        "salt_frac": entry["data"]["value"],
        "brined_s": brined["s"],
        "diameter_m": mould["diameter_m"]["value"],
        "height_m": mould["height_m"]["value"],
        "moisture_frac": PRESSED_MOISTURE_FRAC,
        "brine_frac": brined["brine_frac"],
    }


def _brined(
    state: "State", recipe: "Recipe", size: "str | None"
) -> "dict[str, Any] | None":
    """Return how long and how strongly a size was brined in a make, or None."""
    brine_frac = last_value(state, "brine_salt_frac")
    for step in recipe["steps"]:
        if step.get("place") != "brine" or step.get("size") not in (None, size):
            continue
        begun = run.entries(state, "step_begun", step["key"])
        ended = run.entries(state, "step_ended", step["key"])
        if begun and ended and brine_frac and ended[0]["t_ms"] > begun[0]["t_ms"]:
            span_ms = ended[0]["t_ms"] - begun[0]["t_ms"]
            return {"s": span_ms / 1000.0, "brine_frac": brine_frac}
    return None
