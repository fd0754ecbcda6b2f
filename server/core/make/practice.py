"""Makes that are opened for practice: everything works in them, nothing counts.

Which make is one is said when it is opened and never changed: a practice make
must not become a real one, nor a real one disappear among the practice.
"""

from ..log.opening import opening

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.state import State


def is_practice(state: "State | None") -> bool:
    """Tell whether a make is for practice.

    Args:
        state: State of the make, or None when it is not known here.
    """
    opened = opening(state)
    return opened is not None and opened["data"].get("practice") is True
