"""The one thread of all workers that sends alarms though nobody has asked.

Every worker has this thread; a lease in the database lets one of them work, see
`term`. A worker that dies, or fails at each look, is followed by another.
"""

import logging
import threading
import time
import uuid

from flask import Flask

from server.alarm.delivery import Delivery
from server.alarm.term import Term
from server.config import Settings, real_now_ms

log = logging.getLogger(__name__)

WORK = "alarms"
POLL_S = 1.0
FAILED_POLL_S = 5.0


class Watch:
    """Look for alarms again and again, while this process has the lease.

    Args:
        app: the app.
        delivery: what sends.
        poll_s: pause between two looks [s].
    """

    def __init__(self, app: Flask, delivery: Delivery, poll_s: float = POLL_S) -> None:
        self._app = app
        self.delivery = delivery
        self._poll_s = poll_s
        self.term = Term(WORK, str(uuid.uuid4()))
        self._closed = False
        self._thread: threading.Thread | None = None

    def start(self) -> None:
        """Begin to look. Call it after a fork: threads do not survive one."""
        self.term = Term(WORK, str(uuid.uuid4()))  # the fork copied its parent's
        self._thread = threading.Thread(target=self._run, name="alarms", daemon=True)
        self._thread.start()

    def close(self) -> None:
        """End the thread soon. No lock is taken: a signal handler may call this."""
        self._closed = True

    def join(self, timeout_s: float) -> None:
        """Wait for the thread's end.

        Args:
            timeout_s: longest wait [s].
        """
        if self._thread is not None:
            self._thread.join(timeout_s)

    def turn(self) -> bool:
        """Look once; False while another process has the lease."""
        settings = self._app.extensions["vatside"]
        assert isinstance(settings, Settings)
        with self._app.app_context():
            if not self.term.may_work():
                return False
            self.delivery.turn(settings.clock.now_ms(), real_now_ms())
            self.term.worked()
            return True

    def _run(self) -> None:
        while not self._closed:
            pause_s = self._poll_s
            try:
                self.turn()
            except Exception:
                # A locked database or a full disk may pass; a thread that ends
                # would leave every phone silent.
                log.exception("could not look for alarms")
                pause_s = FAILED_POLL_S
            time.sleep(pause_s)
        self._give_up()

    def _give_up(self) -> None:
        try:
            with self._app.app_context():
                self.term.give_up()
        except Exception:
            log.exception("could not give up the lease; another takes it soon")
