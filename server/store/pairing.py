"""Codes that pair a phone, and wrong codes typed lately."""

from typing import NamedTuple

from sqlalchemy import delete, or_, select

from server.store.database import reading, writing
from server.store.models import AttemptRow, PairingRow


class StoredCode(NamedTuple):
    """A code not used yet; without a person it makes the owner."""

    id: int
    person: str | None
    expires_ms: int


class Attempts(NamedTuple):
    """Wrong codes typed lately by one source."""

    wrong: int
    last_ms: int
    until_ms: int


def add_code(
    person: str | None,
    long_hash: str,
    short_hash: str | None,
    made_by: str | None,
    expires_ms: int,
) -> None:
    """Keep a new code; earlier ones for the same person end.

    Args:
        person: id of the person; None for the code that makes the owner.
        long_hash: hash of the code.
        short_hash: hash of its short form to type, if it has one.
        made_by: id of the owner who asked for it.
        expires_ms: server time of its end [ms].
    """
    with writing() as session:
        session.execute(
            delete(PairingRow).where(
                PairingRow.person.is_(None)
                if person is None
                else PairingRow.person == person,
                PairingRow.used_ms.is_(None),
            )
        )
        session.add(
            PairingRow(
                person=person,
                long_hash=long_hash,
                short_hash=short_hash,
                made_by=made_by,
                expires_ms=expires_ms,
            )
        )
        session.flush()


def find_code(kept_hash: str, now_ms: int) -> StoredCode | None:
    """Return the unused code of this hash, None when it ended or never was.

    Args:
        kept_hash: hash of the code, long or short.
        now_ms: server time [ms].
    """
    query = select(PairingRow.id, PairingRow.person, PairingRow.expires_ms).where(
        or_(PairingRow.long_hash == kept_hash, PairingRow.short_hash == kept_hash),
        PairingRow.used_ms.is_(None),
        PairingRow.expires_ms > now_ms,
    )
    with reading() as session:
        row = session.execute(query).first()
        return None if row is None else StoredCode(*row)


def use_code(code: int, at_ms: int) -> None:
    """Write down that a code was used, so that it never works again.

    Args:
        code: the code's number.
        at_ms: server time [ms].
    """
    with writing() as session:
        session.get_one(PairingRow, code).used_ms = at_ms


def attempts_by(key: str) -> Attempts:
    """Return the wrong codes typed lately by one source.

    Args:
        key: name of the source.
    """
    query = select(AttemptRow.wrong, AttemptRow.last_ms, AttemptRow.until_ms)
    with reading() as session:
        row = session.execute(query.where(AttemptRow.key == key)).first()
        return Attempts(0, 0, 0) if row is None else Attempts(*row)


def save_attempts(key: str, attempts: Attempts) -> None:
    """Keep the wrong codes typed by one source.

    Args:
        key: name of the source.
        attempts: how many, when the last was, and until when it must wait.
    """
    with writing() as session:
        row = session.get(AttemptRow, key)
        if row is None:
            row = AttemptRow(key=key)
            session.add(row)
        row.wrong, row.last_ms, row.until_ms = attempts
        session.flush()


def forget_attempts(before_ms: int) -> None:
    """Drop what is too old to count.

    Args:
        before_ms: server time [ms].
    """
    with writing() as session:
        session.execute(delete(AttemptRow).where(AttemptRow.last_ms < before_ms))
