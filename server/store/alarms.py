"""What workers share about alarms: who was told, which walls live."""

import json
from typing import Any, NamedTuple

from sqlalchemy import select

from server.store.database import reading, writing
from server.store.models import (
    AlarmSettingsRow,
    DeviceRow,
    ListenerRow,
    WallRow,
)


class Wall(NamedTuple):
    """A room display as last heard of."""

    device: str
    name: str
    seen_ms: int
    sound: bool


def heard(person: str) -> dict[str, Any] | None:
    """Return what a person's phones were told, None when nothing yet.

    Args:
        person: the person's id.
    """
    with reading() as session:
        text = session.execute(
            select(ListenerRow.heard).where(ListenerRow.person == person)
        ).scalar()
    return None if text is None else json.loads(text)


def save_heard(person: str, told: dict[str, Any]) -> None:
    """Keep what a person's phones were told.

    Args:
        person: the person's id.
        told: JSON types only.
    """
    with writing() as session:
        row = session.get(ListenerRow, person)
        if row is None:
            session.add(ListenerRow(person=person, heard=json.dumps(told)))
        else:
            row.heard = json.dumps(told)


def escalate_s() -> int:
    """Return how long an alarm may wait before the owner is told [s]."""
    with reading() as session:
        return session.execute(select(AlarmSettingsRow.escalate_s)).scalar_one()


def set_escalate_s(seconds: int) -> None:
    """Change how long an alarm may wait before the owner is told.

    Args:
        seconds: the time [s].
    """
    with writing() as session:
        session.execute(select(AlarmSettingsRow)).scalar_one().escalate_s = seconds


def note_wall(device: str, sound: bool, now_ms: int) -> None:
    """Write down that a room display lives.

    Args:
        device: its id.
        sound: whether its sound is unlocked.
        now_ms: real time [ms].
    """
    with writing() as session:
        row = session.get(WallRow, device)
        if row is None:
            session.add(WallRow(device=device, seen_ms=now_ms, sound=sound))
        else:
            row.seen_ms, row.sound = now_ms, sound


def walls() -> list[Wall]:
    """Return the room displays that are still paired, the last heard of first."""
    query = (
        select(WallRow.device, DeviceRow.name, WallRow.seen_ms, WallRow.sound)
        .join(DeviceRow, DeviceRow.id == WallRow.device)
        .where(DeviceRow.removed_ms.is_(None))
        .order_by(WallRow.seen_ms.desc())
    )
    with reading() as session:
        return [Wall(*row) for row in session.execute(query)]
