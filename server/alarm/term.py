"""Whether this process is the one that works, and whether any does.

The holder of a lease raises its beat every BEAT_S, after a look that went well.
The others watch by their own monotonic clock: a beat that has not moved for
SILENT_S is that of a dead holder, or of one that fails, and the next takes over.
No wall clock is asked, so no step of one can keep the work from being done, nor
make a dead holder look alive. A holder that slept finds another in its place
before its next look.
"""

import logging
import time
from collections.abc import Callable
from typing import NamedTuple

from sqlalchemy.exc import DBAPIError

from server.store.lease import Lease, give_up_lease, lease_of, take_lease

log = logging.getLogger(__name__)

BEAT_S = 5.0
SILENT_S = 25.0  # longer than a slow push service keeps one look

_WITHOUT = "the lease of %s cannot be written, they go on without: %s"


class Sight(NamedTuple):
    """What was seen of a lease: since when it is so, and whether it ever moved."""

    lease: Lease
    since_s: float
    moved: bool


class Term:
    """One process's part in work that one of all does.

    Args:
        name: the work.
        holder: id of this process.
        clock_s: a clock that nobody can set [s].
    """

    def __init__(
        self, name: str, holder: str, clock_s: Callable[[], float] = time.monotonic
    ) -> None:
        self._name = name
        self._holder = holder
        self._clock_s = clock_s
        self._sight: Sight | None = None
        self._said_s = clock_s()
        self._worked_s: float | None = None

    def may_work(self) -> bool:
        """Tell whether the work is this process's now, and take it if it is free."""
        sight = self._look()
        if sight.lease.holder == self._holder:
            return True
        if sight.lease.holder and self._age_s(sight) < SILENT_S:
            return False
        try:
            return self._say(sight.lease)
        except DBAPIError as problem:
            # On a full disk nobody can take over from a dead holder. That two
            # ring is better than that none does.
            log.warning(_WITHOUT, self._name, problem.orig)
            return True

    def worked(self) -> None:
        """Say that the work went well, at most every BEAT_S."""
        self._worked_s = self._clock_s()
        if self._worked_s - self._said_s < BEAT_S or self._sight is None:
            return
        try:
            self._say(self._sight.lease)
        except DBAPIError as problem:
            self._said_s = self._worked_s
            log.warning(_WITHOUT, self._name, problem.orig)

    def is_done_by_some(self) -> bool:
        """Tell whether some process does the work, as far as seen from here."""
        if self._worked_s is not None and self._clock_s() - self._worked_s < SILENT_S:
            return True
        sight = self._look()
        # One seen only once may be long dead.
        return (
            bool(sight.lease.holder) and sight.moved and self._age_s(sight) < SILENT_S
        )

    def give_up(self) -> None:
        """Let another process take the work at once."""
        give_up_lease(self._name, self._holder)

    def _look(self) -> Sight:
        lease, before = lease_of(self._name), self._sight
        if before is None or before.lease != lease:
            before = Sight(lease, self._clock_s(), before is not None)
            self._sight = before
        return before

    def _age_s(self, sight: Sight) -> float:
        return self._clock_s() - sight.since_s

    def _say(self, seen: Lease) -> bool:
        if not take_lease(self._name, self._holder, seen):
            return False
        now_s = self._clock_s()
        self._sight = Sight(Lease(self._holder, seen.beat + 1), now_s, True)
        self._said_s = now_s
        return True
