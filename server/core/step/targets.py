"""What a step wants its readings to be: each target's band, and the last reading."""

from ..figures.figure import of_target
from ..make.facts import readings_in
from ..make.wheels import sizes_used
from .origin import origin
from .step_parts import verdict

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.recipe import RecipeStep, RecipeTarget
    from server.shapes.core.state import Entry, Fact, State, ViewContext
    from server.shapes.core.step import Target


def target_views(
    context: "ViewContext", step: "RecipeStep", fact: "Fact"
) -> "list[Target]":
    """Return the targets of a step, each with its band and the last reading.

    One of a size of wheel that this make does not have is left out.

    Args:
        context: as for `steps.step_view`.
        step: step of the recipe.
        fact: its Fact.

    Returns:
        List of {"quantity", "size", "value", "low", "high", "unit", "source",
        "status", "origin", "last"}, see `origin.origin`; value None where only a
        sum could tell it and cannot yet.
    """
    targets = _of_this_make(context, step.get("targets", []))
    return [_target_view(context, step, fact, target, targets) for target in targets]


def _of_this_make(
    context: "ViewContext", targets: "list[RecipeTarget]"
) -> "list[RecipeTarget]":
    if not any(target.get("size") for target in targets):
        return targets
    sizes = sizes_used(context["state"])
    return [target for target in targets if target.get("size") in [None] + sizes]


def _target_view(
    context: "ViewContext",
    step: "RecipeStep",
    fact: "Fact",
    target: "RecipeTarget",
    targets: "list[RecipeTarget]",
) -> "Target":
    wanted = of_target(context, step, target)
    last = None
    # What is known from memory alone is shown, and judges nothing.
    if wanted["value"] is not None and wanted["status"] != "memory":
        last = _last_of(context["state"], fact, target, targets)
    return {
        "quantity": target["quantity"],
        "size": target.get("size"),
        "value": wanted["value"],
        "low": wanted["low"],
        "high": wanted["high"],
        "unit": wanted["unit"],
        "source": wanted["source"],
        "status": wanted["status"],
        "origin": origin(wanted),
        "last": None
        if last is None
        else {
            "id": last["id"],
            "value": last["data"]["value"],
            "at_ms": last["t_ms"],
            "verdict": verdict(last["data"]["value"], wanted["low"], wanted["high"]),
        },
    }


def _last_of(
    state: "State", fact: "Fact", target: "RecipeTarget", targets: "list[RecipeTarget]"
) -> "Entry | None":
    """Return the newest reading that a target judges, or None.

    Where two sizes want a figure each, a reading that names no size belongs to
    neither: one gauge cannot meet both.
    """
    entries = readings_in(state, fact, target["quantity"])
    size = target.get("size")
    if size is not None:
        others = [other for other in targets if other["quantity"] == target["quantity"]]
        judged = (size,) if len(others) > 1 else (None, size)
        entries = [entry for entry in entries if entry["data"].get("place") in judged]
    return entries[-1] if entries else None
