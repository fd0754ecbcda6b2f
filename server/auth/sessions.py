"""Who sends a request: the phone that holds the token, and whose it is."""

from collections.abc import Collection
from typing import NamedTuple

from sqlalchemy.exc import DBAPIError

from server.auth.codes import hash_of
from server.core.log.kinds.columns import ROLES
from server.store import disk, reading
from server.store import people as kept

DAY_S = 86_400
SEEN_EVERY_S = 60  # the live view shows how long ago a phone was heard
IDLE_DAYS = 400  # a phone unseen so long must be paired anew; its queue stays


class Session(NamedTuple):
    """A paired phone and its person."""

    device: kept.StoredDevice
    person: kept.StoredPerson

    @property
    def is_removed(self) -> bool:
        """Tell whether the owner removed the phone."""
        return self.device.removed_ms is not None

    def is_at_least(self, role: str) -> bool:
        """Tell whether the person may do what a role may.

        Args:
            role: one of ROLES.
        """
        return ROLES.index(self.person.role) >= ROLES.index(role)


def session_of(token: str, now_ms: int, rate: float) -> Session | None:
    """Return who holds a token, None when nobody does any more.

    Args:
        token: what the phone's cookie says.
        now_ms: server time [ms].
        rate: how fast the server's clock runs.
    """
    with reading():
        device = kept.device_of_token(hash_of(token))
        if device is None or _unseen_days(device, now_ms, rate) > IDLE_DAYS:
            return None
        person = kept.find_person(device.person)
        return None if person is None else Session(device, person)


def still_good(token_hashes: Collection[str]) -> set[str]:
    """Return those of some tokens that still let a phone look.

    Its phone is paired by that very token, not removed, and its person active.

    Args:
        token_hashes: hashes of the tokens.
    """
    return kept.tokens_let_in(token_hashes)


def note_seen(session: Session, now_ms: int, rate: float) -> None:
    """Write down that a phone was here, at most once a minute.

    A full disk does not keep it from being answered.

    Args:
        session: the phone.
        now_ms: server time [ms].
        rate: how fast the server's clock runs.
    """
    if _unseen_days(session.device, now_ms, rate) * DAY_S >= SEEN_EVERY_S:
        try:
            kept.mark_device(session.device.id, seen_ms=now_ms)
        except DBAPIError as problem:
            if disk.trouble_of(problem) is None:
                raise


def _unseen_days(device: kept.StoredDevice, now_ms: int, rate: float) -> float:
    return (now_ms - device.seen_ms) / (1000 * rate * DAY_S)
