"""People, their paired phones, and what each may do. No web framework here.

A person has a role; a phone is paired to a person by a code that the owner
shows, and holds a token from then on. All need the store, thus a running
app's context.
"""

from server.auth.pairing import (
    OWNER_CODE_S,
    Asking,
    NewCodes,
    OwnerCode,
    Pairing,
    owner_code,
    pair,
    start_pairing,
)
from server.auth.people import (
    add_person,
    change_person,
    devices,
    people,
    remove_device,
    sign_out,
)
from server.auth.refused import RefusedError
from server.auth.sessions import IDLE_DAYS, Session, note_seen, session_of, still_good

__all__ = [
    "IDLE_DAYS",
    "OWNER_CODE_S",
    "Asking",
    "NewCodes",
    "OwnerCode",
    "Pairing",
    "RefusedError",
    "Session",
    "add_person",
    "change_person",
    "devices",
    "note_seen",
    "owner_code",
    "pair",
    "people",
    "remove_device",
    "session_of",
    "sign_out",
    "start_pairing",
    "still_good",
]
