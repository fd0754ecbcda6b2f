"""Which stage of the make each step belongs to.

People think of a day in stages. A recipe names them; what was frozen before recipes
did is told by what its steps do.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping
    from typing import Any

    from server.shapes.core.recipe import RecipeStep


STAGES = ("milk", "heat", "set", "cut", "press", "brine", "store")
OF_PLACE = {"table": "press", "press": "press", "brine": "brine", "store": "store"}


def stages_of(steps: "list[RecipeStep]") -> "dict[str, str]":
    """Return {step key: its stage}, one of `STAGES`.

    Where not every step names its stage, all are told by what they do, and none
    goes back behind the one before it.

    Args:
        steps: steps of a recipe or of one route through it, in its order.
    """
    if all(step.get("stage") in STAGES for step in steps):
        return {step["key"]: step["stage"] for step in steps}
    told: "dict[str, str]" = {}
    setting = [step["key"] for step in steps if step["end"]["by"] == "floc"]
    reached = 0
    for step in steps:
        is_set = bool(setting) and setting[-1] in told
        reached = max(reached, STAGES.index(_by_work(step, is_set)))
        told[step["key"]] = STAGES[reached]
    return told


def _by_work(step: "Mapping[str, Any]", is_set: bool) -> str:
    """Return the stage that a step's work is of, at the earliest."""
    end = step["end"]
    if step.get("mould"):
        return "press"
    if step.get("place") in OF_PLACE:
        return OF_PLACE[step["place"]]
    if is_set:
        return "cut"
    if step.get("adds") or end["by"] == "floc":
        return "set"
    if step.get("heat_treatment") or end.get("quantity") == "milk_temp_c":
        return "heat"
    return "milk"
