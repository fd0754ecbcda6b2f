"""The sums of one step of a make, each with what the make knows filled in.

A sum about a wheel is answered once for each size that the step is about.
"""

from ..log.opening import opening
from ..make import plan
from ..make.facts import facts
from ..make.wheels import sizes_used
from ..sums import catalogue
from .inputs import known_inputs, of_size, scene

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import Desk, Rules, Scene, State
    from server.shapes.core.sums import Answer


# Sums whose answer depends on the size of the wheel.
OF_A_SIZE = (
    "press_pressure",
    "press_gauge",
    "press_lever",
    "press_stack",
    "brine_time",
    "brine_factor",
    "weight_loss",
    "composition",
    "identity",
)


def step_sums(
    desk: "Desk",
    make_id: str,
    step_key: str,
    now_ms: int,
    given: "dict[str, dict[str, Any]] | None",
) -> "list[Answer]":
    """Return the answers to the sums that a step lists.

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
    rules = desk.get("rules") or {}
    context = None if state is None else _context(desk, state, rules)
    if context is None:
        return []
    for step in context["recipe"]["steps"]:
        if step["key"] == step_key:
            return _of_step(scene(desk, context, step, now_ms), given or {})
    return []


def _context(desk: "Desk", state: "State", rules: "Rules") -> "dict[str, Any] | None":
    """Return what is known of a make whatever the instant, kept until it changes.

    Working it out takes as long as a sum itself, and each figure that is typed
    asks again.
    """
    opened = opening(state)
    if opened is None:
        return None
    kept = desk.get("sums")
    if kept is None or not _is_current(kept, state, rules):
        kept = _worked_out(state, opened["data"], rules)
        desk["sums"] = kept
    return dict(kept)


def _is_current(kept: "dict[str, Any]", state: "State", rules: "Rules") -> bool:
    return bool(
        kept["state"] is state
        and kept["count"] == len(state["events"])
        and kept["rules"] is rules
    )


def _worked_out(
    state: "State", opened: "dict[str, Any]", rules: "Rules"
) -> "dict[str, Any]":
    recipe = opened["recipe"]
    return {
        "state": state,
        "count": len(state["events"]),
        "rules": rules,
        "recipe": recipe,
        "opened": opened,
        "facts": facts(state, recipe["steps"], recipe.get("figures", {}), rules),
        "milk": plan.milk_in(state, opened),
    }


def _of_step(scene: "Scene", given: "dict[str, Any]") -> "list[dict[str, Any]]":
    answers: "list[dict[str, Any]]" = []
    for key in scene["step"].get("sums", []):
        row = catalogue.find(key)
        if row is not None:
            answers.extend(
                _answer(of_size(scene, size), row, given) for size in _sizes(scene, key)
            )
    return answers


def _sizes(scene: "Scene", key: str) -> "list[Any]":
    if key not in OF_A_SIZE:
        return [None]
    if scene["step"].get("size"):
        return [scene["step"]["size"]]
    return list(sizes_used(scene["state"])) or [None]


def _answer(
    scene: "Scene", row: "dict[str, Any]", given: "dict[str, Any]"
) -> "dict[str, Any]":
    known = known_inputs(scene, row)
    asked = [item for item in row["inputs"] if not item["hidden"]]
    chosen = {
        item["name"]: given[item["name"]]
        for item in asked
        if given.get(item["name"]) is not None
    }
    answer = catalogue.work_out(row["key"], chosen, known, scene["context"]["rules"])
    answer["of"] = scene["size"]
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
