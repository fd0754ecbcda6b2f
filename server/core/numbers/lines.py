"""Straight lines through readings, and when a line reaches a level.

Heating, pressing and acid all ask the same question: from these few readings,
when is the target met, and how sure is that? A weighted line answers it. The
range is the set of times at which the target lies within the line's own
confidence band (Fieller), so it is lopsided when it should be and has no upper
end when the readings do not yet show that the target will come at all.

How noisy one reading is comes from two places: what the thermometer is known
to do, and the scatter seen. They are pooled, the first counting as
PRIOR_READINGS readings, because three or four readings say little about their
own scatter.
"""

import math

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

# A reading this many standard deviations off the robust line is set aside: one
# in 16,000 true ones is, a mistyped digit nearly always.
SET_ASIDE_SD = 4.0
PRIOR_READINGS = 6  # This project's judgement; coverage is tested by simulation.
SPREAD_READINGS = 24  # 276 pairs; the phone sorts slowly.


def t90(freedom: float) -> float:
    """Return the 95th percentile of Student's t, which spans a 90 % range.

    Cornish-Fisher about the normal; two exact values where that is too coarse.

    Args:
        freedom: degrees of freedom; 1 or more.

    Returns:
        Multiple of the standard error.

    Source: Abramowitz & Stegun 26.7.5.
    Check: 10 degrees of freedom: 1.812.

    >>> t90(10)
    1.8125
    """
    if freedom < 1.5:
        return 6.3138
    if freedom < 2.5:
        return 2.9200
    z = 1.6448536
    first = (z**3 + z) / 4
    second = (5 * z**5 + 16 * z**3 + 3 * z) / 96
    third = (3 * z**7 + 19 * z**5 + 17 * z**3 - 15 * z) / 384
    return z + first / freedom + second / freedom**2 + third / freedom**3


def median(values: list[float]) -> float:
    """Return the middle value, or the mean of the two middle ones.

    >>> median([3, 1, 2, 10])
    2.5
    """
    ordered = sorted(values)
    middle = len(ordered) // 2
    if len(ordered) % 2:
        return ordered[middle]
    return (ordered[middle - 1] + ordered[middle]) / 2


def robust_line(xs: list[float], ys: list[float]) -> tuple[float, float]:
    """Return intercept and slope as medians, so that one bad reading is harmless.

    Args:
        xs: abscissae, all different; two or more.
        ys: ordinates.

    Returns:
        Intercept at x = 0 and slope (Theil-Sen).

    Source: Theil 1950, Sen 1968 (from memory; the median of pairwise slopes).
    Changed: beyond SPREAD_READINGS points, as many evenly spaced ones are used.
    Check: a line with one wild point keeps its slope.

    >>> robust_line([0, 1, 2, 3, 4], [1, 3, 5, 70, 9])
    (1.0, 2.0)
    """
    count = min(len(xs), SPREAD_READINGS)
    picks = [i * (len(xs) - 1) // (count - 1) for i in range(count)]
    slope = median(
        [
            (ys[j] - ys[i]) / (xs[j] - xs[i])
            for a, i in enumerate(picks)
            for j in picks[a + 1 :]
        ]
    )
    return median([ys[i] - slope * xs[i] for i in picks]), slope


def weighted_line(
    xs: list[float],
    ys: list[float],
    weights: list[float],
    prior_slope: float,
    prior_weight: float,
) -> dict[str, float]:
    """Return the weighted least-squares line, drawn to a slope known before.

    Args:
        xs: abscissae.
        ys: ordinates.
        weights: one over the variance of each ordinate.
        prior_slope: slope known from earlier makes.
        prior_weight: one over its variance; 0 when nothing is known.

    Returns:
        {"x", "y", "slope"}: the line through the weighted centre;
        {"centre_var", "slope_var"}: variances of height there and of slope, which
        are independent.

    Source: NIST/SEMATECH e-Handbook 4.4.3 (weighted least squares).
    Check: three points on a line of slope 2.

    >>> weighted_line([0, 1, 2], [1, 3, 5], [1, 1, 1], 0, 0)["slope"]
    2.0
    """
    total = sum(weights)
    x_mean = sum([w * x for w, x in zip(weights, xs)]) / total
    y_mean = sum([w * y for w, y in zip(weights, ys)]) / total
    spread = sum([w * (x - x_mean) ** 2 for w, x in zip(weights, xs)])
    product = sum([w * (x - x_mean) * y for w, x, y in zip(weights, xs, ys)])
    knowledge = spread + prior_weight
    return {
        "x": x_mean,
        "y": y_mean,
        "slope": (product + prior_weight * prior_slope) / knowledge,
        "centre_var": 1 / total,
        "slope_var": 1 / knowledge,
    }


def crossing(
    line: dict[str, float], level: float, t_value: float
) -> tuple[float | None, float | None, float | None]:
    """Return when a rising or falling line reaches a level, with its range.

    Args:
        line: as from `weighted_line`.
        level: height wanted.
        t_value: multiple of the standard error that spans the range.

    Returns:
        (x, low, high); x is None when the slope is 0, and an end is None where
        the readings do not bound it.

    Source: Fieller's theorem, Draper & Smith, Applied Regression Analysis,
        inverse estimation (from memory; coverage is tested by simulation).
    Check: an exact line has no width.

    >>> line = weighted_line([0, 1, 2], [1, 3, 5], [1, 1, 1], 0, 0)
    >>> crossing(line, 9, 0)
    (4.0, 4.0, 4.0)
    """
    rise, slope = level - line["y"], line["slope"]
    if slope == 0:
        return None, None, None
    square = t_value * t_value
    # |rise - slope·d| <= t·sqrt(centre_var + slope_var·d²), squared.
    a = slope * slope - square * line["slope_var"]
    b = slope * rise
    c = rise * rise - square * line["centre_var"]
    root = b * b - a * c
    best = line["x"] + rise / slope
    if root < 0:
        return best, None, None
    width = math.sqrt(root)
    if a <= 0:
        # The slope may be 0, so only the end nearer to the readings is bounded.
        reach = b + width if b >= 0 else b - width
        if c <= 0 or reach == 0:
            return best, None, None
        near = line["x"] + c / reach
        return (best, near, None) if b >= 0 else (best, None, near)
    return best, line["x"] + (b - width) / a, line["x"] + (b + width) / a


def pooled_var(square_sum: float, freedom: int, reading_sd: float) -> float:
    """Return the variance of one reading from its scatter and what is known.

    Args:
        square_sum: sum of squared residuals, in units of the reading.
        freedom: residuals less fitted numbers; 0 or more.
        reading_sd: standard deviation known for the instrument.

    Returns:
        Variance of one reading.

    Source: pooled variance, each part weighted by its degrees of freedom.
    Check: with no residuals it is the known one.

    >>> pooled_var(0.0, 0, 0.2)
    0.04
    """
    known = PRIOR_READINGS * reading_sd * reading_sd
    return (square_sum + known) / (freedom + PRIOR_READINGS)


def set_aside(
    xs: list[float], ys: list[float], sds: list[float]
) -> tuple[list[int], list[int]]:
    """Return which readings to keep and which lie far off the robust line.

    Fewer than five readings cannot say which one is wrong. When more than a
    quarter look wrong it is the line that is, so all are kept.

    Args:
        xs: abscissae, all different.
        ys: ordinates.
        sds: standard deviation known for each ordinate.

    Returns:
        Indexes kept and indexes set aside, each rising.

    Source: Theil-Sen line; 1.4826 times the median absolute residual estimates
        the standard deviation (normal distribution).
    Check: the wild point of `robust_line`'s example is set aside.

    >>> set_aside([0, 1, 2, 3, 4], [1, 3, 5, 70, 9], [1, 1, 1, 1, 1])
    ([0, 1, 2, 4], [3])
    """
    every = list(range(len(xs)))
    if len(xs) < 5:
        return every, []
    at_zero, slope = robust_line(xs, ys)
    misses = [abs(ys[i] - at_zero - slope * xs[i]) / sds[i] for i in every]
    scale = max(1.0, 1.4826 * median(misses))
    far = [i for i in every if misses[i] > SET_ASIDE_SD * scale]
    if 4 * len(far) > len(xs):
        return every, []
    return [i for i in every if i not in far], far


def reach(
    xs: list[float],
    ys: list[float],
    sds: list[float],
    prior: tuple[float, float],
    level: float,
) -> "dict[str, Any]":
    """Return when the line through readings reaches a level, with a 90 % range.

    Args:
        xs: abscissae, all different; two or more, or one with a prior.
        ys: ordinates.
        sds: standard deviation known for each ordinate.
        prior: slope known before and one over its variance (0: nothing known).
        level: height wanted.

    Returns:
        {"value", "low", "high"}: None where not known; {"slope"}: of the line;
        {"slope_width"}: half its 90 % range; {"set_aside"}: indexes not used.

    Source: weighted least squares; Fieller's theorem.
    Check: an exact line reaches its level where it should.

    >>> reach([0, 1, 2], [1, 3, 5], [1, 1, 1], (0, 0), 9)["value"]
    4.0
    """
    kept, far = set_aside(xs, ys, sds)
    xs, ys = [xs[i] for i in kept], [ys[i] for i in kept]
    weights = [1 / (sds[i] * sds[i]) for i in kept]
    freedom = max(0, len(kept) - 2)
    if freedom:
        # Scatter about the line without the prior: a wrong prior is no noise.
        free = weighted_line(xs, ys, weights, 0, 0)
        slope, shift = free["slope"], free["y"] - free["slope"] * free["x"]
        misses = [y - shift - slope * x for x, y in zip(xs, ys)]
        square_sum = sum([w * miss * miss for w, miss in zip(weights, misses)])
        variance = pooled_var(square_sum, freedom, 1.0)
        weights = [w / variance for w in weights]
    line = weighted_line(xs, ys, weights, prior[0], prior[1])
    t_value = t90(freedom + PRIOR_READINGS)
    value, low, high = crossing(line, level, t_value)
    return {
        "value": value,
        "low": low,
        "high": high,
        "slope": line["slope"],
        "slope_width": t_value * math.sqrt(line["slope_var"]),
        "set_aside": far,
    }
