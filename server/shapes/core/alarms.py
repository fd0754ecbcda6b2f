"""What rings, what will, and what one listener is to hear of it."""

from typing import Any, Literal, NotRequired, TypedDict

from server.shapes.core.step import StepMark
from server.shapes.core.words import Said, Words

# What wants an answer is to be acted on, or looked at.
Level = Literal["act", "check"]


class Shelved(Said):
    """That an alarm was put aside, until when and why."""

    id: str
    until_ms: int
    why: str


class Alarm(TypedDict):
    """Something that rings: its id is make/matter.

    The kinds are timer, step_due, step_late, begin_late, reading_overdue, alert,
    matter and unshown; the matter of an alert is its id. Priority 1 is the most
    urgent of three. One that is open wants an answer.
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
    is_open: bool
    mark: Literal["act", "check", "ok"]
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
    mark: StepMark
    label: str | None
    due_ms: int
    rings: bool


class WallRow(TypedDict):
    """A row of the room's display: a deadline, or a make that waits for nothing."""

    id: str
    make: str
    make_name: str
    vat: str | None
    kind: str | None
    mark: StepMark | None
    title: Words | None
    label: str | None
    due_ms: int | None


class Alarms(TypedDict):
    """What rings and what will."""

    now_ms: int
    next_change_ms: int | None
    alarms: list[Alarm]
    deadlines: list[Deadline]
    wall: list[WallRow]


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
