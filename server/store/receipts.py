"""Proof that an event was in this log once, given out with it.

A server set back to a backup lacks what came after it. A phone that had read such an
event may be the only one that still has it, and is neither who made it nor allowed to
make it. With the proof it can be taken back as it was: whether it was allowed was
judged when it first came. Without, a person decides.

The key lies in the data folder, beside the database and not in its backups. On
another machine there is no proof, and what phones give back waits for a person.
"""

import base64
import hashlib
import hmac
import secrets

from flask import current_app

from server.config import settings
from server.store.files import made_once

NAME = "receipt-key"
KEY = "vatside_receipt_key"
BYTES = 16  # nobody tries 2^127 of them


def receipt_of(text: str) -> str:
    """Return the proof of an event that is in the log now.

    Args:
        text: its canonical text.
    """
    digest = hmac.new(_key(), text.encode("ascii"), hashlib.sha256).digest()
    return base64.urlsafe_b64encode(digest[:BYTES]).decode().rstrip("=")


def is_receipt(text: str, said: object) -> bool:
    """Tell whether something is the proof of an event.

    Args:
        text: canonical text of the event.
        said: what was sent as its proof, any JSON value.
    """
    if not isinstance(said, str) or not said.isascii():
        return False
    return hmac.compare_digest(receipt_of(text), said)


def _key() -> bytes:
    key: bytes | None = current_app.extensions.get(KEY)
    if key is None:
        file = settings().data_dir / NAME
        key = made_once(file, lambda: secrets.token_bytes(32))
        current_app.extensions[KEY] = key
    return key
