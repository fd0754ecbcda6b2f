"""The longest hold in a row of temperature readings, counted strictly or openly."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


def longest_hold(
    readings: "list[dict[str, Any]]",
    min_temp: float,
    air_min_temp: "float | None",
    gap_max_s: "float | None",
    is_lenient: bool,
) -> "dict[str, Any]":
    """Return the longest unbroken hold that counts.

    Args:
        readings: list of {"at_ms", "temp", "air_temp"} in order of time; a
            temperature may be None, the air's may be missing.
        min_temp: least temperature of the milk, in the readings' unit.
        air_min_temp: least temperature of the air above it, or None if not asked.
        gap_max_s: longest time between readings that does not break a hold [s];
            None for any.
        is_lenient: whether what is not known is taken to be all right: a missing
            reading, which otherwise leaves a gap, or no reading of the air.

    Returns:
        {"start_ms", "end_ms", "held_s", "air_missing"}; the instants are None when
        nothing was held. A hold with the air known goes before a longer one
        without.

    Raises:
        KeyError: a reading without its instant.

    Source: first to last reading of an unbroken row; nothing is credited outside.
    Check: one reading below splits the hold in two.

    >>> row = [{"at_ms": m * 60000, "temp": t} for m, t in enumerate([63, 63, 62, 63])]
    >>> longest_hold(row, 63, None, 60, False)["held_s"]
    60.0
    """
    best = {"start_ms": None, "end_ms": None, "held_s": 0.0, "air_missing": False}
    start = last = None
    has_air = False
    for reading in readings:
        state = _state(reading, min_temp, air_min_temp, is_lenient)
        if state == "skip":
            continue
        if state == "below" or _is_gap(last, reading["at_ms"], gap_max_s):
            start, has_air = None, False
        if state == "below":
            last = None
            continue
        last = reading["at_ms"]
        start = last if start is None else start
        has_air = has_air or reading.get("air_temp") is not None
        lacks_air = air_min_temp is not None and not has_air and not is_lenient
        hold = {"start_ms": start, "end_ms": last, "held_s": (last - start) / 1000}
        hold["air_missing"] = lacks_air
        if best["start_ms"] is None or _rank(hold) > _rank(best):
            best = hold
    return best


def _rank(hold: "dict[str, Any]") -> "tuple[int, float]":
    return (0 if hold["air_missing"] else 1, hold["held_s"])


def _is_gap(last_ms: "int | None", at_ms: int, gap_max_s: "float | None") -> bool:
    if last_ms is None or gap_max_s is None:
        return False
    return at_ms - last_ms > gap_max_s * 1000


def _state(
    reading: "dict[str, Any]",
    min_temp: float,
    air_min_temp: "float | None",
    is_lenient: bool,
) -> str:
    temp, air = reading.get("temp"), reading.get("air_temp")
    if temp is None:
        return "ok" if is_lenient else "skip"
    if temp < min_temp:
        return "below"
    if air_min_temp is not None and air is not None and air < air_min_temp:
        return "below"
    return "ok"


def longest_gap_s(readings: "list[dict[str, Any]]") -> float:
    """Return the longest time between two readings that follow each other.

    Args:
        readings: list of {"at_ms", "temp"} in order of time; one without a
            temperature is no reading.

    Returns:
        Time [s]; 0 with fewer than two readings.

    Raises:
        KeyError: a reading without its instant.

    Source: definition.
    Check: one reading has no gap.

    >>> longest_gap_s([{"at_ms": 0, "temp": 63}, {"at_ms": 60000, "temp": 63}])
    60.0
    """
    times = [r["at_ms"] for r in readings if r.get("temp") is not None]
    longest_ms = 0
    for i in range(1, len(times)):
        longest_ms = max(longest_ms, times[i] - times[i - 1])
    return longest_ms / 1000


def restarts(readings: "list[dict[str, Any]]", min_temp: float) -> int:
    """Return how often a hold was broken by a low reading and begun again.

    Args:
        readings: list of {"temp"} in order of time; None was not read.
        min_temp: least temperature, in the readings' unit.

    Returns:
        Number of times.

    Raises:
        TypeError: a temperature that is not a number.

    Source: definition.
    Check: heating up is not a restart.

    >>> restarts([{"temp": t} for t in (60, 63, 62, 63)], 63)
    1
    """
    count, was_held, is_broken = 0, False, False
    for reading in readings:
        if reading.get("temp") is None:
            continue
        is_held = reading["temp"] >= min_temp
        if is_held and is_broken:
            count += 1
            is_broken = False
        if was_held and not is_held:
            is_broken = True
        was_held = is_held
    return count
