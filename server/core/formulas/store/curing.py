"""Days that count toward a curing rule, from the store's own temperature log.

A rule says "not less than 35 °F for at least 60 days". Time below the
temperature does not count, nor does time in which nobody knows: before the first
reading, after the last, and in gaps longer than agreed. What does not count only
delays the release; it does not void the days already counted.

The temperature is compared in the unit that the rule is printed in and the
thermometer reads in. Nothing is converted or rounded here.
"""

from ...numbers.bounds import require_above, require_number
from ...numbers.refused import Refused

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

MS_PER_DAY = 86400000


def curing_time(
    readings: "list[dict[str, float]]",
    start_ms: int,
    now_ms: int,
    min_temp: float,
    gap_max_ms: int,
) -> "dict[str, float]":
    """Return the time held at or above a temperature, and the time that was not.

    Args:
        readings: list of {"at_ms", "temp"} in order of time, `temp` in the unit
            of `min_temp`; one just before the start helps.
        start_ms: when curing starts, as agreed with the inspector [ms].
        now_ms: the instant asked about [ms]; not before `start_ms`.
        min_temp: temperature of the rule, in the unit it is printed in.
        gap_max_ms: longest time between readings that is bridged [ms]; above 0.

    Returns:
        {"counted_ms", "below_ms", "unknown_ms", "whole_days"}; whole days are
        complete 24 hours of counted time.

    Raises:
        Refused: readings out of order, now before start, or no gap allowed.

    Source: straight lines between readings, crossings found exactly.
    Check: counted, below and unknown add up to the time asked about.

    >>> held = [{"at_ms": 0, "temp": 50.0}, {"at_ms": 86400000, "temp": 50.0}]
    >>> curing_time(held, 0, 2 * 86400000, 35.0, 86400000)["whole_days"]
    1
    """
    require_number("min_temp", min_temp)
    require_above("gap_max_ms", gap_max_ms, 0)
    if now_ms < start_ms:
        raise Refused("before_start", "now_ms", now_ms, start_ms)
    counted_ms = below_ms = 0.0
    for i in range(1, len(readings)):
        before, after = readings[i - 1], readings[i]
        if after["at_ms"] < before["at_ms"]:
            raise Refused("not_in_order", "at_ms", after["at_ms"], before["at_ms"])
        if after["at_ms"] - before["at_ms"] > gap_max_ms:
            continue
        above, under = _split(before, after, start_ms, now_ms, min_temp)
        counted_ms += above
        below_ms += under
    return {
        "counted_ms": counted_ms,
        "below_ms": below_ms,
        "unknown_ms": now_ms - start_ms - counted_ms - below_ms,
        "whole_days": int(counted_ms // MS_PER_DAY),
    }


def _split(
    before: "dict[str, float]",
    after: "dict[str, float]",
    start_ms: int,
    now_ms: int,
    min_temp: float,
) -> "tuple[float, float]":
    """Return the time at or above, and below, on the line between two readings."""
    from_ms = max(before["at_ms"], start_ms)
    to_ms = min(after["at_ms"], now_ms)
    if to_ms <= from_ms:
        return 0.0, 0.0
    first, last = before["temp"], after["temp"]
    span_ms = to_ms - from_ms
    if first >= min_temp and last >= min_temp:
        return span_ms, 0.0
    if first < min_temp and last < min_temp:
        return 0.0, span_ms
    share = (min_temp - first) / (last - first)
    cross_ms = before["at_ms"] + share * (after["at_ms"] - before["at_ms"])
    cross_ms = min(max(cross_ms, from_ms), to_ms)
    if first >= min_temp:
        return cross_ms - from_ms, to_ms - cross_ms
    return to_ms - cross_ms, cross_ms - from_ms


def check_curing(
    readings: "list[dict[str, float]]",
    unit: str,
    start_ms: int,
    now_ms: int,
    rule: "dict[str, Any]",
    gap_max_ms: int,
) -> "dict[str, object]":
    """Return whether the log meets a curing rule so far.

    Args:
        readings: list of {"at_ms", "temp"} in order of time, in `unit`.
        unit: "F" or "C", what the store's thermometer reads.
        start_ms: when curing starts, as agreed with the inspector [ms].
        now_ms: the instant asked about [ms]; not before `start_ms`.
        rule: {"days": figure, "min_temp": {"F": figure, "C": figure}}, each figure
            {"value", "status"}; without "min_temp" only the days count.
        gap_max_ms: longest time between readings that is bridged [ms]; above 0.

    Returns:
        {"verdict", "reasons", "counted_days", "needed_days", "below_days",
        "unknown_days"}; the verdict is "meets", "does_not_meet" (hold it) or
        "not_assessed", and a reason is {"key", ...numbers}.

    Raises:
        Refused: as curing_time.

    Source: the rule given.
    Valid: a legal hold; the time alone proves nothing about safety.
    Check: sixty whole days meet a rule of sixty, fifty-nine do not.

    >>> rule = {"days": {"value": 60, "status": "memory"}}
    >>> check_curing([], "F", 0, 0, rule, 1)["verdict"]
    'not_assessed'
    """
    days = rule["days"]
    limits = rule.get("min_temp")
    reasons: list[dict[str, object]] = []
    limit = limits.get(unit) if limits else None
    if limits and limit is None:
        reasons.append({"key": "rule_not_printed_in_unit", "unit": unit})
    if limits and not readings:
        reasons.append({"key": "no_readings"})
    if days["status"] == "memory" or (limit and limit["status"] == "memory"):
        reasons.append({"key": "rule_figure_from_memory"})
    if limits and limit is not None:
        held = curing_time(readings, start_ms, now_ms, limit["value"], gap_max_ms)
    else:
        if now_ms < start_ms:
            raise Refused("before_start", "now_ms", now_ms, start_ms)
        span_ms = 0 if limits else now_ms - start_ms
        held = {"counted_ms": span_ms, "below_ms": 0, "unknown_ms": 0}
        held["whole_days"] = int(span_ms // MS_PER_DAY)
    verdict = "not_assessed"
    if not reasons:
        met = held["whole_days"] >= days["value"]
        verdict = "meets" if met else "does_not_meet"
        if not met:
            reasons.append(
                {
                    "key": "days_still_to_hold",
                    "value": held["whole_days"],
                    "limit": days["value"],
                }
            )
    return {
        "verdict": verdict,
        "reasons": reasons,
        "counted_days": held["counted_ms"] / MS_PER_DAY,
        "needed_days": days["value"],
        "below_days": held["below_ms"] / MS_PER_DAY,
        "unknown_days": held["unknown_ms"] / MS_PER_DAY,
    }
