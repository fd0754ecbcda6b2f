"""Give the log to whoever asks, from a number on."""

from typing import NamedTuple

from server import store
from server.shapes import PulledEvent
from server.store.pulled import pulled

MAX_PULLED = 500
MOST_BYTES = 524_288  # of one page: some ten seconds of a slow line, unpacked


class Pulled(NamedTuple):
    """One page of the log."""

    epoch: str
    events: list[PulledEvent]
    next: int
    more: bool


class WrongEpoch(Exception):  # noqa: N818 -- it is an answer, not a fault
    """The reader's number belongs to another life of this database.

    Args:
        epoch: the life it is in now.
    """

    def __init__(self, epoch: str) -> None:
        super().__init__(epoch)
        self.epoch = epoch


def pull(epoch: str, after: int, limit: int) -> Pulled:
    """Return the events after a number, oldest first.

    Args:
        epoch: the epoch that the number is of; empty on the very first pull.
        after: last number that the reader has; 0 for none.
        limit: most events to return, at most MAX_PULLED; fewer where they are
            large, and at least one while there is one.

    Raises:
        WrongEpoch: the reader must offer again what it holds, and read from 0.
    """
    limit = min(limit, MAX_PULLED)
    with store.reading():
        now, head = store.epoch(), store.head_n()
        # A number above the head was given by a database since set back, even
        # if nobody told this one that it was.
        if (epoch and epoch != now) or (after and not epoch) or after > head:
            raise WrongEpoch(now)
        page = store.events_after(after, limit, MOST_BYTES)
    return Pulled(
        epoch=now,
        events=[pulled(row) for row in page],
        next=page[-1].n if page else after,
        more=bool(page) and page[-1].n < head,
    )
