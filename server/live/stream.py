"""Write one viewer's stream of events (Server-Sent Events).

Source of the format: WHATWG HTML Living Standard, section 9.2.
"""

import json
import time
from collections.abc import Callable, Iterator, Sequence
from typing import Any

from server.live.follower import Follower

RETRY_MS = 3000
COMMENT_S = 15.0  # proxies and phones drop a connection that stays silent
LIFE_S = 300.0  # a viewer that vanished must not hold a thread for longer
BATCH = 500

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


def stream(
    follower: Follower,
    read_after: ReadAfter,
    after: int,
    hello: dict[str, Any],
    comment_s: float = COMMENT_S,
    life_s: float = LIFE_S,
) -> Iterator[str]:
    """Yield what happens from a number on, until the stream's time is over.

    Args:
        follower: where the viewer has taken a place already.
        read_after: reads entries of the log in order.
        after: number that the viewer has already seen.
        hello: body of the first message.
        comment_s: a sign of life is sent after this long without news [s].
        life_s: length of the stream [s].
    """
    end_s = time.monotonic() + life_s
    yield f"retry: {RETRY_MS}\n\n"
    yield message(hello, event="head")
    # The head may have grown since the follower last looked, so look once here.
    fresh = True
    while not follower.closed:
        left_s = end_s - time.monotonic()
        if left_s <= 0:
            return
        if not fresh and follower.wait(after, min(comment_s, left_s)) <= after:
            yield ": still here\n\n"
            continue
        rows = read_after(after, BATCH)
        fresh = len(rows) == BATCH
        for row in rows:
            after = row["n"]
            yield message(row, n=after)
