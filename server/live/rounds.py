"""What the one thread of the live streams does, again and again.

It looks at the head of the log several times a second and brings each viewer
what it lacks. Viewers that stand at the same number, thus nearly all, share one
read of the log and one encoding of it.

A viewer is given more only once it has taken all it was given before. So one
batch is the most that is kept for a slow one, and nobody waits for it; one that
takes nothing for long is dropped.

Nothing here is shared with another thread.
"""

import contextlib
import logging
import os
import selectors
import time
from collections.abc import Callable, Collection
from functools import partial
from typing import NamedTuple

from server.live.places import Place
from server.live.stream import ReadAfter, entries
from server.live.viewer import Pace, Viewer

BATCH = 500

log = logging.getLogger(__name__)


class Reads(NamedTuple):
    """What is asked of the database, from the thread.

    Args:
        head: returns the number of the newest entry.
        after: reads entries of the log in order.
        still_good: returns those of some tokens that may still watch.
    """

    head: Callable[[], int]
    after: ReadAfter
    still_good: Callable[[Collection[str]], Collection[str]]


class Rounds:
    """The viewers that are served, and what they are to be told.

    Args:
        reads: what is asked of the database.
        pace: how often what is done.
        bell: number of a pipe that wakes the thread before its time.
        release: called with the place of each stream that has ended.
    """

    def __init__(
        self, reads: Reads, pace: Pace, bell: int, release: Callable[[Place], None]
    ) -> None:
        self._reads = reads
        self._pace = pace
        self._bell = bell
        self._release = release
        self._viewers: dict[Place, Viewer] = {}
        self._encoded: dict[int, tuple[bytes, int]] = {}
        self._head = 0
        self._look_at_s = 0.0
        self._check_at_s = time.monotonic() + pace.check_s
        self._selector = selectors.DefaultSelector()
        self._selector.register(bell, selectors.EVENT_READ)

    def __len__(self) -> int:
        return len(self._viewers)

    def admit(self, viewer: Viewer) -> None:
        """Serve a viewer from now on.

        Args:
            viewer: the viewer.
        """
        viewer.channel.notice_absence(self._pace.take_s)
        self._viewers[viewer.place] = viewer
        self._serve(viewer, self._feed)

    def part(self, place: Place, *, is_asked: bool) -> None:
        """End a viewer's stream; harmless where there is none.

        Args:
            place: its place.
            is_asked: it wanted so; one that did not is cut off, so that it comes
                back only after a pause.
        """
        viewer = self._viewers.get(place)
        if viewer is not None:
            (self._end if is_asked else self._drop)(viewer)

    def end(self) -> None:
        """End every stream."""
        for viewer in list(self._viewers.values()):
            self._end(viewer)
        self._selector.close()

    def wait(self) -> None:
        """Wait until something is to be done, and hear what viewers do."""
        self._encoded.clear()
        is_behind = any(self._lacks(one) for one in self._viewers.values())
        pause_s = max(0.0, self._look_at_s - time.monotonic())
        for key, _ in self._selector.select(0 if is_behind else pause_s):
            if key.data is None:
                os.read(self._bell, 4096)
            else:
                self._serve(key.data, self._answer)

    def go_on(self) -> None:
        """Look at what is due: the head of the log, and who may still watch."""
        now_s = time.monotonic()
        if now_s >= self._look_at_s:
            self._look(now_s)
        if now_s >= self._check_at_s:
            self._check(now_s)

    def _look(self, now_s: float) -> None:
        self._look_at_s = now_s + self._pace.look_s
        try:
            self._head = self._reads.head()
        except Exception:
            # Whatever it was, viewers stay connected and the next look may work.
            log.exception("could not read the head of the log")
            self._look_at_s = now_s + self._pace.failed_s
        for viewer in list(self._viewers.values()):
            self._serve(viewer, partial(self._keep_up, now_s))

    def _keep_up(self, now_s: float, viewer: Viewer) -> None:
        if now_s >= viewer.ends_s:
            self._end(viewer)
        elif viewer.is_stuck(now_s, self._pace.take_s):
            self._drop(viewer)
        else:
            viewer.give_sign(now_s, self._pace.comment_s)
            self._feed(viewer)

    def _check(self, now_s: float) -> None:
        self._check_at_s = now_s + self._pace.check_s
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
            self._look_at_s = time.monotonic() + self._pace.failed_s
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
        self._release(viewer.place)
        self._viewers.pop(viewer.place, None)
        if viewer.watched:
            with contextlib.suppress(KeyError, ValueError, OSError):
                self._selector.unregister(viewer.channel)
            viewer.watched = 0
        viewer.channel.close()
