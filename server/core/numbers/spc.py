"""Is this make like the others? Control charts for one recipe in one creamery.

Only two signals are used, a point outside the limits and a run of eight on one
side; more rules ring more false alarms than a small creamery can look into. With
fewer than ten makes there are no limits at all.
"""

import math

from .bounds import require_above, require_count, require_number, require_within

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.trends import ChartLimits, ChartVerdict


MAKES_MIN = 10  # Fewer say nothing about the spread. A judgement, no source.
RUN_LENGTH = 8  # Western Electric, 1956. From memory.
# Mean range of two over the standard deviation, 2 / sqrt(pi); tables print 1.128.
D2 = 1.1283791670955126
# Upper limit of a range of two over the mean range; tables print 3.267.
D4 = 1 + 3 * math.sqrt(2 - 4 / math.pi) / D2


def moving_ranges(values: "list[float]") -> "list[float]":
    """Return the distances between each value and the one before it.

    >>> moving_ranges([3.0, 5.0, 4.0])
    [2.0, 1.0]
    """
    for value in values:
        require_number("value", value)
    return [abs(values[i] - values[i - 1]) for i in range(1, len(values))]


def individuals_limits(values: "list[float]") -> "ChartLimits":
    """Return the control limits of single values from their moving ranges.

    Args:
        values: one value a make, oldest first; 2 or more.

    Returns:
        {"mean", "low", "high", "mean_range", "range_high", "spread"}; spread is
        the standard deviation that the ranges suggest.

    Raises:
        ValueError: fewer than two values.

    Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2.
    Changed: the exact 2/sqrt(pi) instead of the printed 1.128.
    Valid: makes in the order they were made, all of one recipe.
    Check: the handbook's flow rates: mean 50.81, limits 45.82 and 55.80.

    >>> individuals_limits(
    ...     [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]
    ... )["high"]
    55.80
    """
    require_count("values", len(values), 2, 10000)
    ranges = moving_ranges(values)
    mean = sum(values) / len(values)
    mean_range = sum(ranges) / len(ranges)
    spread = mean_range / D2
    return {
        "mean": mean,
        "low": mean - 3 * spread,
        "high": mean + 3 * spread,
        "mean_range": mean_range,
        "range_high": D4 * mean_range,
        "spread": spread,
    }


def ewma(values: "list[float]", start: float, weight: float) -> "list[float]":
    """Return the exponentially weighted moving average, one for each value.

    Args:
        values: one value a make, oldest first.
        start: where the average starts, the target or the mean.
        weight: share of the newest value; above 0, at most 1, usually 0.2 to 0.3.

    Returns:
        The average after each value.

    Raises:
        ValueError: weight out of range.

    Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4.
    Check: weight 1 gives the values back.

    >>> ewma([52.0, 47.0], 50.0, 0.3)
    [50.6, 49.52]
    """
    require_number("start", start)
    require_above("weight", weight, 0)
    require_within("weight", weight, 0, 1)
    averages = []
    average = start
    for value in values:
        require_number("value", value)
        average = weight * value + (1 - weight) * average
        averages.append(average)
    return averages


def ewma_limits(
    target: float, spread: float, weight: float, width: float
) -> "dict[str, float]":
    """Return the limits of a weighted moving average after many makes.

    Args:
        target: what the average should stay near.
        spread: standard deviation of single values; above 0.
        weight: share of the newest value; above 0, at most 1.
        width: half width in standard deviations of the average, usually 3.

    Returns:
        {"low", "high"}.

    Raises:
        ValueError: an argument outside its range.

    Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4.
    Check: weight 1 gives the limits of single values.

    >>> ewma_limits(50.0, 2.0539, 0.3, 3.0)["high"]
    52.5884
    """
    require_number("target", target)
    require_above("spread", spread, 0)
    require_above("weight", weight, 0)
    require_within("weight", weight, 0, 1)
    require_above("width", width, 0)
    half = width * spread * math.sqrt(weight / (2 - weight))
    return {"low": target - half, "high": target + half}


def runs(values: "list[float]", centre: float, length: int) -> "list[int]":
    """Return where a run on one side of the centre has reached a length.

    Args:
        values: one value a make, oldest first.
        centre: mean or target; a value on it ends a run.
        length: values in a row that count as a run; 2 or more, usually 8.

    Returns:
        Index of each value that stands at or past the length, in order.

    Raises:
        ValueError: length below 2.

    Source: Western Electric 1956 (from memory).
    Check: eight above give the eighth.

    >>> runs([1.0] * 8, 0.0, 8)
    [7]
    """
    require_number("centre", centre)
    require_count("length", length, 2, 100)
    reached = []
    side, count = 0, 0
    for i in range(len(values)):
        now = (values[i] > centre) - (values[i] < centre)
        count = count + 1 if now == side and now != 0 else abs(now)
        side = now
        if count >= length:
            reached.append(i)
    return reached


def control_chart(values: "list[float]") -> "ChartVerdict":
    """Return a recipe's chart: its limits, and the makes unlike the others.

    Args:
        values: one value a make, oldest first.

    Returns:
        {"verdict", "count", "needed", "limits", "beyond", "runs"}: the verdict is
        "not_assessed" below ten makes (limits None), "like_the_others" or
        "unlike_the_others"; beyond and runs are indices.

    Raises:
        ValueError: a value that is not a number.

    Source: individuals_limits and runs.
    Check: nine makes have no limits.

    >>> control_chart([5.2] * 9)["verdict"]
    'not_assessed'
    """
    for value in values:
        require_number("value", value)
    chart: "ChartVerdict" = {
        "verdict": "not_assessed",
        "count": len(values),
        "needed": MAKES_MIN,
        "limits": None,
        "beyond": [],
        "runs": [],
    }
    if len(values) < MAKES_MIN:
        return chart
    limits = individuals_limits(values)
    # Equal values have no spread, and their mean differs from them in the last
    # binary digit; that is no signal.
    noise = 1e-9 * abs(limits["mean"])
    low, high = limits["low"] - noise, limits["high"] + noise
    beyond = [i for i in range(len(values)) if not low <= values[i] <= high]
    level = [
        0.0 if abs(v - limits["mean"]) <= noise else v - limits["mean"] for v in values
    ]
    in_runs = runs(level, 0.0, RUN_LENGTH)
    chart["limits"] = limits
    chart["beyond"] = beyond
    chart["runs"] = in_runs
    signal = beyond or in_runs
    chart["verdict"] = "unlike_the_others" if signal else "like_the_others"
    return chart
