"""The clock of a hold: since when all that was read is hot enough by the rule.

It runs from the first reading of an unbroken row in which milk and air space are
hot enough. One reading below begins it again: while it is low, from that reading;
then from the first that is hot enough. While a hold runs that is read in rounds, a
gap too long to count begins it again as well: only so can its readings meet the rule
by the end. What is over stands by its temperatures; whether its gaps count is the
verdict's.

A hold is whole once milk and air were read when the rule's time was up, no gap too
long. It goes on while the readings do; what breaks it afterwards is milk that cools,
and neither begins it again nor undoes it. Only what changes a reading of the hold
itself does: it is worked out anew from all that is recorded.
"""

from ...log.equipment import in_effect
from ...log.opening import opening
from ...log.readings import together
from ..milk import extra_hold_s
from .readings import hold_readings
from .rule import AIR, MILK, gap_of, hold_rule, required, rounds_wanted, vat_row

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Rules, State


def hold_start_ms(
    state: "State",
    step: "RecipeStep",
    begun_ms: int,
    ended_ms: "int | None",
    rules: "Rules",
) -> int:
    """Return the instant that a hold's clock runs from.

    Args:
        state: State of the make.
        step: step of the recipe.
        begun_ms: when it began [ms].
        ended_ms: when it ended [ms], or None.
        rules: {rule id: the rule}.

    Returns:
        Instant [ms]; the step's begin for any other step, without its rule, and
        while nothing was read.
    """
    walked = hold_walk(state, step, begun_ms, ended_ms, rules)
    return begun_ms if walked is None else int(walked["start_ms"])


def hold_walk(
    state: "State",
    step: "RecipeStep",
    begun_ms: int,
    ended_ms: "int | None",
    rules: "Rules",
) -> "dict[str, Any] | None":
    """Return how a hold's readings have gone, one after the other.

    Args:
        state: State of the make.
        step: step of the recipe.
        begun_ms: when it began [ms].
        ended_ms: when it ended [ms], or None.
        rules: {rule id: the rule}.

    Returns:
        {"start_ms", "has_begun", "low", "broke", "unit", "read"}: low is what is too
        cold now, broke what began the hold again last, each {"key", "at_ms", "value",
        "limit"} or None; read the last instant of each thermometer [ms]. None for
        any other step, without its rule, and where the rule asks nothing of this
        thermometer.
    """
    rule = _rule_of(state, step, rules)
    if rule is None:
        return None
    until_ms = hold_until_ms(state, step, begun_ms, ended_ms, rules)
    gap_s = None
    if ended_ms is None and rounds_wanted(step):
        gap_s = gap_of(rule, in_effect(state))["gap_s"]
    return _walked(state, step, rule, begun_ms, until_ms, gap_s)


def hold_until_ms(
    state: "State",
    step: "RecipeStep",
    begun_ms: int,
    ended_ms: "int | None",
    rules: "Rules",
) -> "int | None":
    """Return until when a hold's readings are about the hold.

    Args:
        state: State of the make.
        step: step of the recipe.
        begun_ms: when it began [ms].
        ended_ms: when it ended [ms], or None.
        rules: {rule id: the rule}.

    Returns:
        Instant of the last reading that a whole hold went on to [ms], where one
        after it would break it; else `ended_ms`.
    """
    whole = _whole(state, step, begun_ms, ended_ms, rules)
    if whole is None:
        return ended_ms
    last_ms = _last_good(*whole)
    return ended_ms if last_ms is None else last_ms


def hold_binds_ms(
    state: "State",
    step: "RecipeStep",
    begun_ms: int,
    ended_ms: "int | None",
    rules: "Rules",
) -> "int | None":
    """Return until when what a hold asks for binds what is read in its step.

    Args:
        state: State of the make.
        step: step of the recipe.
        begun_ms: when it began [ms].
        ended_ms: when it ended [ms], or None.
        rules: {rule id: the rule}.

    Returns:
        Instant of the last reading that a whole hold went on to [ms]: what is read
        later, in another unit too, may be cold. None while it is not whole.
    """
    whole = _whole(state, step, begun_ms, ended_ms, rules)
    if whole is None:
        return None
    last_ms = _last_good(*whole)
    if last_ms is not None:
        return last_ms
    walked = hold_walk(state, step, begun_ms, ended_ms, rules)
    return max(walked["read"]) if walked else None


def _whole(
    state: "State",
    step: "RecipeStep",
    begun_ms: int,
    ended_ms: "int | None",
    rules: "Rules",
) -> "tuple[list[int], Callable[[int], bool]] | None":
    """Return a whole hold's instants from then on, and whether it goes on at one.

    None while it is not whole.
    """
    rule = _rule_of(state, step, rules)
    row = None if rule is None else vat_row(rule, step["lasts"]["value"])
    if rule is None or row is None:
        return None
    needed_ms = int((row["hold_s"]["value"] + extra_hold_s(state, step)) * 1000)
    gap_s = gap_of(rule, in_effect(state))["gap_s"]
    wait_ms = begun_ms + needed_ms
    instants, start_ms = _instants(state, wait_ms, ended_ms), None
    while instants and start_ms is None:
        # As it stood then: what is read later may be paired with what was whole.
        walked = _walked(state, step, rule, begun_ms, instants[0], gap_s)
        if walked is None:
            return None
        wait_ms = walked["start_ms"] + needed_ms
        if _is_whole(walked, wait_ms):
            start_ms = walked["start_ms"]
        else:
            instants = [at_ms for at_ms in instants[1:] if at_ms >= wait_ms]

    def goes_on(until_ms: int) -> bool:
        told: "Any" = _walked(state, step, rule, begun_ms, until_ms, gap_s)
        return bool(told["low"] is None and told["start_ms"] == start_ms)

    return None if start_ms is None else (instants, goes_on)


def _rule_of(
    state: "State", step: "RecipeStep", rules: "Rules"
) -> "dict[str, Any] | None":
    """Return the rule that a step's clock runs by, or None where it has no clock."""
    if opening(state) is None or not step.get("lasts"):
        return None
    return hold_rule(step, rules)


def _last_good(instants: "list[int]", goes_on: "Callable[[int], bool]") -> "int | None":
    """Return the last instant that a hold went on to; None where it never broke."""
    if goes_on(instants[-1]):
        return None
    # What broke stays broken, so halving finds it; the first one is good.
    good, broken = 0, len(instants) - 1
    while broken - good > 1:
        middle = (good + broken) // 2
        if goes_on(instants[middle]):
            good = middle
        else:
            broken = middle
    return instants[good]


def _instants(state: "State", from_ms: int, until_ms: "int | None") -> "list[int]":
    told: "list[int]" = []
    for entry in together(state, (MILK, AIR), from_ms, until_ms):
        if not told or told[-1] != entry["t_ms"]:
            told.append(entry["t_ms"])
    return told


def _is_whole(walked: "dict[str, Any]", end_ms: int) -> bool:
    if walked["low"] is not None or not walked["has_begun"]:
        return False
    return all(at_ms is not None and at_ms >= end_ms for at_ms in walked["read"])


def _walked(
    state: "State",
    step: "RecipeStep",
    rule: "dict[str, Any]",
    begun_ms: int,
    until_ms: "int | None",
    gap_s: "float | None",
) -> "dict[str, Any] | None":
    hold = hold_readings(state, begun_ms, until_ms)
    wanted = required(state, step, rule, hold["unit"])
    if wanted is None:
        return None
    told: "dict[str, Any]" = {
        "start_ms": begun_ms,
        "has_begun": False,
        "low": None,
        "broke": None,
        "unit": hold["unit"],
        "read": [],
    }
    _walk(told, hold["rows"], wanted, gap_s)
    for name in ("temp", "air_temp"):
        if wanted[name] is not None:
            told["read"].append(_last_ms(hold["rows"], name))
    return told


def _last_ms(rows: "list[dict[str, Any]]", name: str) -> "int | None":
    at_ms = [row["at_ms"] for row in rows if row[name] is not None]
    return at_ms[-1] if at_ms else None


def _walk(
    told: "dict[str, Any]",
    readings: "list[dict[str, Any]]",
    wanted: "dict[str, Any]",
    gap_s: "float | None",
) -> None:
    last_ms = None
    for reading in readings:
        at_ms = reading["at_ms"]
        low = _too_cold(reading, wanted)
        if low is not None:
            if told["has_begun"] and told["low"] is None:
                told["broke"] = low
            told["low"], told["start_ms"], last_ms = low, at_ms, None
        elif reading["temp"] is not None:
            gap = _too_long(last_ms, at_ms, gap_s)
            told["broke"] = gap or told["broke"]
            if told["low"] is not None or not told["has_begun"] or gap is not None:
                told["start_ms"] = at_ms
            told["low"], told["has_begun"], last_ms = None, True, at_ms


def _too_cold(
    reading: "dict[str, Any]", wanted: "dict[str, Any]"
) -> "dict[str, Any] | None":
    for key, name in (("milk_cold", "temp"), ("air_cold", "air_temp")):
        value, limit = reading[name], wanted[name]
        if value is not None and limit is not None and value < limit:
            at_ms = reading["at_ms"]
            return {"key": key, "at_ms": at_ms, "value": value, "limit": limit}
    return None


def _too_long(
    last_ms: "int | None", at_ms: int, gap_s: "float | None"
) -> "dict[str, Any] | None":
    if last_ms is None or gap_s is None or at_ms - last_ms <= gap_s * 1000:
        return None
    value = (at_ms - last_ms) / 1000.0
    return {"key": "gap", "at_ms": last_ms, "value": value, "limit": gap_s}
