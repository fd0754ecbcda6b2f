"""One step of a running make, as a person at the vat needs to see it."""

from typing import Any, Literal, NotRequired, TypedDict

from server.shapes.core.heat import Verdict
from server.shapes.core.recipe import RecipeDrift, When
from server.shapes.core.words import ReadingLast, Reasoned, Said, Who, Words

StepStatus = Literal["waiting", "ready", "running", "ended", "skipped"]
InBand = Literal["below", "above", "in_band"]


class Timing(TypedDict):
    """How a step stands against its own band of time."""

    state: Literal["not_begun", "late", "early", "on_time"]
    by_s: float


class BriefStep(TypedDict):
    """A step as the list of steps shows it.

    The steps of a View are typed as whole ones: who reads more than this of one
    looks at `full` or its status first.
    """

    full: bool
    key: str
    title: Words
    place: str | None
    round: int | None
    rounds: int | None
    status: StepStatus
    waits_on: list[str]
    planned_begin_ms: int
    planned_end_ms: int
    expected_begin_ms: int
    expected_end_ms: int
    begun: Who | None
    ended: Reasoned | None
    skipped: Reasoned | None
    due_ms: int | None
    due_basis: Literal["floc", "lasts"] | None
    end_low_ms: int | None
    end_high_ms: int | None
    timing: Timing


class Uncertain(TypedDict):
    """How uncertain a value is that a sum has worked out."""

    low: float | None
    high: float | None


_FigureFrom = TypedDict("_FigureFrom", {"from": Literal["person", "sum", "recipe"]})


class Origin(_FigureFrom):
    """Where a figure comes from that is not the recipe's plain word.

    Where its sum should have answered and did not, `fell_back` says why, `needs`
    names the inputs that it lacks, and the recipe's own figure stands.
    """

    sum: str | None
    status: str
    estimate: Uncertain | None
    needs: list[str]
    fell_back: str | None
    own: float | None


class Turn(TypedDict):
    """When wheels want turning again, and how often they do."""

    due_ms: int
    every_s: float


class Lasts(TypedDict):
    """How long a step takes."""

    value_s: float
    low_s: float
    high_s: float
    origin: Origin | None


class EndOpen(TypedDict):
    """A step that ends by the clock, or when its person says so."""

    by: Literal["time", "person"]


class EndJudged(TypedDict):
    """A step that ends when the curd is judged so."""

    by: Literal["judged"]
    judgement: Any


class EndFloc(TypedDict):
    """A step that ends a multiple of the floc time after the rennet."""

    by: Literal["floc"]
    factor: float


class EndReading(TypedDict):
    """A step that ends when a quantity has come so far."""

    by: Literal["reading"]
    quantity: str
    at_least: float | None
    at_most: float | None


StepEnd = EndOpen | EndJudged | EndFloc | EndReading


class JudgedReading(ReadingLast):
    """The last reading of a target, against its band."""

    verdict: InBand


class Target(TypedDict):
    """What a quantity should be, and what it was last.

    `value` None where only a sum could tell it and cannot yet: see `origin`.
    """

    quantity: str
    size: str | None
    value: float | None
    low: float | None
    high: float | None
    unit: str
    source: Any
    status: str
    origin: Origin | None
    last: JudgedReading | None


class ReadingWanted(TypedDict):
    """A reading that a step wants; `due_ms` None while nothing is wanted."""

    quantity: str
    when: When
    every_s: float | None
    required: bool
    due_ms: int | None
    overdue_s: float
    count: int
    last: ReadingLast | None


class DoseBasis(TypedDict):
    """The recipe's amount, and the milk that it was taken for."""

    per: str
    amount: float
    amount_unit: str
    milk_kg: float
    milk_l: float
    milk_from: str
    status: str


class Dose(TypedDict):
    """How much of an ingredient is planned for the milk of this make.

    Its ends are None where the recipe gives no tolerance.
    """

    value: float
    low: float | None
    high: float | None
    unit: str
    origin: Origin | None
    basis: DoseBasis


class Added(Who):
    """What went in, against what is planned of it."""

    amount: float
    unit: str
    lot: str | None
    verdict: InBand | Literal["no_plan"]


class Add(TypedDict):
    """An ingredient that a step adds: what is planned and what was added."""

    ingredient: str
    title: Words
    planned: Dose | None
    added: list[Added]
    total: float
    optional: bool
    done: bool


class Judgement(Who):
    """What somebody judged the curd to be."""

    judgement: str


class Judge(TypedDict):
    """What is judged of the curd, from when on, and the last judgement."""

    choices: list[str]
    from_ms: int | None
    last: Judgement | None


class Floc(TypedDict):
    """The floc test: since when, how long it took, and when that says to cut."""

    added_ms: int | None
    floc_ms: int | None
    floc_s: float | None
    factor: float
    cut_ms: int | None
    low_ms: int | None
    high_ms: int | None
    problem: Literal["floc_too_early", "floc_too_late"] | None


class Mould(TypedDict):
    """Wheels of one size; `planned` None when no count was given."""

    size: str
    title: Words
    planned: int | None
    moulded: int


_From = TypedDict("_From", {"from": Said | None})


class Holder(Who, _From):
    """Who has a step in hand; `from` is who had it before."""

    stale: Literal["idle", "shift"] | None
    stale_ms: int


class Task(Holder):
    """Who took a step in hand first, and who else has it."""

    others: list[Holder]


class MainDose(TypedDict):
    """What is to be added next."""

    kind: Literal["dose"]
    ingredient: str
    value: float
    unit: str


class MainTarget(TypedDict):
    """What a quantity should come to."""

    kind: Literal["target"]
    quantity: str
    value: float
    last: ReadingLast | None


class MainCountdown(TypedDict):
    """When the step is due to end."""

    kind: Literal["countdown"]
    due_ms: int


class MainInstruction(TypedDict):
    """No number: what is to be done."""

    kind: Literal["instruction"]


# The one number that matters in a step; what is in it follows its kind.
MainNumber = MainDose | MainTarget | MainCountdown | MainInstruction


class StepButton(TypedDict):
    """The one large button of a step."""

    act: Literal["begin", "reading", "add", "mould", "judge", "end", "none"]
    arg: str | None


class EndBlocker(TypedDict):
    """Why a step should not be ended yet."""

    key: str
    arg: Any


class Step(BriefStep):
    """A step where work is at hand, or asked for by itself: `full` is true.

    `size` is the step's own size of wheel; without one, those of `make.sizes` hold.
    """

    do: list[Words]
    lasts: Lasts | None
    end: StepEnd
    targets: list[Target]
    readings: list[ReadingWanted]
    adds: list[Add]
    judge: Judge | None
    floc: Floc | None
    moulds: list[Mould] | None
    size: str | None
    can_turn: bool
    turn: Turn | None
    cautions: list[str]
    drift: list[RecipeDrift]
    task: Task | None
    verdict: NotRequired[Verdict | None]
    end_blockers: list[EndBlocker]
    button: StepButton
    main: MainNumber


class StepSummary(TypedDict):
    """A step as the board lists it."""

    key: str
    title: Words
    status: StepStatus
    due_ms: int | None
    timing: Timing
    main: MainNumber
    button: StepButton
    place: str | None
    round: int | None
    rounds: int | None
    task: Task | None
