"""The connections that a worker's own thread watches, and when each must go."""

import contextlib
import selectors
import time
from collections.abc import Callable

from server.serving.connection import Connection, Phase


class Waiting:
    """All connections that wait for their client.

    Args:
        selector: tells which of them can go on.
    """

    def __init__(self, selector: selectors.BaseSelector) -> None:
        self._selector = selector
        self._all: set[Connection] = set()

    def __len__(self) -> int:
        return len(self._all)

    def watch(
        self,
        one: Connection,
        phase: Phase,
        ends_s: float,
        stir: Callable[[Connection], None],
    ) -> None:
        """Wait for a client.

        Args:
            one: its connection.
            phase: what is waited for.
            ends_s: until when, by the monotonic clock [s].
            stir: called when the client has done something.
        """
        one.phase = phase
        one.ends_s = ends_s
        # What comes while an answer is taken is a further request, for later.
        sends = phase is Phase.SENDING
        events = selectors.EVENT_WRITE if sends else one.channel.events
        if one in self._all:
            self._selector.modify(one.channel, events, (stir, one))
            return
        self._selector.register(one.channel, events, (stir, one))
        self._all.add(one)

    def release(self, one: Connection) -> None:
        """Wait no longer: a thread has it, or it is to be closed.

        Args:
            one: the connection.
        """
        if one in self._all:
            self._all.remove(one)
            with contextlib.suppress(KeyError, ValueError, OSError):
                self._selector.unregister(one.channel)

    def overdue(self) -> list[Connection]:
        """Return those whose time is up."""
        now_s = time.monotonic()
        return [one for one in self._all if one.ends_s <= now_s]

    def in_phases(self, *phases: Phase) -> list[Connection]:
        """Return those that wait for certain things.

        Args:
            *phases: what they wait for.
        """
        return [one for one in self._all if one.phase in phases]

    def surplus(self, most: int, most_bytes: int) -> list[Connection]:
        """Return those that must make room, the soonest to end first.

        Who still sends has its time put off with each byte, so this takes those
        that have been silent longest of what they wait for.

        Args:
            most: connections that may wait.
            most_bytes: bytes that may be kept for them.
        """
        count = len(self._all)
        kept = sum(one.kept_bytes for one in self._all)
        if count <= most and kept <= most_bytes:
            return []
        found = []
        for one in sorted(self._all, key=lambda each: each.ends_s):
            if count <= most and kept <= most_bytes:
                break
            if count <= most and not one.kept_bytes:
                continue
            count -= 1
            kept -= one.kept_bytes
            found.append(one)
        return found
