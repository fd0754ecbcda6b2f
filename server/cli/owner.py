"""The one-time code that lets an owner's phone in, and until when it does."""

from datetime import UTC, datetime, timedelta

from server import auth
from server.config import now_ms, settings


def new_code() -> str:
    """Return a new code for the owner; the one before it ends."""
    made = auth.owner_code(now_ms(), settings().clock.rate, even_if_paired=True)
    assert made is not None
    return made.code


def until(now: datetime | None = None) -> str:
    """Return when a code made now ends, by the clock of this box.

    Args:
        now: the instant; None for now.

    >>> until(datetime(2026, 11, 28, 5, 4, tzinfo=UTC)).startswith("2026-11-")
    True
    """
    end = (now or datetime.now(UTC)) + timedelta(seconds=auth.OWNER_CODE_S)
    return end.astimezone().strftime("%Y-%m-%d %H:%M")
