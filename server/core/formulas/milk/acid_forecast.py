"""What the pH readings of a make say about when a pH will be reached.

Start and end of the curve are the recipe's; two numbers are fitted, how fast
and how late. Until the pH has fallen by ENOUGH_DROP the readings cannot tell
the two apart, and there is no forecast: show the recipe's own time.

The end a make really goes to is not quite the recipe's either, so the recipe
states how far it strays, and the range carries that as well as the meter's own
spread and the scatter seen.
"""

import math

from ...numbers.bounds import require_above, require_at_least
from ...numbers.lines import (
    PRIOR_READINGS,
    SET_ASIDE_SD,
    pooled_var,
    t90,
)
from ...numbers.readings import require_series
from .acid import gompertz_ph, gompertz_time_s
from .acid_fit import fit_gompertz, fit_near, inside, slopes

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

ENOUGH_DROP = 0.15  # pH. By simulation: before it, forecasts miss by hours.
# Residual spread of this curve fitted to the five published make schedules of
# Hill & Ferrer, Cheese Making Technology e-Book, table 15.1: 0.044 to 0.076.
SHAPE_SD_PH = 0.06
# A make off this curve is off by as much at the next reading and at the target too,
# so more readings do not wear its shape off. Shares of the spread that scatter and
# that last, by simulation of makes that follow another law.
SHAPE_SCATTER = 5 / 6
SHAPE_LASTING = 2 / 3
NORMAL_90 = 1.6448536  # Standard deviations that span 90 % of a normal spread.
WIDEST_SHARE = 2.0  # A latest time over e² = 7 times the likely one says nothing.


def forecast(
    times_s: list[float],
    phs: list[float],
    target_ph: float,
    start_ph: float,
    end_ph: float,
    reading_sd_ph: float,
    shape_sd_ph: float,
    end_sd_ph: float,
) -> "dict[str, Any]":
    """Return when the pH will have fallen to a target, from the readings so far.

    The range is lopsided: a make is late by more than it is early. A single
    reading far off the curve through all the others is set aside and named.

    Args:
        times_s: time of each reading since the starter [s]; rising.
        phs: pH read.
        target_ph: pH asked about; below `start_ph`, above `end_ph`.
        start_ph: pH far before the fall, from the recipe.
        end_ph: pH that makes of this recipe end at.
        reading_sd_ph: standard deviation of one reading; above 0.
        shape_sd_ph: how far makes stray from this curve's shape; SHAPE_SD_PH, or
            what the creamery's own makes show; 0 or more.
        end_sd_ph: standard deviation of the end among makes; 0 or more.

    Returns:
        {"value_s", "low_s", "high_s"}: time since the starter, 90 % range; None
        where not known. {"fall_ph_s", "lag_s"} or None; {"set_aside"}: list of
        indexes. {"basis"}: "acid.readings", "acid.not_enough_readings" (fewer than
        three), "acid.not_enough_drop", "acid.no_curve" or "acid.too_uncertain".

    Raises:
        Refused: readings that do not pair or rise, a target not between the
            ends, or a spread out of range.

    Source: least squares; range by the delta method on the logarithm of time.
    Valid: coverage tested by simulation at 3 to 9 readings.
    Check: the published Gouda points to 3 h (see `fit_gompertz`) say 5.40 within
        a range that holds the published 8 h.

    >>> times_s, phs = [0, 3600, 5400, 10800], [6.60, 6.55, 6.45, 6.35]
    >>> told = forecast(times_s, phs, 5.4, 6.6, 5.2, 0.02, SHAPE_SD_PH, 0.05)
    >>> told["low_s"] < 8 * 3600 < told["high_s"]
    True
    """
    require_series(times_s, "phs", phs, 0)
    require_above("reading_sd_ph", reading_sd_ph, 0)
    require_at_least("shape_sd_ph", shape_sd_ph, 0)
    require_at_least("end_sd_ph", end_sd_ph, 0)
    gompertz_time_s(target_ph, start_ph, end_ph, 1.0, 0.0)  # refuses what cannot be
    if len(phs) < 3:
        return _no_forecast("acid.not_enough_readings")
    if start_ph - phs[-1] < ENOUGH_DROP:
        return _no_forecast("acid.not_enough_drop")
    if not inside(phs, start_ph, end_ph):
        return _no_forecast("acid.no_curve")
    scatter_ph = SHAPE_SCATTER * shape_sd_ph
    stray_ph = math.sqrt(reading_sd_ph * reading_sd_ph + scatter_ph * scatter_ph)
    fit = fit_gompertz(times_s, phs, start_ph, end_ph)
    kept, far = _kept(times_s, phs, start_ph, end_ph, stray_ph, fit)
    if far:
        times_s, phs = [times_s[i] for i in kept], [phs[i] for i in kept]
        fit = fit_gompertz(times_s, phs, start_ph, end_ph)
    pair = fit["pair"]
    value_s = _reach_s(target_ph, start_ph, end_ph, fit)
    if value_s <= 0 or not fit["settled"]:
        return _no_forecast("acid.no_curve")
    width_s = _fit_width_s(times_s, phs, start_ph, end_ph, fit, value_s, stray_ph)
    early_s = value_s
    late_s: "float | None" = value_s
    if end_sd_ph > 0:
        end = end_ph - end_sd_ph
        early = fit_near(times_s, phs, start_ph, end, pair)
        early_s = _reach_s(target_ph, start_ph, end, early)
        end, late_s = end_ph + end_sd_ph, None
        if target_ph > end:
            late = fit_near(times_s, phs, start_ph, end, pair)
            late_s = _reach_s(target_ph, start_ph, end, late)
    end_s = value_s - early_s if late_s is None else (late_s - early_s) / 2
    shape_s = (
        SHAPE_LASTING * shape_sd_ph / _slope_ph_s(target_ph, start_ph, end_ph, fit)
    )
    doubt_s = NORMAL_90 * math.sqrt(end_s * end_s + shape_s * shape_s)
    share = math.sqrt(width_s * width_s + doubt_s * doubt_s) / value_s
    if share > WIDEST_SHARE:
        return _no_forecast("acid.too_uncertain")
    return {
        "value_s": value_s,
        "low_s": value_s * math.exp(-share),
        "high_s": value_s * math.exp(share) if late_s is not None else None,
        "fall_ph_s": fit["fall_ph_s"],
        "lag_s": fit["lag_s"],
        "set_aside": far,
        "basis": "acid.readings",
    }


def _kept(
    times_s: list[float],
    phs: list[float],
    start_ph: float,
    end_ph: float,
    stray_ph: float,
    whole: "dict[str, Any]",
) -> tuple[list[int], list[int]]:
    every = list(range(len(phs)))
    freedom = len(phs) - 2
    if len(phs) < 5 or whole["square_sum"] <= 4 * freedom * stray_ph**2:
        return every, []
    fits = []
    for i in every:
        others = [j for j in every if j != i]
        xs, ys = [times_s[j] for j in others], [phs[j] for j in others]
        if not inside(ys, start_ph, end_ph):
            continue
        fit = fit_gompertz(xs, ys, start_ph, end_ph)
        pair = (fit["fall_ph_s"], fit["lag_s"])
        miss = abs(phs[i] - gompertz_ph(times_s[i], start_ph, end_ph, pair[0], pair[1]))
        fits.append((fit["square_sum"], miss, i, others))
    best = min(fits, key=lambda trial: trial[0])
    spread = math.sqrt(pooled_var(best[0], freedom - 1, stray_ph))
    if best[1] > SET_ASIDE_SD * spread:
        return best[3], [best[2]]
    return every, []


def _reach_s(
    target_ph: float, start_ph: float, end_ph: float, fit: "dict[str, Any]"
) -> float:
    return gompertz_time_s(target_ph, start_ph, end_ph, fit["fall_ph_s"], fit["lag_s"])


def _fit_width_s(
    times_s: list[float],
    phs: list[float],
    start_ph: float,
    end_ph: float,
    fit: "dict[str, Any]",
    value_s: float,
    stray_ph: float,
) -> float:
    pair = (math.log(fit["fall_ph_s"]), fit["lag_s"])
    rows = slopes(times_s, phs, start_ph, end_ph, pair)
    aa = sum([a * a for _, a, _ in rows])
    bb = sum([b * b for _, _, b in rows])
    ab = sum([a * b for _, a, b in rows])
    det = aa * bb - ab * ab
    if det <= 0:
        return math.inf
    freedom = len(phs) - 2
    variance = pooled_var(fit["square_sum"], freedom, stray_ph)
    # Slopes of the time in ln(fall) and in lag are -(time - lag) and 1.
    gap_s = value_s - fit["lag_s"]
    time_var = variance * (gap_s * gap_s * bb + 2 * gap_s * ab + aa) / det
    return t90(freedom + PRIOR_READINGS) * math.sqrt(time_var)


def _slope_ph_s(
    ph: float, start_ph: float, end_ph: float, fit: "dict[str, Any]"
) -> float:
    """Return how fast the fitted curve falls where it has a pH [pH/s]."""
    drop = start_ph - end_ph
    part = (start_ph - ph) / drop
    # Of the curve's own form: d(part)/dt is its rate times part times -ln(part).
    return fit["fall_ph_s"] * math.e * part * -math.log(part)


def _no_forecast(basis: str) -> "dict[str, Any]":
    return {
        "value_s": None,
        "low_s": None,
        "high_s": None,
        "fall_ph_s": None,
        "lag_s": None,
        "set_aside": [],
        "basis": basis,
    }
