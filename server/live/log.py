"""The log as viewers and the fold read it."""

from typing import Any

from server import store
from server.store.pulled import pulled

# Read at once by a fold or for one viewer; whoever reads goes on until nothing comes.
MOST_BYTES = 4_194_304


def read_after(
    n: int, limit: int, most_bytes: int = MOST_BYTES
) -> list[dict[str, Any]]:
    """Return the log's entries after a number.

    Args:
        n: last number that the reader has.
        limit: most entries to return; fewer where they are large.
        most_bytes: most bytes of their texts; the first comes whatever it has.

    Returns:
        List of the answers of `told`, oldest first.
    """
    rows = store.events_after(n, limit, most_bytes)
    return [dict(pulled(row)) for row in rows]
