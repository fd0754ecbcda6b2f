"""A calendar file that rings on a locked phone without a network (RFC 5545).

To be opened once into the phone's own calendar: calendars that are subscribed
to drop alarms or refresh in hours (RFC 4791 section 8.6 allows it). Instants are
in UTC and every entry keeps its UID, so that opening the file again moves an
entry instead of doubling it.
"""

import uuid
from datetime import UTC, datetime
from typing import Any

from server.alarm.words import own, texts

SPACE = uuid.UUID("5b0f3f1e-3c0b-4f0e-9a57-2f6c1c0f7a11")  # of our UIDs
LINE_BYTES = 75  # RFC 5545 section 3.1
MOMENT = "PT5M"
# What an entry says, by the keys of the texts.
WORDS = {"step_end": "step_due", "step_begin": "can_begin", "timer": "timer"}


def calendar(
    view: dict[str, Any], entries: list[dict[str, Any]], language: str | None = None
) -> bytes:
    """Return a make's deadlines as a calendar file.

    Args:
        view: View of the make.
        entries: as from `core.alarm.calendar.calendar`.
        language: of who opens it; None is English.
    """
    lines = [
        "BEGIN:VCALENDAR",
        "VERSION:2.0",
        f"PRODID:-//Vatside//Alarms//{(language or 'en').upper()}",
        "CALSCALE:GREGORIAN",
        "METHOD:PUBLISH",
    ]
    for entry in entries:
        lines += _event(view, entry, language)
    lines.append("END:VCALENDAR")
    return b"".join(folded(line) for line in lines)


def _event(
    view: dict[str, Any], entry: dict[str, Any], language: str | None
) -> list[str]:
    make = view["make"]
    words = texts(language)
    says = words[WORDS[entry["what"]]].format(
        step=own(entry["title"], language), label=entry["label"]
    )
    where = " · ".join(name for name in (make["name"], make["vat"]) if name)
    # Later files of a make count higher, as the sequence of a revision must.
    revision = max(0, (view["now_ms"] - make["opened_ms"]) // 60_000)
    lines = [
        "BEGIN:VEVENT",
        f"UID:{uuid.uuid5(SPACE, make['id'] + '/' + entry['name'])}",
        f"DTSTAMP:{utc(view['now_ms'])}",
        f"SEQUENCE:{revision}",
        f"DTSTART:{utc(entry['at_ms'])}",
        f"DURATION:{MOMENT}",
        f"SUMMARY:{escaped(says)}",
        f"DESCRIPTION:{escaped(_details(make, entry, where, words))}",
        f"LOCATION:{escaped(where)}",
        "TRANSP:TRANSPARENT",
    ]
    lines += _ring("PT0S", says)
    if entry["late_ms"] is not None and entry["late_ms"] > entry["at_ms"]:
        late_s = (entry["late_ms"] - entry["at_ms"]) // 1000
        lines += _ring(f"PT{late_s}S", words["last_moment"].format(says=says))
    lines.append("END:VEVENT")
    return lines


def _ring(after: str, says: str) -> list[str]:
    return [
        "BEGIN:VALARM",
        "ACTION:DISPLAY",
        f"TRIGGER;RELATED=START:{after}",
        f"DESCRIPTION:{escaped(says)}",
        "END:VALARM",
    ]


def _details(
    make: dict[str, Any], entry: dict[str, Any], where: str, words: dict[str, Any]
) -> str:
    sure = "" if entry["sure"] else "\n" + words["forecast"]
    return str(words["batch"]).format(place=where, batch=make["batch"]) + sure


def utc(at_ms: int) -> str:
    """Return an instant as calendars write it in UTC.

    Args:
        at_ms: the instant [ms].

    >>> utc(1_790_000_000_999)
    '20260921T141320Z'
    """
    at = datetime.fromtimestamp(at_ms // 1000, UTC)
    return at.strftime("%Y%m%dT%H%M%SZ")


def escaped(text: str) -> str:
    r"""Return text as a calendar's value (RFC 5545 section 3.3.11).

    Args:
        text: any text; control signs other than line breaks are dropped.

    >>> escaped("salt; 2,5 kg\nstir")
    'salt\\; 2\\,5 kg\\nstir'
    """
    for sign, word in (("\\", "\\\\"), (";", "\\;"), (",", "\\,"), ("\n", "\\n")):
        text = text.replace(sign, word)
    return "".join(sign for sign in text if sign >= " " and sign != "\x7f")


def folded(line: str) -> bytes:
    r"""Return a line ended, and broken so that no piece is over 75 bytes.

    Args:
        line: one line without its end.

    >>> folded("SUMMARY:" + "é" * 40).split(b"\r\n")[0].decode()
    'SUMMARY:ééééééééééééééééééééééééééééééééé'
    """
    pieces, piece, room = [], b"", LINE_BYTES
    for sign in line:
        data = sign.encode()
        if len(piece) + len(data) > room:  # never within a letter
            pieces.append(piece)
            piece, room = b"", LINE_BYTES - 1  # the blank that continues a line
        piece += data
    pieces.append(piece)
    return b"\r\n ".join(pieces) + b"\r\n"
