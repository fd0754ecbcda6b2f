"""How sums are laid out, asked and answered."""

from typing import Any, Literal, NotRequired, TypedDict

from server.shapes.core.words import Bar, Keyed, RangeOf, SumProblem, ValueProblem

_From = TypedDict("_From", {"from": str})


class SumTopic(TypedDict):
    """A topic of the catalogue with the keys of its sums."""

    key: str
    sums: list[str]


class SumDefault(TypedDict):
    """What an input is taken for while nobody says, and whose word that is."""

    value: Any
    status: str
    source: str
    low: float | None
    high: float | None


class SumInput(TypedDict):
    """What a sum asks for."""

    name: str
    kind: Literal["number", "count", "choice", "series"]
    unit: str
    units: list[str]
    low: float | None
    high: float | None
    ask_low: float | None
    ask_high: float | None
    choices: list[str] | None
    columns: "list[SumInput] | None"
    default: SumDefault | None
    optional: bool
    hidden: bool
    by_hand: bool
    rises: bool


# What low and high mean: how uncertain it is, not to be passed, or wanted.
EndsRole = Literal["estimate", "limit", "band"]
Sense = Literal["later", "earlier"]
Called = Literal["name", "of", "both"]


class AsRead(TypedDict):
    """The unit that an input was read in."""

    as_read: str


class SumOutput(TypedDict):
    """What a sum gives; `ends` by what a value is of, where that differs."""

    name: str
    unit: str | AsRead
    role: EndsRole
    headline: bool | Literal["first"]
    ends: str | AsRead | dict[str, str]
    sense: Sense | None
    told_by: str | None
    called: Called
    range_of: RangeOf


class SumRow(TypedDict):
    """A sum of the catalogue."""

    key: str
    topic: str
    inputs: list[SumInput]
    outputs: list[SumOutput]


class SumValue(TypedDict):
    """One value of an answer; what a verdict read, and its ends, in `ends_unit`.

    `bar` where it is drawn: against the least that a rule asks, or in its band.
    """

    name: str
    value: Any
    low: Any
    high: Any
    read: Any
    unit: str
    ends_unit: str
    as_read: bool
    of: str | None
    nth: int | None
    across_m: float | None
    role: EndsRole
    headline: bool
    sense: Sense | None
    called: Called
    range_of: RangeOf
    repeats: str | None
    bar: Bar | None


class RestsOn(_From):
    """One figure that an answer rests on."""

    name: str
    value: Any
    unit: str
    status: str
    source: str | None


class Known(_From):
    """What a make knows of an input, and whose word that is."""

    name: str
    value: Any
    unit: str


Basis = Literal["memory", "practice", "setting", "typed", "published"]


class Standing(TypedDict):
    """What an answer stands on, see `sums.standing`."""

    basis: Basis
    is_figure: bool
    names: list[str]


class Answer(TypedDict):
    """The answer to one sum; `known` and `of` (the size of wheel) only of a step's.

    `status` is the weakest of what it rests on.
    """

    key: str
    values: list[SumValue]
    rests_on: list[RestsOn]
    status: str | None
    standing: Standing | None
    notes: list[Keyed]
    problems: list[SumProblem]
    ask: list[ValueProblem]
    missing: list[str]
    known: NotRequired[list[Known]]
    of: NotRequired[str | None]
