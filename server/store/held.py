"""Which of a phone's own numbers are here.

A phone counts its events 1, 2, 3 … A gap says that something is still to come
or was lost on the phone; a repeat says that the phone was set back. Neither
refuses anything. `held` remembers up to where there is no gap, so that a push
after a year does not count the year again.
"""

import json
from typing import NamedTuple

from sqlalchemy import select, union_all

from server.store.database import writing
from server.store.models import Held, LoggedEvent, LookedAt

MOST_LISTED = 500  # of a list of gaps; a phone asks again when those are filled


class Have(NamedTuple):
    """What is here of one phone's counting."""

    upto: int
    missing: list[int]
    repeated: list[int]


def count_held(device: str, repeated: set[int]) -> Have:
    """Count what is here of one phone, and remember it for the next time.

    Args:
        device: id of the phone.
        repeated: its numbers just seen to be used twice.
    """
    with writing() as session:
        held = session.get(Held, device)
        if held is None:
            held = Held(device=device, solid_seq=0, repeated="[]")
            session.add(held)
        numbers = sorted(_numbers_above(device, held.solid_seq))
        missing: list[int] = []
        expected = held.solid_seq + 1
        for seq in numbers:
            missing.extend(range(expected, min(seq, expected + MOST_LISTED)))
            if not missing:
                held.solid_seq = seq
            expected = seq + 1
            if len(missing) >= MOST_LISTED:
                break
        if repeated:
            known = repeated.union(json.loads(held.repeated))
            held.repeated = json.dumps(sorted(known)[:MOST_LISTED])
        upto = numbers[-1] if numbers else held.solid_seq
        return Have(upto, missing[:MOST_LISTED], json.loads(held.repeated))


def _numbers_above(device: str, seq: int) -> set[int]:
    with writing() as session:
        found = session.execute(
            union_all(
                *(
                    select(table.seq).where(table.device == device, table.seq > seq)
                    for table in (LoggedEvent, LookedAt)
                )
            )
        )
        return {seq for seq in found.scalars() if seq is not None}


def seqs_taken(device: str, seqs: set[int]) -> set[int]:
    """Return which of a phone's numbers the log holds already.

    Args:
        device: id of the phone.
        seqs: numbers to look for.
    """
    with writing() as session:
        query = select(LoggedEvent.seq).where(
            LoggedEvent.device == device, LoggedEvent.seq.in_(seqs)
        )
        return {seq for seq in session.execute(query).scalars() if seq is not None}
