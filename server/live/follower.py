"""Watch the head of the log for every live stream of one process.

The log is the bus: one thread a process asks for its head twice a second and
wakes the streams when it grew. So viewers cost no database reads while nothing
happens, and workers need not know of each other.

The thread starts with the first viewer, never earlier: a thread started before
the workers fork would exist in none of them. It ends with the last viewer.
"""

import logging
import threading
from collections.abc import Callable

POLL_S = 0.5
# After a failed look (a locked or absent database) the next one waits longer.
FAILED_POLL_S = 5.0

log = logging.getLogger(__name__)


class Follower:
    """Count the viewers of this process and wake them when the log grows.

    Args:
        read_head: returns the number of the newest entry; called in a thread.
        places: how many viewers may watch at once.
        poll_s: pause between two looks [s].
    """

    def __init__(
        self, read_head: Callable[[], int], places: int, poll_s: float = POLL_S
    ) -> None:
        self._read_head = read_head
        self._places = places
        self._poll_s = poll_s
        self._changed = threading.Condition()
        self._closed = False
        self._viewers = 0
        self._thread: threading.Thread | None = None
        self._head = 0

    @property
    def viewers(self) -> int:
        """Return how many viewers watch now."""
        return self._viewers

    @property
    def closed(self) -> bool:
        """Tell whether the streams must end."""
        return self._closed

    def enter(self) -> bool:
        """Take a place; False when all are taken or the server stops."""
        with self._changed:
            if self._closed or self._viewers >= self._places:
                return False
            self._viewers += 1
            if self._thread is None:
                self._thread = threading.Thread(
                    target=self._watch, name="follower", daemon=True
                )
                self._thread.start()
            return True

    def leave(self) -> None:
        """Give the place back."""
        with self._changed:
            self._viewers -= 1
            self._changed.notify_all()

    def wait(self, after: int, timeout_s: float) -> int:
        """Wait until the log has grown beyond a number.

        Args:
            after: number that the viewer has already seen.
            timeout_s: longest wait [s].

        Returns:
            The head as last seen; at most `after` when the wait ran out.
        """
        with self._changed:
            self._changed.wait_for(
                lambda: self._closed or self._head > after, timeout_s
            )
            return self._head

    def close(self) -> None:
        """End every stream, because the server stops."""
        # Called from a signal handler, which may have interrupted a thread that
        # holds the lock: no lock is taken here, the watching thread wakes them.
        self._closed = True

    def _watch(self) -> None:
        pause_s = 0.0
        while True:
            with self._changed:
                self._changed.wait_for(self._may_end, pause_s)
                if self._may_end():
                    self._thread = None
                    self._changed.notify_all()
                    return
            pause_s = self._look()

    def _may_end(self) -> bool:
        return self._closed or self._viewers == 0

    def _look(self) -> float:
        try:
            head = self._read_head()
        except Exception:
            # Whatever it was, viewers stay connected and the next look may work.
            log.exception("could not read the head of the log")
            return FAILED_POLL_S
        with self._changed:
            if head != self._head:
                self._head = head
                self._changed.notify_all()
        return self._poll_s
