"""What most shapes are made of: texts, people, problems."""

from typing import Any, Literal, NotRequired, TypedDict

# A text of a recipe by language: {"en": "Curd"}.
Words = dict[str, str]

# A message key, and the numbers that its sentence needs.
Keyed = dict[str, Any]

# What the ends are the ends of, see `outputs.RANGES`.
RangeOf = Literal["estimate", "nine_in_ten", "usual", "rule", "recipe"]


class Said(TypedDict):
    """Who, and when."""

    by: str
    at_ms: int


class Who(Said):
    """Which entry, when, and whose."""

    id: str


class Reasoned(Who):
    """An entry with why; None where nothing departs from the recipe."""

    why: str | None


class Problem(TypedDict):
    """What is wrong with one field, as a key that the page puts into words."""

    field: str | None
    key: str
    limit: Any


class ValueProblem(Problem):
    """What speaks against a value."""

    value: NotRequired[Any]


class Amount(TypedDict):
    """A number and its unit."""

    value: Any
    unit: str


_From = TypedDict("_From", {"from": Literal["input", "formula"]})


class SumProblem(Problem, _From):
    """What is wrong with a value of a sum.

    `unit` is that of value and limit; `of` the formula's own quantity where the field
    is only what it follows from; `from` "formula" where the value cannot be beside
    the others; `figures` what else the sentence speaks of.
    """

    value: Any
    unit: str
    of: str | None
    figures: dict[str, Amount]


class LastValue(TypedDict):
    """The last value of a quantity, from whichever entry tells it."""

    value: Any
    at_ms: int


class ReadingLast(LastValue):
    """The last reading of a step."""

    id: str


Side = Literal["below", "within", "above"]


class Bar(TypedDict):
    """Where a drawn bar is filled to, and between what: each a share of it [0..1].

    `low_frac` and `high_frac` are the ends of a band, `aim_frac` what is wanted, `side`
    where the value lies against the band; None where there is none.
    """

    at_frac: float
    low_frac: float | None
    high_frac: float | None
    aim_frac: float | None
    side: Side | None
