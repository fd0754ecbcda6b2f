"""Matters: what is known of a make and must act, what it stops, who decides."""

from typing import Any, Literal, TypedDict

from server.shapes.core.words import Keyed, Reasoned, Said, Words

MatterLevel = Literal["act", "check", "wait"]
MatterKind = Literal[
    "acid",
    "check_due",
    "curing",
    "hold",
    "laboratory",
    "recorder",
    "test",
    "thermometer",
]
StopWhat = Literal["begin", "end", "close", "release"]


class Seen(TypedDict):
    """How a watcher's fact stands; `rests_on` are the entries that it goes by."""

    says: str
    since_ms: int | None
    reasons: list[Keyed]
    rests_on: list[str]


class Stop(TypedDict):
    """What is stopped: the begin or end of a step, or something of the whole make."""

    what: StopWhat
    step: str | None


class WayEvent(TypedDict):
    """The entry that decides in place of `matter_decided`; why is added to its data."""

    kind: str
    data: dict[str, Any]


class Way(TypedDict):
    """A way that a rule leaves open, the least role that may go it, and all that may.

    `lifts` names what is stopped no longer once it is decided so.
    """

    way: str
    role: str
    roles: list[str]
    needs_why: bool
    lifts: list[str]
    event: WayEvent | None


class Decided(Reasoned):
    """Who decided a matter, when, in which way and why."""

    way: str


class Matter(TypedDict):
    """One thing that is wrong, missing or awaited, told once.

    Its words are `matter.<key>`; what to do is `do` or `matter_do.<key>`. Of level
    "wait" nothing is wrong: it stops, and is told only to who would go past it.
    `rule` is the section that decides, `source` where it was read, `status` how it is
    known: "read", "secondary" or "setting". It is acknowledged
    and rings as `alert`, told since `told_ms`: by the name of the reading that told of
    it first, if one did.
    """

    id: str
    key: str
    kind: MatterKind
    step: str
    since_ms: int | None
    level: MatterLevel
    reasons: list[Keyed]
    rests_on: list[str]
    stops: list[Stop]
    ways: list[Way]
    do: Words | None
    decided: Decided | None
    alert: str
    told_ms: int | None
    acknowledged: Said | None
    rule: str
    source: str
    status: str
