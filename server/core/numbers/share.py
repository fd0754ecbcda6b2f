"""Where a figure lies between two others: what a drawn bar is filled to.

A bar has an end on either side, so what lies beyond is drawn at that end; the figure
itself stands beside the bar and is never clamped.
"""

from .bounds import require_above, require_number

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.words import Bar, Side


def share_frac(value: float, start: float, end: float) -> float:
    """Return how much of the way from a start to an end a value has come.

    Args:
        value: where it stands, in the unit of the ends.
        start: where the way begins.
        end: where it is over; above the start.

    Returns:
        Share of the way [0..1]; an end for what lies beyond it.

    Raises:
        Refused: a number that is none, or an end not above the start.

    Check: half way between 20 and 40 is 30.

    >>> share_frac(45.0, 0.0, 60.0)
    0.75
    """
    require_number("value", value)
    require_number("start", start)
    require_above("end", end, start)
    return min(1.0, max(0.0, (value - start) / (end - start)))


def grown(value: float, start: float, end: float) -> "Bar":
    """Return the bar of what grows from a start towards an end.

    Args:
        value: where it stands, in the unit of the ends.
        start: where it began.
        end: where it is whole.

    Raises:
        Refused: as `share_frac`.

    >>> grown(15.0, 0.0, 60.0)["at_frac"]
    0.25
    """
    return {
        "at_frac": share_frac(value, start, end),
        "low_frac": None,
        "high_frac": None,
        "aim_frac": None,
        "side": None,
    }


def banded(value: float, low: float, high: float, aim: "float | None" = None) -> "Bar":
    """Return the bar of a value in its band: the band is the middle third.

    Args:
        value: where it stands, in the unit of the band.
        low: low end of the band.
        high: high end; above the low one.
        aim: what is wanted within it, or None.

    Raises:
        Refused: as `share_frac`.

    Check: the middle of the band is the middle of the bar.

    >>> banded(31.0, 30.0, 32.0)["at_frac"]
    0.5
    """
    width = high - low
    start, end = low - width, high + width
    side: "Side" = "below" if value < low else "above" if value > high else "within"
    return {
        "at_frac": share_frac(value, start, end),
        "low_frac": 1.0 / 3.0,
        "high_frac": 2.0 / 3.0,
        "aim_frac": None if aim is None else share_frac(aim, start, end),
        "side": side,
    }
