"""The log of events: add at the end, read by number."""

import json
import math
from collections.abc import Iterable, Sequence
from typing import Any, NamedTuple

from sqlalchemy import func, insert, select

from server.store.database import reading, writing
from server.store.head import locked_head
from server.store.models import LoggedEvent

PIECE = 50


class Logged(NamedTuple):
    """One event of the log with what the server added to it."""

    n: int
    recv_ms: int
    text: str
    proof_state: str | None = None

    @property
    def event(self) -> dict[str, Any]:
        """Return the event as its phone wrote it."""
        event: dict[str, Any] = json.loads(self.text)
        return event


class NewEvent(NamedTuple):
    """What the log is to take; `text` is kept as it is."""

    id: str
    make: str | None
    device: str | None
    seq: int | None
    kind: str | None
    sha256: str
    text: str
    proof_state: str | None = None


class Taken(NamedTuple):
    """Where an id already stands in the log, and as what."""

    n: int
    sha256: str
    kind: str | None


_COLUMNS = tuple(getattr(LoggedEvent, name) for name in Logged._fields)


def add_events(events: Sequence[NewEvent], recv_ms: int) -> list[int]:
    """Add events at the end of the log.

    Args:
        events: what to add, none of their ids in the log yet.
        recv_ms: server time of their arrival [ms].

    Returns:
        The numbers given, in the same order.
    """
    if not events:
        return []
    with writing() as session:
        head = locked_head()
        numbers = list(range(head.n + 1, head.n + 1 + len(events)))
        rows = [
            {"n": n, "recv_ms": recv_ms, **event._asdict()}
            for n, event in zip(numbers, events, strict=True)
        ]
        session.execute(insert(LoggedEvent), rows)
        head.n = numbers[-1]
        return numbers


def taken_ids(ids: Iterable[str]) -> dict[str, Taken]:
    """Return which of these ids the log holds, and where.

    Args:
        ids: ids of events.
    """
    columns = (LoggedEvent.id, LoggedEvent.n, LoggedEvent.sha256, LoggedEvent.kind)
    with reading() as session:
        found = session.execute(select(*columns).where(LoggedEvent.id.in_(set(ids))))
        return {id_: Taken(*rest) for id_, *rest in found}


def event_of(id_: str) -> dict[str, Any] | None:
    """Return one event as its phone wrote it, or None when the log lacks it.

    Args:
        id_: id of the event.
    """
    with reading() as session:
        found = session.execute(select(*_COLUMNS).where(LoggedEvent.id == id_)).first()
        return None if found is None else Logged(*found).event


def events_after(n: int, limit: int, most_bytes: int | None = None) -> list[Logged]:
    """Return the events after a number, oldest first.

    Args:
        n: last number that the reader has; 0 for none.
        limit: most events to return.
        most_bytes: most bytes of their texts in all; the first event comes whatever
            its size, so that a reader gets on. None for no such limit.
    """
    query = select(*_COLUMNS).where(LoggedEvent.n > n).order_by(LoggedEvent.n)
    with reading() as session:
        # Read in pieces: what goes beyond the bytes is not fetched at all.
        options = {"yield_per": PIECE} if most_bytes is not None else {}
        rows = session.execute(query.limit(limit), execution_options=options)
        found: list[Logged] = []
        left = math.inf if most_bytes is None else most_bytes
        for row in rows:
            one = Logged(*row)
            left -= len(one.text)  # plain ASCII, see `sync.canonical`
            if left < 0 and found:
                rows.close()
                break
            found.append(one)
        return found


def events_of_make(make: str) -> list[Logged]:
    """Return all events of one make, in the order of their arrival.

    Args:
        make: id of the make.
    """
    query = select(*_COLUMNS).where(LoggedEvent.make == make)
    with reading() as session:
        found = session.execute(query.order_by(LoggedEvent.n))
        return [Logged(*row) for row in found]


def every_event() -> list[Logged]:
    """Return the whole log, in the order of arrival."""
    with reading() as session:
        found = session.execute(select(*_COLUMNS).order_by(LoggedEvent.n))
        return [Logged(*row) for row in found]


def count_events() -> int:
    """Return how many events the log holds."""
    with reading() as session:
        return session.execute(
            select(func.count()).select_from(LoggedEvent)
        ).scalar_one()
