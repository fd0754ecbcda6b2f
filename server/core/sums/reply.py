"""An Answer before there is anything in it."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.sums import Answer


def reply_of(key: str) -> "Answer":
    """Return the Answer to a sum, with nothing told yet.

    Args:
        key: key of the sum.
    """
    return {
        "key": key,
        "values": [],
        "rests_on": [],
        "status": None,
        "standing": None,
        "notes": [],
        "problems": [],
        "ask": [],
        "missing": [],
    }
