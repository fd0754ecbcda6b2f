"""The envelope of an event, the same for every kind.

An event is an immutable fact. The envelope is the same for every kind; `data`
depends on the kind. Server, phone, tests, documentation and fuzzing read KINDS.

Envelope:
    id        UUID, version 7, made on the phone; the only unique key
    make      UUID of the make it belongs to
    device    UUID of the installed copy of the app
    seq       1, 2, 3 ... counted by that device
    person    id of the person who tapped
    at_ms     when it was observed, by the phone's clock [ms since 1970 UTC]
    entered_ms when it was entered, by the phone's clock [ms]
    tz_min    the phone's time zone, minutes east of UTC
    mono_ms   the page's monotonic clock at entry [ms]
    boot      UUID of the page's session (mono_ms only compares within it)
    off_ms    estimated server time minus phone time [ms]
    off_q_ms  half round trip of that estimate [ms], None if never measured
    kind, v   row of KINDS and its version
    ref       id of the event that this one is about, or None
    data      fields of the kind
    proof     how the person proved to be it, or absent; see `proof`
"""

from ...units.quantities import check_number

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import Problem

# A clock may be wrong by hours and is corrected; outside 2000..2100 it is noise.
EARLIEST_MS = 946684800000
LATEST_MS = 4102444800000
UUID_PARTS = [8, 4, 4, 4, 12]
SIG_LETTERS = 86  # 64 bytes in base64url


def check_envelope(event: "dict[str, Any]") -> "list[Problem]":
    """Return what is wrong with the envelope of an event.

    Args:
        event: dict; what its kind and body hold is not asked.

    Returns:
        List of {"field", "key", "limit"}.
    """
    problems: "list[Problem]" = []
    for name in ("id", "make", "device", "boot"):
        if not _is_uuid(event.get(name)):
            problems.append({"field": name, "key": "not_a_uuid", "limit": None})
    ref = event.get("ref")
    if ref is not None and not _is_uuid(ref):
        problems.append({"field": "ref", "key": "not_a_uuid", "limit": None})
    person = event.get("person")
    if not isinstance(person, str) or not 1 <= len(person) <= 64:
        problems.append({"field": "person", "key": "missing", "limit": 64})
    for name in ("at_ms", "entered_ms"):
        problems.extend(check_int(name, event.get(name), EARLIEST_MS, LATEST_MS))
    problems.extend(check_int("seq", event.get("seq"), 1, 9007199254740991))
    problems.extend(check_int("v", event.get("v"), 1, 1000))
    problems.extend(check_int("tz_min", event.get("tz_min"), -840, 840))
    century_ms = LATEST_MS - EARLIEST_MS
    problems.extend(check_int("off_ms", event.get("off_ms"), -century_ms, century_ms))
    problems.extend(check_number("mono_ms", event.get("mono_ms"), 0, None))
    if event.get("off_q_ms") is not None:
        problems.extend(check_number("off_q_ms", event.get("off_q_ms"), 0, None))
    if event.get("proof") is not None:
        problems.extend(_check_proof(event["proof"]))
    return problems


def _check_proof(proof: "Any") -> "list[Problem]":
    """Return a problem unless a proof has its form; whether it holds is not known."""
    is_sound = False
    if isinstance(proof, dict) and proof.get("by") == "phone":
        is_sound = len(proof) == 1
    elif isinstance(proof, dict) and proof.get("by") == "pin":
        sig = proof.get("sig")
        is_sound = len(proof) == 3 and _is_uuid(proof.get("key"))
        is_sound = is_sound and isinstance(sig, str) and len(sig) == SIG_LETTERS
    return [] if is_sound else [{"field": "proof", "key": "bad_proof", "limit": None}]


def check_int(
    field: str, value: "Any", low: "int | None", high: "int | None"
) -> "list[Problem]":
    """Return what is wrong with a whole number.

    Args:
        field: its name.
        value: JSON value.
        low: least, or None.
        high: greatest, or None.

    Returns:
        List of {"field", "key", "limit"}.
    """
    problems = check_number(field, value, low, high)
    if not problems and value != int(value):
        return [{"field": field, "key": "not_whole", "limit": None}]
    return problems


def _is_uuid(value: object) -> bool:
    # Four to an entry, and a phone reads all its entries at its start: the letters
    # are looked at by the interpreter, not one by one in here.
    if not isinstance(value, str):
        return False
    parts = value.split("-")
    if [len(part) for part in parts] != UUID_PARTS:
        return False
    return not "".join(parts).strip("0123456789abcdef")
