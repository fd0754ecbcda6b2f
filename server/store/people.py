"""People and their paired phones."""

from collections.abc import Collection
from typing import NamedTuple

from sqlalchemy import select, update
from sqlalchemy.orm import InstrumentedAttribute

from server.store.database import reading, writing
from server.store.models import DeviceRow, PersonRow


class StoredPerson(NamedTuple):
    """Who may act, as what, and how they read; None is as the phone says."""

    id: str
    name: str
    role: str
    active: bool
    language: str | None = None
    temp_unit: str | None = None
    volume_unit: str | None = None
    mass_unit: str | None = None
    pressure_unit: str | None = None


class StoredDevice(NamedTuple):
    """One paired copy of the app."""

    id: str
    name: str
    person: str
    paired_ms: int
    seen_ms: int
    removed_ms: int | None


_PERSON = tuple(getattr(PersonRow, name) for name in StoredPerson._fields)
_DEVICE = tuple(getattr(DeviceRow, name) for name in StoredDevice._fields)


def all_people() -> list[StoredPerson]:
    """Return everyone, also those who have left: the record names them."""
    with reading() as session:
        found = session.execute(
            select(*_PERSON).order_by(PersonRow.made_ms, PersonRow.id)
        )
        return [StoredPerson(*row) for row in found]


def find_person(person: str) -> StoredPerson | None:
    """Return one person.

    Args:
        person: the person's id.
    """
    with reading() as session:
        row = session.execute(select(*_PERSON).where(PersonRow.id == person)).first()
        return None if row is None else StoredPerson(*row)


def save_person(person: StoredPerson, made_ms: int) -> None:
    """Add a person, or replace what is known of them.

    Args:
        person: the person as they shall be.
        made_ms: server time, kept when the person is new [ms].
    """
    with writing() as session:
        row = session.get(PersonRow, person.id)
        if row is None:
            session.add(PersonRow(made_ms=made_ms, **person._asdict()))
            session.flush()
            return
        for name, value in person._asdict().items():
            setattr(row, name, value)


def all_devices() -> list[StoredDevice]:
    """Return every phone that was ever paired, newest first."""
    query = select(*_DEVICE).order_by(DeviceRow.paired_ms.desc(), DeviceRow.id)
    with reading() as session:
        return [StoredDevice(*row) for row in session.execute(query)]


def find_device(device: str) -> StoredDevice | None:
    """Return one phone by its id.

    Args:
        device: the phone's id.
    """
    return _device_where(DeviceRow.id, device)


def device_of_token(token_sha256: str) -> StoredDevice | None:
    """Return the phone that holds a token.

    Args:
        token_sha256: hash of the token.
    """
    return _device_where(DeviceRow.token_sha256, token_sha256)


def tokens_let_in(token_hashes: Collection[str]) -> set[str]:
    """Return those of some tokens whose phone and person may come in, in one look.

    Args:
        token_hashes: hashes of the tokens.
    """
    query = (
        select(DeviceRow.token_sha256)
        .join(PersonRow, PersonRow.id == DeviceRow.person)
        .where(
            DeviceRow.token_sha256.in_(token_hashes),
            DeviceRow.removed_ms.is_(None),
            PersonRow.active,
        )
    )
    with reading() as session:
        return set(session.scalars(query))


def _device_where(
    column: InstrumentedAttribute[str], value: str
) -> StoredDevice | None:
    with reading() as session:
        row = session.execute(select(*_DEVICE).where(column == value)).first()
        return None if row is None else StoredDevice(*row)


def save_device(device: StoredDevice, token_sha256: str) -> None:
    """Pair a phone, or pair it anew with another token.

    Args:
        device: the phone as it shall be.
        token_sha256: hash of its token.
    """
    with writing() as session:
        row = session.get(DeviceRow, device.id)
        if row is None:
            row = DeviceRow(id=device.id)
            session.add(row)
        for name, value in device._asdict().items():
            setattr(row, name, value)
        row.token_sha256 = token_sha256
        session.flush()


def mark_device(
    device: str, seen_ms: int | None = None, removed_ms: int | None = None
) -> None:
    """Write down when a phone was last seen, or that it was removed.

    Args:
        device: the phone's id.
        seen_ms: server time of its last word [ms]; None to leave it.
        removed_ms: server time of its removal [ms]; None to leave it.
    """
    values = {"seen_ms": seen_ms, "removed_ms": removed_ms}
    given = {name: value for name, value in values.items() if value is not None}
    with writing() as session:
        session.execute(update(DeviceRow).where(DeviceRow.id == device).values(**given))
