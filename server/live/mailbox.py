"""A viewer's channel where the server keeps a thread for each answer.

So it is with Flask's own development server and with its test client; with
ours the socket itself is handed over.
"""

import queue
import time
from collections.abc import Iterator


class Mailbox:
    """Takes what a socket's channel would take, for a thread to fetch."""

    events = 0

    def __init__(self) -> None:
        self._parts: queue.SimpleQueue[bytes] = queue.SimpleQueue()
        # Each is written by one thread only.
        self._put_bytes = 0
        self._fetched_bytes = 0
        self.moved_s = time.monotonic()

    @property
    def unsent(self) -> int:
        """Return how many bytes were not fetched yet."""
        return self._put_bytes - self._fetched_bytes

    def fileno(self) -> int:
        """Tell that no selector can watch this."""
        return -1

    def receive(self) -> bytes | None:
        """Tell that nothing comes this way."""
        return None

    def notice_absence(self, after_s: float) -> None:
        """Do nothing: who fetches says when it stops.

        Args:
            after_s: as for a socket [s].
        """

    def put_part(self, data: bytes) -> None:
        """Put a part of the stream; b"" ends it.

        Args:
            data: the part.
        """
        if not self.unsent:
            self.moved_s = time.monotonic()
        self._put_bytes += len(data)
        self._parts.put(data)

    def flush(self) -> bool:
        """Tell whether all was fetched."""
        return not self.unsent

    def end(self) -> None:
        """End the stream."""
        self._parts.put(b"")

    close = end

    def parts(self) -> Iterator[bytes]:
        """Yield what comes until the stream has ended."""
        while part := self._parts.get():
            self._fetched_bytes += len(part)
            self.moved_s = time.monotonic()
            yield part
