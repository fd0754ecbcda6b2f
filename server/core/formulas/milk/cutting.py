"""When to cut: at a multiple of the time that the milk took to flocculate.

It is the practice of the trade, not a law; what speaks for it is that a gel which
firms at first order, as fast as it flocculated, has the same share of its final
firmness at the same multiple: 1 - exp(-rate * (multiple - 1)), its rate going with the
enzyme as one over the gel time does (Tokita 1982, abstract).
"""

from ...numbers.bounds import require_above, require_at_least, require_within

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


# Outside these a flocculation point does not tell the cut (practice, no source):
# earlier the dose or the pH was wrong, later the gel forms while it is awaited.
FLOC_EARLIEST_S = 360.0
FLOC_LATEST_S = 1500.0


def cut_time(floc_s: float, multiple: float, tested_every_s: float) -> "dict[str, Any]":
    """Return when to cut, from the flocculation time, counted from the rennet.

    Milk that had not flocculated at one test and had at the next did so between
    the two, so the range reaches back one test.

    Args:
        floc_s: time from adding rennet to the test that showed floc [s]; above 0.
        multiple: of the flocculation time, from the recipe; 1 or more.
        tested_every_s: time between the last two tests [s]; 0 or more.

    Returns:
        {"value_s", "low_s", "high_s"}: from adding rennet; None when the point
        does not tell. {"basis"}: "cut.floc_multiple", "cut.floc_too_early" or
        "cut.floc_too_late".

    Raises:
        Refused: a time out of range, tests further apart than the floc time, or
            a multiple below 1.

    Source: practice of the trade; no science behind any one multiple.
    Valid: floc from 6 to 25 min.
    Check: floc at 12 min, multiple 3: cut at 36 min.

    >>> cut_time(720, 3, 30)["value_s"] / 60
    36.0
    """
    require_above("floc_s", floc_s, 0)
    require_at_least("multiple", multiple, 1)
    require_within("tested_every_s", tested_every_s, 0, floc_s)
    if floc_s < FLOC_EARLIEST_S:
        return _no_cut("cut.floc_too_early")
    if floc_s > FLOC_LATEST_S:
        return _no_cut("cut.floc_too_late")
    return {
        "value_s": multiple * floc_s,
        "low_s": multiple * (floc_s - tested_every_s),
        "high_s": multiple * floc_s,
        "basis": "cut.floc_multiple",
    }


def _no_cut(basis: str) -> "dict[str, Any]":
    return {"value_s": None, "low_s": None, "high_s": None, "basis": basis}
