"""One make as every screen shows it."""

from typing import Literal, TypedDict

from server.shapes.core.record import LogLine
from server.shapes.core.step import Mould, Step
from server.shapes.core.words import Reasoned, Said, Who, Words

MakeState = Literal["running", "held", "closed", "abandoned"]


class Unread(TypedDict):
    """How many entries are kept and cannot be read here."""

    newer: int
    unsound: int


class Alert(TypedDict):
    """One thing that asks for a person; `do` is what the recipe says to do."""

    id: str
    form: Literal["time", "temperature", "acid", "quantity", "record"]
    level: Literal["act", "check"]
    key: str
    step: str | None
    quantity: str | None
    value: float | None
    low: float | None
    high: float | None
    unit: str | None
    by_s: float | None
    do: Words | None
    since_ms: int
    acknowledged: Said | None


class Make(TypedDict):
    """What was opened: which recipe, which milk, where, and how it stands."""

    id: str
    name: str
    batch: str
    practice: bool
    recipe_id: str
    recipe_version: int
    recipe_title: Words
    milk_l: float
    milk_measured_l: float | None
    milk_kg: float
    milk_from: str
    vat: str | None
    opened_ms: int
    opened_by: str
    state: MakeState
    is_open: bool
    holds: list[Reasoned]
    moulds: list[Mould]
    sizes: list[str]
    store_step: str | None


class Timer(TypedDict):
    """A stand-alone timer."""

    id: str
    label: str
    step: str | None
    start_ms: int
    due_ms: int
    by: str
    stopped_ms: int | None


class TimeSpan(TypedDict):
    """When a part of the make ends, as planned and as expected now."""

    planned_end_ms: int
    expected_end_ms: int
    late_s: float
    state: Literal["late", "early", "on_time"]


class ToJudge(TypedDict):
    """What two phones recorded of one act."""

    step: str
    kind: str
    first: Who
    later: Who


class View(TypedDict):
    """One make as a screen sees it.

    `next_change_ms` says when it changes by itself: screens count down to instants
    for show and ask again then. `left_open` are steps that could begin behind a
    running one.
    """

    make: Make
    now_ms: int
    next_change_ms: int | None
    focus: str | None
    left_open: list[str]
    steps: list[Step]
    timers: list[Timer]
    alerts: list[Alert]
    to_judge: list[ToJudge]
    day: TimeSpan
    whole: TimeSpan
    log: list[LogLine]
    unread: Unread
