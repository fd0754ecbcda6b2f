"""How a make's pH stands against its recipe's curve: on it, slow, fast or stalled.

A pH above the curve's band is slow. A make is stalled when over the last while
its pH fell by less than a quarter of what the curve falls from that same pH on:
so a make that began late but runs is slow, and one that stands still is stalled
even while it lies within the band. Band, span and quarter are this project's own
judgement; the published points of one cheese differ by up to 0.1 pH.

Times count from the step that the curve starts with.
"""

from .acid_curve import curve_ph, curve_time_s

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping
    from typing import Any


BAND_PH = 0.1  # two published sources for one cheese differ by this much
STALL_SPAN_S = 2700.0  # shortest time over which a fall is judged
STALL_FALL_PH = 0.1  # fall that the curve must promise in it, above meter noise
STALL_SHARE = 0.25
# After a stall the next reading is wanted this soon: half a fall that could be told.
STALL_AGAIN_S = 1800.0
# Where the curve itself falls more slowly than that in this time, as at its end,
# nothing can stall.
STALL_WITHIN_S = 21600.0


def acid_state(
    times_s: "list[float]", phs: "list[float]", curve: "Mapping[str, Any]"
) -> "dict[str, Any]":
    """Return how the newest reading stands.

    Args:
        times_s: time of each reading [s]; rising.
        phs: pH read.
        curve: {"times_s", "phs"}, see `formulas.acid_curve.curve_ph`.

    Returns:
        {"state", "ph", "curve_ph", "low_ph", "high_ph", "behind_s", "flat_s"}:
        state "not_known", "on_curve", "slow", "fast" or "stalled"; behind_s is
        how long ago the curve had this pH [s], None off the curve; flat_s is for
        how long a stalled make has not fallen by what could be told [s].

    Source: BAND_PH either side of the recipe's curve; practice, no source.
    Check: a reading on the curve is on it.

    >>> curve = {"times_s": [0, 10800, 28800], "phs": [6.60, 6.35, 5.40]}
    >>> acid_state([14400], [6.35], curve)["state"]
    'slow'
    """
    standing: "dict[str, Any]" = {
        "state": "not_known",
        "ph": None,
        "curve_ph": None,
        "low_ph": None,
        "high_ph": None,
        "behind_s": None,
        "flat_s": None,
    }
    if not times_s or not _has_time(curve, times_s[-1]):
        return standing
    wanted_ph = curve_ph(times_s[-1], curve["times_s"], curve["phs"])
    ph = phs[-1]
    standing.update(
        {
            "state": "on_curve",
            "ph": ph,
            "curve_ph": wanted_ph,
            "low_ph": wanted_ph - BAND_PH,
            "high_ph": wanted_ph + BAND_PH,
        }
    )
    if _has_ph(curve, ph):
        standing["behind_s"] = times_s[-1] - curve_time_s(
            ph, curve["times_s"], curve["phs"]
        )
    if _is_stalled(times_s, phs, curve):
        standing["state"] = "stalled"
        standing["flat_s"] = _flat_s(times_s, phs)
    elif ph > standing["high_ph"] + 1e-9:
        standing["state"] = "slow"
    elif ph < standing["low_ph"] - 1e-9:
        standing["state"] = "fast"
    return standing


def _flat_s(times_s: "list[float]", phs: "list[float]") -> float:
    """Return since when the pH has fallen by less than could be told [s]."""
    since_s = times_s[-1]
    for index in range(len(times_s) - 2, -1, -1):
        if phs[index] - phs[-1] >= STALL_FALL_PH:
            break
        since_s = times_s[index]
    return times_s[-1] - since_s


def _has_time(curve: "Mapping[str, Any]", time_s: float) -> bool:
    return curve["times_s"][0] <= time_s <= curve["times_s"][-1]


def _has_ph(curve: "Mapping[str, Any]", ph: float) -> bool:
    return curve["phs"][-1] <= ph <= curve["phs"][0]


def _is_stalled(
    times_s: "list[float]", phs: "list[float]", curve: "Mapping[str, Any]"
) -> bool:
    for index in range(len(times_s) - 2, -1, -1):
        span_s = times_s[-1] - times_s[index]
        if span_s < STALL_SPAN_S:
            continue
        if not _has_ph(curve, phs[index]):
            return False
        start_s = curve_time_s(phs[index], curve["times_s"], curve["phs"])
        # A make ahead of time is not asked to fall as its own pH would: the
        # clock of the recipe decides, whichever is later.
        start_s = max(start_s, curve["times_s"][0])
        if not _has_time(curve, start_s + span_s):
            return False
        promised = phs[index] - curve_ph(
            start_s + span_s, curve["times_s"], curve["phs"]
        )
        fell = phs[index] - phs[-1]
        if promised * STALL_WITHIN_S < STALL_FALL_PH * span_s:
            return False
        return promised >= STALL_FALL_PH and fell < STALL_SHARE * promised
    return False
