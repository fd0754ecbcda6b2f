"""What a creamery has, as it is asked for and carried from make to make."""

from typing import Any, Literal, NotRequired, TypedDict

# {key: value} with how each was typed, {"typed": {key: [typed, unit]}}.
Equipment = dict[str, Any]


class Beside(TypedDict):
    """The words of a choice that a row makes sense with; `usual` beside none too."""

    name: str
    words: list[str]
    usual: bool


class EquipmentRow(TypedDict):
    """A row of what can be entered as equipment."""

    name: str
    group: str
    kind: Literal["number", "count", "choice", "text"]
    unit: str
    units: list[str]
    low: float | None
    high: float | None
    ask_low: float | None
    ask_high: float | None
    choices: list[str] | None
    sum: str | None
    agreed: bool
    longest: int | None
    beside: Beside | None


class EquipmentSet(TypedDict):
    """One thing that was entered, with how it was typed and with whom it was agreed."""

    value: Any
    typed: NotRequired[list[str]]
    agreed_with: NotRequired[str]


class EquipmentAltered(TypedDict):
    """Equipment with what was altered in it, and whether anything is known at all."""

    equipment: Equipment
    is_any: bool


class LeftOut(TypedDict):
    """What was not carried over, and why."""

    field: str
    key: str
    limit: Any


class EquipmentBefore(TypedDict):
    """What a make begins with, as in the newest make before it."""

    equipment: Equipment
    left_out: list[LeftOut]
    make: str
    name: str
    vat: str | None
    opened_ms: int
    is_same_vat: bool
