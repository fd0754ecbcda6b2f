"""The batch record, line by line."""

from typing import Any, Literal, TypedDict

from server.shapes.core.words import Reasoned, Who, Words

Proved = Literal["pin", "phone", "none", "old_pin", "accepted"]


class Original(TypedDict):
    """What an entry said before it was put right."""

    at_ms: int
    data: dict[str, Any]


class Correction(Who):
    """How an entry was put right."""

    set: dict[str, Any]
    before: dict[str, Any]
    why: str


MendForm = Literal["number", "count", "text", "reading", "equipment"]


class Mendable(TypedDict):
    """A field of an entry that can be put right; longest in letters of a text."""

    name: str
    form: MendForm
    unit: str | None
    longest: int | None


class Changeable(TypedDict):
    """The roles that may change an entry now, and its fields that can be put right."""

    correct: list[str]
    strike: list[str]
    fields: list[Mendable]


class LeadsNowhere(TypedDict):
    """Why an entry changes nothing of its make, and the title of its step."""

    key: Literal["other_route", "no_route"]
    title: Words | None


class LogLine(TypedDict):
    """One line of the batch record, with what it said before corrections.

    `proved` is None where no proof is asked for. Of kind "unread" the data are
    {said, why}: the entry is kept and cannot be read.
    """

    id: str
    kind: str
    at_ms: int
    entered_ms: int
    by: str
    device: str
    step: str | None
    data: dict[str, Any]
    original: Original | None
    corrections: list[Correction]
    struck: Reasoned | None
    late_entry_s: float | None
    clock_off_s: float | None
    later_of: str | None
    same: bool | None
    proved: Proved | None
    leads_nowhere: LeadsNowhere | None
