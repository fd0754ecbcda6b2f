"""Types of what is said about events on their way."""

from typing import Any, NotRequired, TypedDict

from server.shapes.core.words import Problem


class Note(TypedDict):
    """Something worth telling that refuses nothing."""

    key: str
    off_s: float


class Verdict(TypedDict):
    """What became of one pushed item."""

    id: str | None
    st: str
    n: int | None
    why: list[Problem] | None
    notes: NotRequired[list[Note]]


class PulledEvent(TypedDict):
    """One event of the log with what the server added to it."""

    n: int
    recv_ms: int
    event: dict[str, Any]
    receipt: str
    proof_state: NotRequired[str]
