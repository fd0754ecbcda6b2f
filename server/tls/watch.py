"""Renew the room's certificate while the server runs."""

import logging
import threading
from collections.abc import Callable

from server.tls.folder import Folder
from server.tls.refused import TlsError
from server.tls.renewal import tend

LOG = logging.getLogger(__name__)
EVERY_S = 60.0
WHY = {
    "age": "two thirds of its life were over",
    "address": "this box has another address",
    "name": "a name was added",
}


class Watch:
    """Look now and then whether the certificate is due.

    Args:
        folder: the room's certificates.
        addresses: tells this box's addresses.
        now_ms: tells the time, by the real clock [ms].
    """

    def __init__(
        self,
        folder: Folder,
        addresses: Callable[[], list[str]],
        now_ms: Callable[[], int],
    ) -> None:
        self._folder = folder
        self._addresses = addresses
        self._now_ms = now_ms
        self._said = ""

    def look(self) -> str:
        """Renew what is due; return why something was, empty when nothing was."""
        try:
            done = tend(self._folder, self._addresses(), self._now_ms())
        except (TlsError, OSError) as problem:
            self._say(str(problem))
            return ""
        if done.leaf:
            self._say("")
            reason = WHY.get(done.leaf, "the one before could not be used")
            LOG.warning("The server's certificate was made anew: %s.", reason)
        return done.leaf

    def start(self, stop: threading.Event) -> None:
        """Look every minute until told to stop, in a thread that holds nobody up.

        Args:
            stop: set when it is to end.
        """

        def run() -> None:
            while not stop.wait(EVERY_S):
                self.look()

        threading.Thread(target=run, name="certificate-watch", daemon=True).start()

    def _say(self, problem: str) -> None:
        # Once, not every minute: the log must stay readable.
        if problem and problem != self._said:
            LOG.error("The server's certificate could not be seen to: %s", problem)
        self._said = problem
