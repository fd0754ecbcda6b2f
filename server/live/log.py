"""The log as viewers and the fold read it."""

from typing import Any

from server import store


def read_after(n: int, limit: int) -> list[dict[str, Any]]:
    """Return the log's entries after a number.

    Args:
        n: last number that the reader has.
        limit: most entries to return.

    Returns:
        List of {"n", "recv_ms", "event"}, oldest first.
    """
    return [
        {"n": row.n, "recv_ms": row.recv_ms, "event": row.event}
        for row in store.events_after(n, limit)
    ]
