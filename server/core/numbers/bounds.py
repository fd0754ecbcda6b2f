"""Refuse impossible input in clear words: field, value and limit.

The entered value is always shown as given; nothing is clamped.
"""


def require_number(field: str, value: float) -> None:
    """Raise unless a value is a finite number.

    Args:
        field: name of the argument, as the caller wrote it.
        value: what was given.

    Raises:
        ValueError: the value is missing, not a number, true/false, or infinite.

    >>> require_number("fat_frac", None)
    Traceback (most recent call last):
    ValueError: fat_frac None is not a number
    """
    # A bool counts as an int on CPython and does not on the phone.
    if isinstance(value, bool) or not isinstance(value, (int, float)):
        raise ValueError("%s %r is not a number" % (field, value))
    # Not a number differs from itself; infinity equals its double.
    if value != value or (value != 0 and value == value * 2):
        raise ValueError("%s %r is not a finite number" % (field, value))


def require_above(field: str, value: float, limit: float) -> None:
    """Raise unless a value is above a limit.

    Args:
        field: name of the argument.
        value: what was given.
        limit: the value must be greater than this.

    Raises:
        ValueError: not a number, or not above the limit.

    >>> require_above("milk_kg", 0, 0)
    Traceback (most recent call last):
    ValueError: milk_kg 0 is not above 0
    """
    require_number(field, value)
    if value <= limit:
        raise ValueError("%s %r is not above %r" % (field, value, limit))


def require_within(field: str, value: float, low: float, high: float) -> None:
    """Raise unless a value lies between two limits, both allowed.

    Args:
        field: name of the argument.
        value: what was given.
        low: smallest value allowed.
        high: largest value allowed.

    Raises:
        ValueError: not a number, below the low or above the high limit.

    >>> require_within("fat_frac", 3.4, 0, 1)
    Traceback (most recent call last):
    ValueError: fat_frac 3.4 is above 1
    """
    require_number(field, value)
    if value < low:
        raise ValueError("%s %r is below %r" % (field, value, low))
    if value > high:
        raise ValueError("%s %r is above %r" % (field, value, high))


def require_count(field: str, value: int, low: int, high: int) -> None:
    """Raise unless a value is a whole number between two limits.

    Args:
        field: name of the argument.
        value: what was given; 2.0 counts as 2, as JSON does not tell them apart.
        low: smallest count allowed.
        high: largest count allowed.

    Raises:
        ValueError: not a whole number, or outside the limits.

    >>> require_count("wheels", 2.5, 1, 9)
    Traceback (most recent call last):
    ValueError: wheels 2.5 is not a whole number
    """
    require_within(field, value, low, high)
    if value != int(value):
        raise ValueError("%s %r is not a whole number" % (field, value))
