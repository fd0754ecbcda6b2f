"""Finding steps by what they hold, never by their names: recipes differ in those."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

    from server.shapes.core.recipe import Recipe, RecipeStep


def steps(recipe: "Recipe", where: "dict[str, Any]") -> "list[str]":
    """Return the keys of the steps that hold all that is asked, in their order.

    Args:
        recipe: a sound recipe.
        where: any of {"place", "end" (its `by`), "quantity" (that ends it),
            "direction" ("at_least" or "at_most"), "reads", "adds", "heat_treatment",
            "mould", "presses", "turns", "nth" (that one of those found)}.
    """
    found = [step["key"] for step in recipe["steps"] if _holds(step, where)]
    nth = where.get("nth")
    return found if nth is None else found[nth : nth + 1]


def reads(step: "RecipeStep", quantity: str, when: "str | None" = None) -> bool:
    """Tell whether a step wants a reading.

    Args:
        step: step of a recipe.
        quantity: what is read.
        when: "begin", "during" or "end"; None for any.
    """
    rows = step.get("readings") or []
    return any(
        row["quantity"] == quantity and when in (None, row["when"]) for row in rows
    )


def target(step: "RecipeStep", quantity: str) -> "dict[str, Any] | None":
    """Return the figure that a quantity should have in a step, if it has a value.

    Args:
        step: step of a recipe.
        quantity: what is asked.
    """
    for row in step.get("targets") or []:
        if row["quantity"] == quantity and row["figure"]["value"] is not None:
            figure: "Any" = row["figure"]
            return figure
    return None


def is_press(step: "RecipeStep") -> bool:
    """Tell whether wheels are under pressure in a step."""
    return step.get("place") == "press" and reads(step, "press_gauge_kpa")


def is_turn(step: "RecipeStep") -> bool:
    """Tell whether wheels are taken out of the press in a step, and turned."""
    return step.get("place") == "press" and not reads(step, "press_gauge_kpa")


def _holds(step: "RecipeStep", where: "dict[str, Any]") -> bool:
    end: "Any" = step["end"]
    checks: "dict[str, Callable[[], bool]]" = {
        "place": lambda: step.get("place") == where["place"],
        "end": lambda: end["by"] == where["end"],
        "quantity": lambda: end.get("quantity") == where["quantity"],
        "direction": lambda: end.get(where["direction"]) is not None,
        "reads": lambda: reads(step, where["reads"]),
        "adds": lambda: where["adds"] in (step.get("adds") or []),
        "heat_treatment": lambda: bool(step.get("heat_treatment")),
        "mould": lambda: bool(step.get("mould")),
        "presses": lambda: is_press(step) == where["presses"],
        "turns": lambda: is_turn(step) == where["turns"],
    }
    return all(checks[name]() for name in where if name in checks)
