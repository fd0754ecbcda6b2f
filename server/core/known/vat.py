"""What a make knows while it is in the vat, gathered; and its sums' clocks."""

from ..log.readings import every
from . import acid as known_acid
from . import heat as known_heat
from . import hold as known_hold
from . import set as known_set
from . import wash as known_wash
from .heat import jacket_temp_c
from .hold import chart_field
from .temps import table, temp_entries

__all__ = ("KNOWN", "base_ms", "chart_field", "jacket_temp_c", "table")


def base_ms(place: dict) -> "int | None":
    """Return the instant that the tables of a sum count their minutes from [ms].

    Args:
        place: see `known.scene`.
    """
    if place["topic"] == "acid":
        return known_acid.curve_start_ms(place)
    if place["topic"] == "heat_treatment":
        return known_hold.hold_fact(place)["begun_ms"]
    if place["key"] == "curing_days":
        return _moulded_ms(place)
    if place["key"] == "ripening_days":
        found = every(place["state"], "store_temp_c")
        return found[0]["t_ms"] if found else None
    found = temp_entries(place)
    return found[0]["t_ms"] if found else None


def _moulded_ms(place):
    times = []
    for step in place["recipe"]["steps"]:
        fact = place["context"]["facts"][step["key"]]
        if step.get("mould") and fact["ended_ms"] is not None:
            times.append(fact["ended_ms"])
    return max(times) if times else None


KNOWN: dict = {}
for part in (known_heat, known_wash, known_acid, known_hold, known_set):
    KNOWN.update(part.KNOWN)
