"""Which acts a person must prove to be their own, and what the record says of it.

The table is the column `proof` of `kinds.table.KINDS`. The core knows no secrets: the
phone makes a proof with the person's PIN, the server verifies it when the entry
arrives and says so only where its verdict is not what the entry itself says.

Forms of `proof` in an event:
    {"by": "pin", "key", "sig"}  signed with the key that the PIN opens
    {"by": "phone"}              in a hurry, by the person whose phone it is
    absent                       not asked for, or recorded before PINs
"""

from ..kinds.columns import PERSON
from ..kinds.table import CHANGING, KINDS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.record import Proved
    from server.shapes.core.state import Event


# What the server adds to an event as "proof_state" where its verdict differs.
OLD_PIN = "old_pin"  # signed with a PIN that had been changed by then
ACCEPTED = "accepted"  # not proved; a person took it after a look


def proof_for(kind: str, about: "str | None" = None) -> "str | None":
    """Return the proof that a kind of event asks for.

    Who must prove to have signed off must prove to strike it out as well, else a
    strike would lift a hold without asking anybody.

    Args:
        kind: a key of `kinds.table.KINDS`.
        about: kind of the entry that a correction or strike is about, if known.

    Returns:
        PERSON for a PIN, PHONE where the phone's own person may do without one in
        a hurry, None where none is asked for.
    """
    if kind not in KINDS:
        return None
    if kind in CHANGING and about in KINDS and KINDS[about]["proof"]:
        return PERSON
    return KINDS[kind]["proof"]


def proved(event: "Event") -> "Proved | None":
    """Return how an event was proved, as the record says it.

    Args:
        event: the event, with "proof_state" where the server added one.

    Returns:
        "pin", "phone", OLD_PIN, ACCEPTED, "none" where a proof is asked for and
        there is none, or None where none is asked for.
    """
    state = event.get("proof_state")
    if state is not None:
        return state
    proof = event.get("proof")
    if isinstance(proof, dict):
        return proof.get("by")
    return "none" if KINDS[event["kind"]]["proof"] else None
