"""The first picture of a far viewer: open makes at a glance, in few bytes.

Nothing is worked out here; what the core's board says is left out or kept.
"""

from typing import Any

MOST_ALERTS = 3  # as many as the live view shows of one make
HEARD_MS = 86_400_000  # a phone silent for longer is not in the room


def glance(board: dict[str, Any]) -> dict[str, Any]:
    """Return what a far viewer needs of a board first.

    Args:
        board: Board of the core.
    """
    makes = [
        {**make, "alerts": make["alerts"][:MOST_ALERTS]}
        for make in board["makes"]
        if make["is_open"]
    ]
    return {
        "now_ms": board["now_ms"],
        "next_change_ms": board["next_change_ms"],
        "makes": makes,
        "broken": board["broken"],
    }
