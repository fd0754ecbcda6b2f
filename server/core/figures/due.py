"""When each step is due, and what that rests on: its figure, from when it counts."""

from ..heat.milk import extra_hold_s
from ..log.kinds.columns import EQUIPMENT, FACTS, HEAT, MILK
from ..log.touches import keep, kept
from .figure import binding, figure
from .rests import rests_on

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping
    from typing import Any

    from server.shapes.core.figures import Lasting
    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Context, DueBand, DueBasis, Fact


def lasts_of(context: "Context", step: "RecipeStep") -> "Lasting | None":
    """Return how long a step lasts: {"value", "low", "high", ...} [s], or None.

    Args:
        context: see `context.of_make`.
        step: step of the recipe.
    """
    lasts = step.get("lasts")
    if step.get("heat_treatment") and lasts:
        return _held(context, step, lasts)
    if not _is_asked(step, lasts):
        return lasts
    told: "Any" = figure(context, step, "lasts")
    return None if told is None or told["value"] is None else told


def _held(
    context: "Context", step: "RecipeStep", lasts: "Mapping[str, Any]"
) -> "Lasting":
    """Return how long a hold lasts: by a rule, filling and emptying time go on top."""
    extra_s = extra_hold_s(context["state"], step)
    longer: "Any" = dict(lasts)
    if extra_s:
        for name in ("value", "low", "high"):
            if longer.get(name) is not None:
                longer[name] += extra_s
    held: "Lasting" = longer
    return held


def _is_asked(step: "RecipeStep", lasts: "Mapping[str, Any] | None") -> bool:
    # Most steps have but the recipe's word, and a View asks for all of them. A step
    # that ends by flocculation has its sum, in a brine a person's word may stand.
    if lasts and lasts.get("by") is not None:
        return True
    return step["end"]["by"] == "floc" or step.get("place") == "brine"


def all_lasts(context: "Context") -> "dict[str, Lasting | None]":
    """Return {step key: how long it lasts or None} of every step, see `lasts_of`."""
    return {step["key"]: lasts_of(context, step) for step in context["recipe"]["steps"]}


def with_due(
    context: "Context", facts: "dict[str, Fact]", lasts: "dict[str, Lasting | None]"
) -> "dict[str, Fact]":
    """Return the facts of every step with its deadline.

    Args:
        context: see `context.of_make`.
        facts: answer of `make.facts`.
        lasts: answer of `all_lasts`.

    Returns:
        {step key: Fact} with "due" and "due_ms", and with "cut_ms", "low_ms",
        "high_ms" and "factor" in "floc".
    """
    over = _of_ended(context, facts, lasts)
    told = dict(facts)
    for step in context["recipe"]["steps"]:
        key = step["key"]
        if key in over:
            told[key] = over[key]
        elif facts[key]["from_ms"] is not None or facts[key]["floc"] is not None:
            told[key] = _with_due(facts[key], step, lasts[key])
    return told


def _of_ended(
    context: "Context", facts: "dict[str, Fact]", lasts: "dict[str, Lasting | None]"
) -> "dict[str, Fact]":
    """Return the facts of the steps that are over, kept until one is touched."""
    state = context["state"]
    over: "dict[str, Fact] | None" = kept(state, "due", "ended")
    if over is not None:
        return over
    ended = [
        step
        for step in context["recipe"]["steps"]
        if facts[step["key"]]["ended_ms"] is not None
    ]
    over = {
        step["key"]: _with_due(facts[step["key"]], step, lasts[step["key"]])
        for step in ended
    }
    words = _words_of(ended)
    if words is not None:
        keep(state, "due", "ended", over, words)
    return over


def _words_of(steps: "list[RecipeStep]") -> "list[str] | None":
    words = [FACTS, MILK, HEAT, EQUIPMENT]
    for step in steps:
        lasts = step.get("lasts")
        if _is_asked(step, lasts):
            by = lasts.get("by") if lasts else None
            more = rests_on(binding(step, "lasts", {"by": by}))
            if more is None:
                return None
            words.extend(word for word in more if word not in words)
    return words


def _with_due(fact: "Fact", step: "RecipeStep", lasts: "Lasting | None") -> "Fact":
    fact = fact.copy()
    floc = fact["floc"]
    by_floc = floc is not None and lasts is not None and lasts.get("from") == "sum"
    from_ms = floc["added_ms"] if by_floc else fact["from_ms"]
    fact["due"] = due_of(from_ms, lasts, "floc" if by_floc else "lasts")
    fact["due_ms"] = fact["due"]["due_ms"]
    if floc is not None:
        fact["floc"] = dict(floc)
        fact["floc"].update(_cut(fact["due"] if by_floc else NOT_DUE))
    return fact


def _cut(due: "DueBand") -> "dict[str, int | None]":
    return {
        "cut_ms": due["due_ms"],
        "low_ms": due["low_ms"],
        "high_ms": due["high_ms"],
    }


NOT_DUE: "DueBand" = {"due_ms": None, "low_ms": None, "high_ms": None, "basis": None}


def due_of(
    from_ms: "int | None", lasts: "Lasting | None", basis: "DueBasis"
) -> "DueBand":
    """Return when something is due that lasts so long from an instant.

    Args:
        from_ms: when it began [ms], or None.
        lasts: {"value", "low", "high"} [s], or None; an end left open is the value.
        basis: what it counts from: "lasts", the step's begin, or "floc", the rennet.

    Returns:
        {"due_ms", "low_ms", "high_ms", "basis"}; all None before the begin or
        without a duration.
    """
    if from_ms is None or not lasts:
        return NOT_DUE
    return {
        "due_ms": from_ms + span_ms(lasts["value"]),
        "low_ms": from_ms + span_ms(low_s(lasts)),
        "high_ms": from_ms + span_ms(high_s(lasts)),
        "basis": basis,
    }


def span_ms(seconds: float) -> int:
    """Return seconds as whole milliseconds, the nearest [ms].

    >>> span_ms(1800.003)
    1800003
    """
    return int(seconds * 1000.0 + 0.5)


def low_s(lasts: "Lasting") -> float:
    """Return the shortest accepted duration of a Figure [s]; its value if unset."""
    low = lasts.get("low")
    return lasts["value"] if low is None else low


def high_s(lasts: "Lasting") -> float:
    """Return the longest accepted duration of a Figure [s]; its value if unset."""
    high = lasts.get("high")
    return lasts["value"] if high is None else high
