"""Make what is missing, and make anew what is due."""

from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path
from typing import NamedTuple

from cryptography import x509
from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives.asymmetric import ec

from server.store.security_log import SecurityLog
from server.tls.folder import Folder, Room, fits, read_key
from server.tls.made import (
    Made,
    Permitted,
    ends_ms,
    instant,
    make_leaf,
    make_root,
    names_of,
    permitted_by,
    starts_ms,
)
from server.tls.names import LOOPBACK, THIS_BOX, Names, host_names, networks
from server.tls.refused import TlsError

DAY_MS = 86_400_000
# Nothing is made before this program was: a clock below it was never set.
PROGRAM_MS = 1_793_491_200_000  # 2026-11-01
# A router that shares out addresses may give an earlier one back.
KEPT_DAYS = 30


class Done(NamedTuple):
    """What was made, and what was put aside for it."""

    root: bool = False
    leaf: str = ""  # why it was made; empty when it was not
    aside: tuple[Path, ...] = ()


class Asked(NamedTuple):
    """What a person asks for beyond what is due.

    Args:
        names: host names to add.
        addresses: addresses to add.
        new_root: True for a new root in place of the one there is.
        root_key: file of the root's key, where it is kept elsewhere.
        passphrase: what that file is locked with.
    """

    names: tuple[str, ...] = ()
    addresses: tuple[str, ...] = ()
    new_root: bool = False
    root_key: Path | None = None
    passphrase: str = ""


NOTHING_MORE = Asked()


def clock_problem(now_ms: int) -> str | None:
    """Return what to say of a clock that cannot be right, None of another.

    Args:
        now_ms: the box's own clock [ms].
    """
    if now_ms >= PROGRAM_MS:
        return None
    day = datetime.fromtimestamp(max(0, now_ms) / 1000, UTC).date()
    return (
        f"This box's clock says {day}, which is before this program was made. Set "
        "the clock (date -s, or connect the box to the internet once), then try "
        "again: phones would take its certificate for ended or not yet begun."
    )


def see(room: Room, lan: list[str], now_ms: int) -> Room:
    """Return the room with the addresses that the box has now.

    Args:
        room: the room as it was.
        lan: the box's addresses, the best first; empty while it has no network.
        now_ms: now [ms].
    """
    if not lan:
        return room
    kept_ms = now_ms - KEPT_DAYS * DAY_MS
    seen = {one: at_ms for one, at_ms in room.seen.items() if at_ms > kept_ms}
    # Once a day is enough: cards wear out by writing.
    stale = [one for one in lan if now_ms - seen.get(one, 0) > DAY_MS]
    seen.update(dict.fromkeys(stale, now_ms))
    if room.primary in lan:
        return replace(room, seen=seen)
    moved = replace(room, seen=seen, primary=lan[0])
    if not room.primary:
        return moved
    return replace(moved, moved_from=room.primary, moved_ms=now_ms)


def names_wanted(room: Room, lan: list[str]) -> Names:
    """Return all that the server's certificate should be for.

    Args:
        room: the room.
        lan: the box's addresses now.
    """
    earlier = sorted(set(room.seen) - set(lan))
    dns = (*room.names, *host_names(), *THIS_BOX)
    addresses = (*room.addresses, *lan, *earlier, *LOOPBACK)
    return Names(tuple(dict.fromkeys(dns)), tuple(dict.fromkeys(addresses)))


def renews_ms(leaf: x509.Certificate) -> int:
    """Return when two thirds of a certificate's life are over [ms].

    Args:
        leaf: the certificate.
    """
    start_ms = starts_ms(leaf)
    return start_ms + (ends_ms(leaf) - start_ms) * 2 // 3


def due(folder: Folder, root: x509.Certificate, names: Names, now_ms: int) -> str:
    """Return why the server's certificate must be made anew; empty when not.

    Args:
        folder: the files.
        root: the room's root.
        names: what the certificate should be for, as far as the root permits.
        now_ms: now [ms].
    """
    try:
        leaf = folder.read_leaf()
        if leaf is None:
            return "absent"
        if not fits(read_key(folder.leaf), leaf):
            return "unfit"
        leaf.verify_directly_issued_by(root)
    except (TlsError, InvalidSignature, ValueError, TypeError):
        return "unfit"
    # Not yet begun: made while the clock was ahead.
    if not starts_ms(leaf) <= now_ms < renews_ms(leaf):
        return "age"
    held = names_of(leaf)
    if set(names.addresses) - set(held.addresses):
        return "address"
    return "name" if set(names.dns) - set(held.dns) else ""


def tend(
    folder: Folder, lan: list[str], now_ms: int, ask: Asked = NOTHING_MORE
) -> Done:
    """Make the certificates of a room, or what of them is due.

    Args:
        folder: where they are kept.
        lan: addresses of this box, the best first.
        now_ms: now, by the real clock [ms].
        ask: what a person asks for beyond that.

    Returns:
        What was made; nothing when all is well, or the root's key is away.

    Raises:
        TlsError: the clock is wrong, a file cannot be used, or what was asked
            for needs the root's key.
    """
    problem = clock_problem(now_ms)
    if problem:
        raise TlsError(problem)
    with folder.locked():
        before = folder.read_room()
        room = see(_with(before, ask), lan, now_ms)
        if room != before:
            folder.write_room(room)
        begun = _root(folder, room, lan, now_ms, ask)
        names = permitted_by(begun.root).of(names_wanted(room, lan))
        why = due(folder, begun.root, names, now_ms)
        if ask.root_key and not why:
            why = "asked"
        if why:
            why = _renew(folder, begun, names, now_ms, why)
            SecurityLog(folder.path.parent).note("certificate_made", why=why)
        return Done(begun.is_new, why, begun.aside)


def _with(room: Room, ask: Asked) -> Room:
    names = dict.fromkeys((*room.names, *ask.names))
    addresses = dict.fromkeys((*room.addresses, *ask.addresses))
    return replace(room, names=tuple(names), addresses=tuple(addresses))


class _Begun(NamedTuple):
    root: x509.Certificate
    key: ec.EllipticCurvePrivateKey | None
    is_new: bool = False
    aside: tuple[Path, ...] = ()


def _root(
    folder: Folder, room: Room, lan: list[str], now_ms: int, ask: Asked
) -> _Begun:
    kept = None if ask.new_root else folder.read_root()
    if kept is not None:
        return _Begun(kept, _root_key(folder, kept, ask))
    day = str(instant(now_ms).date())
    aside = folder.put_root_aside(day) if ask.new_root else []
    wanted = names_wanted(room, lan)
    permitted = Permitted(wanted.dns, networks(wanted.addresses))
    label = f"{host_names()[0].removesuffix('.local')} {day}"
    made = make_root(permitted, label, now_ms)
    folder.write_root(made)
    return _Begun(made.certificate, made.key, True, tuple(aside))


def _root_key(
    folder: Folder, root: x509.Certificate, ask: Asked
) -> ec.EllipticCurvePrivateKey | None:
    file = ask.root_key or folder.root_key
    if ask.root_key is None and not file.exists():
        return None
    key = read_key(file, ask.passphrase)
    if not fits(key, root):
        raise TlsError(
            f"{file} does not fit the root in {folder.root}. Give the file that was "
            "written when the key was taken off this box."
        )
    assert isinstance(key, ec.EllipticCurvePrivateKey)
    return key


def _renew(folder: Folder, begun: _Begun, names: Names, now_ms: int, why: str) -> str:
    if now_ms >= ends_ms(begun.root):
        raise TlsError(root_ended_text(begun.root))
    if now_ms < starts_ms(begun.root):
        raise TlsError(root_not_begun_text(begun.root, now_ms))
    if begun.key is None:
        if why in ("absent", "unfit"):
            raise TlsError(
                f"{folder.leaf} must be made, and the root's key is not on this box. "
                "Bring the file it was taken to: vatside tls --root-key FILE."
            )
        return ""
    folder.write_leaf(make_leaf(Made(begun.root, begun.key), names, now_ms))
    return why


def root_not_begun_text(root: x509.Certificate, now_ms: int) -> str:
    """Return what to say of a root that holds from a later day on.

    Args:
        root: the root.
        now_ms: now, by the box's clock [ms].
    """
    return (
        f"The root of this room begins on {instant(starts_ms(root)).date()} and this "
        f"box's clock says {instant(now_ms).date()}. Set the clock. If it is right, "
        "the root was made while it was wrong: make a new one with "
        "vatside tls --new-root."
    )


def root_ended_text(root: x509.Certificate) -> str:
    """Return what to say of a root whose life is over.

    Args:
        root: the root.
    """
    return (
        f"The root of this room ended on {instant(ends_ms(root)).date()}. Make a new "
        "one with: vatside tls --new-root. Every phone must then take the new root "
        "once, from the set-up page; what phones hold unsent stays on them. If that "
        "day is still to come, the clock of this box is wrong: set it first."
    )
