"""The sums of one step of a make, each with what the make knows filled in.

A sum about a wheel is answered once for each size that the step is about.
"""

from ..log.opening import opening
from ..make import plan
from ..make.facts import facts
from ..make.wheels import sizes_used
from ..sums import catalogue
from .inputs import known_inputs, scene

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
    desk: dict, make_id: str, step_key: str, now_ms: int, given: "dict | None"
) -> "list[dict]":
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
            place = scene(desk, context, step, now_ms)
            place["kept"] = {}
            return _of_step(place, step, given or {}, rules)
    return []


def _context(desk, state, rules):
    """Return what is known of a make whatever the instant, kept until it changes.

    Working it out takes as long as a sum itself, and each figure that is typed
    asks again.
    """
    opened = opening(state)
    if opened is None:
        return None
    kept = desk.get("sums")
    count = len(state["events"])
    if (
        kept is not None
        and kept["state"] is state
        and kept["count"] == count
        and kept["rules"] is rules
    ):
        return kept
    data = opened["data"]
    recipe = data["recipe"]
    desk["sums"] = {
        "state": state,
        "count": count,
        "rules": rules,
        "recipe": recipe,
        "opened": data,
        "facts": facts(state, recipe["steps"], recipe.get("figures", {}), rules),
        "milk": plan.milk_in(state, data),
    }
    return desk["sums"]


def _of_step(place, step, given, rules):
    found = []
    for key in step.get("sums", []):
        row = catalogue.find(key)
        if row is None:
            continue
        for size in _sizes(place, step, key):
            told = dict(place)
            told["size"] = size
            found.append(_one(told, row, given, rules, size))
    return found


def _sizes(place, step, key):
    if key not in OF_A_SIZE:
        return [None]
    if step.get("size"):
        return [step["size"]]
    return list(sizes_used(place["state"])) or [None]


def _one(place, row, given, rules, size):
    known = known_inputs(place, row)
    names = [item["name"] for item in row["inputs"] if not item["hidden"]]
    chosen = {name: given[name] for name in names if given.get(name) is not None}
    found = catalogue.work_out(row["key"], chosen, known, rules)
    found["of"] = size
    found["known"] = [
        {
            "name": item["name"],
            "value": known[item["name"]]["value"],
            "unit": item["unit"],
            "from": known[item["name"]]["from"],
        }
        for item in row["inputs"]
        if item["name"] in known and not item["hidden"]
    ]
    return found
