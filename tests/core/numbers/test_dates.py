"""The day of the calendar, against the standard library's."""

from datetime import UTC, datetime, timedelta

import pytest


def told(at, tz_min=0):
    ms = int(at.timestamp() * 1000)
    there = at + timedelta(minutes=tz_min)
    return ms, tz_min, [there.year, there.month, there.day]


EDGES = [
    datetime(2000, 2, 28, 23, 59, 59, tzinfo=UTC),
    datetime(2000, 2, 29, tzinfo=UTC),
    datetime(2000, 3, 1, tzinfo=UTC),
    datetime(2026, 12, 31, 23, 59, 59, tzinfo=UTC),
    datetime(2027, 1, 1, tzinfo=UTC),
    datetime(2096, 2, 29, 12, tzinfo=UTC),
    datetime(2100, 2, 28, 12, tzinfo=UTC),
    datetime(2100, 3, 1, tzinfo=UTC),
]


@pytest.mark.parametrize("at", EDGES)
@pytest.mark.parametrize("tz_min", [-720, -300, 0, 330, 840])
def test_a_day_is_the_calendars(core, at, tz_min):
    ms, tz_min, day = told(at, tz_min)
    assert core("numbers.dates", "day_of", ms, tz_min) == day


def test_every_day_of_a_leap_year_and_the_one_after(core):
    first = datetime(2028, 1, 1, 12, tzinfo=UTC)
    for count in range(0, 731, 7):
        ms, _, day = told(first + timedelta(days=count))
        assert core("numbers.dates", "day_of", ms, 0) == day
