"""What goes on with one client between two answers, without ever waiting.

Each step either goes on at once or leaves word what it waits for and until when.
"""

import selectors
import time
from collections.abc import Callable
from typing import Any

from server.serving.connection import Connection, Phase
from server.serving.incoming import Incoming
from server.serving.waiting import Waiting

GO_ON = b"HTTP/1.1 100 Continue\r\n\r\n"
MOST_DRAINED_BYTES = 4 << 20
UNANSWERED = (Phase.SHAKING, Phase.READING, Phase.IDLE, Phase.LINGERING)


class _GoneError(Exception):
    """The client has closed its end, or vanished."""


class Exchange:
    """All connections that wait for their clients.

    Args:
        worker: the gunicorn worker, for its settings, its log and its answer to
            a request that cannot be read.
        selector: tells who can go on.
        submit: has a request answered that has come whole.
    """

    def __init__(
        self,
        worker: Any,
        selector: selectors.BaseSelector,
        submit: Callable[[Connection], None],
    ) -> None:
        self.waiting = Waiting(selector)
        self._worker = worker
        self._limits = worker.limits
        self._submit = submit
        self._uncounted = 0

    def open(self, one: Connection) -> None:
        """Begin with a client.

        Args:
            one: its connection.
        """
        if len(self.waiting) >= self._limits.connections:
            self.make_room(self._limits.connections - 1)
        if one.channel.is_tls:
            one.ends_s = time.monotonic() + self._limits.handshake_s
            self._shake(one)
        else:
            self._begin(one)

    def after_answer(self, one: Connection) -> None:
        """Go on with a client once its answer is there.

        Args:
            one: its connection.
        """
        if one.is_handed_over:
            return
        if one.is_gone:
            self.drop(one)
        else:
            self._note_bytes(one.channel.unsent)
            self._send(one)

    def drop(self, one: Connection) -> None:
        """Let a client go.

        Args:
            one: its connection.
        """
        self.waiting.release(one)
        one.channel.close()

    def drop_overdue(self) -> None:
        """Let go of those whose time is up."""
        for one in self.waiting.overdue():
            what = one.phase.value
            self._worker.log.debug("Waited in vain for %s of %s", what, one.client)
            self.drop(one)

    def drop_unanswered(self) -> None:
        """Let go of all but those that still take an answer."""
        for one in self.waiting.in_phases(*UNANSWERED):
            self.drop(one)

    def make_room(self, most: int) -> None:
        """Let go of those that most likely wait in vain.

        Args:
            most: how many may stay.
        """
        for one in self.waiting.surplus(most, self._limits.kept_bytes):
            self.drop(one)

    # Coming in

    def _shake(self, one: Connection) -> None:
        try:
            is_done = one.channel.shake()
        except (OSError, ValueError) as problem:
            self._worker.log.debug("No TLS with %s: %s", one.client, problem)
            self.drop(one)
            return
        if is_done:
            self._begin(one)
        else:
            self.waiting.watch(one, Phase.SHAKING, one.ends_s, self._shake)

    def _begin(self, one: Connection, begun: bytes = b"") -> None:
        one.expect(self._incoming(one, begun))
        one.phase = Phase.READING
        # At once: TLS may hold bytes already that no selector sees.
        self._read(one)

    def _incoming(self, one: Connection, begun: bytes = b"") -> Incoming:
        most_bytes = self._limits.body_bytes
        return Incoming(self._worker.cfg, one.client, most_bytes, begun)

    def _read(self, one: Connection) -> None:
        assert one.incoming is not None
        if one.phase is Phase.IDLE:
            one.begun_s = time.monotonic()
        try:
            is_whole = self._take_in(one, one.incoming)
        except _GoneError:
            self.drop(one)
        except Exception as problem:
            self._refuse(one, problem)
        else:
            if is_whole:
                self.waiting.release(one)
                self._submit(one)
            else:
                self._read_on(one, one.incoming)

    def _take_in(self, one: Connection, incoming: Incoming) -> bool:
        while not incoming.is_whole():
            try:
                one.channel.flush()
                data = one.channel.receive()
            except OSError as problem:
                raise _GoneError from problem
            if data is None:
                return False
            if not data:
                raise _GoneError
            incoming.add(data)
            self._note_bytes(len(data))
        return True

    def _read_on(self, one: Connection, incoming: Incoming) -> None:
        limits = self._limits
        ends_s = one.begun_s + limits.header_s
        if incoming.request is not None:
            most_s = one.begun_s + limits.request_s
            ends_s = min(time.monotonic() + limits.body_s, most_s)
            if incoming.asks_to_go_on and not one.is_told_to_go_on:
                one.is_told_to_go_on = True
                one.channel.put(GO_ON)
        self.waiting.watch(one, Phase.READING, ends_s, self._read)

    def _refuse(self, one: Connection, problem: Exception) -> None:
        one.goes_on = False
        self._worker.handle_error(None, one, one.client, problem)
        self._send(one)

    def _note_bytes(self, count: int) -> None:
        # Counting what all keep takes a while, so not with each piece.
        self._uncounted += count
        if self._uncounted > self._limits.kept_bytes // 8:
            self._uncounted = 0
            self.make_room(self._limits.connections)

    # Going out

    def _send(self, one: Connection) -> None:
        try:
            is_sent = one.channel.flush()
        except OSError:
            self.drop(one)
            return
        if is_sent:
            self._after_sent(one)
        else:
            ends_s = one.channel.moved_s + self._limits.take_s
            self.waiting.watch(one, Phase.SENDING, ends_s, self._send)

    def _after_sent(self, one: Connection) -> None:
        rest = one.incoming.rest() if one.goes_on and one.incoming else None
        if rest is None or not self._worker.alive:
            self._linger(one)
        elif rest:
            self._begin(one, rest)
        else:
            one.expect(self._incoming(one))
            ends_s = time.monotonic() + self._limits.idle_s
            self.waiting.watch(one, Phase.IDLE, ends_s, self._read)

    def _linger(self, one: Connection) -> None:
        one.incoming = None
        one.channel.end()
        ends_s = time.monotonic() + self._limits.linger_s
        self.waiting.watch(one, Phase.LINGERING, ends_s, self._drain)

    def _drain(self, one: Connection) -> None:
        try:
            data = one.channel.receive()
        except OSError:
            data = b""
        if data is None:
            return
        one.drained_bytes += len(data)
        if not data or one.drained_bytes > MOST_DRAINED_BYTES:
            self.drop(one)
