"""Ask a sum with what a make knows; what it knew is kept beside the answer.

An answer is a function of the sum, of what goes into it and of the rules. So it is
kept with its inputs and stands for as long as these are the same: no list says which
entry may change it, and none can be forgotten. Gathering inputs is looking up; the
work of a sum takes longer.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Context, KnownValue, Scene
    from server.shapes.core.sums import Answer

    LookedUp = dict[str, KnownValue | None]


def asked(
    context: "Context", step: "RecipeStep", key: str, size: "str | None"
) -> "Answer | None":
    """Return a sum's Answer at a step of a make, or None when there is no such sum.

    Args:
        context: see `context.of_make`.
        step: step of the recipe.
        key: key of the sum.
        size: size of wheel that it is asked about, or None.
    """
    # All of this is loaded when the first sum is asked: a recipe may name none.
    from ..known.lacking import lacking

    told: "LookedUp" = {}
    missing = lacking(scene_of(context, step, size), key, told)
    if missing:
        return _unanswered(key, missing)
    from ..sums.catalogue import find

    sum_row = find(key)
    return None if sum_row is None else answer_at(context, step, sum_row, size, told)[0]


def _unanswered(key: str, missing: "list[str]") -> "Answer":
    from ..sums.reply import reply_of

    reply = reply_of(key)
    reply["missing"] = missing
    return reply


def answer_at(
    context: "Context",
    step: "RecipeStep",
    sum_row: "dict[str, Any]",
    size: "str | None",
    told: "LookedUp | None" = None,
) -> "tuple[Answer, dict[str, KnownValue]]":
    """Return the Answer to a sum at a step, and what the make knew for it.

    Args:
        context: see `context.of_make`.
        step: step of the recipe.
        sum_row: the sum.
        size: size of wheel that it is asked about, or None.
        told: what has been looked up for it, see `inputs.looked_up`; None for nothing.

    Returns:
        (Answer, {input name: as `answer.answer` takes it}); not to be changed.
    """
    from ..known.inputs import known_inputs
    from ..sums.answer import answer

    known = known_inputs(
        scene_of(context, step, size), sum_row, {} if told is None else told
    )
    kept = context["state"].setdefault("asked", {})
    name = step["key"] + "/" + sum_row["key"] + "/" + (size or "")
    before = kept.get(name)
    rules = context["rules"]
    if before is None or before["known"] != known or before["rules"] is not rules:
        reply = answer(sum_row, {}, known, rules)
        before = {"known": known, "rules": rules, "answer": reply}
        kept[name] = before
    return before["answer"], known


def scene_of(context: "Context", step: "RecipeStep", size: "str | None") -> "Scene":
    """Return what the look-ups of `known` start from, for one step and size.

    Args:
        context: see `context.of_make`.
        step: step of the recipe.
        size: size of wheel, or None.
    """
    from ..known.inputs import of_size, scene

    scenes = context["scenes"]
    if step["key"] not in scenes:
        now_ms = context["now_ms"]
        scenes[step["key"]] = scene(context["desk"], context, step, now_ms)
    return of_size(scenes[step["key"]], size)
