"""The readings of a hold, paired: milk, the air above it, the recorder.

1. An air reading belongs to the milk reading nearest to it, at most PAIR_MS off;
   the colder of two counts. One that finds no milk reading stands by itself.
2. The recorder is noted beside a milk reading only: alone it is no reading.
"""

from ...log.readings import every, within
from ..thermometer import as_typed, unit_read
from .rule import AIR, MILK
from .steps import RECORDER

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import Entry, State


PAIR_MS = 150000


def hold_readings(
    state: "State", begun_ms: int, ended_ms: "int | None"
) -> "dict[str, Any]":
    """Return the readings of a hold, as the thermometer shows them.

    Args:
        state: State of the make.
        begun_ms: when the hold's step began [ms].
        ended_ms: when it ended [ms], or None.

    Returns:
        {"unit", "rows"}: "F" or "C", and list of {"at_ms", "temp", "air_temp",
        "recorder_temp"} as `formulas.pasteurisation.heat_verdict` takes it. Before
        the first reading the unit is the one that this make's milk was read in.
    """
    milk = within(state, MILK, begun_ms, ended_ms)
    air = within(state, AIR, begun_ms, ended_ms)
    recorder = within(state, RECORDER, begun_ms, ended_ms)
    unit = unit_read(milk + air or every(state, MILK))
    readings = []
    for entry in milk:
        readings.append(_reading(entry["t_ms"], as_typed(entry, unit)))
    for entry in air:
        _pair(readings, entry, "air_temp", as_typed(entry, unit), True)
    for entry in recorder:
        _pair(readings, entry, "recorder_temp", as_typed(entry, unit), False)
    return {"unit": unit, "rows": sorted(readings, key=_by_time)}


def _reading(at_ms: int, temp: "float | None") -> "dict[str, Any]":
    return {"at_ms": at_ms, "temp": temp, "air_temp": None, "recorder_temp": None}


def _by_time(reading: "dict[str, Any]") -> "tuple[int, bool, float]":
    # Total, since the phone's sort shuffles what is equal.
    blank = reading["temp"] is None
    return (reading["at_ms"], blank, 0.0 if blank else reading["temp"])


def _pair(
    readings: "list[dict[str, Any]]",
    entry: "Entry",
    name: str,
    temp: "float | None",
    alone: bool,
) -> None:
    nearest = None
    for reading in readings:
        gap_ms = abs(reading["at_ms"] - entry["t_ms"])
        if reading["temp"] is None or gap_ms > PAIR_MS:
            continue
        if nearest is None or gap_ms < nearest[0]:
            nearest = (gap_ms, reading)
    if nearest is None:
        if alone:
            reading = _reading(entry["t_ms"], None)
            reading[name] = temp
            readings.append(reading)
        return
    reading = nearest[1]
    if reading[name] is None or (
        temp is not None and _is_worse(name, temp, reading[name])
    ):
        reading[name] = temp


def _is_worse(name: str, temp: float, other: float) -> bool:
    # The colder air and the higher recorder are what the rule asks about.
    return temp < other if name == "air_temp" else temp > other
