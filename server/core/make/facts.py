"""The bare facts of each step: what was begun, ended, skipped, and what it waits on.

Everything here is read from the standing entries of `run`. `STATUS` says which
status follows from which facts; nothing else decides it.
"""

from ..log import run
from ..log.again import ends_of, opened_again
from ..log.kinds.columns import FACTS
from ..log.readings import every
from ..log.touches import keep, kept
from . import curd as curd_facts

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import DueBand, Entry, Fact, Rules, State
    from server.shapes.core.step import StepStatus
    from server.shapes.core.words import Who


# (begun, ended, skipped, all that it waits on is done) -> status. An end or a
# begin outweighs a skip that another phone sent: what was done was done.
STATUS: "tuple[tuple[StepStatus, Callable[[Fact], bool]], ...]" = (
    ("ended", lambda fact: fact["ended"] is not None),
    ("running", lambda fact: fact["begun"] is not None),
    ("skipped", lambda fact: fact["skipped"] is not None),
    ("ready", lambda fact: not fact["waits_on"]),
    ("waiting", lambda fact: True),
)

# A step that a person ends is work under the hands when it is this short, and
# may end at any time; a longer one (ripening, brine, store) first runs its
# shortest time. Our own judgement, no source.
HANDS_ON_S = 7200.0

# When a step is due is told by its figures, see `figures.due`; until it has begun
# it is not.
NOT_DUE: "DueBand" = {"due_ms": None, "low_ms": None, "high_ms": None, "basis": None}


def facts(
    state: "State",
    steps: "list[RecipeStep]",
    figures: "dict[str, Any]",
    rules: "Rules | None" = None,
) -> "dict[str, Fact]":
    """Return the bare facts of every step.

    Args:
        state: State of the make.
        steps: steps of its recipe, any order.
        figures: the recipe's own figures.
        rules: {rule id: the rule}; without them no hold begins again after a dip.

    Returns:
        {step key: Fact}; Fact is {"begun", "ended", "skipped": entry or None,
        "begun_ms", "ended_ms", "skipped_ms", "from_ms", "due": NOT_DUE, "due_ms":
        None, "floc", "waits_on", "status"}; from_ms is the instant that its
        duration counts from.
    """
    known = kept(state, "facts", "all")
    if known is None:
        # Most entries are readings, which change no begin and no end: working all
        # steps out again took a slow phone a third of the time for an answer.
        known = _all(state, steps, figures, rules or {})
        keep(state, "facts", "all", known, [FACTS])
        return dict(known)
    renewed, again = dict(known), opened_again(state, rules or {})
    for step in steps:
        if step.get("heat_treatment"):  # its clock goes by the readings
            before = renewed[step["key"]]
            fact = _fact(state, step, figures, rules or {}, again)
            fact["waits_on"] = before["waits_on"]
            fact["status"] = before["status"]
            renewed[step["key"]] = fact
    return renewed


def _all(
    state: "State", steps: "list[RecipeStep]", figures: "dict[str, Any]", rules: "Rules"
) -> "dict[str, Fact]":
    told, again = {}, opened_again(state, rules)
    for step in steps:
        told[step["key"]] = _fact(state, step, figures, rules, again)
    over = {}
    for key in told:
        over[key] = _is_over(told[key])
    for step in steps:
        fact = told[step["key"]]
        fact["waits_on"] = [key for key in step.get("after", []) if not over[key]]
        fact["status"] = _status(fact)
    return told


def _status(fact: "Fact") -> "StepStatus":
    for status, holds in STATUS[:-1]:
        if holds(fact):
            return status
    return STATUS[-1][0]


def _fact(
    state: "State",
    step: "RecipeStep",
    figures: "dict[str, Any]",
    rules: "Rules",
    again: "dict[str, int]",
) -> "Fact":
    key = step["key"]
    begun = _first(run.entries(state, "step_begun", key))
    ended = _first(ends_of(state, key, again))
    skipped = _first(run.entries(state, "step_skipped", key))
    floc = curd_facts.floc(state, step, figures)
    from_ms = None if begun is None else begun["t_ms"]
    if from_ms is not None and step.get("heat_treatment"):
        # Loaded when a hold is there to time: the app starts without it.
        from ..heat.hold.clock import hold_start_ms

        end_ms = None if ended is None else ended["t_ms"]
        from_ms = hold_start_ms(state, step, from_ms, end_ms, rules)
    if begun is None and ended is not None:
        begun = ended  # ended without a begin: known only that it was done
    return {
        "begun": begun,
        "ended": ended,
        "skipped": skipped,
        "begun_ms": None if begun is None else begun["t_ms"],
        "ended_ms": None if ended is None else ended["t_ms"],
        "skipped_ms": None if skipped is None else skipped["t_ms"],
        "from_ms": from_ms,
        "due": NOT_DUE,
        "due_ms": None,
        "floc": floc,
        "waits_on": [],
        "status": "waiting",
    }


def _first(entries: "list[Entry]") -> "Entry | None":
    return entries[0] if entries else None


def _is_over(fact: "Fact") -> bool:
    return fact["ended"] is not None or (
        fact["skipped"] is not None and fact["begun"] is None
    )


def readings_in(state: "State", fact: "Fact", quantity: str) -> "list[Entry]":
    """Return the readings of a quantity that belong to a step, oldest first.

    A reading names its step; one that names none belongs to every step that
    was running at the time.

    Args:
        state: State of the make.
        fact: Fact of the step.
        quantity: key of `quantities.QUANTITIES`.
    """
    if fact["begun"] is None:
        return []
    key = fact["begun"]["data"]["step"]
    # Of a year in the store there are thousands, and each View comes by here.
    return [
        entry
        for entry in every(state, quantity)
        if entry["data"].get("step") == key or _is_unnamed_in(fact, entry)
    ]


def last_reading(
    state: "State",
    fact: "Fact",
    quantity: str,
    places: "tuple[str | None, ...] | None" = None,
) -> "Entry | None":
    """Return the newest reading of a quantity that belongs to a step, or None.

    Args:
        state: State of the make.
        fact: Fact of the step.
        quantity: key of `quantities.QUANTITIES`.
        places: which places it may name; None for any.
    """
    if fact["begun"] is None:
        return None
    key = fact["begun"]["data"]["step"]
    for entry in reversed(every(state, quantity)):
        is_here = places is None or entry["data"].get("place") in places
        if is_here and (
            entry["data"].get("step") == key or _is_unnamed_in(fact, entry)
        ):
            return entry
    return None


def _is_unnamed_in(fact: "Fact", entry: "Entry") -> bool:
    begun_ms, ended_ms = fact["begun_ms"], fact["ended_ms"]
    if entry["data"].get("step") is not None or begun_ms is None:
        return False
    return entry["t_ms"] >= begun_ms and (ended_ms is None or entry["t_ms"] <= ended_ms)


def is_hands_on(step: "RecipeStep") -> bool:
    """Tell whether a step is short work under the hands, see `HANDS_ON_S`.

    Args:
        step: step of the recipe.
    """
    return not step.get("lasts") or step["lasts"]["value"] < HANDS_ON_S


def who(entry: "Entry") -> "Who":
    """Return {"id", "at_ms", "by"} of an entry."""
    return {"id": entry["id"], "at_ms": entry["t_ms"], "by": entry["by"]}
