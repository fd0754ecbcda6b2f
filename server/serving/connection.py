"""One client's connection, from being accepted to being let go."""

import time
from collections.abc import Callable
from enum import Enum
from typing import Any

from server.serving.channel import Channel
from server.serving.incoming import Incoming

Take = Callable[[Channel], None]


class Phase(Enum):
    """What a connection waits for."""

    SHAKING = "the TLS handshake"
    READING = "the rest of a request"
    IDLE = "a further request"
    SENDING = "the client to take its answer"
    LINGERING = "the client to close its end"


class Connection:
    """A channel and how far its request has come.

    Args:
        channel: the client's socket.
        client: the client's address.
        server: the address that it came to.
    """

    def __init__(self, channel: Channel, client: Any, server: Any) -> None:
        self.channel = channel
        self.client = client
        self.server = server
        self.phase = Phase.READING
        self.incoming: Incoming | None = None
        self.begun_s = 0.0
        self.ends_s = 0.0
        self.is_told_to_go_on = False
        self.goes_on = False  # with a further request
        self.is_gone = False
        self.drained_bytes = 0
        self.taker: Take | None = None
        self.is_handed_over = False

    @property
    def kept_bytes(self) -> int:
        """Return how much memory is held for the client."""
        asked = 0 if self.incoming is None else self.incoming.size
        return asked + self.channel.unsent

    def expect(self, incoming: Incoming) -> None:
        """Wait for a request.

        Args:
            incoming: what will hold it.
        """
        self.incoming = incoming
        self.begun_s = time.monotonic()
        self.is_told_to_go_on = False

    def hand_over(self, take: Take) -> None:
        """Let the socket have a new owner after this answer.

        Args:
            take: called with the channel once the answer's beginning is put.
        """
        self.taker = take

    def give_away(self, is_chunked: bool) -> None:
        """Give the socket to who asked for it.

        Args:
            is_chunked: its body's length is not told; each part tells its own.
        """
        assert self.taker is not None
        self.channel.is_chunked = is_chunked
        self.is_handed_over = True
        self.taker(self.channel)

    # What gunicorn's answers are written to in place of a socket.

    def sendall(self, data: bytes) -> None:
        """Put a piece of the answer.

        Args:
            data: bytes as they go over the line.
        """
        self.channel.put(data)

    def send(self, data: bytes) -> int:
        """Put a piece of the answer, whole.

        Args:
            data: bytes as they go over the line.
        """
        self.channel.put(data)
        return len(data)

    def gettimeout(self) -> float:
        """Tell that writing never waits."""
        return 0.0
