"""Makes that are opened for practice: everything works in them, nothing counts.

Which make is one is said when it is opened and never changed: a practice make
must not become a real one, nor a real one disappear among the practice.
"""

from ..log import run


def is_practice(state: "dict | None") -> bool:
    """Tell whether a make is for practice.

    Args:
        state: State of the make, or None when it is not known here.
    """
    opened = run.entries(state, "make_opened") if state else []
    return bool(opened) and opened[0]["data"].get("practice") is True
