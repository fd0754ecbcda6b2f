"""A recipe's own pH curve, and a make that runs along it early, late, fast or slow.

Where a recipe or a creamery has a curve of its own, it forecasts better than a
formula: scald, wash and salt bend real curves. A make is taken to follow it in
its own time, t = lag + pace × u, where u is the curve's time. Each reading says
at which u the make is, the more surely the steeper the curve is there; how much
lag and pace stray among makes is handed in. So there is a forecast from the
start, the recipe's own, and readings sharpen it.
"""

import math

from ...numbers.bounds import require_above, require_within
from ...numbers.lines import PRIOR_READINGS, pooled_var, t90, weighted_line
from ...numbers.readings import require_series
from ...numbers.refused import require

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

NORMAL_90 = 1.6448536  # Standard deviations that span 90 % of a normal spread.
ROUNDS = 12  # Each halves what is left; slopes change at the curve's points only.


def curve_ph(
    elapsed_s: float, curve_times_s: list[float], curve_phs: list[float]
) -> float:
    """Return the pH that a recipe's curve has at a time.

    Args:
        elapsed_s: time since the starter [s]; within the curve.
        curve_times_s: times of the curve's points [s]; rising, two or more.
        curve_phs: their pH; none above the one before.

    Returns:
        pH, straight between points.

    Raises:
        Refused: a time outside the curve, or a curve that rises.

    Source: linear interpolation.
    Check: Gouda's table has 6.45 at 90 and 6.35 at 180 min, so 6.40 at 135.

    >>> curve_ph(8100, [5400, 10800], [6.45, 6.35])
    6.40
    """
    _require_falling(curve_times_s, curve_phs)
    require_within("elapsed_s", elapsed_s, curve_times_s[0], curve_times_s[-1])
    i = 1
    while elapsed_s > curve_times_s[i]:
        i += 1
    span_s = curve_times_s[i] - curve_times_s[i - 1]
    part = (elapsed_s - curve_times_s[i - 1]) / span_s
    return curve_phs[i - 1] + part * (curve_phs[i] - curve_phs[i - 1])


def curve_time_s(
    ph: float, curve_times_s: list[float], curve_phs: list[float]
) -> float:
    """Return when a recipe's curve first has a pH.

    Args:
        ph: pH asked about; within the curve.
        curve_times_s: times of the curve's points [s]; rising, two or more.
        curve_phs: their pH; none above the one before.

    Returns:
        Time since the starter [s].

    Raises:
        Refused: a pH outside the curve, or a curve that rises.

    Source: linear interpolation.
    Check: Gouda's table has 6.35 at 180 and 5.40 at 480 min, so 5.875 at 330.

    >>> curve_time_s(5.875, [10800, 28800], [6.35, 5.40]) / 60
    330.0
    """
    _require_falling(curve_times_s, curve_phs)
    require_within("ph", ph, curve_phs[-1], curve_phs[0])
    i = 1
    while ph < curve_phs[i]:
        i += 1
    drop = curve_phs[i - 1] - curve_phs[i]
    if drop == 0:
        return curve_times_s[i - 1]
    part = (curve_phs[i - 1] - ph) / drop
    return curve_times_s[i - 1] + part * (curve_times_s[i] - curve_times_s[i - 1])


def line_on_curve(
    times_s: list[float],
    phs: list[float],
    curve: "dict[str, list[float]]",
    reading_sd_ph: float,
    spread: dict[str, float],
) -> "dict[str, Any]":
    """Return the line from the curve's time to the make's, for any number of goals.

    Args:
        times_s: time of each reading since the starter [s]; rising; may be empty.
        phs: pH read.
        curve: {"times_s", "phs"} of the recipe, as `curve_ph` takes them.
        reading_sd_ph: standard deviation of one reading about the curve, meter and
            shape together; above 0.
        spread: {"lag_sd_s", "pace_sd"} among makes: standard deviations of the lag
            [s] and of the pace, which is 1 on the curve; each above 0.

    Returns:
        As `lines.weighted_line`, with {"count"} of the readings.

    Raises:
        Refused: readings that do not pair or rise, a curve that rises or never
            falls, or a spread not above 0.

    Source: weighted least squares with a known spread of lag and pace.
    Check: without readings, the curve's own time.

    >>> curve = {"times_s": [0, 10800, 28800], "phs": [6.60, 6.35, 5.40]}
    >>> spread = {"lag_sd_s": 900, "pace_sd": 0.15}
    >>> line_on_curve([], [], curve, 0.05, spread)["slope"]
    1.0
    """
    curve_times_s, curve_phs = curve["times_s"], curve["phs"]
    _require_falling(curve_times_s, curve_phs)
    require_series(times_s, "phs", phs, 0)
    require_above("reading_sd_ph", reading_sd_ph, 0)
    require_above("lag_sd_s", spread["lag_sd_s"], 0)
    require_above("pace_sd", spread["pace_sd"], 0)
    lag_s, pace = 0.0, 1.0
    for _ in range(ROUNDS):
        # Slopes are taken where the make should be, not where a noisy reading says:
        # low readings fall on steeper parts and would weigh more than high ones.
        where = [(time_s - lag_s) / pace for time_s in times_s]
        points = [_point(u, ph, curve_times_s, curve_phs) for u, ph in zip(where, phs)]
        variance = _variance(where, points, reading_sd_ph)
        line = _line(points, times_s, variance, spread)
        lag_s = (lag_s + line["y"] - line["slope"] * line["x"]) / 2
        pace = (pace + max(line["slope"], 0.1)) / 2
    fitted: "dict[str, Any]" = dict(line)
    fitted["count"] = len(phs)
    return fitted


def reach_on_curve(
    fitted: "dict[str, Any]", target_ph: float, curve: "dict[str, list[float]]"
) -> "dict[str, Any]":
    """Return when a make will have a pH, from its line on the curve.

    Args:
        fitted: answer of `line_on_curve`.
        target_ph: pH asked about; within the curve.
        curve: {"times_s", "phs"} of the recipe, as `line_on_curve` had it.

    Returns:
        {"value_s", "low_s", "high_s"}: time since the starter, 90 % range;
        {"lag_s"}: how late the make is at the starter; {"pace"}: above 1 when it
        is slow; {"basis"}: "acid.curve" without readings, else
        "acid.curve_and_readings".

    Raises:
        Refused: a pH outside the curve.

    Source: as `line_on_curve`.
    Valid: coverage tested by simulation at 0 to 6 readings.
    Check: without readings, the curve's own time.

    >>> curve = {"times_s": [0, 10800, 28800], "phs": [6.60, 6.35, 5.40]}
    >>> spread = {"lag_sd_s": 900, "pace_sd": 0.15}
    >>> line = line_on_curve([], [], curve, 0.05, spread)
    >>> reach_on_curve(line, 6.35, curve)["value_s"]
    10800.0
    """
    count = fitted["count"]
    ahead_s = curve_time_s(target_ph, curve["times_s"], curve["phs"]) - fitted["x"]
    value_s = fitted["y"] + fitted["slope"] * ahead_s
    time_var = fitted["centre_var"] + fitted["slope_var"] * ahead_s * ahead_s
    # Fewer than three readings say nothing of their scatter: it is the stated one.
    t_value = t90(count - 2 + PRIOR_READINGS) if count > 2 else NORMAL_90
    width_s = t_value * math.sqrt(time_var)
    return {
        "value_s": value_s,
        "low_s": value_s - width_s,
        "high_s": value_s + width_s,
        "lag_s": fitted["y"] - fitted["slope"] * fitted["x"],
        "pace": fitted["slope"],
        "basis": "acid.curve_and_readings" if count else "acid.curve",
    }


def _line(
    points: list[tuple[float, float]],
    times_s: list[float],
    variance: float,
    spread: dict[str, float],
) -> dict[str, float]:
    # What is known of the lag counts as one more reading, at the starter.
    return weighted_line(
        [0.0] + [point[0] for point in points],
        [0.0] + list(times_s),
        [1 / spread["lag_sd_s"] ** 2] + [point[1] ** 2 / variance for point in points],
        1.0,
        1 / spread["pace_sd"] ** 2,
    )


def _variance(
    where: list[float], points: list[tuple[float, float]], reading_sd_ph: float
) -> float:
    used = [i for i in range(len(points)) if points[i][1] > 0]
    if len(used) < 3:
        return reading_sd_ph * reading_sd_ph
    misses = [(points[i][0] - where[i]) * points[i][1] for i in used]
    square_sum = sum([miss * miss for miss in misses])
    return pooled_var(square_sum, len(used) - 2, reading_sd_ph)


def _point(
    elapsed_s: float, ph: float, curve_times_s: list[float], curve_phs: list[float]
) -> tuple[float, float]:
    # Curve's time that a reading points to, by the slope [pH/s] where the make
    # should be, and that slope; 0 where the curve is flat and says nothing.
    if elapsed_s < curve_times_s[0]:
        return elapsed_s, 0.0
    i = 1
    while i < len(curve_times_s) - 1 and elapsed_s > curve_times_s[i]:
        i += 1
    drop = curve_phs[i - 1] - curve_phs[i]
    if drop == 0:
        return elapsed_s, 0.0
    slope = drop / (curve_times_s[i] - curve_times_s[i - 1])
    return curve_times_s[i - 1] + (curve_phs[i - 1] - ph) / slope, slope


def _require_falling(curve_times_s: list[float], curve_phs: list[float]) -> None:
    require_series(curve_times_s, "curve_phs", curve_phs, 2)
    for before, after in zip(curve_phs, curve_phs[1:]):
        require(after <= before, "rises", "curve_phs", after, before)
    first, last = curve_phs[0], curve_phs[-1]
    require(last < first, "never_falls", "curve_phs", last, first)
