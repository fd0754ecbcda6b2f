"""The day ahead: when each step should run by its figures, and when it really will."""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.figures import Lasting
    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Fact, Span


def planned(
    steps: "list[RecipeStep]", lasts: "dict[str, Lasting | None]", start_ms: int
) -> "dict[str, Span]":
    """Return when each step should begin and end if all goes by its figures.

    Args:
        steps: steps in the order of `plan.in_order`.
        lasts: {step key: how long it lasts or None}, see `due.all_lasts`.
        start_ms: when the make is opened [ms].

    Returns:
        {step key: {"begin_ms", "end_ms"}}.
    """
    times: "dict[str, Span]" = {}
    for step in steps:
        begin_ms = _after_ms(step, times, start_ms)
        end_ms = begin_ms + _lasts_ms(lasts[step["key"]])
        times[step["key"]] = {"begin_ms": begin_ms, "end_ms": end_ms}
    return times


def planned_by_recipe(steps: "list[RecipeStep]", start_ms: int) -> "dict[str, Span]":
    """Return the plan of a make that is not opened yet: the recipe alone is known.

    Args:
        steps: steps in the order of `plan.in_order`.
        start_ms: when it would be opened [ms].

    Returns:
        As from `planned`.
    """
    return planned(steps, {step["key"]: step.get("lasts") for step in steps}, start_ms)


def expected(
    steps: "list[RecipeStep]",
    facts: "dict[str, Fact]",
    lasts: "dict[str, Lasting | None]",
    start_ms: int,
    now_ms: int,
) -> "dict[str, Span]":
    """Return when each step did or will run, given what has happened.

    Args:
        steps: steps in the order of `plan.in_order`.
        facts: {step key: {"begun_ms", "ended_ms", "skipped_ms", "due_ms"}}, each
            an instant [ms] or None.
        lasts: {step key: how long it lasts or None}, see `due.all_lasts`.
        start_ms: when the make was opened [ms].
        now_ms: now, by the server's clock [ms].

    Returns:
        {step key: {"begin_ms", "end_ms"}}.
    """
    times: "dict[str, Span]" = {}
    for step in steps:
        key = step["key"]
        ready_ms = _after_ms(step, times, start_ms)
        times[key] = _span(facts[key], _lasts_ms(lasts[key]), ready_ms, now_ms)
    return times


def _span(fact: "Fact", lasts_ms: int, ready_ms: int, now_ms: int) -> "Span":
    if fact["ended_ms"] is not None:
        begin_ms = fact["begun_ms"]
        if begin_ms is None or begin_ms > fact["ended_ms"]:
            begin_ms = fact["ended_ms"]
        return {"begin_ms": begin_ms, "end_ms": fact["ended_ms"]}
    if fact["begun_ms"] is not None:
        due_ms = fact["due_ms"]
        if due_ms is None:
            due_ms = fact["begun_ms"] + lasts_ms
        return {"begin_ms": fact["begun_ms"], "end_ms": max(due_ms, now_ms)}
    if fact["skipped_ms"] is not None:
        return {"begin_ms": ready_ms, "end_ms": ready_ms}
    begin_ms = max(ready_ms, now_ms)
    return {"begin_ms": begin_ms, "end_ms": begin_ms + lasts_ms}


def _after_ms(step: "RecipeStep", times: "dict[str, Span]", start_ms: int) -> int:
    ready_ms = start_ms
    for key in step.get("after", []):
        ready_ms = max(ready_ms, times[key]["end_ms"])
    return ready_ms


def _lasts_ms(lasts: "Lasting | None") -> int:
    # As `due.span_ms`, which a View would call some hundred times for it.
    return int(lasts["value"] * 1000.0 + 0.5) if lasts else 0
