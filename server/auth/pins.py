"""Who may set whose PIN, and what wrong tries cost.

A person's first PIN is set on their own phone; on another's while the owner lets
them, for half an hour. A later one asks for the one before, or for the owner's
reset. Nobody ever sees a PIN: not the owner, and not this module, except where a
page on plain http has no cryptography of its own and the server must lend it.
"""

from typing import Any, NamedTuple

from server import seal
from server.auth.refused import RefusedError
from server.auth.sessions import Session
from server.core.log.kinds.columns import ROLES
from server.core.log.rights import pin as pins
from server.core.log.rights.roles import ACTS
from server.seal import Sealed
from server.store import head, writing
from server.store import pairing as attempts
from server.store import people as kept
from server.store import pins as stored

GRANT_S = 1800
FREE_TRIES = 5
FIRST_WAIT_S = 60
LONGEST_WAIT_S = 3600
MOST_ROUNDS = 10 * seal.ROUNDS  # more would hang every phone that unwraps it


class KnownPins(NamedTuple):
    """What a phone may know of the PINs here."""

    pins: list[stored.StoredPin]
    granted: dict[str, int]


def known_pins(now_ms: int) -> KnownPins:
    """Return everyone's wrapped key, and who may set a PIN on any phone.

    Args:
        now_ms: server time [ms].
    """
    may = {person.id for person in kept.all_people() if _may_have(person)}
    found = [pin for pin in stored.standing_pins() if pin.sealed.person in may]
    return KnownPins(found, stored.granted(now_ms))


def set_pin(sealed: Sealed, by: Session, sig: str | None, now_ms: int) -> None:
    """Keep a person's new key, made on a phone.

    Args:
        sealed: the key.
        by: the phone that sends it.
        sig: signature over it with the key before; None for the first, or after
            a reset.
        now_ms: server time [ms].

    Raises:
        RefusedError: this person may not set it here, or the key is unsound.
    """
    if not seal.is_public_key(sealed.public):
        raise RefusedError("not_a_key", "public")
    if not seal.ROUNDS <= sealed.rounds <= MOST_ROUNDS:
        raise RefusedError("too_low", "rounds", seal.ROUNDS)
    with writing():
        head.locked_head()  # two phones that set it at once must not both be first
        before = stored.pin_of(_person(sealed.person).id)
        if stored.find_pin(sealed.key) is not None:
            raise RefusedError("not_a_key", "key")
        _check_may_set(sealed.person, by, before, now_ms)
        if before is not None:
            text = seal.sealed_text(sealed)
            if sig is None or not seal.is_signed(before.sealed.public, text, sig):
                raise RefusedError("wrong_pin", "pin")
        stored.save_pin(sealed, by.device.id, now_ms)


def set_plain_pin(
    person: str, pin: str, before: str | None, by: Session, now_ms: int, rate: float
) -> None:
    """Set a person's PIN for a page that has no cryptography.

    Args:
        person: the person's id.
        pin: the new PIN.
        before: the PIN until now; None when there is none.
        by: the phone that sends it.
        now_ms: server time [ms].
        rate: how fast the server's clock runs.

    Raises:
        RefusedError: this person may not set it here, it is weak, or the one
            before is wrong.
    """
    problems = pins.check_pin(pin)
    if problems:
        raise RefusedError(problems[0]["key"], "pin", problems[0]["limit"])
    made = seal.new_sealed(person, pin)
    sig = None
    if before is not None:
        sig = _tried(person, before, seal.sealed_text(made), now_ms, rate)[1]
    set_pin(made, by, sig, now_ms)


def prove(act: dict[str, Any], pin: str, now_ms: int, rate: float) -> dict[str, str]:
    """Return the proof of an act, for a page that has no cryptography.

    Args:
        act: the event without its proof.
        pin: the PIN of the act's person.
        now_ms: server time [ms].
        rate: how fast the server's clock runs.

    Raises:
        RefusedError: the PIN is wrong, there is none, or too many were wrong.
    """
    key, sig = _tried(act["person"], pin, seal.act_text(act), now_ms, rate)
    return {"by": "pin", "key": key, "sig": sig}


def reset_pin(person_id: str, now_ms: int, rate: float) -> int:
    """End a person's PIN, and let them set a new one on any phone for a while.

    Args:
        person_id: the person's id.
        now_ms: server time [ms].
        rate: how fast the server's clock runs.

    Returns:
        Until when they may [ms].

    Raises:
        RefusedError: there is no such person, or their role has no PIN.
    """
    until_ms = now_ms + int(GRANT_S * 1000 * rate)
    with writing():
        person = _person(person_id)
        stored.end_pin(person.id, now_ms)
        stored.grant_pin(person.id, until_ms)
        _forget_tries(person.id, now_ms)
    return until_ms


def _person(person_id: str) -> kept.StoredPerson:
    person = kept.find_person(person_id)
    if person is None:
        raise RefusedError("unknown_person", "person")
    if not person.active:
        raise RefusedError("inactive_person", "person")
    if not _may_have(person):
        raise RefusedError("no_pin_for_role", "person", ACTS["pin"])
    return person


def _may_have(person: kept.StoredPerson) -> bool:
    return person.active and ROLES.index(person.role) >= ROLES.index(ACTS["pin"])


def _check_may_set(
    person: str, by: Session, before: stored.StoredPin | None, now_ms: int
) -> None:
    is_own = by.person.id == person
    if before is None and not is_own and person not in stored.granted(now_ms):
        raise RefusedError("pin_not_here", "person")


def _tried(
    person_id: str, pin: str, text: bytes, now_ms: int, rate: float
) -> tuple[str, str]:
    with writing():
        head.locked_head()
        standing = stored.pin_of(_person(person_id).id)
        if standing is None:
            raise RefusedError("no_pin", "person")
        tries = attempts.attempts_by(_key(person_id))
        if tries.until_ms > now_ms:
            raise _refusal("too_many_pins", tries.until_ms - now_ms, rate)
        # Counted as wrong before it is looked at: tries sent at once must not all
        # be free, and the half second of each must not hold the writers' lock.
        wait_ms = _count(person_id, tries.wrong + 1, now_ms, rate)
    sig = seal.sign(standing.sealed, pin, text)
    if sig is None and wait_ms:
        raise _refusal("too_many_pins", wait_ms, rate)
    if sig is None:
        raise RefusedError("wrong_pin", "pin", FREE_TRIES - tries.wrong - 1)
    _forget_tries(person_id, now_ms)
    return standing.sealed.key, sig


def _count(person_id: str, wrong: int, now_ms: int, rate: float) -> int:
    """Count one wrong try and return how long to wait after it [ms]."""
    over = wrong - FREE_TRIES
    wait_s = 0 if over < 0 else min(FIRST_WAIT_S * 2 ** min(over, 10), LONGEST_WAIT_S)
    wait_ms = int(wait_s * 1000 * rate)
    tries = attempts.Attempts(wrong, now_ms, now_ms + wait_ms)
    attempts.save_attempts(_key(person_id), tries)
    return wait_ms


def _forget_tries(person_id: str, now_ms: int) -> None:
    attempts.save_attempts(_key(person_id), attempts.Attempts(0, now_ms, 0))


def _refusal(key: str, wait_ms: int, rate: float) -> RefusedError:
    # Rounded up, so that a phone that waits as told is not told again.
    wait_s = -int(-wait_ms / (1000 * rate) // 1)
    return RefusedError(key, "pin", wait_s, wait_s=wait_s)


def _key(person_id: str) -> str:
    return f"pin {person_id}"
