"""The day of the calendar that an instant falls on."""

DAY_MS = 86400000
MIN_MS = 60000


def day_of(at_ms: int, tz_min: int) -> "tuple[int, int, int]":
    """Return year, month and day of the Gregorian calendar.

    Counted in years that begin in March, so that the leap day stands last, and in
    rounds of 400 years, all of 146,097 days.

    Args:
        at_ms: instant since 1970 UTC [ms].
        tz_min: time zone east of UTC [min].

    Source: the rule of the Gregorian calendar.

    >>> day_of(951782400000, 0)
    (2000, 2, 29)
    """
    days = (at_ms + tz_min * MIN_MS) // DAY_MS + 719468  # since 1 March of the year 0
    rounds, day = divmod(days, 146097)
    year = (day - day // 1460 + day // 36524 - day // 146096) // 365
    day -= 365 * year + year // 4 - year // 100
    month = (5 * day + 2) // 153
    day -= (153 * month + 2) // 5
    is_early = month >= 10
    full_year = rounds * 400 + year + (1 if is_early else 0)
    return full_year, month - 9 if is_early else month + 3, day + 1
