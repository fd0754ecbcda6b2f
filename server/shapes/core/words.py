"""What most shapes are made of: texts, people, problems."""

from typing import Any, NotRequired, TypedDict

# A text of a recipe by language: {"en": "Curd"}.
Words = dict[str, str]

# A message key, and the numbers that its sentence needs.
Keyed = dict[str, Any]


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
    """What speaks against a value; `text` where a formula says it."""

    value: NotRequired[Any]
    text: NotRequired[str | None]


class LastValue(TypedDict):
    """The last value of a quantity, from whichever entry tells it."""

    value: Any
    at_ms: int


class ReadingLast(LastValue):
    """The last reading of a step."""

    id: str
