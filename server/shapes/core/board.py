"""All makes at once, and what is due across them."""

from typing import Literal, TypedDict

from server.shapes.core.matters import Matter
from server.shapes.core.step import StepMark, StepSummary, Task
from server.shapes.core.view import Alert, BandStage, MakeState, TimeSpan, Unread
from server.shapes.core.words import Problem, Reasoned, Words


class MakeSummary(TypedDict):
    """A make as the board lists it."""

    id: str
    name: str
    batch: str
    practice: bool
    state: MakeState
    is_open: bool
    on_now: bool
    vat: str | None
    opened_ms: int
    recipe_title: Words
    store_step: str | None
    can_brine: bool
    focus: StepSummary | None
    running: list[StepSummary]
    alerts: list[Alert]
    matters: list[Matter]
    day: TimeSpan
    whole: TimeSpan
    band: list[BandStage]
    last_word_ms: int | None
    unread: Unread


BrokenWhy = Literal["fault", "newer", "unsound"]


class Broken(TypedDict):
    """A make or tank that cannot be shown whole: what is missing and since when."""

    make: str
    is_tank: bool
    name: str | None
    batch: str | None
    vat: str | None
    practice: bool
    opened_ms: int
    state: MakeState | None
    is_open: bool
    holds: list[Reasoned]
    what: str
    why: BrokenWhy
    since_ms: int | None
    problems: list[Problem]
    fault: str | None


DueWhat = Literal["step_begin", "step_end", "reading", "turn", "timer", "unload"]
DueLevel = Literal["later", "due", "check"]
DueWhen = Literal["late", "now", "hour", "today", "days"]


class Due(TypedDict):
    """One thing that falls due: in a make, in brine, in the store, by a timer.

    The one that leads stands for its step: it says who has that in hand.
    """

    make: str
    make_name: str | None
    practice: bool
    step: str | None
    title: Words
    round: int | None
    rounds: int | None
    what: DueWhat
    timer: str | None
    label: str | None
    quantity: str | None
    tank: str | None
    load: str | None
    wheels: int | None
    size: str | None
    due_ms: int
    late_ms: int | None
    level: DueLevel
    mark: StepMark
    when: DueWhen | None
    leads: bool
    task: Task | None


class Act(TypedDict):
    """What wants hands: one side of a Clash."""

    make: str
    make_name: str
    vat: str | None
    what: Literal["begin", "end", "timer"]
    step: str | None
    title: Words
    round: int | None
    rounds: int | None
    place: str | None
    label: str | None
    at_ms: int
    early_ms: int | None
    late_ms: int | None
    by: str | None
    wait: str
    since_ms: int
    next: str | None


class Move(TypedDict):
    """A move of one act that its band allows."""

    act: int
    to_ms: int
    way: Literal["later", "earlier"]
    clears: bool


class Clash(TypedDict):
    """Acts that want hands within five minutes."""

    at_ms: int
    acts: list[Act]
    move: Move | None
    is_soon: bool


class BetterStart(TypedDict):
    """A start that has fewer clashes."""

    start_ms: int
    count: int


class ClashesIf(TypedDict):
    """What a make not opened yet would clash with."""

    clashes: list[Clash]
    count: int
    better: BetterStart | None


class Board(TypedDict):
    """All makes at once; of the clashes of the next 24 h the first three.

    Of those that ripen their ids, the newest first.
    """

    now_ms: int
    next_change_ms: int | None
    makes: list[MakeSummary]
    ripening: list[str]
    due: list[Due]
    clashes: list[Clash]
    clash_count: int
    broken: list[Broken]
    unread: Unread
