"""A figure of a step as the core answers it, on its way between the wings."""

from typing import Any, Literal, NotRequired, TypedDict

from server.shapes.core.recipe import Binding
from server.shapes.core.step import Uncertain
from server.shapes.core.words import RangeOf


class OwnFigure(TypedDict):
    """The recipe's own figure, scaled to the milk; what it leaves open is None."""

    value: Any
    low: float | None
    high: float | None
    unit: str
    source: str | None
    status: str
    by: Binding | None
    range_of: RangeOf


_From = TypedDict("_From", {"from": Literal["person", "sum", "recipe"]})


class StepFigure(_From):
    """What a quantity of a step is now, see `figures.answered`.

    Its value is None only of a time that neither recipe nor sum tells.
    """

    name: str
    step: str
    value: Any
    low: float | None
    high: float | None
    unit: str
    role: str
    range_of: RangeOf
    status: str
    source: str | None
    sum: str | None
    of: str | None
    estimate: Uncertain | None
    needs: list[str]
    fell_back: str | None
    own: float | None


class Lasting(TypedDict):
    """How long something lasts, with its band [s]; an open end is the value."""

    value: Any
    low: NotRequired[float | None]
    high: NotRequired[float | None]
