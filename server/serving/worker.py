"""A gunicorn worker that waits for clients in one thread and never in another.

Gunicorn's own threaded worker reads a request in a thread of the pool: as many
clients as it has threads, each with half a header, end all service. And it
closes connections in its main loop, waiting up to 2 s for the client's end, so
that one client that asks for `Connection: close` and stays stops the worker
for so long (`finish_request` calls `util.close_graceful`).

What is relied on beyond gunicorn's documented settings, held by
tests/serving/test_gunicorn_parts.py: of `workers.base.Worker` its attributes
`alive`, `app`, `cfg`, `log`, `ppid`, `sockets`, `wsgi` and its methods
`init_process`, `handle_exit`, `handle_error`, `notify`; `http.wsgi.create` and
`Response`; `http.parser.RequestParser` over an iterable; `sock.ssl_context`.

`worker_connections`, `keepalive`, `max_requests` and HTTP/2 do not apply.
"""

import contextlib
import errno
import os
import queue
import selectors
import socket
import sys
import time
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from types import FrameType
from typing import Any

from gunicorn.sock import ssl_context
from gunicorn.workers.base import Worker as BaseWorker

from server.serving.answering import answer
from server.serving.channel import Channel
from server.serving.connection import Connection
from server.serving.exchange import Exchange
from server.serving.limits import Limits, raise_open_files

FULL_S = 0.05
# A thread that folds a log gives the interpreter up only when asked, by default
# after 5 ms. While two fold, another request took 13 ms (p95 51 to 56 ms) in the
# middle; asked after 1 ms, it takes 2 ms (p95 12 to 21 ms).
SWITCH_S = 0.001
_TRY_LATER = (errno.EAGAIN, errno.EWOULDBLOCK, errno.ECONNABORTED)
_NO_FILES = (errno.EMFILE, errno.ENFILE, errno.ENOBUFS, errno.ENOMEM)


class Worker(BaseWorker):  # type: ignore[misc]
    """One process that answers; see the package for its rules."""

    limits = Limits()

    def init_process(self) -> None:
        """Set up after the fork, and run."""
        raise_open_files()
        sys.setswitchinterval(SWITCH_S)
        self._selector = selectors.DefaultSelector()
        self._exchange = Exchange(self, self._selector, self._submit)
        self._pool = ThreadPoolExecutor(self.cfg.threads, "request")
        self._answered: queue.SimpleQueue[Connection] = queue.SimpleQueue()
        self._in_pool = 0
        # Made once: it reads the certificate's files.
        self._context = ssl_context(self.cfg) if self.cfg.is_ssl else None
        self._bell, self._rung = socket.socketpair()
        for end in (self._bell, self._rung):
            end.setblocking(False)
        super().init_process()

    def handle_exit(self, sig: int, frame: FrameType | None) -> None:
        """Stop once what is being answered has been.

        Args:
            sig: the signal.
            frame: where it came.
        """
        self.alive = False
        self._ring()

    def run(self) -> None:
        """Serve until told to stop."""
        self._selector.register(self._rung, selectors.EVENT_READ)
        for listener in self.sockets:
            listener.setblocking(False)
            self._selector.register(
                listener, selectors.EVENT_READ, (self._accept, listener)
            )
        look_s = 0.0
        while self.alive and self.ppid == os.getppid():
            self._turn(self.limits.look_s)
            if time.monotonic() >= look_s:
                self.notify()
                self._exchange.drop_overdue()
                look_s = time.monotonic() + self.limits.look_s
        self._finish()

    def _finish(self) -> None:
        self.alive = False
        for listener in self.sockets:
            self._selector.unregister(listener)
            listener.close()
        end_s = time.monotonic() + self.cfg.graceful_timeout
        while time.monotonic() < end_s:
            self._exchange.drop_unanswered()
            if not self._in_pool and not len(self._exchange.waiting):
                break
            self.notify()
            self._turn(self.limits.look_s / 5)
        self._pool.shutdown(wait=False, cancel_futures=True)

    def _turn(self, for_s: float) -> None:
        for key, _ in self._selector.select(for_s):
            if key.data is not None:
                self._stir(*key.data)
        with contextlib.suppress(BlockingIOError):
            self._rung.recv(4096)
        while not self._answered.empty():
            self._in_pool -= 1
            self._stir(self._exchange.after_answer, self._answered.get())

    def _stir(self, stir: Callable[[Any], None], what: Any) -> None:
        try:
            stir(what)
        except Exception:
            if not isinstance(what, Connection):
                raise
            # Whatever one client has brought about, the others go on.
            self.log.exception("Connection of %s is given up", what.client)
            self._exchange.drop(what)

    def _ring(self) -> None:
        with contextlib.suppress(OSError):  # it is ringing already
            self._bell.send(b"\0")

    def _submit(self, one: Connection) -> None:
        self._in_pool += 1
        self._pool.submit(self._answer, one)

    def _answer(self, one: Connection) -> None:
        try:
            answer(self, one)
        finally:
            self._answered.put(one)
            self._ring()

    def _accept(self, listener: Any) -> None:
        try:
            sock, client = listener.accept()
        except OSError as problem:
            self._cannot_accept(problem)
            return
        if self._in_pool >= self.limits.connections:
            sock.close()
            return
        try:
            channel = Channel(sock, self._context)
        except OSError:  # gone already
            sock.close()
            return
        self._exchange.open(Connection(channel, client, listener.getsockname()))

    def _cannot_accept(self, problem: OSError) -> None:
        if problem.errno in _TRY_LATER:
            return
        if problem.errno not in _NO_FILES:
            raise problem
        self.log.error("No further connection: %s", problem)
        if len(self._exchange.waiting):
            self._exchange.make_room(len(self._exchange.waiting) // 2)
        else:
            # The listener stays readable, so go on asking, but not at full speed.
            time.sleep(FULL_S)
