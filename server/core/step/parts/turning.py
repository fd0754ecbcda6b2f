"""When the wheels of a step want turning again, as its figures say."""

from ...figures.due import span_ms
from ...figures.figure import figure
from ...log import run

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.recipe import RecipeStep, RecipeTurn
    from server.shapes.core.state import Context, Fact, State
    from server.shapes.core.step import Turn


def next_turn(context: "Context", step: "RecipeStep", fact: "Fact") -> "Turn | None":
    """Return when the wheels of a running step want turning again, or None.

    Args:
        context: see `context.of_make`.
        step: step of the recipe.
        fact: its Fact.

    Returns:
        {"due_ms", "every_s", "overdue_s"}; None where its recipe names no turns.
    """
    parts = step.get("turns")
    begun_ms = fact["begun_ms"]
    if not parts or fact["status"] != "running" or begun_ms is None:
        return None
    last_ms = _last_turn_ms(context["state"], step["key"], begun_ms)
    index = _part_at(parts, last_ms - begun_ms)
    told = figure(context, step, "turn/" + str(index))
    every_s = parts[index]["every"]["value"] if told is None else told["value"]
    due_ms = last_ms + span_ms(every_s)
    overdue_s = max(0, context["now_ms"] - due_ms) / 1000.0
    return {"due_ms": due_ms, "every_s": every_s, "overdue_s": overdue_s}


def _last_turn_ms(state: "State", step_key: str, begun_ms: int) -> int:
    """Return when the wheels were turned last; when the step began, if never."""
    last_ms = begun_ms
    for entry in run.entries(state, "wheel_turned"):
        named = entry["data"].get("step")
        if entry["t_ms"] >= begun_ms and named in (None, step_key):
            last_ms = entry["t_ms"]
    return last_ms


def _part_at(parts: "list[RecipeTurn]", since_ms: int) -> int:
    """Return which part of the turning runs; the last one has no end."""
    for index in range(len(parts)):
        until = parts[index].get("until")
        if until is None or since_ms < span_ms(until["value"]):
            return index
    return len(parts) - 1
