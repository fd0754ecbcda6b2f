"""Refuse a number that cannot be true, with its field, its value and the limit.

The entered value is always told as given; nothing is clamped.
"""

from .refused import Refused, require


def require_number(field: str, value: float) -> None:
    """Raise unless a value is a finite number.

    Args:
        field: name of the argument, as the caller wrote it.
        value: what was given.

    Raises:
        Refused: the value is missing, not a number, true/false, or infinite.

    >>> require_number("fat_frac", None)
    Traceback (most recent call last):
    server.core.numbers.refused.Refused: fat_frac None not_a_number
    """
    # A bool counts as an int on CPython and does not on the phone.
    if isinstance(value, bool) or not isinstance(value, (int, float)):
        raise Refused("not_a_number", field, value)
    # Not a number differs from itself; infinity equals its double.
    if value != value or (value != 0 and value == value * 2):
        raise Refused("not_finite", field, value)


def require_above(field: str, value: float, limit: float) -> None:
    """Raise unless a value is above a limit.

    Args:
        field: name of the argument.
        value: what was given.
        limit: the value must be greater than this.

    Raises:
        Refused: not a number, or not above the limit.

    >>> require_above("milk_kg", 0, 0)
    Traceback (most recent call last):
    server.core.numbers.refused.Refused: milk_kg 0 not_above 0
    """
    require_number(field, value)
    if value <= limit:
        raise Refused("not_above", field, value, limit)


def require_at_least(field: str, value: float, limit: float) -> None:
    """Refuse a number below a limit.

    Args:
        field: name of the argument, as the caller knows it.
        value: what was given.
        limit: smallest value allowed.

    Raises:
        Refused: not a number, or below the limit.

    >>> require_at_least("milk_kg", -5, 0)
    Traceback (most recent call last):
    ...
    server.core.numbers.refused.Refused: milk_kg -5 below 0
    """
    require_number(field, value)
    require(value >= limit, "below", field, value, limit)


def require_within(field: str, value: float, low: float, high: float) -> None:
    """Raise unless a value lies between two limits, both allowed.

    Args:
        field: name of the argument.
        value: what was given.
        low: smallest value allowed.
        high: largest value allowed.

    Raises:
        Refused: not a number, below the low or above the high limit.

    >>> require_within("fat_frac", 3.4, 0, 1)
    Traceback (most recent call last):
    server.core.numbers.refused.Refused: fat_frac 3.4 above 1
    """
    require_number(field, value)
    if value < low:
        raise Refused("below", field, value, low)
    if value > high:
        raise Refused("above", field, value, high)


def require_count(field: str, value: int, low: int, high: int) -> None:
    """Raise unless a value is a whole number between two limits.

    Args:
        field: name of the argument.
        value: what was given; 2.0 counts as 2, as JSON does not tell them apart.
        low: smallest count allowed.
        high: largest count allowed.

    Raises:
        Refused: not a whole number, or outside the limits.

    >>> require_count("wheels", 2.5, 1, 9)
    Traceback (most recent call last):
    server.core.numbers.refused.Refused: wheels 2.5 not_whole
    """
    require_within(field, value, low, high)
    if value != int(value):
        raise Refused("not_whole", field, value)
