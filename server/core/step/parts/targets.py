"""What a step wants its readings to be: each target's band, and the last reading."""

from ...figures.figure import of_target
from ...make.facts import readings_in
from ...make.instruments import is_wanted
from ...make.wheels import sizes_used
from ...units.quantities import ADDS_UP
from .origin import origin
from .step_parts import verdict
from .water import is_led

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.figures import StepFigure
    from server.shapes.core.recipe import RecipeStep, RecipeTarget
    from server.shapes.core.state import Entry, Fact, State, ViewContext
    from server.shapes.core.step import JudgedReading, Target


def target_views(
    context: "ViewContext", step: "RecipeStep", fact: "Fact", met: bool
) -> "list[Target]":
    """Return the targets of a step, each with its band and the last reading.

    One of a size of wheel that this make does not have is left out, and one of what
    there is no instrument for here, unless it was read.

    Args:
        context: as for `steps.step_view`.
        step: step of the recipe.
        fact: its Fact.
        met: whether what ends it has come.

    Returns:
        List of {"quantity", "size", "value", "low", "high", "unit", "source",
        "status", "origin", "last"}, see `origin.origin`; value None where only a
        sum could tell it and cannot yet.
    """
    targets = _of_this_make(context, step.get("targets", []))
    views = [
        _target_view(context, step, fact, target, targets, met) for target in targets
    ]
    return [
        view
        for target, view in zip(targets, views)
        if view["last"] is not None or is_wanted(context["state"], target)
    ]


def judges(wanted: "StepFigure | Target") -> bool:
    """Tell whether readings are held against a figure.

    What is known from memory alone is shown, and judges nothing.

    Args:
        wanted: the figure, or the target that shows it.
    """
    return wanted["value"] is not None and wanted["status"] != "memory"


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
    met: bool,
) -> "Target":
    wanted = of_target(context, step, target)
    read: "list[Entry]" = []
    # What is to be so at the end is on its way until then.
    if judges(wanted) and (met or target.get("when") != "end"):
        read = _read(context["state"], fact, target, targets)
        read = _bound(context, step, fact, read)
    return {
        "quantity": target["quantity"],
        "size": target.get("size"),
        "value": wanted["value"],
        "low": wanted["low"],
        "high": wanted["high"],
        "range_of": wanted["range_of"],
        "unit": wanted["unit"],
        "source": wanted["source"],
        "status": wanted["status"],
        "origin": origin(wanted),
        "last": _judged(context, step, read, wanted) if read else None,
    }


def _bound(
    context: "ViewContext", step: "RecipeStep", fact: "Fact", read: "list[Entry]"
) -> "list[Entry]":
    """Return the readings that a step's figures still bind.

    Milk may cool once its hold is whole, in a step that nobody has ended yet.
    """
    begun_ms = fact["begun_ms"]
    if not read or begun_ms is None or not step.get("heat_treatment"):
        return read
    # Loaded when a hold is there to lead: the app starts without it.
    from ...heat.hold.clock import hold_binds_ms

    state, rules = context["state"], context["rules"]
    until_ms = hold_binds_ms(state, step, begun_ms, fact["ended_ms"], rules)
    return [entry for entry in read if until_ms is None or entry["t_ms"] <= until_ms]


def _judged(
    context: "ViewContext",
    step: "RecipeStep",
    read: "list[Entry]",
    wanted: "StepFigure",
) -> "JudgedReading":
    last = read[-1]
    values = _values(read, last["data"]["quantity"] in ADDS_UP)
    words = [verdict(value, wanted["low"], wanted["high"]) for value in values]
    first = len(words) - 1
    while first > 0 and words[first - 1] == words[-1]:
        first -= 1
    word, is_part = words[-1], last["data"]["quantity"] in ADDS_UP
    ended_ms = context["facts"][step["key"]]["ended_ms"]
    if word == "below" and is_led(step) and is_part and ended_ms is None:
        word = "in_band"  # of a wash a first part is poured, and the rest follows
    return {
        "id": last["id"],
        "value": values[-1],
        "at_ms": last["t_ms"],
        "verdict": word,
        "since": {"id": read[first]["id"], "at_ms": read[first]["t_ms"]},
    }


def _values(read: "list[Entry]", adds_up: bool) -> "list[float]":
    """Return what each reading says: of what is poured in parts, all until then."""
    values: "list[float]" = []
    for entry in read:
        before = values[-1] if adds_up and values else 0.0
        values.append(before + entry["data"]["value"])
    return values


def _read(
    state: "State", fact: "Fact", target: "RecipeTarget", targets: "list[RecipeTarget]"
) -> "list[Entry]":
    """Return the readings that a target judges, oldest first.

    Where two sizes want a figure each, a reading that names no size belongs to
    neither: one gauge cannot meet both.
    """
    size, quantity = target.get("size"), target["quantity"]
    read = readings_in(state, fact, quantity)
    if size is None:
        return read
    others = [other for other in targets if other["quantity"] == quantity]
    judged = (size,) if len(others) > 1 else (None, size)
    return [entry for entry in read if entry["data"].get("place") in judged]
