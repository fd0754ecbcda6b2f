"""Words for input that cannot be true, beyond the plain bounds of one number."""

from .bounds import require_number


def require(claim: bool, field: str, value: object, words: str) -> None:
    """Refuse a value unless a claim about it holds.

    Args:
        claim: what must be true of the value.
        field: name of the argument, as the caller knows it.
        value: what was given.
        words: what is wrong with it, with the limit.

    Raises:
        ValueError: the claim is false.

    >>> require(70 < 60, "target_c", 70, "is beyond the jacket, 60")
    Traceback (most recent call last):
    ...
    ValueError: target_c 70 is beyond the jacket, 60
    """
    if not claim:
        raise ValueError("%s %r %s" % (field, value, words))


def require_at_least(field: str, value: float, limit: float) -> None:
    """Refuse a number below a limit.

    Args:
        field: name of the argument, as the caller knows it.
        value: what was given.
        limit: smallest value allowed.

    Raises:
        ValueError: not a number, or below the limit.

    >>> require_at_least("milk_kg", -5, 0)
    Traceback (most recent call last):
    ...
    ValueError: milk_kg -5 is below 0
    """
    require_number(field, value)
    require(value >= limit, field, value, "is below %r" % limit)


def require_series(
    times_s: list[float], field: str, values: list[float], at_least: int
) -> None:
    """Refuse readings whose times do not rise or do not pair with the values.

    Args:
        times_s: time of each reading on one clock [s]; rising.
        field: name of the values, for the message.
        values: one value a time.
        at_least: fewest readings that make sense.

    Raises:
        ValueError: lengths differ, too few, a time not after the one before it,
            or a value that is not a finite number.

    >>> require_series([0, 60, 60], "phs", [6.6, 6.5, 6.4], 1)
    Traceback (most recent call last):
    ...
    ValueError: times_s 60 is not after 60
    """
    count = len(times_s)
    require(len(values) == count, field, len(values), "do not pair %s times" % count)
    require(count >= at_least, field, count, "are fewer than %s" % at_least)
    for i in range(count):
        require_number("times_s", times_s[i])
        require_number(field, values[i])
        if i:
            words = "is not after %r" % times_s[i - 1]
            require(times_s[i] > times_s[i - 1], "times_s", times_s[i], words)
