"""What the core keeps of makes, and hands from wing to wing; the page never sees it.

What is worked out once is kept in the State or the Desk until an event changes it.
"""

from collections.abc import Callable
from typing import Any, Literal, NotRequired, TypedDict

from server.shapes.core.figures import Lasting, StepFigure
from server.shapes.core.matters import Matter
from server.shapes.core.recipe import Recipe, RecipeStep
from server.shapes.core.record import Proved
from server.shapes.core.step import Judgement, StepStatus
from server.shapes.core.view import Timer, View
from server.shapes.core.words import Problem, Reasoned

# The legal figures by the id of their rule, as the files of server/rules.
Rules = dict[str, Any]


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
    ref: NotRequired[str | None]
    data: dict[str, Any]
    proof: NotRequired[Any]
    proof_state: NotRequired[Proved]


class Line(TypedDict):
    """Where an event stands in the total order."""

    id: str
    t_ms: int
    device: str
    seq: int


class Entry(Line):
    """A standing event as its corrections leave it."""

    by: str
    data: dict[str, Any]
    ref: str | None


class Effective(TypedDict):
    """Instant and body of an event as its corrections leave it."""

    t_ms: int
    data: dict[str, Any]


Why = Literal["newer", "unsound"]


class Raw(TypedDict):
    """An event that cannot be read here, kept as it came."""

    event: Event
    why: Why
    problems: list[Problem]


DueBasis = Literal["floc", "lasts"]


class DueBand(TypedDict):
    """When a step should end, and the band round that instant."""

    due_ms: int | None
    low_ms: int | None
    high_ms: int | None
    basis: DueBasis | None


class Fact(TypedDict):
    """What is known of a step from entries alone."""

    begun: Entry | None
    ended: Entry | None
    skipped: Entry | None
    begun_ms: int | None
    ended_ms: int | None
    skipped_ms: int | None
    due: DueBand
    due_ms: int | None
    floc: Any
    waits_on: list[str]
    status: StepStatus
    from_ms: NotRequired[int | None]


class Span(TypedDict):
    """From when to when a step is planned or expected."""

    begin_ms: int
    end_ms: int


class Milk(TypedDict):
    """The milk of a make, and what that rests on."""

    milk_kg: float
    milk_l: float
    milk_from: Literal["mass", "volume", "opened"]
    density_kg_l: float | None


class Judging(TypedDict):
    """What is judged of the curd, and whether it is what ends the step."""

    choices: list[str]
    from_ms: int | None
    last: Judgement | None
    met: bool


class State(TypedDict):
    """All that is known of one make or tank, see `log.run`.

    `in_hand`: by ingredient, the lot that a person has in hand and has not entered.
    """

    make: str
    events: dict[str, Event]
    raw: dict[str, Raw]
    log: list[Line]
    lists: dict[str, list[Entry]]
    amends: dict[str, list[Line]]
    strikes: dict[str, list[Line]]
    judged: dict[str, list[Line]]
    kept: dict[str, Any]
    asked: NotRequired[dict[str, Any]]
    in_hand: NotRequired[dict[str, str]]


class Context(TypedDict):
    """What all answers about one make at one instant start from.

    `figures`, `asking`, `cut`, `round`, `nested` and `scenes` are for `figures.figure`
    alone; `figure` is the way to ask it, handed to the wings below.
    """

    state: State
    desk: "Desk"
    recipe: Recipe
    opened: dict[str, Any]
    facts: dict[str, Fact]
    lasts: dict[str, Lasting | None]
    milk: Milk
    rules: Rules
    now_ms: int
    figures: dict[str, StepFigure]
    asking: list[str]
    cut: list[int]
    round: list[str]
    nested: list[str]
    scenes: "dict[str, Scene]"
    figure: NotRequired[Callable[..., Any]]


class ViewContext(Context):
    """The same with what a View asks besides."""

    over: bool
    ordered: list[RecipeStep]
    planned: dict[str, Span]
    expected: dict[str, Span]
    timers: list[Timer]
    holds: list[Reasoned]
    matters: list[Matter]


# `from` is a word of Python, so this field stands apart.
_From = TypedDict("_From", {"from": str})


class KnownValue(_From):
    """A value that a make knows already, and whose word that is."""

    value: Any
    low: Any
    high: Any
    typed: Any
    status: str
    source: Any


class Scene(TypedDict):
    """What the look-ups of a step's sums start from, see `known.inputs.scene`."""

    desk: "Desk"
    state: State
    context: Context
    recipe: Recipe
    opened: dict[str, Any]
    equipment: dict[str, Any]
    step: RecipeStep
    fact: Fact
    now_ms: int
    size: str | None
    kept: dict[str, Any]


class Desk(TypedDict):
    """Every make that a device knows of; see `creamery.kept`."""

    makes: dict[str, State]
    views: dict[str, View]
    last_words: dict[str, int]
    rules: NotRequired[Rules]
    sums: NotRequired[dict[str, Any]]
    acts: NotRequired[dict[str, Any]]
    broken: NotRequired[dict[str, dict[str, Any]]]
    # Makes taken before the check of their recipe was there.
    unchecked: NotRequired[list[str]]
