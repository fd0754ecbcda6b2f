"""Read JSON without losing anything, and write one text for one meaning.

The same event may come back from another program that orders keys or writes
37.0 for 37. It must have the same hash, or it would look like tampering.
Escapes keep the text plain ASCII: a phone may send half a surrogate pair or
a NUL, and neither SQLite's UTF-8 nor PostgreSQL's text takes those.
"""

import hashlib
import json
import math
from typing import Any

EXACT = 2**53  # up to here a double and an int mean the same number
LONGEST_INT = 4000  # digits; Python refuses to print a little above
DEEPEST = 100  # an event is 8 deep; Python itself gives up near 1000


class NotJsonError(ValueError):
    """The text is not JSON, or is nested too deeply to read."""


def read_json(data: bytes) -> Any:
    """Return what a JSON text says, whole numbers as ints.

    A number too large for a double and the words NaN and Infinity are kept as
    text, so that they reach the check as "not a number" and are not lost.

    Args:
        data: UTF-8 text.

    Raises:
        NotJsonError: nothing can be read from it.
    """
    try:
        value = json.loads(
            data.decode("utf-8"),
            parse_float=_read_float,
            parse_int=_read_int,
            parse_constant=str,
        )
    except (ValueError, RecursionError) as error:
        raise NotJsonError from error
    if _is_deeper_than(DEEPEST, value):
        raise NotJsonError
    return value


def _read_float(text: str) -> float | int | str:
    value = float(text)
    if not math.isfinite(value):
        return text
    return int(value) if value.is_integer() and abs(value) < EXACT else value


def _read_int(text: str) -> int | str:
    return int(text) if len(text) < LONGEST_INT else text


def _is_deeper_than(limit: int, value: Any) -> bool:
    level = [value]
    for _ in range(limit + 1):
        nested = [one for one in level if isinstance(one, dict | list)]
        if not nested:
            return False
        level = []
        for one in nested:
            level.extend(one.values() if isinstance(one, dict) else one)
    return True


def canonical_text(value: Any) -> str:
    r"""Return the one text of a JSON value: sorted keys, no spaces, plain ASCII.

    Args:
        value: what `read_json` returned, or a part of it.

    >>> canonical_text({"b": 37, "a": "é"})
    '{"a":"\\u00e9","b":37}'
    """
    return json.dumps(value, sort_keys=True, separators=(",", ":"), allow_nan=False)


def sha256_of(text: str) -> str:
    """Return the hash of a canonical text, as hexadecimal digits.

    Args:
        text: canonical text.
    """
    return hashlib.sha256(text.encode("ascii")).hexdigest()
