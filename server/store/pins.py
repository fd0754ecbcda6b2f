"""The keys behind PINs, and who may set one where."""

from typing import NamedTuple

from sqlalchemy import delete, insert, select, update

from server.seal import Sealed
from server.store.database import reading, writing
from server.store.models import PinGrantRow, PinRow, PinStartRow


class StoredPin(NamedTuple):
    """A key that a PIN opens, on which phone and when it was set, and its end."""

    sealed: Sealed
    device: str | None
    set_ms: int
    ended_ms: int | None


_SEALED = tuple(getattr(PinRow, name) for name in Sealed._fields)
_COLUMNS = (*_SEALED, PinRow.device, PinRow.set_ms, PinRow.ended_ms)


def _pin(row: tuple[object, ...]) -> StoredPin:
    values = tuple(row)
    return StoredPin(Sealed(*values[: len(_SEALED)]), *values[len(_SEALED) :])  # type: ignore[arg-type]


def standing_pins() -> list[StoredPin]:
    """Return the key of everyone who has a PIN now."""
    query = select(*_COLUMNS).where(PinRow.ended_ms.is_(None)).order_by(PinRow.person)
    with reading() as session:
        return [_pin(row._tuple()) for row in session.execute(query)]


def pin_of(person: str) -> StoredPin | None:
    """Return the key of a person's PIN, None when they have none now.

    Args:
        person: the person's id.
    """
    query = select(*_COLUMNS).where(PinRow.person == person, PinRow.ended_ms.is_(None))
    with reading() as session:
        row = session.execute(query).first()
        return None if row is None else _pin(row._tuple())


def find_pin(key: str) -> StoredPin | None:
    """Return a key by its id, ended or not.

    Args:
        key: the key's id.
    """
    with reading() as session:
        row = session.execute(select(*_COLUMNS).where(PinRow.key == key)).first()
        return None if row is None else _pin(row._tuple())


def save_pin(sealed: Sealed, device: str | None, at_ms: int) -> None:
    """Keep a person's new key; the one before it ends, and so does a grant.

    Args:
        sealed: the key.
        device: id of the phone on which it was set.
        at_ms: server time [ms].
    """
    with writing() as session:
        end_pin(sealed.person, at_ms)
        session.execute(
            insert(PinRow).values(device=device, set_ms=at_ms, **sealed._asdict())
        )
        session.execute(delete(PinGrantRow).where(PinGrantRow.person == sealed.person))


def end_pin(person: str, at_ms: int) -> None:
    """End a person's key, if they have one. What it signed before stays proved.

    Args:
        person: the person's id.
        at_ms: server time [ms].
    """
    with writing() as session:
        session.execute(
            update(PinRow)
            .where(PinRow.person == person, PinRow.ended_ms.is_(None))
            .values(ended_ms=at_ms)
        )


def grant_pin(person: str, until_ms: int) -> None:
    """Let a person set a PIN on any phone for a while.

    Args:
        person: the person's id.
        until_ms: server time of its end [ms].
    """
    with writing() as session:
        session.merge(PinGrantRow(person=person, until_ms=until_ms))
        session.flush()


def granted(now_ms: int) -> dict[str, int]:
    """Return until when people may set a PIN on any phone, by their ids [ms].

    Args:
        now_ms: server time [ms].
    """
    query = select(PinGrantRow.person, PinGrantRow.until_ms)
    with reading() as session:
        found = session.execute(query.where(PinGrantRow.until_ms > now_ms))
        return dict(row._tuple() for row in found)


def proofs_since_ms() -> int:
    """Return since when acts that ask for a proof must carry one [ms]."""
    with reading() as session:
        return session.execute(select(PinStartRow.since_ms)).scalar_one()
