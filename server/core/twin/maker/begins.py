"""How a maker begins a step: taps, acts, reads, adds, and plans what is to come."""

from ..acts import act as done
from ..faults import levers
from ..instruments import can_read
from ..where import is_press
from . import duties, habits
from .ends import look_at_ms
from .work import add, do, late_ms, plan_at, take, write

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.twin import Maker


def begin(maker: "Maker", step: "RecipeStep", _: "Any") -> None:
    """Begin a step now.

    Args:
        maker: the work; it changes.
        step: the step.
        _: nothing.
    """
    twin, key = maker["twin"], step["key"]
    write(maker, step, "step_begun", _why(maker, step))
    maker["doing"][key] = {
        "step": step,
        "begun_ms": twin["now_ms"],
        "hot_ms": None,
        "floc_ms": None,
        "words": 0,
    }
    for act in duties.at_begin(step, habits.air_c(maker["recipe"])):
        do(maker, step, habits.as_told(maker, step, act))
    _load(maker, step)
    for after_s, act in levers.in_step(maker, step):
        plan_at(maker, twin["now_ms"] + 1000.0 * after_s, key, "act", act)
    round_now(maker, step, "begin", None)
    for name in step.get("adds") or []:
        add(maker, step, name)
    _plan_rounds(maker, step)
    _plan_turns(maker, step)
    plan_at(maker, look_at_ms(maker, step), key, "look", None)


def act_now(maker: "Maker", step: "RecipeStep", act: "Any") -> None:
    """Let happen what happens by itself.

    Args:
        maker: the work; its twin changes.
        step: the step.
        act: see `acts.act`.
    """
    done(maker["twin"], act)


def round_now(
    maker: "Maker",
    step: "RecipeStep",
    when: str,
    every_s: "float | None",
    known: "str | None" = None,
) -> None:
    """Take the readings of a moment together.

    Args:
        maker: the work; it changes.
        step: the step in hand.
        when: "begin", "during" or "end".
        every_s: only those read at this interval [s], or None.
        known: a quantity that was just read, or None.
    """
    asked: "Any" = habits.round_of(maker, step) if when == "end" else None
    if asked is not None and asked["value"] is None:
        return
    for row in step.get("readings") or []:
        is_now = row["when"] == when and row.get("every_s") == every_s
        quantity = row["quantity"]
        if is_now and quantity != known and _reads(maker, row):
            take(maker, step, quantity)
    if step.get("heat_treatment"):
        _watch_heat(maker, step)


def _reads(maker: "Maker", row: "Any") -> bool:
    """Tell whether a reading is taken: there is an instrument, and none before it."""
    instead_of = row.get("instead_of")
    if instead_of is not None and can_read(maker["twin"], instead_of):
        return False
    return can_read(maker["twin"], row["quantity"])


def during(maker: "Maker", step: "RecipeStep", every_s: "Any") -> None:
    """Take a round of readings, and plan the next.

    Args:
        maker: the work; it changes.
        step: the step.
        every_s: how often [s].
    """
    if step["key"] not in maker["doing"]:
        return
    due_ms = maker["twin"]["now_ms"]
    round_now(maker, step, "during", every_s)
    _plan_round(maker, step, due_ms, every_s)


def turn(maker: "Maker", step: "RecipeStep", _: "Any") -> None:
    """Turn the wheels in the store, and plan the next time.

    Args:
        maker: the work; it changes.
        step: the step.
        _: nothing.
    """
    if step["key"] not in maker["doing"]:
        return
    if not levers.omits(maker, step, "turn", None):
        do(maker, step, {"kind": "turn"})
        write(maker, step, "wheel_turned", {})
    _plan_turns(maker, step)


def _why(maker: "Maker", step: "RecipeStep") -> "dict[str, Any]":
    """Return the body of a begin: with why, where a step before it was left out."""
    left = [key for key in step.get("after") or [] if maker["done"].get(key) == 0]
    return {"why": "The step before was left out."} if left else {}


def _load(maker: "Maker", step: "RecipeStep") -> None:
    """Put weights on the bed, or the press on each size of wheel."""
    rows = step.get("readings") or []
    if any(row["quantity"] == "bed_load_kg" for row in rows):
        do(maker, step, {"kind": "bed", "load_kg": habits.bed_kg(maker, step)})
    if is_press(step):
        for mould in maker["recipe"].get("moulds") or []:
            if any(row["size"] == mould["size"] for row in maker["twin"]["wheels"]):
                gauge_kpa = habits.gauge_kpa(maker, step, mould)
                act = {"kind": "press", "gauge_kpa": gauge_kpa, "size": mould["size"]}
                do(maker, step, act)


def _plan_rounds(maker: "Maker", step: "RecipeStep") -> None:
    begun_ms = maker["doing"][step["key"]]["begun_ms"]
    known: "list[Any]" = []
    for row in step.get("readings") or []:
        every_s = row.get("every_s")
        if row["when"] == "during" and every_s and every_s not in known:
            known.append(every_s)
            _plan_round(maker, step, begun_ms, every_s)


def _plan_round(
    maker: "Maker", step: "RecipeStep", since_ms: float, every_s: float
) -> None:
    """Plan the next round; who watches a countdown is there when it asks."""
    at_ms = since_ms + 1000.0 * every_s + late_ms(maker, step) / 2.0
    asked: "Any" = habits.round_of(maker, step)
    if asked is not None:
        if asked["value"] is None:
            return
        at_ms = min(at_ms, max(asked["value"], maker["twin"]["now_ms"]))
    plan_at(maker, at_ms, step["key"], "during", every_s)


def _plan_turns(maker: "Maker", step: "RecipeStep") -> None:
    begun_ms, now_ms = maker["doing"][step["key"]]["begun_ms"], maker["twin"]["now_ms"]
    for row in step.get("turns") or []:
        until = row.get("until")
        if until is None or now_ms - begun_ms < 1000.0 * until["value"]:
            at_ms = now_ms + 1000.0 * row["every"]["value"] + late_ms(maker, step)
            plan_at(maker, at_ms, step["key"], "turn", None)
            return


def _watch_heat(maker: "Maker", step: "RecipeStep") -> None:
    """Start the hold's clock when all is hot enough; a dip starts it anew."""
    doing = maker["doing"].get(step["key"])
    if doing is None:
        return
    hot = True
    for row in step.get("targets") or []:
        low = row["figure"].get("low")
        if low is not None:
            hot = hot and maker["seen"].get(row["quantity"], low) >= low
    if not hot:
        doing["hot_ms"] = None
    elif doing["hot_ms"] is None:
        doing["hot_ms"] = maker["twin"]["now_ms"]
