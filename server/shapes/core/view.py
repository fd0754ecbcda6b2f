"""One make as every screen shows it."""

from typing import Literal, NotRequired, TypedDict

from server.shapes.core.heat import MilkView
from server.shapes.core.matters import Matter
from server.shapes.core.record import LogLine
from server.shapes.core.step import Caution, Mould, Step
from server.shapes.core.words import Reasoned, Said, Who, Words

MakeState = Literal["running", "held", "closed", "abandoned", "discarded"]


class Unread(TypedDict):
    """How many entries are kept and cannot be read here."""

    newer: int
    unsound: int


class Alert(TypedDict):
    """One thing that asks for a person; `do` says what to do, `due_ms` by when.

    `rings_ms` where it asks from later than it stands.
    """

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
    due_ms: int | None
    rings_ms: int | None
    do: Words | None
    since_ms: int
    acknowledged: Said | None


class BeforeStore(TypedDict):
    """The step that wheels lie in before they ripen, and when they are to."""

    step: str
    begins_ms: int


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
    before_store: BeforeStore | None
    milk: MilkView | None


class Timer(TypedDict):
    """A stand-alone timer."""

    id: str
    label: str
    step: str | None
    start_ms: int
    due_ms: int
    by: str
    stopped_ms: int | None


class Countdown(TypedDict):
    """A step or a timer that counts down; a timer has its label."""

    step: str | None
    timer: str | None
    label: str | None
    due_ms: int


class TimeSpan(TypedDict):
    """When a part of the make ends, as planned and as expected now."""

    planned_end_ms: int
    expected_end_ms: int
    late_s: float
    state: Literal["late", "early", "on_time"]


BandHow = Literal["done", "left_open", "running", "to_come"]


class BandStage(TypedDict):
    """A stage of the make; it ends where the next one begins, as expected or in truth.

    Where `has_end` is false, `end_ms` is no deadline. `share_frac` is its part of the
    drawn length: in proportion to time, long stages cut short.
    """

    key: str
    how: BandHow
    begin_ms: int
    end_ms: int
    has_end: bool
    share_frac: float
    late_s: float


class ToJudge(TypedDict):
    """What two phones recorded of one act."""

    step: str
    kind: str
    first: Who
    later: Who


class Reader(TypedDict):
    """Who looks at a make and may work in it, and the time zone there."""

    person: str
    tz_min: int


class StepCautions(TypedDict):
    """What a person has still to see in this shift, at a step or at a reading."""

    step: str | None
    quantity: str | None
    stands: Literal["before", "beside"]
    owed: list[Caution]


class View(TypedDict):
    """One make as a screen sees it; `cautions` where it is asked for a person.

    `next_change_ms` says when it changes by itself: screens count down to instants
    for show and ask again then. `left_open` are steps that could begin behind a
    running one. `band` are the stages of a make that runs, in order.
    """

    make: Make
    now_ms: int
    next_change_ms: int | None
    focus: str | None
    left_open: list[str]
    steps: list[Step]
    timers: list[Timer]
    countdowns: list[Countdown]
    alerts: list[Alert]
    matters: list[Matter]
    to_judge: list[ToJudge]
    day: TimeSpan
    whole: TimeSpan
    band: list[BandStage]
    log: list[LogLine]
    unread: Unread
    cautions: NotRequired[list[StepCautions]]
