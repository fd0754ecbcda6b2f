"""What people were told and which pushes went out, kept also when the disk is full.

A disk that takes nothing must not silence the phones, nor make them ring each
second for what they were told: what could not be written stays in this process
and is written as soon as it can be.
"""

import logging
import threading
import time
from collections.abc import Callable
from typing import Any, NamedTuple

from sqlalchemy.exc import DBAPIError

from server.store import alarms as kept
from server.store import pushes

log = logging.getLogger(__name__)

AGAIN_S = 10.0
MOST = 1000  # of pushes not yet logged; older ones are given up


class Sent(NamedTuple):
    """One push that went out; see `pushes.note_sent`."""

    subscription: str
    what: str
    tag: str
    status: int
    at_ms: int


class Notified:
    """What this process knows ahead of the database.

    Args:
        clock_s: a clock that nobody can set [s].
    """

    def __init__(self, clock_s: Callable[[], float] = time.monotonic) -> None:
        self._clock_s = clock_s
        self._heard: dict[str, dict[str, Any]] = {}
        self._sent: list[Sent] = []
        self._tried_s = clock_s()
        self._lock = threading.Lock()  # a test may be asked for meanwhile

    @property
    def is_behind(self) -> bool:
        """Tell whether something waits to be written."""
        return bool(self._heard or self._sent)

    def heard(self, person: str) -> dict[str, Any] | None:
        """Return what a person's phones were told, None when nothing yet.

        Args:
            person: the person's id.
        """
        return self._heard.get(person) or kept.heard(person)

    def save_heard(self, person: str, told: dict[str, Any]) -> None:
        """Keep what a person's phones were told.

        Args:
            person: the person's id.
            told: JSON types only.
        """
        self._heard[person] = told
        self._write()

    def note_sent(self, sent: Sent) -> None:
        """Log one push.

        Args:
            sent: the push.
        """
        with self._lock:
            self._sent = [*self._sent[-MOST:], sent]
        self._write()

    def catch_up(self) -> None:
        """Write what waits, now and then."""
        if self.is_behind and self._clock_s() - self._tried_s >= AGAIN_S:
            self._write()

    def _write(self) -> None:
        self._tried_s = self._clock_s()
        try:
            with self._lock:
                self._write_all()
        except DBAPIError as problem:
            log.warning("what was told is kept in memory: %s", problem.orig)

    def _write_all(self) -> None:
        for person in list(self._heard):
            kept.save_heard(person, self._heard[person])
            del self._heard[person]
        while self._sent:
            pushes.note_sent(*self._sent[0])
            del self._sent[0]
