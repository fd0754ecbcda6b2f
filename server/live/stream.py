"""What one viewer's stream says (Server-Sent Events).

Source of the format: WHATWG HTML Living Standard, section 9.2.
"""

import json
from collections.abc import Callable, Sequence
from typing import Any

RETRY_MS = 3000
SIGN_OF_LIFE = b": still here\n\n"

# (after, limit) -> [{"n", "recv_ms", "event"}...]
ReadAfter = Callable[[int, int], Sequence[dict[str, Any]]]


def message(data: object, *, event: str = "", n: int | None = None) -> str:
    r"""Return one message of a stream.

    Args:
        data: what it carries; JSON types only.
        event: its name; empty for the ordinary kind.
        n: number to come back with after a broken connection.

    >>> message({"head": 3}, event="head")
    'event: head\ndata: {"head": 3}\n\n'
    """
    lines = []
    if event:
        lines.append(f"event: {event}")
    if n is not None:
        lines.append(f"id: {n}")
    # JSON text has no line break, so one data line is enough.
    lines.append(f"data: {json.dumps(data)}")
    return "\n".join(lines) + "\n\n"


def greeting(hello: dict[str, Any]) -> bytes:
    """Return how every stream begins.

    Args:
        hello: where the log stands, and the server's clock.
    """
    return (f"retry: {RETRY_MS}\n\n" + message(hello, event="head")).encode()


def entries(rows: Sequence[dict[str, Any]]) -> bytes:
    """Return entries of the log as a stream brings them.

    Args:
        rows: list of {"n", "recv_ms", "event"}, in order.
    """
    return "".join(message(row, n=row["n"]) for row in rows).encode()
