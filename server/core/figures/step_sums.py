"""The sums of one step of a make, each with what the make knows filled in.

A sum about a wheel is answered once for each size that the step is about.
"""

from ..log.opening import opening
from ..make.wheels import sizes_used
from ..recipe.parts import step_of
from ..sums import catalogue
from .ask import answer_at
from .context import of_make

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Context, Desk, State
    from server.shapes.core.sums import Answer


def step_sums(
    desk: "Desk",
    make_id: str,
    step_key: str,
    now_ms: int,
    given: "dict[str, dict[str, Any]] | None",
) -> "list[Answer]":
    """Return the answers to the sums that a step lists.

    Where nothing is typed they are the very answers that its figures come from.

    Args:
        desk: Desk.
        make_id: UUID of the make.
        step_key: key of the step.
        now_ms: now, by the server's clock [ms].
        given: {input name: as `reading.read_given` takes it}, for all of its sums.

    Returns:
        List of Answer with "known": list of {"name", "value", "unit", "from"},
        and "of": the size of wheel, or None. Empty when make or step is unknown.
    """
    state = desk["makes"].get(make_id)
    context = None if state is None else _context(desk, state, now_ms)
    if context is None:
        return []
    step = step_of(context["recipe"], step_key)
    return [] if step is None else _of_step(context, step, given or {})


def _context(desk: "Desk", state: "State", now_ms: int) -> "Context | None":
    """Return the Context of a make, kept until the make or the instant is another.

    Working it out takes as long as a sum itself, and each figure that is typed
    asks again.
    """
    opened = opening(state)
    if opened is None:
        return None
    rests_on = [state, desk.get("rules"), len(state["events"]), now_ms]
    kept = desk.get("sums")
    if kept is None or not _are_same(kept["rests_on"], rests_on):
        made = of_make(state, opened, now_ms, desk.get("rules"), desk)
        desk["sums"] = kept = {"rests_on": rests_on, "context": made}
    context: "Context" = kept["context"]
    return context


def _are_same(before: "list[Any]", now: "list[Any]") -> bool:
    if before[0] is not now[0] or before[1] is not now[1]:
        return False
    return bool(before[2:] == now[2:])


def _of_step(
    context: "Context", step: "RecipeStep", given: "dict[str, Any]"
) -> "list[Answer]":
    answers: "list[Answer]" = []
    for key in step.get("sums", []):
        sum_row = catalogue.find(key)
        if sum_row is not None:
            answers.extend(
                _answer(context, step, sum_row, given, size)
                for size in _sizes(context, step, sum_row)
            )
    return answers


def _sizes(
    context: "Context", step: "RecipeStep", sum_row: "dict[str, Any]"
) -> "list[str | None]":
    if not sum_row["by_size"]:
        return [None]
    if step.get("size"):
        return [step["size"]]
    return list(sizes_used(context["state"])) or [None]


def _answer(
    context: "Context",
    step: "RecipeStep",
    sum_row: "dict[str, Any]",
    given: "dict[str, Any]",
    size: "str | None",
) -> "Answer":
    answer, known = answer_at(context, step, sum_row, size)
    asked = [item for item in sum_row["inputs"] if not item["hidden"]]
    chosen = {
        item["name"]: given[item["name"]]
        for item in asked
        if given.get(item["name"]) is not None
    }
    if chosen:
        answer = catalogue.work_out(sum_row["key"], chosen, known, context["rules"])
    answer = answer.copy()
    answer["of"] = size
    answer["known"] = [
        {
            "name": item["name"],
            "value": known[item["name"]]["value"],
            "unit": item["unit"],
            "from": known[item["name"]]["from"],
        }
        for item in asked
        if item["name"] in known
    ]
    return answer
