"""Types of what the core answers; all instants are corrected server time [ms]."""

from typing import Any, TypedDict

Text = dict[str, str]  # language -> words


class Alert(TypedDict):
    """One thing that asks for a person."""

    id: str
    form: str
    level: str
    key: str
    step: str | None
    quantity: str | None
    value: float | None
    low: float | None
    high: float | None
    unit: str | None
    by_s: float | None
    do: Text | None
    since_ms: int
    acknowledged: dict[str, Any] | None


class Step(TypedDict):
    """One step of a running make, with all that a screen shows of it."""

    key: str
    title: Text
    do: list[Text]
    place: str
    round: int | None
    rounds: int | None
    status: str
    waits_on: list[str]
    planned_begin_ms: int
    planned_end_ms: int
    expected_begin_ms: int
    expected_end_ms: int
    begun: dict[str, Any] | None
    ended: dict[str, Any] | None
    skipped: dict[str, Any] | None
    lasts: dict[str, Any] | None
    due_ms: int | None
    due_basis: str | None
    timing: dict[str, Any]
    end: dict[str, Any]
    targets: list[dict[str, Any]]
    readings: list[dict[str, Any]]
    adds: list[dict[str, Any]]
    judge: dict[str, Any] | None
    floc: dict[str, Any] | None
    moulds: list[dict[str, Any]] | None
    size: str | None
    cautions: list[str]
    drift: list[dict[str, Any]]
    main: dict[str, Any]
    button: dict[str, Any]
    end_blockers: list[dict[str, Any]]
    task: dict[str, Any] | None


class LogLine(TypedDict):
    """One line of the batch record, with what it said before corrections."""

    id: str
    kind: str
    at_ms: int
    entered_ms: int
    by: str
    device: str
    step: str | None
    data: dict[str, Any]
    original: dict[str, Any] | None
    corrections: list[dict[str, Any]]
    struck: dict[str, Any] | None
    late_entry_s: float | None
    clock_off_s: float | None
    later_of: str | None
    proved: str | None


class View(TypedDict):
    """One make as a screen sees it."""

    make: dict[str, Any]
    now_ms: int
    next_change_ms: int | None
    focus: str | None
    left_open: list[str]
    steps: list[Step]
    timers: list[dict[str, Any]]
    alerts: list[Alert]
    to_judge: list[dict[str, Any]]
    day: dict[str, Any]
    whole: dict[str, Any]
    log: list[LogLine]


class Board(TypedDict):
    """All makes at once, and what is due across them."""

    now_ms: int
    next_change_ms: int | None
    makes: list[dict[str, Any]]
    due: list[dict[str, Any]]
    clashes: list[dict[str, Any]]
    clash_count: int
