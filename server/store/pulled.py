"""An event of the log as whoever pulls it gets it."""

from typing import Any

from server.shapes import PulledEvent
from server.store.log import Logged
from server.store.receipts import is_receipt, receipt_of


def pulled(row: Logged) -> PulledEvent:
    """Return an event with its number, its receipt and what was found of its proof.

    Args:
        row: the event in the log.
    """
    found: PulledEvent = {
        "n": row.n,
        "recv_ms": row.recv_ms,
        "event": row.event,
        "receipt": receipt_of(_receipted(row.text, row.proof_state)),
    }
    if row.proof_state is not None:
        found["proof_state"] = row.proof_state
    return found


def was_pulled(text: str, proof_state: str | None, said: object) -> bool:
    """Tell whether an event was once pulled with this receipt and this state.

    Args:
        text: canonical text of the event.
        proof_state: what is said to have been found of its proof.
        said: what was sent as its receipt, any JSON value.
    """
    return is_receipt(_receipted(text, proof_state), said)


def as_filed(row: dict[str, Any] | PulledEvent) -> dict[str, Any]:
    """Return the event of a row as the core files it.

    The state is the server's own word: one that an event brings along is none.

    Args:
        row: the answer of `pulled`.
    """
    event = dict(row["event"])
    event.pop("proof_state", None)
    state = row.get("proof_state")
    return event if state is None else event | {"proof_state": state}


def _receipted(text: str, proof_state: str | None) -> str:
    # Canonical text has no line end, so the two cannot run into each other.
    return text if proof_state is None else f"{text}\n{proof_state}"
