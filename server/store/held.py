"""Which of a phone's own numbers are here.

A phone counts its events 1, 2, 3 … A gap says that something is still to come
or was lost on the phone; a repeat says that the phone was set back. Neither
refuses anything. The gaps are kept as ranges and brought on with each push, so
that a push after a year does not count the year again.
"""

import json
from collections.abc import Iterable
from typing import NamedTuple

from flask_sqlalchemy.session import Session
from sqlalchemy.orm import scoped_session

from server.store.database import reading, writing
from server.store.models import Held

MOST_LISTED = 500  # of a list of gaps; a phone asks again when those are filled


class Have(NamedTuple):
    """What is here of one phone's counting."""

    upto: int
    missing: list[int]
    repeated: list[int]


def held_of(device: str) -> Have:
    """Return what is here of one phone.

    Args:
        device: id of the phone.
    """
    with reading() as session:
        held = session.get(Held, device)
        return Have(0, [], []) if held is None else _have(held)


def count_held(device: str, seqs: Iterable[int]) -> Have:
    """Count numbers that have just come, and return what is here then.

    Args:
        device: id of the phone.
        seqs: its numbers of events not counted before.
    """
    with writing() as session:
        held = _found(session, device)
        gaps: list[list[int]] = json.loads(held.missing)
        repeated = set(json.loads(held.repeated))
        for seq in seqs:
            if seq > held.upto_seq:
                if seq > held.upto_seq + 1:
                    gaps.append([held.upto_seq + 1, seq - 1])
                held.upto_seq = seq
            elif not _fill(gaps, seq):
                repeated.add(seq)
        held.missing = json.dumps(gaps)
        held.repeated = json.dumps(sorted(repeated)[:MOST_LISTED])
        return _have(held)


def used_until(device: str) -> tuple[int, int]:
    """Return when all that a phone may send is free again, by number and size [ms].

    Args:
        device: id of the phone.
    """
    with writing() as session:
        held = _found(session, device)
        return held.events_until_ms, held.bytes_until_ms


def use_until(device: str, events_ms: int, bytes_ms: int) -> None:
    """Write down when all that a phone may send is free again.

    Args:
        device: id of the phone.
        events_ms: by number [ms].
        bytes_ms: by size [ms].
    """
    with writing() as session:
        held = _found(session, device)
        held.events_until_ms, held.bytes_until_ms = events_ms, bytes_ms


def _found(session: scoped_session[Session], device: str) -> Held:
    # Within one transaction the session knows the row: it is read once.
    held = session.get(Held, device)
    if held is None:
        held = Held(
            device=device,
            upto_seq=0,
            missing="[]",
            repeated="[]",
            events_until_ms=0,
            bytes_until_ms=0,
        )
        session.add(held)
    return held


def _fill(gaps: list[list[int]], seq: int) -> bool:
    for index, (first, last) in enumerate(gaps):
        if first <= seq <= last:
            rest = [[first, seq - 1], [seq + 1, last]]
            gaps[index : index + 1] = [gap for gap in rest if gap[0] <= gap[1]]
            return True
    return False


def _have(held: Held) -> Have:
    missing: list[int] = []
    for first, last in json.loads(held.missing):
        missing.extend(range(first, min(last, first + MOST_LISTED) + 1))
        if len(missing) >= MOST_LISTED:
            break
    return Have(held.upto_seq, missing[:MOST_LISTED], json.loads(held.repeated))
