"""Pair a phone with a person by a code that works once.

The owner's screen shows a picture with a long code and a short code to type.
The very first phone, and one after all owners' phones are lost, is paired by a
code from the server's own command line.
"""

from typing import NamedTuple

from server.auth import limits
from server.auth.code_key import code_hash
from server.auth.codes import (
    LONG_SIGNS,
    OWNER_SIGNS,
    SHORT_SIGNS,
    as_meant,
    grouped,
    hash_of,
    new_code,
    new_token,
)
from server.auth.people import add_person, owners
from server.auth.refused import RefusedError
from server.auth.sessions import Session
from server.store import pairing as codes
from server.store import people as kept
from server.store import writing

CODE_S = 600  # how long a code that the owner shows works
OWNER_CODE_S = 86_400  # printed at a set-up, perhaps the day before it is used


class NewCodes(NamedTuple):
    """The two forms of one pairing code; either uses up both."""

    short: str
    long: str
    expires_ms: int


class OwnerCode(NamedTuple):
    """The code that pairs the owner's phone, as it is shown, and its end."""

    code: str
    expires_ms: int


class Pairing(NamedTuple):
    """A phone just paired, with the token that only it will know."""

    session: Session
    token: str


class Asking(NamedTuple):
    """A phone that asks to be paired.

    Args:
        device: its id, a UUID that it made.
        device_name: what it calls itself.
        person_name: name of its person; only the owner's code needs it.
        source: address it comes from.
        token: the token that it holds already, if any.
    """

    device: str
    device_name: str
    person_name: str | None
    source: str
    token: str | None


def owner_code(
    now_ms: int, rate: float, even_if_paired: bool = False
) -> OwnerCode | None:
    """Make the code that pairs the owner's phone, and end the one before it.

    Args:
        now_ms: server time [ms].
        rate: how fast the server's clock runs.
        even_if_paired: True to make one though there is an owner already.

    Returns:
        The code; None when there is an owner already.
    """
    with writing():
        if owners() and not even_if_paired:
            return None
        code = new_code(OWNER_SIGNS)
        expires_ms = now_ms + int(OWNER_CODE_S * 1000 * rate)
        codes.add_code(None, code_hash(code), None, None, expires_ms)
        return OwnerCode(grouped(code), expires_ms)


def start_pairing(person_id: str, by: str, now_ms: int, rate: float) -> NewCodes:
    """Make a code that pairs one phone with a person, for ten minutes.

    Args:
        person_id: whose phone it is to be.
        by: id of the owner who asks.
        now_ms: server time [ms].
        rate: how fast the server's clock runs.

    Raises:
        RefusedError: there is no such person, or they have left.
    """
    with writing():
        person = kept.find_person(person_id)
        if person is None:
            raise RefusedError("unknown_person", "id")
        if not person.active:
            raise RefusedError("inactive_person", "id")
        short, long = new_code(SHORT_SIGNS), new_code(LONG_SIGNS)
        expires_ms = now_ms + int(CODE_S * 1000 * rate)
        codes.add_code(person_id, code_hash(long), code_hash(short), by, expires_ms)
        return NewCodes(grouped(short), long, expires_ms)


def pair(typed: str, asking: Asking, now_ms: int, rate: float) -> Pairing:
    """Pair a phone by a code.

    Args:
        typed: the code, as typed or from the picture.
        asking: the phone.
        now_ms: server time [ms].
        rate: how fast the server's clock runs.

    Raises:
        RefusedError: the code is wrong, used or ended; or too many were wrong.
    """
    code = as_meant(typed)
    with writing():
        # The refusal leaves the block as a value: raised inside, it would
        # also take back the count of wrong codes.
        outcome = _pair(code, asking, now_ms, rate)
    if isinstance(outcome, RefusedError):
        raise outcome
    return outcome


def _pair(
    code: str, asking: Asking, now_ms: int, rate: float
) -> Pairing | RefusedError:
    guessable = len(code) < OWNER_SIGNS
    if guessable:
        wait_s = limits.wait_s(asking.source, now_ms, rate)
        if wait_s:
            return RefusedError("too_many_tries", "code", wait_s, wait_s=wait_s)
    found = codes.find_code(code_hash(code), now_ms)
    if found is None:
        if guessable:
            limits.count_wrong(asking.source, now_ms, rate)
        return RefusedError("wrong_code", "code")
    person = _person_of(found, asking, now_ms)
    if isinstance(person, RefusedError):
        return person
    if _is_anothers(asking, person):
        return RefusedError("device_in_use", "device")
    codes.use_code(found.id, now_ms)
    token = new_token()
    device = kept.StoredDevice(
        id=asking.device,
        name=asking.device_name,
        person=person.id,
        paired_ms=now_ms,
        seen_ms=now_ms,
        removed_ms=None,
    )
    kept.save_device(device, hash_of(token))
    return Pairing(Session(device, person), token)


def _person_of(
    code: codes.StoredCode, asking: Asking, now_ms: int
) -> kept.StoredPerson | RefusedError:
    if code.person is not None:
        person = kept.find_person(code.person)
        if person is None or not person.active:
            return RefusedError("inactive_person", "code")
        return person
    known = owners()
    for owner in known:
        if asking.person_name in (None, owner.name):
            return owner
    if asking.person_name is None:
        return RefusedError("missing", "person_name")
    return add_person(asking.person_name, "owner", now_ms)


def _is_anothers(asking: Asking, person: kept.StoredPerson) -> bool:
    # Whoever has a code must not be able to push another person's phone out
    # by calling its id; the phone itself may change hands.
    device = kept.find_device(asking.device)
    if device is None or device.removed_ms is not None or device.person == person.id:
        return False
    if asking.token is None:
        return True
    holder = kept.device_of_token(hash_of(asking.token))
    return holder is None or holder.id != device.id
