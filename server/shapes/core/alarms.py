"""What rings, what will, and what one listener is to hear of it."""

from typing import Any, Literal, NotRequired, TypedDict

from server.shapes.core.words import Said, Words


class Shelved(Said):
    """That an alarm was put aside, until when and why."""

    id: str
    until_ms: int
    why: str


class Alarm(TypedDict):
    """Something that rings: its id is make/matter.

    The kinds are timer, step_due, step_late, reading_overdue, alert and unshown;
    the matter of an alert is its id. Priority 1 is the most urgent of three.
    """

    id: str
    make: str
    make_name: str
    vat: str | None
    matter: str
    kind: str
    priority: int
    step: str | None
    title: Words | None
    due_ms: int
    rings_ms: int
    key: str
    numbers: dict[str, Any]
    do: Words | None
    state: Literal["unacknowledged", "acknowledged", "shelved", "returned"]
    acknowledged: Said | None
    shelved: Shelved | None
    escalates_ms: int | None
    escalated: bool
    returned_ms: int | None


class Deadline(TypedDict):
    """What will ring or fall due next."""

    id: str
    make: str
    make_name: str
    vat: str | None
    step: str | None
    title: Words | None
    kind: str
    label: str | None
    due_ms: int
    rings: bool


class Alarms(TypedDict):
    """What rings and what will."""

    now_ms: int
    next_change_ms: int | None
    alarms: list[Alarm]
    deadlines: list[Deadline]


class Sounding(TypedDict):
    """A ring that began within the hour, and whether somebody had asked for it."""

    at_ms: int
    asked: bool


class RingMemory(TypedDict):
    """What the question for the next ring takes from the last one."""

    soundings: list[Sounding]
    ids: list[str]


class Ring(TypedDict):
    """What is to be heard now, the most urgent first."""

    ids: list[str]
    priority: int | None
    waits_ms: int | None
    begins: NotRequired[bool]
    memory: NotRequired[RingMemory]
