"""One client's socket, plain or TLS, that never makes its owner wait.

It belongs to one thread at a time: who hands it on must not touch it again.
"""

import contextlib
import selectors
import socket
import ssl
import time

PIECE = 1 << 16
# A TLS socket may have to write before it can read, and the other way round.
_NOT_NOW = (BlockingIOError, ssl.SSLWantReadError, ssl.SSLWantWriteError)


class Channel:
    """A socket with what is still to be sent to it.

    Args:
        sock: a connected socket.
        context: what TLS is spoken with; None for plain HTTP.
    """

    def __init__(
        self, sock: socket.socket, context: ssl.SSLContext | None = None
    ) -> None:
        sock.setblocking(False)
        if sock.family in (socket.AF_INET, socket.AF_INET6):
            sock.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
        if context is not None:
            sock = context.wrap_socket(
                sock, server_side=True, do_handshake_on_connect=False
            )
        self._sock = sock
        self._unsent = bytearray()
        self._wants = selectors.EVENT_READ
        self.is_chunked = False
        self.moved_s = time.monotonic()

    def fileno(self) -> int:
        """Return the socket's number, -1 once it is closed."""
        return self._sock.fileno()

    @property
    def is_tls(self) -> bool:
        """Tell whether TLS is spoken."""
        return isinstance(self._sock, ssl.SSLSocket)

    @property
    def unsent(self) -> int:
        """Return how many bytes wait to be taken by the client."""
        return len(self._unsent)

    @property
    def events(self) -> int:
        """Return what a selector is to watch for."""
        if self._unsent:
            return selectors.EVENT_READ | selectors.EVENT_WRITE
        return self._wants

    def notice_absence(self, after_s: float) -> None:
        """Let the system tell when a client has vanished without a word.

        Args:
            after_s: what was sent may stay unanswered for so long [s].
        """
        option = getattr(socket, "TCP_USER_TIMEOUT", None)
        if option is not None:
            with contextlib.suppress(OSError):
                self._sock.setsockopt(socket.IPPROTO_TCP, option, round(1000 * after_s))

    def shake(self) -> bool:
        """Go on with the TLS handshake; True when it is done.

        Raises:
            OSError: the client is gone, or does not speak TLS.
        """
        assert isinstance(self._sock, ssl.SSLSocket)
        try:
            self._sock.do_handshake()
        except ssl.SSLWantReadError:
            self._wants = selectors.EVENT_READ
        except ssl.SSLWantWriteError:
            self._wants = selectors.EVENT_WRITE
        else:
            self._wants = selectors.EVENT_READ
            return True
        return False

    def receive(self) -> bytes | None:
        """Return what has come: None for nothing yet, b"" at the end.

        Raises:
            OSError: the client is gone.
        """
        try:
            return self._sock.recv(PIECE)
        except _NOT_NOW:
            return None

    def put(self, data: bytes) -> None:
        """Add to what is to be sent; nothing is sent yet.

        Args:
            data: bytes as they go over the line.
        """
        if not self._unsent:
            self.moved_s = time.monotonic()
        self._unsent += data

    def put_part(self, data: bytes) -> None:
        """Add a part of a body whose length was not told beforehand.

        Args:
            data: the part; b"" ends the body.
        """
        if self.is_chunked:
            self.put(b"%X\r\n%b\r\n" % (len(data), data))
        else:
            self.put(data)

    def flush(self) -> bool:
        """Send as much as the client takes now; True when nothing is left.

        Raises:
            OSError: the client is gone.
        """
        while self._unsent:
            try:
                sent = self._sock.send(bytes(self._unsent[:PIECE]))
            except _NOT_NOW:
                return False
            del self._unsent[:sent]
            self.moved_s = time.monotonic()
        return True

    def forget(self) -> None:
        """Drop what was put and not sent yet."""
        self._unsent.clear()

    def end(self) -> None:
        """Tell the client that nothing more will be sent."""
        # Closing at once, while the client's own bytes lie unread, would reset
        # the connection and could take the answer's end with it (RFC 9112, 9.6).
        with contextlib.suppress(OSError, ValueError):
            if isinstance(self._sock, ssl.SSLSocket):
                self._sock.unwrap()
        with contextlib.suppress(OSError):
            self._sock.shutdown(socket.SHUT_WR)

    def close(self) -> None:
        """Let the socket go."""
        with contextlib.suppress(OSError):
            self._sock.close()
