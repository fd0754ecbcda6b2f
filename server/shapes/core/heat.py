"""What the readings of a heat treatment meet."""

from typing import Any, Literal, TypedDict

from server.shapes.core.recipe import Treatment
from server.shapes.core.words import Keyed, Problem, ReadingLast, Reasoned


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


class HoldAsked(TypedDict):
    """What a hold asks of its thermometers, in one unit; no air where none is asked."""

    temp: float
    air_temp: float | None


class Shown(TypedDict):
    """What a thermometer showed; `typed` None where that was in another unit."""

    typed: float | None
    unit: str


class HoldRound(TypedDict):
    """When one thermometer of a hold is read next, and what it showed last.

    The next counts with the last until `lost_ms`; `shown` is the last as it was typed,
    in its own unit.
    """

    quantity: str
    every_s: float
    gap_s: float
    due_ms: int | None
    lost_ms: int | None
    last: ReadingLast | None
    shown: Shown | None


class HoldLast(TypedDict):
    """What a thermometer of a hold showed last, in the quantity's own unit."""

    quantity: str
    value: float
    at_ms: int
    is_low: bool
    is_other_unit: bool


class ChartField(TypedDict):
    """A field of the vat's chart, and what is known of it here."""

    field: str
    required: bool
    value: Any


class ChartBeside(TypedDict):
    """The chart beside the step that marks it, and a recorder that reads too high."""

    fields: list[ChartField]
    recorder: Keyed | None


class HoldLead(TypedDict):
    """What leads a hold that is to begin or runs.

    `together` is what one round reads; `asked` is by unit, "F" and "C"; `says` how it
    stands, the line that matters first. `due_ms` is when the next round is due, and
    it counts until `lost_ms`.
    """

    rule: str
    is_own: bool
    asked: dict[str, HoldAsked | None]
    gap: HeatGap
    together: list[str]
    rounds: list[HoldRound]
    last: list[HoldLast]
    due_ms: int | None
    lost_ms: int | None
    end_ms: int | None
    is_whole: bool
    says: list[Keyed]


class Verdict(_Class):
    """The verdict on a step whose recipe row has "heat_treatment".

    `rule` is "own_hold" where it goes by the maker's own figures.

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
    chart: list[ChartField]


ClassName = Literal["pasteurised", "heat_treated", "raw", "undecided"]


class MilkClass(_Class):
    """What the milk of a make is, with why and since when that is known.

    `class` is a ClassName; `step` is the hold that it rests on.
    """

    why: str
    since_ms: int
    treatment: Treatment
    step: str | None


class TreatmentChoice(TypedDict):
    """Another treatment that a recipe allows, and what speaks against it now."""

    treatment: Treatment
    problem: Problem | None
    hold_ended_ms: int | None


class TreatmentView(TypedDict):
    """How the milk of a make is treated, on whose word, and what else it may be."""

    treatment: Treatment
    usual: Treatment
    said: Reasoned
    was_changed: bool
    others: list[TreatmentChoice]


class Following(TypedDict):
    """What a rule wants of a milk: by which section, and how well it is known."""

    wanted: str | None
    section: str | None
    status: str


class KeyedFollowing(Following):
    """One of several things that a rule wants."""

    key: str


class MilkFollows(TypedDict):
    """What follows from what a milk is; `curing_days` is None where none are asked."""

    curing_days: float | None
    curing_min_temp: dict[str, float] | None
    curing_by: Following
    tests: list[KeyedFollowing]
    label: KeyedFollowing
    release_role: str


_Is = TypedDict("_Is", {"is": MilkClass})


class MilkView(_Is):
    """The milk of a make: how it is treated, what it is by now, what follows."""

    treatment: TreatmentView
    follows: MilkFollows | None
