"""Which entries a correction or a strike is really about, and which are legal.

A reading that the verdict on the milk rests on may be taken by whoever stands at
the vat. To change it afterwards asks for a maker: it is not the helper who
answers for the record. A slip is taken back at once by whoever made it; the
record keeps both.
"""

from ..kinds.allowed import LEGAL_READING
from ..kinds.table import CHANGING

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

QUANTITIES = (
    "drug_test",
    "milk_temp_c",
    "air_space_temp_c",
    "indicator_temp_c",
    "recorder_temp_c",
    "check_temp_c",
)
# As long as a slip of the finger takes to be seen; our own judgement, no source.
UNDO_MS = 60000
DEEPEST = 8  # two entries could each name the other


def about_of(
    event: "dict[str, Any]", find: "Callable[[Any], dict[str, Any] | None]"
) -> "str | None":
    """Return what an event is about, for `kinds.allowed.may`.

    What changes a change is about the entry that stands behind it.

    Args:
        event: the event.
        find: function from the id of an event to that event, or None.

    Returns:
        The kind of that entry; LEGAL_READING where it is one that this event may
        only change for a maker; None when it is not known.
    """
    about = None
    named = find(event.get("ref"))
    for _ in range(DEEPEST):
        if not isinstance(named, dict):
            return about
        about = named.get("kind")
        if about not in CHANGING or event.get("kind") not in CHANGING:
            break
        named = find(named.get("ref"))
    if about != "reading_taken" or not isinstance(named, dict):
        return about
    return LEGAL_READING if _is_legal(named) and not is_undo(event, named) else about


def _is_legal(entry: "dict[str, Any]") -> bool:
    data = entry.get("data")
    return isinstance(data, dict) and data.get("quantity") in QUANTITIES


def is_undo(event: "dict[str, Any]", entry: "dict[str, Any]") -> bool:
    """Tell whether an event takes a slip of the same hand back at once.

    Args:
        event: the event.
        entry: the entry that it is about.
    """
    if event.get("kind") != "entry_struck" or event.get("ref") != entry.get("id"):
        return False
    for name in ("device", "person", "boot"):
        if event.get(name) != entry.get(name):
            return False
    return 0 <= event["entered_ms"] - entry["entered_ms"] <= UNDO_MS
