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
import logging
import secrets

from flask import current_app

from server.config import settings
from server.store.files import made_once

NAME = "receipt-key"
KEY = "vatside_receipt_key"
SAID = "vatside_receipt_key_said"
LENGTH = 32
BYTES = 16  # nobody tries 2^127 of them

log = logging.getLogger(__name__)


def make_ready() -> None:
    """Make the key while there is room for it: later the disk may be full."""
    _key()


def receipt_of(text: str) -> str:
    """Return the proof of an event that is in the log now; "" while there is no key.

    Args:
        text: its canonical text.
    """
    key = _key()
    if key is None:
        return ""
    digest = hmac.new(key, text.encode("ascii"), hashlib.sha256).digest()
    return base64.urlsafe_b64encode(digest[:BYTES]).decode().rstrip("=")


def is_receipt(text: str, said: object) -> bool:
    """Tell whether something is the proof of an event.

    Args:
        text: canonical text of the event.
        said: what was sent as its proof, any JSON value.
    """
    if not isinstance(said, str) or not said.isascii():
        return False
    right = receipt_of(text)
    return right != "" and hmac.compare_digest(right, said)


def _key() -> bytes | None:
    key: bytes | None = current_app.extensions.get(KEY)
    if key is None:
        key = _read_key()
        if key is not None:
            current_app.extensions[KEY] = key
    return key


def _read_key() -> bytes | None:
    """Return the key, None where it is not to be had: the log is told without it."""
    file = settings().data_dir / NAME
    try:
        key = made_once(file, lambda: secrets.token_bytes(LENGTH))
        problem = None if len(key) >= LENGTH else "it is cut short"
    except OSError as failure:  # a full disk: what is known must still be shown
        key, problem = b"", str(failure.strerror)
    if problem is not None:
        _say_once(f"there is no {file}: {problem}")
        return None
    return key


def _say_once(words: str) -> None:
    if not current_app.extensions.get(SAID):
        current_app.extensions[SAID] = True
        log.error("%s; what phones give back will wait for a person", words)
