"""Which watcher looks at what a gate waits for, by the gate's own word."""

from . import yes_no_test

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.matters import Seen
    from server.shapes.core.recipe import RecipeGate
    from server.shapes.core.state import Context


TEST = "test"  # what every make waits for, gates or none


def look(context: "Context", gate: "RecipeGate") -> "Seen | None":
    """Return what a gate's watcher sees, or None where the gate stands open.

    Args:
        context: Context of the make.
        gate: gate of its recipe.
    """
    told: "Seen | None" = _watcher(gate["watch"]).look(context, gate)
    return told


def changes_ms(context: "Context", gate: "RecipeGate") -> "int | None":
    """Return when a gate changes by the clock alone, or None [ms].

    Args:
        context: Context of the make.
        gate: gate of its recipe.
    """
    ask = getattr(_watcher(gate["watch"]), "changes_ms", None)
    at_ms: "int | None" = None if ask is None else ask(context, gate)
    return at_ms


def _watcher(word: str) -> "Any":
    if word == TEST:
        return yes_no_test
    # Loaded when a gate of a recipe waits for it: the app starts without.
    from .of_gates import WATCHERS

    return WATCHERS[word]
