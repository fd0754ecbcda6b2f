"""Where a function of one number is nothing: a few evaluations, not a hundred.

A phone pays for each evaluation, and halving alone needs fifty of them.
"""

from .bounds import require_above
from .refused import Refused

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

SAME_SHARE = 4e-16  # Of a number: nearer ones are told apart by its last digit only.
MOST_ROUNDS = 300  # Five rounds at least halve the width, so this is never reached.


def root(of: "Callable[[float], float]", low: float, high: float) -> float:
    """Return where a function crosses nothing, to the last digits.

    Each round draws a line through the two ends and looks where it crosses; an end
    that stays put counts for less each time (Anderson and Björck). Where five rounds
    have not quartered the width, it is halved, so that no kink or jump holds it up.

    Args:
        of: function, not above 0 at `low` and not below 0 at `high`.
        low: low end of where to look; below `high`.
        high: high end.

    Returns:
        Where it crosses; the step where it jumps over nothing.

    Raises:
        Refused: ends out of order, no crossing between them, or values that are
            no numbers.

    Source: Anderson and Björck, BIT 13:253, 1973 (from memory; tested on functions
        with known roots).
    Check: the square of the answer is 2.

    >>> root(lambda x: x * x - 2, 0.0, 2.0)
    1.41421356
    """
    require_above("high", high, low)
    low_y, high_y = of(low), of(high)
    if not low_y <= 0 <= high_y:
        raise Refused("not_computable", "low", low, [low_y, high_y])
    last_side = 0
    width = high - low
    for attempt in range(MOST_ROUNDS):
        near = SAME_SHARE * max(abs(low), abs(high))
        if low_y == 0 or high_y == 0 or high - low <= 2 * near:
            return low if -low_y < high_y else high
        share = low_y / (low_y - high_y)
        if attempt % 5 == 4:
            if high - low > width / 4:
                share = 0.5
            width = high - low
        # A step past the end that is nearly there brings the other end to it.
        x = max(low + near, min(high - near, low + share * (high - low)))
        y = of(x)
        if y < 0:
            if last_side < 0:
                high_y = high_y * _less(y, low_y)
            low, low_y, last_side = x, y, -1
        else:
            if last_side > 0:
                low_y = low_y * _less(y, high_y)
            high, high_y, last_side = x, y, 1
    raise Refused("not_computable", "low", low, [low_y, high_y])


def _less(y: float, before: float) -> float:
    """Return the share that the value at the end that stays put counts for."""
    share = 1 - y / before
    return share if share > 0 else 0.5
