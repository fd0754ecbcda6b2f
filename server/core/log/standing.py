"""How a make stands: running, held, closed, abandoned, discarded; what holds it."""

from . import run
from .opening import discarding, is_over

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.state import State
    from server.shapes.core.view import MakeState
    from server.shapes.core.words import Reasoned


def make_state(state: "State") -> "MakeState":
    """Return "running", "held", "closed", "abandoned" or "discarded".

    Whether it is open is not read off this word: see `opening.is_over`.

    Args:
        state: State of the make.
    """
    if discarding(state) is not None:
        return "discarded"
    if is_over(state):
        return "abandoned" if run.entries(state, "make_abandoned") else "closed"
    return "held" if holds(state) else "running"


def holds(state: "State") -> "list[Reasoned]":
    """Return what holds a make up, the oldest first; what was lifted is left out.

    Args:
        state: State of the make.

    Returns:
        List of {"id", "at_ms", "by", "why"}.
    """
    lifted = [entry["ref"] for entry in run.entries(state, "hold_lifted")]
    standing: "list[Reasoned]" = []
    for entry in run.entries(state, "hold_placed"):
        if entry["id"] not in lifted:
            standing.append(
                {
                    "id": entry["id"],
                    "at_ms": entry["t_ms"],
                    "by": entry["by"],
                    "why": entry["data"]["why"],
                }
            )
    return standing
