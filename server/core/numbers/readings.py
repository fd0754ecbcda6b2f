"""Refuse a list of readings that cannot be true."""

from .bounds import require_number
from .refused import require


def require_series(
    times_s: list[float], field: str, values: list[float], at_least: int
) -> None:
    """Refuse readings whose times do not rise or do not pair with the values.

    Args:
        times_s: time of each reading on one clock [s]; rising.
        field: name of the values.
        values: one value a time.
        at_least: fewest readings that make sense.

    Raises:
        Refused: lengths differ, too few, a time not after the one before it,
            or a value that is not a finite number.

    >>> require_series([0, 60, 60], "phs", [6.6, 6.5, 6.4], 1)
    Traceback (most recent call last):
    ...
    server.core.numbers.refused.Refused: times_s 60 not_rising 60
    """
    count = len(times_s)
    require(len(values) == count, "not_paired", field, len(values), count)
    require(count >= at_least, "too_few", field, count, at_least)
    for i in range(count):
        require_number("times_s", times_s[i])
        require_number(field, values[i])
        if i:
            before, at = times_s[i - 1], times_s[i]
            require(at > before, "not_rising", "times_s", at, before)
