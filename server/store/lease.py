"""Work that one process of all does: who has it, and how often it said so.

No instant is kept: processes share no clock that nobody can set. Each judges by
its own whether the beats go on, see `server.alarm.term`.
"""

from typing import NamedTuple

from sqlalchemy import select, update

from server.store.database import reading, writing
from server.store.models import LeaseRow


class Lease(NamedTuple):
    """Who has the work, "" for nobody, and how often any holder has said so."""

    holder: str
    beat: int


def lease_of(name: str) -> Lease:
    """Return who has the work.

    Args:
        name: the work; its row is there from the start.
    """
    query = select(LeaseRow.holder, LeaseRow.beat).where(LeaseRow.name == name)
    with reading() as session:
        return Lease(*session.execute(query).one())


def take_lease(name: str, holder: str, seen: Lease) -> bool:
    """Take the work from a holder who is silent, or say that one still has it.

    Args:
        name: the work.
        holder: id of the process that asks.
        seen: the lease as the one that asks has judged it.

    Returns:
        False when somebody said something since; nothing is changed then.
    """
    change = (
        update(LeaseRow)
        .where(
            LeaseRow.name == name,
            LeaseRow.holder == seen.holder,
            LeaseRow.beat == seen.beat,
        )
        .values(holder=holder, beat=seen.beat + 1)
        .returning(LeaseRow.name)
    )
    with writing() as session:
        return session.execute(change).first() is not None


def give_up_lease(name: str, holder: str) -> None:
    """Let another process take the work at once.

    Args:
        name: the work.
        holder: id of the process that stops.
    """
    own = (LeaseRow.name == name) & (LeaseRow.holder == holder)
    with writing() as session:
        session.execute(update(LeaseRow).where(own).values(holder=""))
