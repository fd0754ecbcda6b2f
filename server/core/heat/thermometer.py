"""What a thermometer shows: readings as they were typed, in the unit it is marked in.

A rule prints each unit for itself, so a reading is compared in the one it was read
in. Most readings of a batch say which unit that is; one in another unit is a reading
not taken. What was entered without its text is in Celsius.
"""

from ..units.readings import parse

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.state import Entry


def unit_read(entries: "list[Entry]") -> str:
    """Return the unit that most readings were typed in: "F", else "C".

    Args:
        entries: readings of temperatures, see `run.entries`.
    """
    fahrenheit = sum(1 for entry in entries if typed_unit(entry) == "F")
    return "F" if 2 * fahrenheit > len(entries) else "C"


def typed_unit(entry: "Entry") -> str:
    """Return the unit that a temperature was typed in.

    Args:
        entry: the reading.
    """
    return entry["data"].get("typed_unit") or "C"


def as_typed(entry: "Entry", unit: str) -> "float | None":
    """Return the number in a unit as it was typed; None where it was another unit.

    Args:
        entry: the reading.
        unit: "F" or "C".
    """
    data = entry["data"]
    if typed_unit(entry) != unit:
        return None
    return data["value"] if data.get("typed") is None else parse(data["typed"])
