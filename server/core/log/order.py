"""One total order over events, whatever order they arrive in.

Phones disagree about the time, lose their network and send late. Each event
is placed by the instant its phone's clock is corrected to, then by device and
that device's own counter, then by id, so that no two events are ever equal.
The phone's sort is slow on input that is already in order, hence `insert`,
which walks back from the end: nearly every new event belongs there.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping
    from typing import Any, TypeVar

    from server.shapes.core.state import Entry, Event

    Filed = TypeVar("Filed", bound=Mapping[str, Any])


def corrected_ms(event: "Event") -> int:
    """Return the instant of an event by the server's clock [ms since 1970 UTC]."""
    return event["at_ms"] + event["off_ms"]


def sort_key(entry: "Mapping[str, Any]") -> "tuple[int, str, int, str]":
    """Return the total key of an entry: (t_ms, device, seq, id)."""
    return (entry["t_ms"], entry["device"], entry["seq"], entry["id"])


def insert(entries: "list[Filed]", entry: "Filed") -> None:
    """Put an entry into a list that is kept ordered by `sort_key`.

    Args:
        entries: list of entries in order; changed in place.
        entry: dict with t_ms, device, seq and id.
    """
    key = sort_key(entry)
    index = len(entries)
    while index > 0 and sort_key(entries[index - 1]) > key:
        index -= 1
    entries.insert(index, entry)


def remove(entries: "list[Entry]", entry_id: str) -> None:
    """Take the entry with this id out of a list, if it is there.

    Args:
        entries: list of entries; changed in place.
        entry_id: id of the entry.
    """
    for index in range(len(entries) - 1, -1, -1):
        if entries[index]["id"] == entry_id:
            entries.pop(index)
            return
