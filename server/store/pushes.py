"""Browsers that take pushes, and the log of what was sent to them."""

from typing import NamedTuple

from sqlalchemy import delete, select

from server.store.database import reading, writing
from server.store.models import DeviceRow, PersonRow, PushLogRow, PushRow

GONE = (404, 410)  # RFC 8030 section 7.3: the subscription is over
DAY_MS = 86_400_000
LOG_DAYS = 90


class NewSubscription(NamedTuple):
    """A browser's subscription as its page posts it."""

    id: str
    endpoint: str
    p256dh: str
    auth: str
    device: str
    wants: str
    page: str


class Subscription(NamedTuple):
    """A live subscription and whose it is."""

    id: str
    endpoint: str
    p256dh: str
    auth: str
    device: str
    wants: str
    page: str
    posted_ms: int
    sent_ms: int | None
    status: int | None
    ok_ms: int | None
    dropped_ms: int | None
    person: str
    role: str
    language: str | None
    device_name: str


_FIELDS = tuple(getattr(PushRow, name) for name in Subscription._fields[:12])
_ALL = (
    *_FIELDS,
    DeviceRow.person,
    PersonRow.role,
    PersonRow.language,
    DeviceRow.name,
)


def save_subscription(new: NewSubscription, now_ms: int) -> None:
    """Keep a subscription; pages post theirs again at each opening.

    A browser has one subscription: an older one of the same phone is over.

    Args:
        new: the subscription.
        now_ms: real time [ms].
    """
    with writing() as session:
        session.execute(
            delete(PushRow).where(PushRow.device == new.device, PushRow.id != new.id)
        )
        row = session.get(PushRow, new.id)
        if row is None:
            row = PushRow(id=new.id)
            session.add(row)
        for name, value in new._asdict().items():
            setattr(row, name, value)
        row.posted_ms, row.dropped_ms = now_ms, None


def remove_subscription(device: str) -> None:
    """Send nothing to a phone any more, because it says so.

    Args:
        device: the phone's id.
    """
    with writing() as session:
        session.execute(delete(PushRow).where(PushRow.device == device))


def subscriptions(live_only: bool = True) -> list[Subscription]:
    """Return subscriptions of paired phones whose people still act here.

    Args:
        live_only: leave out those that the push service has ended.
    """
    query = (
        select(*_ALL)
        .join(DeviceRow, DeviceRow.id == PushRow.device)
        .join(PersonRow, PersonRow.id == DeviceRow.person)
        .where(DeviceRow.removed_ms.is_(None), PersonRow.active)
        .order_by(PushRow.posted_ms, PushRow.id)
    )
    if live_only:
        query = query.where(PushRow.dropped_ms.is_(None))
    with reading() as session:
        return [Subscription(*row) for row in session.execute(query)]


def note_sent(subscription: str, what: str, tag: str, status: int, now_ms: int) -> None:
    """Log one push, and drop the subscription when its service says it is over.

    Args:
        subscription: its id.
        what: "alarm", "owner" or "test".
        tag: which alarm it was about.
        status: the service's HTTP status; 0 when it could not be reached.
        now_ms: real time [ms].
    """
    with writing() as session:
        session.add(
            PushLogRow(
                at_ms=now_ms,
                subscription=subscription,
                what=what,
                tag=tag,
                status=status,
            )
        )
        old_ms = now_ms - LOG_DAYS * DAY_MS
        session.execute(delete(PushLogRow).where(PushLogRow.at_ms < old_ms))
        row = session.get(PushRow, subscription)
        if row is None:
            return
        row.sent_ms, row.status = now_ms, status
        if status in (200, 201, 202):
            row.ok_ms = now_ms
        if status in GONE:
            row.dropped_ms = now_ms
