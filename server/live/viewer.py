"""One viewer of the live stream, as the thread that serves all sees it."""

import time
from dataclasses import dataclass, field
from typing import Protocol

from server.live.places import Place
from server.live.stream import SIGN_OF_LIFE


class Channel(Protocol):
    """Where a stream's bytes go; none of this ever waits."""

    moved_s: float

    @property
    def unsent(self) -> int:
        """Return how many bytes wait to be taken."""

    @property
    def events(self) -> int:
        """Return what a selector is to watch for."""

    def fileno(self) -> int:
        """Return the socket's number, -1 for none."""

    def notice_absence(self, after_s: float) -> None:
        """Let the system tell when the viewer has vanished."""

    def receive(self) -> bytes | None:
        """Return what has come, None for nothing, b"" at the end."""

    def put_part(self, data: bytes) -> None:
        """Put a part of the stream; b"" ends it."""

    def flush(self) -> bool:
        """Send what is taken now; True when nothing is left."""

    def end(self) -> None:
        """Say that nothing more will come."""

    def close(self) -> None:
        """Let it go."""


@dataclass(frozen=True)
class Pace:
    """How often what is done.

    Args:
        look_s: between two looks at the head of the log, each well under a
            millisecond [s].
        failed_s: before the next look after one that failed [s].
        check_s: between two looks at who may still watch [s].
        comment_s: a viewer without news is told so after this long, for proxies
            and phones drop a line that stays silent [s].
        life_s: length of a stream; it ends on purpose, and comes back [s].
        take_s: a viewer that takes nothing for so long is dropped [s].
    """

    look_s: float = 0.1
    failed_s: float = 5.0
    check_s: float = 2.0
    comment_s: float = 15.0
    life_s: float = 300.0
    take_s: float = 20.0


@dataclass(eq=False)
class Viewer:
    """A stream and how far it has come.

    Args:
        place: the place that it holds.
        channel: where its bytes go.
        n: number of the last entry that the viewer has.
        ends_s: when it ends on purpose, by the monotonic clock [s].
    """

    place: Place
    channel: Channel
    n: int
    ends_s: float
    spoken_s: float = field(default_factory=time.monotonic)
    watched: int = 0  # events that the selector watches for

    def say(self, data: bytes) -> None:
        """Put something on the stream.

        Args:
            data: whole messages.
        """
        self.channel.put_part(data)
        self.spoken_s = time.monotonic()

    def hear(self) -> bool:
        """Tell whether the viewer is still there; what it says is of no use."""
        return self.channel.receive() != b""

    def give_sign(self, now_s: float, comment_s: float) -> None:
        """Say that all is well after a silence.

        Args:
            now_s: the monotonic clock [s].
            comment_s: how long a silence may last [s].
        """
        if not self.channel.unsent and now_s - self.spoken_s >= comment_s:
            self.say(SIGN_OF_LIFE)

    def is_stuck(self, now_s: float, take_s: float) -> bool:
        """Tell whether the viewer takes nothing any more.

        Args:
            now_s: the monotonic clock [s].
            take_s: how long it may take nothing [s].
        """
        return bool(self.channel.unsent) and now_s - self.channel.moved_s > take_s
