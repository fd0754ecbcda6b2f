"""How long and how much a client may keep the server busy."""

import resource
from dataclasses import dataclass

from server.config import MAX_BODY_BYTES

OPEN_FILES = 8192


@dataclass(frozen=True)
class Limits:
    """What a worker puts up with.

    Waiting costs no thread, so these are generous to a phone at the edge of the
    Wi-Fi; they bound what is kept for clients that will never go on.

    Args:
        handshake_s: for the TLS handshake [s].
        header_s: from opening, or the first byte of a further request, to the
            end of its header [s].
        body_s: without a further byte of the body [s].
        request_s: for a whole request, however slowly it trickles [s].
        idle_s: between two requests; phones ask every 15 s [s].
        take_s: without the client taking a further byte of its answer [s].
        linger_s: for what a client still sends after the last answer [s].
        look_s: between two looks for those whose time is up [s].
        connections: at once, apart from live streams.
        kept_bytes: of all unfinished requests and untaken answers.
        body_bytes: of one request; a longer one is answered before it has come.
    """

    handshake_s: float = 10.0
    header_s: float = 10.0
    body_s: float = 20.0
    request_s: float = 300.0
    idle_s: float = 20.0
    take_s: float = 20.0
    linger_s: float = 2.0
    look_s: float = 0.5
    connections: int = 1000
    kept_bytes: int = 64 << 20
    body_bytes: int = MAX_BODY_BYTES


def raise_open_files() -> None:
    """Let this process open as many files as its sockets may need.

    The usual limit of 1,024 is less than the live streams and the connections
    of one worker together.
    """
    soft, most = resource.getrlimit(resource.RLIMIT_NOFILE)
    wanted = OPEN_FILES if most == resource.RLIM_INFINITY else min(OPEN_FILES, most)
    if soft != resource.RLIM_INFINITY and soft < wanted:
        resource.setrlimit(resource.RLIMIT_NOFILE, (wanted, most))
