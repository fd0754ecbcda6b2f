"""The key that codes are kept under, so that the database alone betrays none.

A short code has 40 bits: whoever got a copy of the database could try them all
against a plain hash within minutes. The key lies beside the database, readable
by the server's user alone, and in no copy that `vatside backup` makes. Another
key only ends the codes that are open then, so a restore needs no copy of it;
several hosts that share one PostgreSQL need the same one.
"""

import hashlib
import hmac
import secrets
from pathlib import Path

from server.config import settings
from server.store.files import made_once

NAME = "code-key"
BYTES = 32


def key_of(data_dir: Path) -> bytes:
    """Return the server's key, made if there is none yet.

    Args:
        data_dir: folder of the data.

    Raises:
        ValueError: the file is not such a key.
    """
    file = data_dir / NAME
    key = made_once(file, lambda: secrets.token_bytes(BYTES))
    if len(key) != BYTES:
        raise ValueError(f"{file} is not a key for codes; move it away.")
    return key


def code_hash(code: str) -> str:
    """Return what is kept of a code.

    Args:
        code: the code as meant.
    """
    # Half a surrogate pair may be typed; it must not match, nor trip this.
    text = code.encode("utf-8", "backslashreplace")
    return hmac.new(key_of(settings().data_dir), text, hashlib.sha256).hexdigest()
