"""The course of one make over time."""

from typing import Literal, TypedDict

from server.shapes.core.step import InBand, StepStatus
from server.shapes.core.words import Words


class CurvePoint(TypedDict):
    """A reading, against the band of its step."""

    id: str
    at_ms: int
    value: float
    step: str | None
    low: float | None
    high: float | None
    verdict: InBand | None


class CurveSeries(TypedDict):
    """The readings of one quantity."""

    quantity: str
    points: list[CurvePoint]


class CurveBand(TypedDict):
    """The band of a step, at its real time or at the expected one."""

    step: str
    quantity: str
    low: float | None
    value: float
    high: float | None
    begin_ms: int
    end_ms: int
    is_real: bool


class CurveStep(TypedDict):
    """A step as planned, beside what it was or is expected to be."""

    key: str
    title: Words
    round: int | None
    rounds: int | None
    status: StepStatus
    planned_begin_ms: int
    planned_end_ms: int
    begin_ms: int
    end_ms: int


class AcidPoint(TypedDict):
    """The pH that the recipe's own curve says."""

    at_ms: int
    ph: float
    low_ph: float
    high_ph: float


class AcidCurve(TypedDict):
    """The recipe's pH curve from the real starter time, or the expected one."""

    start_ms: int
    is_real: bool
    points: list[AcidPoint]


class CurveAtHand(TypedDict):
    """What a small drawing of the make shows: of which quantity, and of which time."""

    quantity: str
    from_ms: int
    to_ms: int


SpanName = Literal["hour", "day", "all"]


class Curve(TypedDict):
    """What `desk.curve` answers; `spans` are begin and end of what may be shown."""

    make: str
    now_ms: int
    series: list[CurveSeries]
    bands: list[CurveBand]
    steps: list[CurveStep]
    acid: AcidCurve | None
    spans: dict[SpanName, list[int]]
    at_hand: CurveAtHand | None
