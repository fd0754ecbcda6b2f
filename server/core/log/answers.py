"""Who answered for what asks for an answer: an alert, a matter, an alarm."""

from . import run

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.state import State
    from server.shapes.core.words import Said


def acknowledged(state: "State", name: str, since_ms: "int | None") -> "Said | None":
    """Return who acknowledged something since it began, or None when nobody did.

    A word of yesterday does not answer for what fell due today.

    Args:
        state: State of the make.
        name: what it is acknowledged by, the same on every phone.
        since_ms: when it began [ms]; what has not begun is answered by nobody.

    Returns:
        {"by", "at_ms"} of the newest word, or None.
    """
    entry = run.last(state, "alert_acknowledged", name)
    if entry is None or since_ms is None or entry["t_ms"] < since_ms:
        return None
    return {"by": entry["by"], "at_ms": entry["t_ms"]}
