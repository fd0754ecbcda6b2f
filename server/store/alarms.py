"""What workers share about alarms: who sends, who was told, which walls live."""

import json
from typing import Any, NamedTuple

from sqlalchemy import select

from server.store.database import reading, writing
from server.store.models import (
    AlarmSettingsRow,
    DeviceRow,
    LeaseRow,
    ListenerRow,
    WallRow,
)


class Wall(NamedTuple):
    """A room display as last heard of."""

    device: str
    name: str
    seen_ms: int
    sound: bool


def take_lease(name: str, holder: str, now_ms: int, for_ms: int) -> bool:
    """Take work that only one process may do, or keep it.

    Nothing is written while another holds it, nor in the first half of our own
    time: this is asked every second, and each write costs the disk.

    Args:
        name: the work; its row is there from the start.
        holder: id of the process that asks.
        now_ms: a clock that all processes share [ms].
        for_ms: how long it is taken [ms].

    Returns:
        True while the one that asks may do the work.
    """
    with reading() as session:
        held = session.execute(
            select(LeaseRow.holder, LeaseRow.until_ms).where(LeaseRow.name == name)
        ).one()
    if held.holder == holder and held.until_ms - now_ms > for_ms / 2:
        return True
    if held.holder != holder and held.until_ms > now_ms:
        return False
    with writing() as session:
        row = session.execute(
            select(LeaseRow).where(LeaseRow.name == name).with_for_update()
        ).scalar_one()
        if row.holder != holder and row.until_ms > now_ms:
            return False
        row.holder, row.until_ms = holder, now_ms + for_ms
    return True


def give_up_lease(name: str, holder: str) -> None:
    """Let another process take the work at once.

    Args:
        name: the work.
        holder: id of the process that stops.
    """
    with writing() as session:
        row = session.get(LeaseRow, name)
        if row is not None and row.holder == holder:
            row.until_ms = 0


def lease_until_ms(name: str) -> int:
    """Return until when some process has the work [ms]; past when none has.

    Args:
        name: the work.
    """
    with reading() as session:
        return session.execute(
            select(LeaseRow.until_ms).where(LeaseRow.name == name)
        ).scalar_one()


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
