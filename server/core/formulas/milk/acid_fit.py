"""Fit a falling pH to the readings of a make."""

import math

from ...numbers.lines import (
    median,
    robust_line,
)
from ...numbers.readings import require_series
from ...numbers.refused import require
from .acid import gompertz_ph

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


MOST_ROUNDS = 60  # Rounds of fitting; five to ten are usual.


def fit_gompertz(
    times_s: list[float], phs: list[float], start_ph: float, end_ph: float
) -> "dict[str, Any]":
    """Return the curve that runs nearest to readings, between two known ends.

    Args:
        times_s: time of each reading since the starter [s]; rising, two or more.
        phs: pH read.
        start_ph: pH far before the fall; above `end_ph`.
        end_ph: pH far after it.

    Returns:
        {"fall_ph_s", "lag_s"} as `gompertz_ph` takes them; {"pair"}: ln of the fall
        and the lag, as fitted; {"square_sum"} of the residuals; {"worst"}: largest
        residual, read less curve; {"settled"}: false when the fit still moved, so
        that its numbers mean nothing.

    Raises:
        Refused: readings that do not pair or rise, an end not below the start,
            or no reading between the two ends.

    Source: Gauss-Newton with Marquardt's damping, on the logarithm of the fall.
    Check: the published Gouda points 6.60, 6.55, 6.45, 6.35, 5.40 at 0, 1, 1.5,
        3, 8 h: 0.22266 per hour, lag 1.6796 h.

    >>> times_s = [0, 3600, 5400, 10800, 28800]
    >>> fit = fit_gompertz(times_s, [6.60, 6.55, 6.45, 6.35, 5.40], 6.6, 5.2)
    >>> fit["fall_ph_s"] * 3600
    0.22266
    """
    require_series(times_s, "phs", phs, 2)
    gompertz_ph(0.0, start_ph, end_ph, 1.0, 0.0)  # refuses ends that make no curve
    pair = _first_guess(times_s, phs, start_ph, end_ph)
    return fit_near(times_s, phs, start_ph, end_ph, pair)


def fit_near(
    times_s: list[float],
    phs: list[float],
    start_ph: float,
    end_ph: float,
    pair: tuple[float, float],
) -> "dict[str, Any]":
    """Return as fit_gompertz, begun at a fit near by.

    Args:
        times_s: time of each reading since the starter [s]; rising.
        phs: pH read.
        start_ph: pH far before the fall; above `end_ph`.
        end_ph: pH far after it.
        pair: ln of the fall and the lag to begin at.

    Returns:
        See `fit_gompertz`.

    Source: Gauss-Newton with Marquardt's damping, on the logarithm of the fall.
    Check: from its own answer it does not move.

    >>> times_s = [0, 3600, 5400, 10800, 28800]
    >>> phs = [6.60, 6.55, 6.45, 6.35, 5.40]
    >>> near = (math.log(0.2 / 3600), 6000.0)
    >>> fit_near(times_s, phs, 6.6, 5.2, near)["fall_ph_s"] * 3600
    0.22266
    """
    rows, damping, settled = slopes(times_s, phs, start_ph, end_ph, pair), 1e-3, False
    square_sum = _square_sum(rows)
    for _ in range(MOST_ROUNDS):
        step = _step(rows, damping)
        # A step over e² in speed leaves where the slopes still mean anything.
        tried = (pair[0] + max(-2.0, min(2.0, step[0])), pair[1] + step[1])
        tried_rows = slopes(times_s, phs, start_ph, end_ph, tried)
        tried_sum = _square_sum(tried_rows)
        better = tried_sum <= square_sum
        settled = abs(step[0]) < 1e-7 and abs(step[1]) < 1e-7 * (1 + abs(pair[1]))
        if better:
            pair, rows, square_sum = tried, tried_rows, tried_sum
        damping = damping / 10 if better else damping * 10
        if settled:
            break
    misses = [row[0] for row in rows]
    return {
        "fall_ph_s": math.exp(pair[0]),
        "lag_s": pair[1],
        "pair": pair,
        "square_sum": square_sum,
        "worst": max(misses, key=abs),
        "settled": settled,
    }


def _first_guess(
    times_s: list[float], phs: list[float], start_ph: float, end_ph: float
) -> tuple[float, float]:
    drop = start_ph - end_ph
    at = inside(phs, start_ph, end_ph)
    require(len(at) > 0, "none_between", "phs", phs, [end_ph, start_ph])
    # ln(-ln(part)) is straight in time, and 1 where the lag ends.
    xs = [times_s[i] for i in at]
    ys = [math.log(-math.log((start_ph - phs[i]) / drop)) for i in at]
    slope = robust_line(xs, ys)[1] if len(xs) > 1 else 0.0
    if slope >= 0:
        slope = -1.0 / (1 + abs(xs[-1]))  # a fall over the time so far
    middle = median(xs)
    height = median([y - slope * (x - middle) for x, y in zip(xs, ys)])
    return math.log(-slope * drop / math.e), middle + (1 - height) / slope


def inside(phs: list[float], start_ph: float, end_ph: float) -> list[int]:
    """Return the places of the readings between the two ends, clear of both.

    Args:
        phs: pH read.
        start_ph: pH far before the fall; above `end_ph`.
        end_ph: pH far after it.

    Returns:
        Indices into phs, rising.

    Source: at an end the logarithm of the fall has no value.
    Check: an end itself is not inside.

    >>> inside([6.6, 6.4, 5.3, 5.2], 6.6, 5.2)
    [1, 2]
    """
    margin = 0.001 * (start_ph - end_ph)
    return [i for i in range(len(phs)) if end_ph + margin < phs[i] < start_ph - margin]


def slopes(
    times_s: list[float],
    phs: list[float],
    start_ph: float,
    end_ph: float,
    pair: tuple[float, float],
) -> list[tuple[float, float, float]]:
    """Return how far each reading is off a curve, and how that depends on the pair.

    Args:
        times_s: time of each reading since the starter [s].
        phs: pH read.
        start_ph: pH far before the fall; above `end_ph`.
        end_ph: pH far after it.
        pair: ln of the fall and the lag of the curve.

    Returns:
        For each reading the residual, read less curve, and the slope of the curve
        in ln of the fall and in the lag.

    Source: the derivatives of the Gompertz curve.
    Check: a reading on the curve has no residual.

    >>> [(miss, _, in_lag)] = slopes([0.0], [5.715], 6.6, 5.2, (-9.0, 0.0))
    >>> miss, in_lag > 0
    (-0.793, True)
    """
    fall_ph_s, lag_s = math.exp(pair[0]), pair[1]
    drop = start_ph - end_ph
    rate = fall_ph_s * math.e / drop
    rows = []
    for time_s, ph in zip(times_s, phs):
        power = rate * (lag_s - time_s) + 1
        inner = math.exp(min(power, 700.0))
        slope = drop * inner * math.exp(-inner) if inner < 700.0 else 0.0
        miss = ph - (start_ph - drop * math.exp(-inner))
        rows.append((miss, slope * (power - 1), slope * rate))
    return rows


def _step(
    rows: list[tuple[float, float, float]], damping: float
) -> tuple[float, float]:
    aa = sum([a * a for _, a, _ in rows]) * (1 + damping)
    bb = sum([b * b for _, _, b in rows]) * (1 + damping)
    ab = sum([a * b for _, a, b in rows])
    ar = sum([a * r for r, a, _ in rows])
    br = sum([b * r for r, _, b in rows])
    det = aa * bb - ab * ab
    if det <= 0:
        return 0.0, 0.0
    return (ar * bb - br * ab) / det, (br * aa - ar * ab) / det


def _square_sum(rows: list[tuple[float, float, float]]) -> float:
    return sum([row[0] * row[0] for row in rows])
