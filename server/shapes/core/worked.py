"""What goes into the work of a sum and comes out of it, see `sums.outputs`."""

from typing import Any, TypedDict

from server.shapes.core.sums import RestsOn
from server.shapes.core.words import Keyed

# What a sum works with, by the names of its inputs; besides, "typed" and "ranges".
Inputs = dict[str, Any]


class WorkedValue(TypedDict):
    """One value of an answer, before its output is known."""

    name: str
    value: Any
    low: Any
    high: Any
    of: str | None
    read: Any
    nth: int | None
    across_m: float | None


class Worked(TypedDict):
    """What the work of a sum comes to."""

    values: list[WorkedValue]
    notes: list[Keyed]
    rests: list[RestsOn]
    missing: list[str]
    unused: list[str]
