"""Say what is wrong with the room's certificates, and what to do."""

from typing import NamedTuple

from cryptography import x509

from server.tls.folder import Folder, Room, fits, is_open, read_key
from server.tls.made import ends_ms, instant, names_of, permitted_by, starts_ms
from server.tls.names import Names, is_address_in, is_name_in
from server.tls.refused import TlsError
from server.tls.renewal import (
    DAY_MS,
    clock_problem,
    names_wanted,
    root_ended_text,
    root_not_begun_text,
)

WARN_DAYS = 21
# The key has to be fetched from where it is kept, by someone who knows where.
KEY_AWAY_DAYS = 60
# Every phone has to be taken in hand once more.
ROOT_DAYS = 180
MOVED_DAYS = 14


class Finding(NamedTuple):
    """One thing to see to.

    Args:
        key: what it is, for screens.
        text: what it is and what to do, in words.
    """

    key: str
    text: str


def day(at_ms: int) -> str:
    """Return the day of an instant, as in 2026-11-28.

    Args:
        at_ms: the instant [ms].
    """
    return str(instant(at_ms).date())


def validity(certificate: x509.Certificate, now_ms: int, renew: str) -> list[Finding]:
    """Return what is wrong with the time that a server's certificate holds.

    Args:
        certificate: the certificate.
        now_ms: now [ms].
        renew: what to do to have a new one, as a sentence.
    """
    clock = clock_problem(now_ms)
    if clock:
        return [Finding("clock_wrong", clock)]
    start_ms, end_ms = starts_ms(certificate), ends_ms(certificate)
    if now_ms < start_ms:
        text = (
            f"The certificate begins on {day(start_ms)} and this box's clock says "
            f"{day(now_ms)}: set the clock."
        )
        return [Finding("not_yet_valid", text)]
    if now_ms >= end_ms:
        return [
            Finding("ended", f"The certificate ended on {day(end_ms)}. {renew}"),
        ]
    if now_ms >= end_ms - WARN_DAYS * DAY_MS:
        return [Finding("ends_soon", f"The certificate ends {day(end_ms)}. {renew}")]
    return []


def room_findings(folder: Folder, lan: list[str], now_ms: int) -> list[Finding]:
    """Return all that is to be seen to with a room's own certificates.

    Args:
        folder: the files.
        lan: addresses of this box now.
        now_ms: now, by the real clock [ms].
    """
    try:
        root, leaf, room = folder.read_root(), folder.read_leaf(), folder.read_room()
        if root is None or leaf is None:
            text = "The room's certificates are not complete. Run: vatside tls."
            return [Finding("incomplete", text)]
        unfit = not fits(read_key(folder.leaf), leaf)
    except TlsError as problem:
        return [Finding("unreadable", str(problem))]
    if unfit:
        text = f"The key in {folder.leaf} does not fit its certificate. "
        return [Finding("key_does_not_fit", text + "Run: vatside tls.")]
    names = names_wanted(room, lan)
    return [
        *_of_root(root, now_ms),
        *_of_leaf(folder, leaf, now_ms),
        *_of_names(root, names, room, lan),
        *_of_addresses(folder, root, leaf, room, lan, now_ms),
        *_of_modes(folder),
    ]


def _of_root(root: x509.Certificate, now_ms: int) -> list[Finding]:
    end_ms = ends_ms(root)
    if now_ms >= end_ms:
        return [Finding("root_ended", root_ended_text(root))]
    if now_ms < starts_ms(root):
        return [Finding("root_not_yet_valid", root_not_begun_text(root, now_ms))]
    if now_ms < end_ms - ROOT_DAYS * DAY_MS:
        return []
    text = (
        f"The root of this room ends on {day(end_ms)}. Choose a quiet day before it, "
        "run: vatside tls --new-root, and let every phone take the new root from the "
        "set-up page."
    )
    return [Finding("root_ends_soon", text)]


def _of_leaf(folder: Folder, leaf: x509.Certificate, now_ms: int) -> list[Finding]:
    if folder.root_key.exists():
        renew = "Run: vatside tls; it says what keeps it from being renewed."
        return validity(leaf, now_ms, renew)
    renew = "Bring the root's key: vatside tls --root-key FILE."
    found = [one for one in validity(leaf, now_ms, renew) if one.key != "ends_soon"]
    end_ms = ends_ms(leaf)
    if found or now_ms < end_ms - KEY_AWAY_DAYS * DAY_MS:
        return found
    text = (
        f"The certificate ends on {day(end_ms)} and cannot be renewed by itself: the "
        f"root's key is not on this box. {renew}"
    )
    return [Finding("root_key_away", text)]


def _of_names(
    root: x509.Certificate, names: Names, room: Room, lan: list[str]
) -> list[Finding]:
    permitted = permitted_by(root)
    given = [name for name in room.names if not is_name_in(name, permitted.dns)]
    outside = [
        one
        for one in (*room.addresses, *lan)
        if not is_address_in(one, permitted.networks)
    ]
    found = [Finding("name_outside", _outside(one)) for one in given]
    unique = dict.fromkeys(outside)
    return [*found, *(Finding("address_outside", _outside(one)) for one in unique)]


def _outside(one: str) -> str:
    return (
        f"The root of this room may not vouch for {one}: it was made without it, and "
        "phones would refuse it. Use another name or a private address, or make a new "
        "root with: vatside tls --new-root; every phone must then take that one."
    )


def _of_addresses(
    folder: Folder,
    root: x509.Certificate,
    leaf: x509.Certificate,
    room: Room,
    lan: list[str],
    now_ms: int,
) -> list[Finding]:
    found = []
    networks, held = permitted_by(root).networks, names_of(leaf).addresses
    lacking = [one for one in lan if one not in held and is_address_in(one, networks)]
    if lacking and not folder.root_key.exists():
        text = (
            f"This box has the address {lacking[0]} now, which its certificate lacks, "
            "and the root's key is not here. Bring it: vatside tls --root-key FILE; "
            "or let the router give the box its old address back."
        )
        found.append(Finding("address_lacking", text))
    if room.moved_from and now_ms < room.moved_ms + MOVED_DAYS * DAY_MS:
        text = (
            f"The address of this box changed from {room.moved_from} to "
            f"{room.primary} on {day(room.moved_ms)}. Phones that open the old one "
            "find nobody there. Give the box a fixed address in the router (often "
            "called DHCP reservation)."
        )
        found.append(Finding("address_changed", text))
    return found


def _of_modes(folder: Folder) -> list[Finding]:
    files = [file for file in (folder.root_key, folder.leaf) if file.exists()]
    return [
        Finding(
            "key_open",
            f"Other users of this box may read the key in {file}. "
            f"Run: chmod 600 {file}; if strangers use this box, make a new root.",
        )
        for file in files
        if is_open(file)
    ]
