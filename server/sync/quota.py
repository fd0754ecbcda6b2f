"""How much one phone may send in a day, so that a broken one fills no disk.

What is new costs room; what is here already costs none. Room comes back evenly,
all of it in a day, so a phone that waited long sends a full day's worth at once.
How far the room is used up is one instant for each measure: the time at which all
of it is free again. A batch that does not fit is refused whole and waits on the
phone, with word of when it fits; nothing of it is lost.
"""

from typing import NamedTuple

DAY_MS = 86_400_000


class Quota(NamedTuple):
    """What a phone may send in a day of the server's clock.

    Args:
        events: entries that are new here.
        size_bytes: their size.
        day_ms: length of the day by the server's clock [ms].
    """

    events: int
    size_bytes: int
    day_ms: int = DAY_MS


class Used(NamedTuple):
    """When all of a phone's room is free again, by each measure [ms]."""

    events_ms: int = 0
    bytes_ms: int = 0


class OverQuotaError(Exception):
    """A batch does not fit into what is left of a phone's day.

    Args:
        wait_ms: time after which it fits, by the server's clock [ms].
    """

    def __init__(self, wait_ms: int) -> None:
        super().__init__(wait_ms)
        self.wait_ms = wait_ms


def after(used: Used, quota: Quota, events: int, size_bytes: int, now_ms: int) -> Used:
    """Return how far a phone's room is used once a batch is taken.

    Args:
        used: how far it is used before.
        quota: what the phone may send in a day.
        events: entries of the batch that are new here.
        size_bytes: their size.
        now_ms: server time [ms].

    Raises:
        OverQuotaError: the batch does not fit yet.
    """
    most_ms = now_ms + quota.day_ms
    found = Used(
        _free_ms(used.events_ms, quota.day_ms, events / quota.events, now_ms),
        _free_ms(used.bytes_ms, quota.day_ms, size_bytes / quota.size_bytes, now_ms),
    )
    over_ms = max(found) - most_ms
    # What is larger than a whole day is taken once the day is free.
    is_all_free = max(used) <= now_ms
    if over_ms > 0 and not is_all_free:
        raise OverQuotaError(min(over_ms, max(used) - now_ms))
    return found


def _free_ms(used_ms: int, day_ms: int, part: float, now_ms: int) -> int:
    # A clock that was wrong and put back must not close a phone out for longer
    # than a day.
    begin_ms = min(max(used_ms, now_ms), now_ms + day_ms)
    return begin_ms + round(part * day_ms)
