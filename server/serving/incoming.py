"""One request on its way in: when has all of it come?

Gunicorn's parser reads the header once it is there and alone decides what the
request is; this module finds out how much to wait for before it is asked to.
"""

from collections import deque
from typing import Any

from gunicorn.http.errors import LimitRequestHeaders
from gunicorn.http.parser import RequestParser

HEADER_END = b"\r\n\r\n"
MAX_HEADER_BYTES = 1 << 16
_SIZE_DIGITS = 16


class _Parts:
    """What the parser reads from, in place of a socket that would block."""

    def __init__(self) -> None:
        self.left: deque[bytes] = deque()

    def __iter__(self) -> "_Parts":
        return self

    def __next__(self) -> bytes:
        if not self.left:
            raise StopIteration
        return self.left.popleft()


class Incoming:
    """What a client has sent of one request so far.

    Args:
        cfg: gunicorn's settings.
        client: the client's address.
        most_bytes: of a body; a longer one is not waited for.
        begun: what came behind the request before this one.
    """

    def __init__(
        self, cfg: Any, client: Any, most_bytes: int, begun: bytes = b""
    ) -> None:
        self._parts = _Parts()
        self._parser = RequestParser(cfg, self._parts, client)
        self._most_bytes = most_bytes
        # Some clients end a body with an empty line that belongs to nothing.
        self._kept = bytearray(begun.lstrip(b"\r\n"))
        self._looked = 0
        self._length: int | None = None
        self.request: Any = None

    @property
    def size(self) -> int:
        """Return how many bytes are kept."""
        return len(self._kept)

    @property
    def asks_to_go_on(self) -> bool:
        """Tell whether the client sends its body only when told to."""
        headers = () if self.request is None else self.request.headers
        return any(
            name == "EXPECT" and value.lower() == "100-continue"
            for name, value in headers
        )

    def add(self, data: bytes) -> None:
        """Take what has come.

        Args:
            data: the next bytes.
        """
        self._kept += data if self._kept else data.lstrip(b"\r\n")

    def is_whole(self) -> bool:
        """Tell whether there is nothing to wait for any more.

        Raises:
            Exception: whatever the parser says of a header that it cannot take.
        """
        if self.request is None and not self._read_header():
            return False
        if self._length is not None:
            return self.size >= self._length or self._length > self._most_bytes
        return self._has_last_chunk() or self.size > self._most_bytes

    def hand_on(self) -> Any:
        """Return the request, its body there to be read."""
        self._parts.left.append(bytes(self._kept))
        self._kept.clear()
        # The client was told to go on already, if it asked.
        self.request._expected_100_continue = False
        return self.request

    def rest(self) -> bytes | None:
        """Return what came behind this request, None where its end is unknown."""
        if self._length is not None and self._length > self._most_bytes:
            return None
        try:
            if not self._parser.finish_body():
                return None
        except Exception:  # a body that is not what its header says
            return None
        buffered: bytes = self._parser.unreader.take_buffered()
        return buffered + b"".join(self._parts.left)

    def _read_header(self) -> bool:
        at = self._kept.find(HEADER_END, max(0, self._looked - len(HEADER_END)))
        self._looked = len(self._kept)
        if at < 0:
            if self._looked > MAX_HEADER_BYTES:
                raise LimitRequestHeaders(f"over {MAX_HEADER_BYTES} bytes")
            return False
        end = at + len(HEADER_END)
        self._parts.left.append(bytes(self._kept[:end]))
        del self._kept[:end]
        self._looked = 0
        self.request = next(self._parser)
        self._length = _body_length(self.request)
        return True

    def _has_last_chunk(self) -> bool:
        # Only where chunks end is looked for; what is wrong with one is the
        # parser's to say, so in doubt all is there.
        while True:
            at = self._kept.find(b"\r\n", self._looked)
            if at < 0:
                return len(self._kept) - self._looked > MAX_HEADER_BYTES
            digits = bytes(self._kept[self._looked : at]).split(b";")[0].strip()
            try:
                size = int(digits[:_SIZE_DIGITS], 16)
            except ValueError:
                return True
            if size < 0:
                return True
            if size == 0:
                # Its own line end and an empty line, trailers in between or not.
                return self._kept.find(HEADER_END, at) >= 0
            beyond = at + 2 + size + 2
            if beyond > len(self._kept):
                return size > self._most_bytes
            self._looked = beyond


def _body_length(request: Any) -> int | None:
    headers = dict(request.headers)
    if "chunked" in headers.get("TRANSFER-ENCODING", "").lower():
        return None
    return int(headers.get("CONTENT-LENGTH", 0))
