"""What the log did not take: kept as it came until a person settles it."""

import json
from collections.abc import Iterable, Sequence
from typing import Any, NamedTuple

from sqlalchemy import func, insert, select, update

from server.shapes import Problem
from server.store.database import reading, writing
from server.store.head import locked_head
from server.store.models import LookedAt


class NewLook(NamedTuple):
    """What is to be kept aside; `device` is the phone that sent it."""

    id: str | None
    device: str
    seq: int | None
    person: str
    why: list[Problem]
    sha256: str
    text: str


class Look(NamedTuple):
    """One item kept aside, and how it was settled."""

    n: int
    id: str | None
    device: str
    seq: int | None
    person: str
    recv_ms: int
    why: list[Problem]
    sha256: str
    text: str
    settled_as: str | None

    @property
    def event(self) -> Any:
        """Return the item as it was sent: any JSON value."""
        return json.loads(self.text)


_COLUMNS = tuple(getattr(LookedAt, name) for name in Look._fields)


def _look(row: Sequence[Any]) -> Look:
    found = Look(*row)
    return found._replace(why=json.loads(str(found.why)))


def add_looks(looks: Sequence[NewLook], recv_ms: int) -> list[int]:
    """Keep items aside.

    Args:
        looks: what to keep.
        recv_ms: server time of their arrival [ms].

    Returns:
        The numbers given, in the same order; they count apart from the log's.
    """
    if not looks:
        return []
    with writing() as session:
        head = locked_head()
        numbers = list(range(head.look_n + 1, head.look_n + 1 + len(looks)))
        rows = [
            {"n": n, "recv_ms": recv_ms, **look._asdict(), "why": json.dumps(look.why)}
            for n, look in zip(numbers, looks, strict=True)
        ]
        session.execute(insert(LookedAt), rows)
        head.look_n = numbers[-1]
        return numbers


def looks_by_hash(hashes: Iterable[str]) -> dict[str, Look]:
    """Return what is kept aside already, by its hash.

    Args:
        hashes: SHA-256 of canonical texts.
    """
    query = select(*_COLUMNS).where(LookedAt.sha256.in_(set(hashes)))
    with reading() as session:
        return {look.sha256: look for look in map(_look, session.execute(query))}


def open_looks() -> list[Look]:
    """Return all that waits for a person, oldest first."""
    query = select(*_COLUMNS).where(LookedAt.settled_ms.is_(None)).order_by(LookedAt.n)
    with reading() as session:
        return [_look(row) for row in session.execute(query)]


def count_open_looks() -> int:
    """Return how many items wait for a person."""
    query = select(func.count()).select_from(LookedAt)
    with reading() as session:
        return session.execute(query.where(LookedAt.settled_ms.is_(None))).scalar_one()


def find_look(n: int) -> Look | None:
    """Return one item kept aside, None when there is none of that number.

    Args:
        n: the item's number.
    """
    with reading() as session:
        row = session.execute(select(*_COLUMNS).where(LookedAt.n == n)).first()
        return None if row is None else _look(row)


def settle_looks(
    numbers: Iterable[int], settled_as: str, why: str, by: str | None, at_ms: int
) -> None:
    """Write down how items were settled; they stay where they are.

    Args:
        numbers: the items' numbers.
        settled_as: "accept" or "keep_aside".
        why: the person's words.
        by: id of the person; None when the server did it.
        at_ms: server time [ms].
    """
    with writing() as session:
        session.execute(
            update(LookedAt)
            .where(LookedAt.n.in_(set(numbers)))
            .values(
                settled_ms=at_ms, settled_by=by, settled_as=settled_as, settled_why=why
            )
        )
