"""Whether the proof of a pushed event holds.

A bad proof is never a reason to lose an act: the event is put aside with the
reason, and a person decides. A hold is not even put aside where its person did
sign it, though with a PIN changed meanwhile: it holds at once and says so.
"""

from typing import Any, NamedTuple

from server import seal
from server.core import desk
from server.core.log.kinds.columns import PHONE
from server.core.log.rights import legal
from server.core.log.rights.proof import ACCEPTED, OLD_PIN, proof_for
from server.shapes import Problem
from server.store import log, pins


class Judged(NamedTuple):
    """What was found of a proof.

    Args:
        problems: why the log must not take the event; empty when it may.
        state: what was found where that is not what the event itself says.
    """

    problems: list[Problem]
    state: str | None = None


def judge_proof(event: dict[str, Any], about: str | None, phone_of: str) -> Judged:
    """Return what was found of the proof of an event.

    Args:
        event: a sound event, its person known.
        about: kind of the entry that it changes, if known.
        phone_of: id of the person whose phone sent it.
    """
    asked, proof = proof_for(event["kind"], about), event.get("proof")
    if proof is not None and proof["by"] == "pin":
        return _judge_signature(event, proof, asked)
    if asked is None:
        return Judged([])
    if asked == PHONE and event["person"] == phone_of:
        return Judged([])
    if proof is None and _entered_ms(event) < pins.proofs_since_ms():
        return Judged([])  # recorded before this server knew PINs
    return _refused("not_proved")


def accepted_state(event: dict[str, Any], phone_of: str) -> str | None:
    """Return the state of an event that a person takes into the log after a look.

    Args:
        event: the event as it was sent; it may be unsound.
        phone_of: id of the person whose phone sent it, "" if not known.
    """
    if desk.check_new(event):
        return ACCEPTED if event.get("proof") is not None else None
    judged = judge_proof(event, legal.about_of(event, _logged), phone_of)
    return ACCEPTED if judged.problems else judged.state


def _logged(id_: Any) -> dict[str, Any] | None:
    return log.event_of(id_) if isinstance(id_, str) else None


def _judge_signature(
    event: dict[str, Any], proof: dict[str, Any], asked: str | None
) -> Judged:
    pin = pins.find_pin(proof["key"])
    if pin is None:
        return _refused("unknown_pin")
    is_theirs = pin.sealed.person == event["person"]
    text = seal.act_text(event)
    if not is_theirs or not seal.is_signed(pin.sealed.public, text, proof["sig"]):
        return _refused("bad_proof")
    if pin.ended_ms is None or _entered_ms(event) <= pin.ended_ms:
        return Judged([])
    return Judged([], OLD_PIN) if asked == PHONE else _refused("old_pin")


def _entered_ms(event: dict[str, Any]) -> int:
    entered_ms: int = event["entered_ms"] + event["off_ms"]
    return entered_ms


def _refused(key: str) -> Judged:
    return Judged([{"field": "proof", "key": key, "limit": None}])
