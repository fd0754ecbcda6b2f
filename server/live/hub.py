"""Who watches the live streams of this process, and the thread that serves them.

Requests take places and hand their sockets in here; one thread serves them all,
see `server.live.rounds`. The log is the bus: workers need not know of each other.

The thread starts with the first viewer, never earlier: a thread started before
the workers fork would exist in none of them. It ends with the last viewer.
"""

import contextlib
import logging
import os
import threading
import time

from server.live.places import Place, Places
from server.live.rounds import Reads, Rounds
from server.live.viewer import Channel, Pace, Viewer

log = logging.getLogger(__name__)


class Hub:
    """The live streams of this process.

    Args:
        reads: what is asked of the database.
        places: how many may watch at once.
        pace: how often what is done.
    """

    def __init__(self, reads: Reads, places: int, pace: Pace | None = None) -> None:
        self._reads = reads
        self.pace = pace or Pace()
        # Taken by requests for a moment only, never while anything is waited for.
        self._lock = threading.Lock()
        self._places = Places(places)
        self._coming: list[Viewer] = []
        self._parting: list[tuple[Place, bool]] = []
        self._thread: threading.Thread | None = None
        self._last_thread: threading.Thread | None = None
        self._is_closed = False
        self._bell, self._rung = -1, -1

    @property
    def viewers(self) -> int:
        """Return how many hold a place now."""
        return len(self._places.taken)

    @property
    def is_running(self) -> bool:
        """Tell whether the thread runs."""
        return self._last_thread is not None and self._last_thread.is_alive()

    def enter(self, place: Place) -> bool:
        """Take a place; False when there is none or the server stops.

        Args:
            place: who wants to watch.
        """
        with self._lock:
            if self._is_closed:
                return False
            is_taken, older = self._places.take(place)
            if older is not None:
                self._parting.append((older, False))
            if is_taken and self._thread is None:
                self._begin()
        self._ring()
        return is_taken

    def watch(self, place: Place, after: int, channel: Channel) -> None:
        """Serve a viewer from now on.

        Args:
            place: the place that it has taken.
            after: number of the last entry that it has.
            channel: where its stream goes; the hub's alone from now on.
        """
        ends_s = time.monotonic() + self.pace.life_s
        with self._lock:
            place.is_watched = True
            is_served = self._thread is not None
            if is_served:
                self._coming.append(Viewer(place, channel, after, ends_s))
        if is_served:
            self._ring()
        else:
            channel.close()  # the server has stopped meanwhile

    def leave(self, place: Place) -> None:
        """Give a place back, and end its stream if it has begun.

        Args:
            place: the place.
        """
        with self._lock:
            self._places.leave(place)
            self._parting.append((place, True))
        self._ring()

    def leave_unwatched(self, place: Place) -> None:
        """Give a place back unless its stream has begun.

        Args:
            place: the place.
        """
        if not place.is_watched:
            self.leave(place)

    def close(self) -> None:
        """End every stream, because the server stops."""
        # Called from a signal handler, which may have interrupted a thread that
        # holds the lock: none is taken here.
        self._is_closed = True
        self._ring()

    def join(self, most_s: float) -> None:
        """Wait until the streams have ended.

        Args:
            most_s: longest wait [s].
        """
        if self._last_thread is not None:
            self._last_thread.join(most_s)

    # The thread

    def _begin(self) -> None:
        if self._bell < 0:
            self._rung, self._bell = os.pipe()
            os.set_blocking(self._rung, False)
            os.set_blocking(self._bell, False)
        self._thread = threading.Thread(target=self._run, name="live", daemon=True)
        self._last_thread = self._thread
        self._thread.start()

    def _ring(self) -> None:
        if self._bell >= 0:
            with contextlib.suppress(BlockingIOError):  # it is ringing already
                os.write(self._bell, b"\0")

    def _run(self) -> None:
        rounds = Rounds(self._reads, self.pace, self._rung, self._release)
        while not self._may_end(rounds):
            try:
                rounds.wait()
                self._pass_on(rounds)
                rounds.go_on()
            except Exception:
                # Were it to end, no viewer would hear anything any more.
                log.exception("the live streams stumbled")
                time.sleep(self.pace.look_s)
        self._pass_on(rounds)
        rounds.end()

    def _may_end(self, rounds: Rounds) -> bool:
        with self._lock:
            if self._is_closed or not (self._places.taken or len(rounds)):
                self._thread = None
                return True
            return False

    def _pass_on(self, rounds: Rounds) -> None:
        with self._lock:
            coming, self._coming = self._coming, []
            parting, self._parting = self._parting, []
        for viewer in coming:
            if viewer.place in self._places.taken:
                rounds.admit(viewer)
            else:
                viewer.channel.close()  # it had to give way already
        for place, is_asked in parting:
            rounds.part(place, is_asked=is_asked)

    def _release(self, place: Place) -> None:
        with self._lock:
            self._places.leave(place)
