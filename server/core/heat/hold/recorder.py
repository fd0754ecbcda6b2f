"""The chart's recorder beside the indicating thermometer: it never reads above it.

1 NYCRR 2.45: the recorder is set to the indicator, never the other way round. Both
are compared as they were read; of two units, by the value that is kept.
"""

from ...log.readings import within
from ...units.notes import with_units
from ..thermometer import as_typed, typed_unit
from .steps import INDICATOR, RECORDER

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import Entry, Fact, State


def reads_above(indicator: "Entry", recorder: "Entry") -> "dict[str, Any] | None":
    """Return the reason where the recorder reads above the indicator, else None.

    Args:
        indicator: reading of the indicating thermometer.
        recorder: reading of the recorder beside it.

    Returns:
        {"key", "at_ms", "value", "limit"} as they were read, with their unit.
    """
    unit = typed_unit(indicator)
    low, high = as_typed(indicator, unit), as_typed(recorder, unit)
    if low is None or high is None:
        unit, low, high = "C", indicator["data"]["value"], recorder["data"]["value"]
    if high is None or low is None or high <= low:
        return None
    told = {
        "key": "recorder_reads_above_indicator",
        "at_ms": max(indicator["t_ms"], recorder["t_ms"]),
        "value": high,
        "limit": low,
    }
    return with_units(told, unit)


def beside_chart(state: "State", fact: "Fact") -> "list[dict[str, Any]]":
    """Return the warning that a chart's recorder reads high, from where it is marked.

    Args:
        state: State of the make.
        fact: Fact of its hold, begun.

    Returns:
        List of the reason, or empty.
    """
    pair = [
        within(state, name, fact["begun_ms"], None) for name in (INDICATOR, RECORDER)
    ]
    if not pair[0] or not pair[1]:
        return []
    warning = reads_above(pair[0][-1], pair[1][-1])
    return [] if warning is None else [warning]
