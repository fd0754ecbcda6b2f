"""Codes that a person reads off one screen and types on another, and tokens.

Thirty-two signs without I, L, O and U: none is mistaken for another, and no
word comes out. What is typed is forgiven its case, spaces, dashes, and an O
for a 0. Only hashes are kept: of codes under a key, see `code_key`; of tokens,
which have 256 bits, plain ones.
"""

import hashlib
import secrets

SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
SHORT_SIGNS = 8  # 40 bits: typed, thus limited in tries
OWNER_SIGNS = 16  # 80 bits: typed once, too many to guess
LONG_SIGNS = 26  # 130 bits: in the QR picture
_MISREAD = str.maketrans({"O": "0", "I": "1", "L": "1", "-": "", " ": ""})


def new_code(signs: int) -> str:
    """Return a random code.

    Args:
        signs: how many signs it has, five bits each.
    """
    return "".join(secrets.choice(SIGNS) for _ in range(signs))


def grouped(code: str) -> str:
    """Return a code in groups of four, as it is shown.

    Args:
        code: signs without spaces.

    >>> grouped("K7QM3XHD")
    'K7QM-3XHD'
    """
    return "-".join(code[start : start + 4] for start in range(0, len(code), 4))


def as_meant(typed: str) -> str:
    """Return the code that was meant by what was typed.

    Args:
        typed: what a person typed.

    >>> as_meant(" k7qm 3xho")
    'K7QM3XH0'
    """
    return typed.upper().translate(_MISREAD)


def new_token() -> str:
    """Return a random token of 256 bits for a phone to keep."""
    return secrets.token_urlsafe(32)


def hash_of(token: str) -> str:
    """Return what is kept of a token.

    Args:
        token: a token, or whatever was sent for one.
    """
    # Half a surrogate pair may be sent; it must not match, nor trip this.
    return hashlib.sha256(token.encode("utf-8", "backslashreplace")).hexdigest()
