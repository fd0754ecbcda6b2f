"""One step of a running make, as a person at the vat needs to see it."""

from typing import Any, Literal, NotRequired, TypedDict

from server.shapes.core.heat import ChartBeside, HoldLead, Verdict
from server.shapes.core.recipe import RecipeDrift, When
from server.shapes.core.words import (
    LastValue,
    RangeOf,
    ReadingLast,
    Reasoned,
    Said,
    Who,
    Words,
)

StepStatus = Literal["waiting", "ready", "running", "ended", "skipped"]
StepMark = Literal[
    "waiting", "ready", "running", "due", "late", "stopped", "done", "skipped"
]
InBand = Literal["below", "above", "in_band"]


class Timing(TypedDict):
    """How a step stands against its own band of time."""

    state: Literal["not_begun", "late", "early", "on_time"]
    by_s: float


class BriefStep(TypedDict):
    """A step as the list of steps shows it.

    The steps of a View are typed as whole ones: who reads more than this of one
    looks at `full` or its status first. One that is open may be worked on. Its mark
    is how it stands in one word, which every screen has a shape for.
    """

    full: bool
    key: str
    title: Words
    place: str | None
    round: int | None
    rounds: int | None
    status: StepStatus
    mark: StepMark
    is_open: bool
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
    stopped_by: list[str]


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
    overdue_s: float


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


class EntryAt(TypedDict):
    """An entry, and when it counts."""

    id: str
    at_ms: int


class JudgedReading(ReadingLast):
    """The last reading of a target, against its band.

    `since` is the first of the unbroken row of readings with the same verdict.
    """

    verdict: InBand
    since: EntryAt


class Target(TypedDict):
    """What a quantity should be, and what it was last.

    `value` None where only a sum could tell it and cannot yet: see `origin`.
    """

    quantity: str
    size: str | None
    value: float | None
    low: float | None
    high: float | None
    range_of: RangeOf
    unit: str
    source: Any
    status: str
    origin: Origin | None
    last: JudgedReading | None


class ReadingWanted(TypedDict):
    """A reading that a step wants; `due_ms` None while nothing is wanted.

    One that counts only until `lost_ms` has that instant; one that is read together
    with another, in one round, names it in `goes_with`.
    It may be overdue by `grace_s` before it is an alert.
    """

    quantity: str
    when: When
    every_s: float | None
    required: bool
    due_ms: int | None
    overdue_s: float
    grace_s: float
    count: int
    last: ReadingLast | None
    lost_ms: int | None
    goes_with: str | None


class Offer(TypedDict):
    """A value that is shown to be tapped by whoever has just read it, and why."""

    value: float
    why: Literal["last", "wanted"]


class Pad(TypedDict):
    """What is read in a step, of one size of wheel where each wants its own.

    What `is_due` is one round of entry, in this order. `last` is the newest of the
    whole make.
    """

    quantity: str
    size: str | None
    is_due: bool
    last: LastValue | None
    offers: list[Offer]


class DoseBasis(TypedDict):
    """The recipe's amount, and the milk that it was taken for."""

    per: str
    amount: float
    amount_unit: str
    milk_kg: float
    milk_l: float
    milk_from: str
    status: str


class Bottle(TypedDict):
    """The bottle or pack that is used, and the one whose label was read in this make.

    `is_read` tells whether anything that stands on the label of `lot` is known.
    """

    lot: str | None
    of_label: str | None
    is_read: bool


class Dose(TypedDict):
    """How much of an ingredient is planned for the milk of this make.

    `bottle` is None of what has no label that its dose goes by. Its ends are None
    where the recipe gives no tolerance.
    """

    value: float
    low: float | None
    high: float | None
    range_of: RangeOf
    unit: str
    origin: Origin | None
    bottle: Bottle | None
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
    """Wheels of one size; `suggested` by the milk that came, None without a plan."""

    size: str
    title: Words
    planned: int | None
    suggested: int | None
    moulded: int


class WheelSize(TypedDict):
    """A size of wheel by name."""

    size: str
    title: Words


class OfSizes(TypedDict):
    """A quantity with a figure for each size: `unsized` where the last names none."""

    quantity: str
    sizes: list[WheelSize]
    is_judged: bool
    unsized: ReadingLast | None


_From = TypedDict("_From", {"from": Said | None})


class Holder(Who, _From):
    """Who has a step in hand; `from` is who had it before."""

    stale: Literal["idle", "shift"] | None
    stale_ms: int


class Task(Holder):
    """Who took a step in hand first, and who else has it."""

    others: list[Holder]


class WashWater(TypedDict):
    """The water of a wash: how much in two parts, how hot, and where it stops.

    `rest_l` is None until the curd was read after the first part, `loss_k` until an
    earlier wash showed what is lost. `refused` says why none is worked out: then the
    recipe's own litres stand.
    """

    water_l: float
    low_l: float | None
    high_l: float | None
    first_l: float | None
    after_first_c: float | None
    added_l: float
    rest_l: float | None
    water_temp_c: float | None
    is_read: bool
    stop_c: float | None
    loss_k: float | None
    refused: str | None


class MainWater(TypedDict):
    """The water to pour next, and how hot."""

    kind: Literal["water"]
    part: Literal["first", "rest"]
    value: float
    temp_c: float | None


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
MainNumber = MainDose | MainWater | MainTarget | MainCountdown | MainInstruction


class StepButton(TypedDict):
    """The one large button of a step; of one that is stopped, arg is the matter."""

    act: Literal["begin", "reading", "add", "mould", "judge", "end", "stopped", "none"]
    arg: str | None


class EndBlocker(TypedDict):
    """Why a step should not be ended yet; `do` is what the recipe says to do."""

    key: str
    arg: Any
    do: NotRequired[Words]


class Sign(TypedDict):
    """One sign of a hazard, which the page draws."""

    kind: Literal["warning", "mandatory"]
    pictogram: str


class Caution(TypedDict):
    """A hazard of a step; `do` where the step has words of its own for it.

    `id` is what a person has seen or not: the hazard, or hazard/step with own words.
    """

    id: str
    hazard: str
    signs: list[Sign]
    do: Words | None


class NamedFigure(TypedDict):
    """A figure that a sentence names: of a quantity, or by its unit alone."""

    name: str
    quantity: str | None
    unit: str | None
    value: float


class Now(TypedDict):
    """What to do now, in one sentence; `figures` fill its names in braces."""

    text: Words
    figures: list[NamedFigure]


class Step(BriefStep):
    """A step where work is at hand, or asked for by itself: `full` is true.

    `size` is the step's own size of wheel; without one, those of `make.sizes` hold.
    `turn_wheels` is how many there are to turn, where they can be.
    """

    now: Now
    do: list[Words]
    lasts: Lasts | None
    end: StepEnd
    targets: list[Target]
    readings: list[ReadingWanted]
    by_size: list[OfSizes]
    adds: list[Add]
    water: WashWater | None
    judge: Judge | None
    floc: Floc | None
    moulds: list[Mould] | None
    size: str | None
    can_turn: bool
    turn_wheels: int | None
    turn: Turn | None
    cautions: list[Caution]
    drift: list[RecipeDrift]
    task: Task | None
    verdict: NotRequired[Verdict | None]
    hold: NotRequired[HoldLead | None]
    chart: ChartBeside | None
    end_blockers: list[EndBlocker]
    button: StepButton
    pads: list[Pad]
    main: MainNumber


class StepSummary(TypedDict):
    """A step as the board lists it."""

    key: str
    title: Words
    status: StepStatus
    mark: StepMark
    due_ms: int | None
    timing: Timing
    main: MainNumber
    button: StepButton
    place: str | None
    round: int | None
    rounds: int | None
    task: Task | None
