"""The tables.

`events` is the log: rows are only ever added. Its one unique key besides the
number is the event's id. A phone restored from a backup may repeat a counter,
and a second uniqueness rule would make its record unsubmittable for ever.
"""

from sqlalchemy import BigInteger, ForeignKey, Index, Integer, String, Text
from sqlalchemy.orm import DeclarativeBase, Mapped, mapped_column

# SQLite only takes a column of exactly this type for its row number.
Number = BigInteger().with_variant(Integer, "sqlite")


class Base(DeclarativeBase):
    """What all tables share."""


class Head(Base):
    """One row: the last number given, and which life of the database this is."""

    __tablename__ = "head"

    one: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    n: Mapped[int] = mapped_column(Number)
    look_n: Mapped[int] = mapped_column(Number)
    epoch: Mapped[str] = mapped_column(String(36))


class LoggedEvent(Base):
    """One event as it came, with the number and the time it was given here."""

    __tablename__ = "events"
    __table_args__ = (
        Index("ix_events_device_seq", "device", "seq"),
        Index("ix_events_make", "make", "n"),
    )

    n: Mapped[int] = mapped_column(Number, primary_key=True, autoincrement=False)
    id: Mapped[str] = mapped_column(String(36), unique=True)
    recv_ms: Mapped[int] = mapped_column(BigInteger)
    make: Mapped[str | None] = mapped_column(String(36))
    device: Mapped[str | None] = mapped_column(String(36))
    seq: Mapped[int | None] = mapped_column(BigInteger)
    kind: Mapped[str | None] = mapped_column(String(64))
    sha256: Mapped[str] = mapped_column(String(64))
    text: Mapped[str] = mapped_column(Text)
    # What was found of its proof, where that is not what the event itself says.
    proof_state: Mapped[str | None] = mapped_column(String(12))


class LookedAt(Base):
    """One pushed item that the log did not take, until a person settles it."""

    __tablename__ = "needs_look"
    n: Mapped[int] = mapped_column(Number, primary_key=True, autoincrement=False)
    id: Mapped[str | None] = mapped_column(String(36))
    device: Mapped[str] = mapped_column(String(36))
    seq: Mapped[int | None] = mapped_column(BigInteger)
    person: Mapped[str] = mapped_column(String(64))
    recv_ms: Mapped[int] = mapped_column(BigInteger)
    why: Mapped[str] = mapped_column(Text)
    sha256: Mapped[str] = mapped_column(String(64), index=True)
    text: Mapped[str] = mapped_column(Text)
    settled_ms: Mapped[int | None] = mapped_column(BigInteger)
    settled_by: Mapped[str | None] = mapped_column(String(64))
    settled_as: Mapped[str | None] = mapped_column(String(20))
    settled_why: Mapped[str | None] = mapped_column(Text)


class Held(Base):
    """How far one phone has counted, and what lacks below."""

    __tablename__ = "held"

    device: Mapped[str] = mapped_column(String(36), primary_key=True)
    upto_seq: Mapped[int] = mapped_column(BigInteger)
    missing: Mapped[str] = mapped_column(Text)
    repeated: Mapped[str] = mapped_column(Text)
    # When all that it may send in a day is free again, by number and by size.
    events_until_ms: Mapped[int] = mapped_column(BigInteger, server_default="0")
    bytes_until_ms: Mapped[int] = mapped_column(BigInteger, server_default="0")


class PersonRow(Base):
    """Someone who works here or looks on."""

    __tablename__ = "people"

    id: Mapped[str] = mapped_column(String(64), primary_key=True)
    name: Mapped[str] = mapped_column(String(80))
    role: Mapped[str] = mapped_column(String(20))
    active: Mapped[bool]
    made_ms: Mapped[int] = mapped_column(BigInteger)
    # How they read; none is as the phone in hand says.
    language: Mapped[str | None] = mapped_column(String(8))
    temp_unit: Mapped[str | None] = mapped_column(String(12))
    volume_unit: Mapped[str | None] = mapped_column(String(12))
    mass_unit: Mapped[str | None] = mapped_column(String(12))
    pressure_unit: Mapped[str | None] = mapped_column(String(12))


class DeviceRow(Base):
    """One paired copy of the app. A removed one stays, to know its late words."""

    __tablename__ = "devices"

    id: Mapped[str] = mapped_column(String(36), primary_key=True)
    name: Mapped[str] = mapped_column(String(80))
    person: Mapped[str] = mapped_column(ForeignKey("people.id"))
    token_sha256: Mapped[str] = mapped_column(String(64), unique=True)
    paired_ms: Mapped[int] = mapped_column(BigInteger)
    seen_ms: Mapped[int] = mapped_column(BigInteger)
    removed_ms: Mapped[int | None] = mapped_column(BigInteger)


class PairingRow(Base):
    """A code that pairs one phone once. Without a person it makes the owner."""

    __tablename__ = "pairings"

    id: Mapped[int] = mapped_column(primary_key=True)
    person: Mapped[str | None] = mapped_column(ForeignKey("people.id"))
    long_hash: Mapped[str] = mapped_column(String(64), unique=True)
    short_hash: Mapped[str | None] = mapped_column(String(64), index=True)
    made_by: Mapped[str | None] = mapped_column(String(64))
    expires_ms: Mapped[int] = mapped_column(BigInteger)
    used_ms: Mapped[int | None] = mapped_column(BigInteger)


class AttemptRow(Base):
    """Wrong codes typed lately, kept here because workers share no memory."""

    __tablename__ = "attempts"

    key: Mapped[str] = mapped_column(String(100), primary_key=True)
    wrong: Mapped[int]
    last_ms: Mapped[int] = mapped_column(BigInteger)
    until_ms: Mapped[int] = mapped_column(BigInteger)


class LeaseRow(Base):
    """Work that one process of all does, and how often it has said so."""

    __tablename__ = "leases"

    name: Mapped[str] = mapped_column(String(40), primary_key=True)
    holder: Mapped[str] = mapped_column(String(36))
    beat: Mapped[int] = mapped_column(BigInteger, server_default="0")


class AlarmSettingsRow(Base):
    """One row: what the owner decided about alarms."""

    __tablename__ = "alarm_settings"

    one: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    escalate_s: Mapped[int]


class PushRow(Base):
    """One browser that takes pushes, and what became of the last one."""

    __tablename__ = "push_subscriptions"

    id: Mapped[str] = mapped_column(String(64), primary_key=True)
    endpoint: Mapped[str] = mapped_column(Text)
    p256dh: Mapped[str] = mapped_column(String(120))
    auth: Mapped[str] = mapped_column(String(40))
    device: Mapped[str] = mapped_column(ForeignKey("devices.id"), index=True)
    wants: Mapped[str] = mapped_column(String(12))
    page: Mapped[str] = mapped_column(String(300))
    posted_ms: Mapped[int] = mapped_column(BigInteger)
    sent_ms: Mapped[int | None] = mapped_column(BigInteger)
    status: Mapped[int | None]
    ok_ms: Mapped[int | None] = mapped_column(BigInteger)
    dropped_ms: Mapped[int | None] = mapped_column(BigInteger)


class PushLogRow(Base):
    """One push that was tried, and the push service's answer."""

    __tablename__ = "push_log"

    n: Mapped[int] = mapped_column(Number, primary_key=True)
    at_ms: Mapped[int] = mapped_column(BigInteger)
    subscription: Mapped[str] = mapped_column(String(64))
    what: Mapped[str] = mapped_column(String(12))
    tag: Mapped[str] = mapped_column(String(240))
    status: Mapped[int]


class ListenerRow(Base):
    """What one person's phones were told, so that no worker tells it again."""

    __tablename__ = "listeners"

    person: Mapped[str] = mapped_column(String(64), primary_key=True)
    heard: Mapped[str] = mapped_column(Text)


class WallRow(Base):
    """A room display, when it was last heard of, and whether its sound is on."""

    __tablename__ = "walls"

    device: Mapped[str] = mapped_column(ForeignKey("devices.id"), primary_key=True)
    seen_ms: Mapped[int] = mapped_column(BigInteger)
    sound: Mapped[bool]


class LinkRow(Base):
    """A read-only link for a guest. An ended or revoked one stays, to say so."""

    __tablename__ = "links"

    id: Mapped[str] = mapped_column(String(36), primary_key=True)
    name: Mapped[str] = mapped_column(String(80))
    token_sha256: Mapped[str] = mapped_column(String(64), unique=True)
    makes: Mapped[str] = mapped_column(Text)
    made_by: Mapped[str] = mapped_column(String(64))
    made_ms: Mapped[int] = mapped_column(BigInteger)
    until_ms: Mapped[int] = mapped_column(BigInteger)
    opened_ms: Mapped[int | None] = mapped_column(BigInteger)
    revoked_ms: Mapped[int | None] = mapped_column(BigInteger)


class LinkVisitRow(Base):
    """One browser that opened a link, known by the hash of its own token."""

    __tablename__ = "link_visits"

    token_sha256: Mapped[str] = mapped_column(String(64), primary_key=True)
    link: Mapped[str] = mapped_column(ForeignKey("links.id"))
    opened_ms: Mapped[int] = mapped_column(BigInteger)


class PinRow(Base):
    """A signing key that one person's PIN opens. An ended one stays: it signed."""

    __tablename__ = "pins"

    key: Mapped[str] = mapped_column(String(36), primary_key=True)
    person: Mapped[str] = mapped_column(ForeignKey("people.id"), index=True)
    public: Mapped[str] = mapped_column(String(200))
    salt: Mapped[str] = mapped_column(String(40))
    rounds: Mapped[int]
    wrapped: Mapped[str] = mapped_column(String(400))
    device: Mapped[str | None] = mapped_column(String(36))
    set_ms: Mapped[int] = mapped_column(BigInteger)
    ended_ms: Mapped[int | None] = mapped_column(BigInteger)


class PinGrantRow(Base):
    """Until when a person may set a PIN on any phone, because the owner said so."""

    __tablename__ = "pin_grants"

    person: Mapped[str] = mapped_column(ForeignKey("people.id"), primary_key=True)
    until_ms: Mapped[int] = mapped_column(BigInteger)


class PinStartRow(Base):
    """One row: since when acts that ask for a proof must carry one."""

    __tablename__ = "pin_start"

    one: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    since_ms: Mapped[int] = mapped_column(BigInteger)
