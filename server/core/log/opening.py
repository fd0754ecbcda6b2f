"""How a make or a tank begins and ends: its opening, and the word that it is over.

The earliest standing opening holds; what it says, its recipe before all, is frozen
for as long as the make lasts. Whoever asks for it asks here.
"""

from . import run

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.recipe import Recipe
    from server.shapes.core.state import Entry, State


def opening(state: "State | None") -> "Entry | None":
    """Return the entry that opened a make, or None while it is not known.

    Args:
        state: State of the make, or None when it is not known here.
    """
    return _first(state, "make_opened")


def tank_opening(state: "State | None") -> "Entry | None":
    """Return the entry that opened a brine tank, or None of a make.

    Args:
        state: State of the tank, or None when it is not known here.
    """
    return _first(state, "tank_opened")


def recipe_of(state: "State | None") -> "Recipe | None":
    """Return the recipe frozen into a make, or None before its opening.

    Args:
        state: State of the make, or None when it is not known here.
    """
    opened = opening(state)
    return None if opened is None else opened["data"]["recipe"]


def is_opened(state: "State") -> bool:
    """Tell whether the opening of a make or tank is known and can be read.

    Args:
        state: State.
    """
    return opening(state) is not None or tank_opening(state) is not None


def ending(state: "State") -> "Entry | None":
    """Return the entry by which a make is over, or None while it is open.

    A make that one phone closed and another abandoned was abandoned.

    Args:
        state: State.
    """
    return _first(state, "make_abandoned") or _first(state, "make_closed")


def is_over(state: "State") -> bool:
    """Tell whether a make was closed or abandoned.

    Args:
        state: State.
    """
    return ending(state) is not None


def _first(state: "State | None", kind: str) -> "Entry | None":
    standing = run.entries(state, kind) if state else []
    return standing[0] if standing else None
