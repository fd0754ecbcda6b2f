"""Types of events and of what is said about them."""

from typing import Any, NotRequired, TypedDict


class Event(TypedDict):
    """One immutable fact, as its maker's phone wrote it."""

    id: str
    make: str
    device: str
    seq: int
    person: str
    at_ms: int
    entered_ms: int
    tz_min: int
    mono_ms: float
    boot: str
    off_ms: int
    off_q_ms: float | None
    kind: str
    v: int
    ref: str | None
    data: dict[str, Any]


class Problem(TypedDict):
    """What is wrong with one field, as a key that the page puts into words."""

    field: str | None
    key: str
    limit: Any


class Person(TypedDict):
    """Who may act, and as what."""

    id: str
    name: str
    role: str


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
