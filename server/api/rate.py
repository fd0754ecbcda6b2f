"""How often one phone may ask: far more than a busy hand does, less than a broken one.

Counted by the phone or link that asks, not by address: a room is one address.
Each worker counts for itself, since a request must not cost a write.
"""

import threading
import time

from flask import Flask, current_app

from server.auth import RefusedError
from server.config import settings

MOST_KEPT = 10_000  # askers; then those who rest are forgotten


class Rate:
    """Counts requests; a minute's worth may come at once.

    Args:
        a_minute: requests that an asker has in a minute.
    """

    def __init__(self, a_minute: int) -> None:
        self._each_s = 60 / a_minute
        self._lock = threading.Lock()
        self._free_s: dict[str, float] = {}

    def wait_s(self, asker: str, now_s: float) -> float:
        """Count a request; return how long it must wait [s], 0.0 to answer it now.

        Args:
            asker: id of the phone or link.
            now_s: time by a clock that only runs on [s].
        """
        with self._lock:
            free_s = max(self._free_s.get(asker, now_s), now_s) + self._each_s
            if free_s - now_s > 60:
                return free_s - now_s - 60
            if len(self._free_s) >= MOST_KEPT:
                self._free_s = {
                    one: at_s for one, at_s in self._free_s.items() if at_s > now_s
                }
            self._free_s[asker] = free_s
            return 0.0


def init_app(app: Flask) -> None:
    """Begin to count.

    Args:
        app: the app, with its settings in place.
    """
    rate = Rate(app.extensions["vatside"].phone_requests)
    app.extensions["vatside_rate"] = rate


def count(asker: str) -> None:
    """Count a request of a phone or link.

    Args:
        asker: its id.

    Raises:
        RefusedError: it asked too often and must wait.
    """
    rate = current_app.extensions["vatside_rate"]
    assert isinstance(rate, Rate)
    wait_s = rate.wait_s(asker, time.monotonic())
    if wait_s > 0:
        most = settings().phone_requests
        raise RefusedError("too_many_requests", None, most, wait_s=int(wait_s) + 1)
