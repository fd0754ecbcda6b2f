"""How sums are laid out, asked and answered."""

from typing import Any, Literal, NotRequired, TypedDict

from server.shapes.core.words import Keyed, ValueProblem

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


class SumOutput(TypedDict):
    """What a sum gives."""

    name: str
    unit: str
    units: list[str]


class SumRow(TypedDict):
    """A sum of the catalogue."""

    key: str
    topic: str
    inputs: list[SumInput]
    outputs: list[SumOutput]


class SumValue(TypedDict):
    """One value of an answer with its ends; `of` is what it is of."""

    name: str
    value: Any
    low: Any
    high: Any
    unit: str
    of: str | None


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


class Answer(TypedDict):
    """The answer to one sum; `known` and `of` (the size of wheel) only of a step's.

    `status` is the weakest of what it rests on.
    """

    key: str
    values: list[SumValue]
    rests_on: list[RestsOn]
    status: str | None
    notes: list[Keyed]
    problems: list[ValueProblem]
    ask: list[ValueProblem]
    missing: list[str]
    known: NotRequired[list[Known]]
    of: NotRequired[str | None]


class UnitLine(_From):
    """A line of the table of units: kept = shown in `from`, times scale plus offset."""

    to: str
    scale: float
    offset: float
