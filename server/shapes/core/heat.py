"""What the readings of a heat treatment meet."""

from typing import Literal, TypedDict

from server.shapes.core.words import Keyed


class HeatHold(TypedDict):
    """The hold that a verdict rests on, in the rule's own unit."""

    row: str
    min_temp: float
    air_min_temp: float | None
    start_ms: int
    end_ms: int
    held_s: float
    needed_s: float


class HeatGap(TypedDict):
    """The longest time between readings that counts, and on whose word."""

    gap_s: float
    is_own: bool
    agreed_with: str | None
    refused_s: float | None


# `class` and `from` are words of Python, so these fields stand apart.
_Class = TypedDict("_Class", {"class": str})


class Verdict(_Class):
    """The verdict on a step whose recipe row has "heat_treatment".

    `start_ms` is since when the hold's clock runs.
    """

    rule: str
    unit: Literal["C", "F"]
    meaning: str
    reasons: list[Keyed]
    warnings: list[Keyed]
    hold: HeatHold | None
    if_not_met: str | None
    start_ms: int
    gap: HeatGap
