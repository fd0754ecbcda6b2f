"""One thread a process that serves every live stream of it.

It looks at the head of the log several times a second and brings each viewer
what it lacks. The log is the bus: workers need not know of each other. Viewers
that stand at the same number, thus nearly all, share one read of the log and
one encoding of it.

A viewer is given more only once it has taken all it was given before. So one
batch is the most that is kept for a slow one, and nobody waits for it; one that
takes nothing for long is dropped.

The thread starts with the first viewer, never earlier: a thread started before
the workers fork would exist in none of them. It ends with the last viewer.
"""

import contextlib
import logging
import os
import selectors
import threading
import time
from collections.abc import Callable, Collection
from functools import partial
from typing import NamedTuple

from server.live.places import Place, Places
from server.live.stream import ReadAfter, entries
from server.live.viewer import Channel, Pace, Viewer

BATCH = 500

log = logging.getLogger(__name__)


class Reads(NamedTuple):
    """What the hub asks the database, from its own thread.

    Args:
        head: returns the number of the newest entry.
        after: reads entries of the log in order.
        still_good: returns those of some tokens that may still watch.
    """

    head: Callable[[], int]
    after: ReadAfter
    still_good: Callable[[Collection[str]], Collection[str]]


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
        self._viewers: dict[Place, Viewer] = {}
        self._encoded: dict[int, tuple[bytes, int]] = {}
        self._head = 0
        self._look_at_s = 0.0
        self._check_at_s = 0.0

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
            self._coming.append(Viewer(place, channel, after, ends_s))
        self._ring()

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
        self._look_at_s = 0.0
        self._check_at_s = time.monotonic() + self.pace.check_s
        self._thread = threading.Thread(target=self._run, name="live", daemon=True)
        self._last_thread = self._thread
        self._thread.start()

    def _ring(self) -> None:
        if self._bell >= 0:
            with contextlib.suppress(BlockingIOError):  # it is ringing already
                os.write(self._bell, b"\0")

    def _run(self) -> None:
        with selectors.DefaultSelector() as self._selector:
            self._selector.register(self._rung, selectors.EVENT_READ)
            while not self._may_end():
                try:
                    self._turn()
                except Exception:
                    # Were it to end, no viewer would hear anything any more.
                    log.exception("the live streams stumbled")
                    time.sleep(self.pace.look_s)
            self._admit()
            for viewer in list(self._viewers.values()):
                self._end(viewer)

    def _may_end(self) -> bool:
        with self._lock:
            if self._is_closed or not (self._places.taken or self._viewers):
                self._thread = None
                return True
            return False

    def _turn(self) -> None:
        self._encoded.clear()
        is_behind = any(self._lacks(one) for one in self._viewers.values())
        pause_s = max(0.0, self._look_at_s - time.monotonic())
        for key, _ in self._selector.select(0 if is_behind else pause_s):
            if key.data is None:
                os.read(self._rung, 4096)
            else:
                self._serve(key.data, self._answer)
        self._admit()
        self._part()
        now_s = time.monotonic()
        if now_s >= self._look_at_s:
            self._look(now_s)
        if now_s >= self._check_at_s:
            self._check(now_s)

    def _admit(self) -> None:
        with self._lock:
            coming, self._coming = self._coming, []
        for viewer in coming:
            if viewer.place not in self._places.taken:
                self._drop(viewer)  # it had to give way already
                continue
            viewer.channel.notice_absence(self.pace.take_s)
            self._viewers[viewer.place] = viewer
            self._serve(viewer, self._feed)

    def _part(self) -> None:
        with self._lock:
            parting, self._parting = self._parting, []
        for place, is_asked in parting:
            viewer = self._viewers.get(place)
            if viewer is not None:
                (self._end if is_asked else self._drop)(viewer)

    def _look(self, now_s: float) -> None:
        self._look_at_s = now_s + self.pace.look_s
        try:
            self._head = self._reads.head()
        except Exception:
            # Whatever it was, viewers stay connected and the next look may work.
            log.exception("could not read the head of the log")
            self._look_at_s = now_s + self.pace.failed_s
        for viewer in list(self._viewers.values()):
            self._serve(viewer, partial(self._keep_up, now_s))

    def _keep_up(self, now_s: float, viewer: Viewer) -> None:
        if now_s >= viewer.ends_s:
            self._end(viewer)
        elif viewer.is_stuck(now_s, self.pace.take_s):
            self._drop(viewer)
        else:
            viewer.give_sign(now_s, self.pace.comment_s)
            self._feed(viewer)

    def _check(self, now_s: float) -> None:
        self._check_at_s = now_s + self.pace.check_s
        tokens = {place.token for place in self._viewers}
        if not tokens:
            return
        try:
            good = self._reads.still_good(tokens)
        except Exception:
            log.exception("could not read who may watch")
            return
        for place, viewer in list(self._viewers.items()):
            if place.token not in good:
                self._end(viewer)

    def _answer(self, viewer: Viewer) -> None:
        if viewer.hear():
            self._feed(viewer)
        else:
            self._drop(viewer)

    def _serve(self, viewer: Viewer, what: Callable[[Viewer], None]) -> None:
        try:
            what(viewer)
        except OSError:  # it has vanished
            self._drop(viewer)
        except Exception:
            log.exception("a viewer is given up")
            self._drop(viewer)

    def _feed(self, viewer: Viewer) -> None:
        if viewer.channel.flush() and viewer.n < self._head:
            data, viewer.n = self._entries(viewer.n)
            if data:
                viewer.say(data)
        viewer.channel.flush()
        self._listen(viewer)

    def _lacks(self, viewer: Viewer) -> bool:
        return viewer.n < self._head and not viewer.channel.unsent

    def _entries(self, after: int) -> tuple[bytes, int]:
        found = self._encoded.get(after)
        if found is None:
            found = self._encoded[after] = self._read_after(after)
        return found

    def _read_after(self, after: int) -> tuple[bytes, int]:
        try:
            rows = self._reads.after(after, BATCH)
        except Exception:
            log.exception("could not read the log after %d", after)
            self._head = 0  # none lacks anything until the next look
            self._look_at_s = time.monotonic() + self.pace.failed_s
            return b"", after
        return entries(rows), rows[-1]["n"] if rows else self._head

    def _listen(self, viewer: Viewer) -> None:
        channel = viewer.channel
        if channel.fileno() < 0 or viewer.watched == channel.events:
            return
        if viewer.watched:
            self._selector.modify(channel, channel.events, viewer)
        else:
            self._selector.register(channel, channel.events, viewer)
        viewer.watched = channel.events

    def _end(self, viewer: Viewer) -> None:
        with contextlib.suppress(OSError):
            viewer.channel.put_part(b"")
            viewer.channel.flush()
            viewer.channel.end()
        self._drop(viewer)

    def _drop(self, viewer: Viewer) -> None:
        with self._lock:
            self._places.leave(viewer.place)
        self._viewers.pop(viewer.place, None)
        if viewer.watched:
            with contextlib.suppress(KeyError, ValueError, OSError):
                self._selector.unregister(viewer.channel)
            viewer.watched = 0
        viewer.channel.close()
