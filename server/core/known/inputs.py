"""What a make knows already, so that nobody is asked for it.

What a person measured goes before what the recipe says, and what was entered as
equipment serves any input of that name; of a label, what the bottle used says. A value
tells whether it was measured or only follows from the plan. Which look-up serves which
input: `table.PARTS`.
"""

from ..log.equipment import served
from .bottle import at_hand
from .origins import from_equipment
from .table import look_up_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Context, Desk, KnownValue, Scene

    LookedUp = dict[str, KnownValue | None]


def scene(desk: "Desk", context: "Context", step: "RecipeStep", now_ms: int) -> "Scene":
    """Return what the look-ups start from.

    Args:
        desk: Desk.
        context: {"state", "recipe", "opened", "facts", "milk", "rules"} of the
            make, see `step.context.context_of`.
        step: step of the recipe that asks.
        now_ms: now [ms].

    Returns:
        Scene: these, with "equipment", the step's "fact", the "size" of wheel that
        is asked about, None for none, and "kept", what the look-ups have worked
        out: one scene serves all sums of a step at one instant.
    """
    return {
        "desk": desk,
        "state": context["state"],
        "context": context,
        "recipe": context["recipe"],
        "opened": context["opened"],
        "equipment": at_hand(desk, context["state"]),
        "step": step,
        "fact": context["facts"][step["key"]],
        "now_ms": now_ms,
        "size": None,
        "kept": {},
    }


def of_size(scene: "Scene", size: "str | None") -> "Scene":
    """Return the same scene for a size of wheel.

    Args:
        scene: see `scene`.
        size: size of wheel, or None for none.
    """
    told = scene.copy()
    told["size"] = size
    return told


def known_inputs(
    scene: "Scene", sum_row: "dict[str, Any]", told: "LookedUp"
) -> "dict[str, KnownValue]":
    """Return the inputs of a sum that the make knows.

    Args:
        scene: see `scene`, and `of_size`.
        sum_row: the sum, see `rows.sum_row`.
        told: as for `looked_up`.

    Returns:
        {input name: as `answer.answer` takes it}.
    """
    known = {}
    for item in sum_row["inputs"]:
        value = looked_up(scene, item["name"], told)
        if value is None:
            value = _of_equipment(scene, item)
        if value is not None:
            known[item["name"]] = value
    return known


def looked_up(scene: "Scene", name: str, told: "LookedUp") -> "KnownValue | None":
    """Return what the look-up of an input tells, or None; each is asked once.

    Args:
        scene: see `scene`, and `of_size`.
        name: the input's name.
        told: {input name: what its look-up told} for this scene; added to.
    """
    if name not in told:
        look_up = look_up_of(name)
        try:
            told[name] = None if look_up is None else look_up(scene)
        except (ValueError, ArithmeticError):
            # Entries that contradict each other tell nothing: it is asked for.
            told[name] = None
    return told[name]


def _of_equipment(scene: "Scene", item: "dict[str, Any]") -> "KnownValue | None":
    value = served(scene["equipment"], item)
    return None if value is None else from_equipment(value)
