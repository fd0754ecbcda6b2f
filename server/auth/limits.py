"""Wrong codes cost time, more with each.

Counted a source and over all, and kept in the database, because workers share
no memory. A source is an address: all phones of a room may share one, so it is
slowed and never shut out, and only short codes are slowed: one from the QR
picture cannot be guessed and must work at any time.
"""

from server.store import pairing as kept
from server.store import writing

ALL = "all"
FREE = {False: 5, True: 50}  # wrong codes that cost nothing: one source, all
FIRST_WAIT_S = 10
LONGEST_WAIT_S = 600
FORGET_S = 3600


def wait_s(source: str, now_ms: int, rate: float) -> int:
    """Return how long a source must wait before its next code [s].

    Args:
        source: address it comes from.
        now_ms: server time [ms].
        rate: how fast the server's clock runs.
    """
    until_ms = max(kept.attempts_by(key).until_ms for key in (_key(source), ALL))
    # Rounded up, so that a phone that waits as told is not told again.
    return max(0, -int((now_ms - until_ms) / (1000 * rate) // 1))


def count_wrong(source: str, now_ms: int, rate: float) -> None:
    """Count one wrong code against its source and over all.

    Args:
        source: address it comes from.
        now_ms: server time [ms].
        rate: how fast the server's clock runs.
    """
    with writing():
        kept.forget_attempts(now_ms - int(FORGET_S * 1000 * rate))
        for key in (_key(source), ALL):
            wrong = kept.attempts_by(key).wrong + 1
            until_ms = now_ms + int(_wait_s(wrong - FREE[key == ALL]) * 1000 * rate)
            kept.save_attempts(key, kept.Attempts(wrong, now_ms, until_ms))


def _wait_s(over: int) -> int:
    return 0 if over < 0 else min(FIRST_WAIT_S * 2 ** min(over, 10), LONGEST_WAIT_S)


def _key(source: str) -> str:
    return f"from {source}"[:100]
