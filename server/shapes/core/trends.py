"""A figure of one recipe over its makes."""

from typing import Literal, TypedDict


class ChartPoint(TypedDict):
    """The figure of one make."""

    make: str
    batch: str
    at_ms: int
    value: float


class ChartLimits(TypedDict):
    """Where makes like the others lie."""

    mean: float
    low: float
    high: float
    mean_range: float
    range_high: float
    spread: float


class ChartVerdict(TypedDict):
    """Whether the newest makes are like the others; limits from ten makes on."""

    verdict: Literal["not_assessed", "like_the_others", "unlike_the_others"]
    count: int
    needed: int
    limits: ChartLimits | None
    beyond: list[int]
    runs: list[int]


class ChartAverage(TypedDict):
    """The weighted average of late, with its limits."""

    values: list[float]
    low: float
    high: float
    beyond: list[int]


class Chart(TypedDict):
    """What `desk.trends` answers of one figure."""

    key: str
    unit: str
    points: list[ChartPoint]
    chart: ChartVerdict | None
    average: ChartAverage | None
