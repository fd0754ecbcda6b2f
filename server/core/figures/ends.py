"""When what ends a step by its recipe has come: by the clock, a reading, a look."""

from ..make.facts import is_hands_on, readings_in
from .figure import figure

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Context, Fact, Judging


def end_met_ms(
    context: "Context", step: "RecipeStep", fact: "Fact", judge: "Judging | None"
) -> "int | None":
    """Return since when what ends a step by its recipe has come, or None.

    Args:
        context: see `context.of_make`.
        step: step of the recipe.
        fact: its Fact.
        judge: answer of `curd.judging`.

    Returns:
        Instant [ms], not after now; None when the step has not begun or its end
        has not come. A step that was ended had come to its end by then.
    """
    if fact["begun_ms"] is None:
        return None
    met_ms = _end_comes_ms(context, step, fact, judge)
    if fact["ended_ms"] is not None:
        return fact["ended_ms"] if met_ms is None else min(met_ms, fact["ended_ms"])
    if met_ms is None or met_ms > context["now_ms"]:
        return None
    return met_ms


def _end_comes_ms(
    context: "Context", step: "RecipeStep", fact: "Fact", judge: "Judging | None"
) -> "int | None":
    by = step["end"]["by"]
    if by == "time":
        return fact["due"]["low_ms"]
    if by == "reading":
        return _reached_ms(context, step, fact)
    if (
        by in ("judged", "floc")
        and judge is not None
        and judge["met"]
        and judge["last"]
    ):
        return judge["last"]["at_ms"]
    if by == "judged":
        return None
    if by == "floc":
        return fact["floc"]["cut_ms"]
    return fact["begun_ms"] if is_hands_on(step) else fact["due"]["low_ms"]


def _reached_ms(context: "Context", step: "RecipeStep", fact: "Fact") -> "int | None":
    """Return since when the newest readings in a row have reached the end's figure."""
    since_ms = None
    least, most = ends_of(context, step)
    quantity = step["end"]["quantity"]
    for entry in reversed(readings_in(context["state"], fact, quantity)):
        if not reaches(entry["data"]["value"], least, most):
            break
        since_ms = entry["t_ms"]
    return since_ms


def ends_of(
    context: "Context", step: "RecipeStep"
) -> "tuple[float | None, float | None]":
    """Return (at least, at most) of the reading that ends a step; None each if open.

    Args:
        context: see `context.of_make`.
        step: step of the recipe that ends by a reading.
    """
    told = []
    for side in ("at_least", "at_most"):
        limit = figure(context, step, "end/" + side) if step["end"].get(side) else None
        told.append(None if limit is None else limit["value"])
    return told[0], told[1]


def reaches(value: float, least: "float | None", most: "float | None") -> bool:
    """Tell whether a reading has reached the figures that end a step.

    Args:
        value: the reading.
        least: what it must come to at least, or None.
        most: what it must come down to, or None.
    """
    if least is not None and value < least:
        return False
    return most is None or value <= most
