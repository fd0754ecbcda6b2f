"""The readings of temperature of a step, as the sums' tables take them."""

from ..log.readings import one_an_instant
from ..make.facts import readings_in

TEMPS = ("milk_temp_c", "curd_temp_c", "water_temp_c")


def _temp_quantity(place):
    step = place["step"]
    if step["end"]["by"] == "reading" and step["end"]["quantity"] in TEMPS:
        return step["end"]["quantity"]
    for rows in (step.get("targets", []), step.get("readings", [])):
        for row in rows:
            if row["quantity"] in TEMPS:
                return row["quantity"]
    return None


def temp_entries(
    place: dict, fact: "dict | None" = None, state: "dict | None" = None
) -> "list[dict]":
    """Return the step's readings of the temperature it is about, oldest first.

    Args:
        place: see `known.scene`.
        fact: Fact of the same step in another make, or None for this one's.
        state: State of that make, or None.
    """
    quantity = _temp_quantity(place)
    if quantity is None:
        return []
    fact = fact or place["fact"]
    return one_an_instant(readings_in(state or place["state"], fact, quantity))


def table(entries: "list[dict]", start_ms: int, column: str) -> "list[dict]":
    """Return readings as rows of minutes and values.

    Args:
        entries: see `run.entries`, at rising instants.
        start_ms: instant of minute 0 [ms].
        column: name of the value's column.
    """
    return [
        {
            "at_min": (entry["t_ms"] - start_ms) / 60000.0,
            column: entry["data"]["value"],
        }
        for entry in entries
    ]
