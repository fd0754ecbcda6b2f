"""What is stopped, and what would pass a gate: asked before an entry is recorded.

Rules first.
1. A begin stops with all that waits on it, so no order of work leads round it.
2. What was begun before a matter stood goes on to its own end: milk is not left in
   a running vat. Only the next begin is stopped.
3. Work entered in a step that has not begun passes its gate as a begin does; so does
   an end without a begin.
4. Who strikes out a strike passes what the act passes that comes back by it.
5. What an open matter goes by is changed by who may decide it. A slip of the finger
   may be taken back at once, where the matter's rule does not say that it sticks.
6. Of what was discarded nothing goes on, and nothing else is decided.
"""

from ..log import amends, run
from ..log.kinds.columns import LOAD, ROLES
from ..log.kinds.table import CHANGING, KINDS
from ..log.opening import discarding, recipe_of
from ..log.rights.legal import is_undo
from ..recipe.check.gates import BEGIN, CLOSE, END, behind
from .ways import role_of_way

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.matters import Matter
    from server.shapes.core.recipe import Recipe
    from server.shapes.core.state import Event, Rules, State
    from server.shapes.core.words import Problem


DECIDER = "maker"  # changes what an open matter goes by
DECIDED = "matter_decided"
BRINE = "brine"  # the place of the steps whose work a tank's load is


def stopped(
    found: "list[Matter]", what: str, step: "str | None", recipe: "Recipe"
) -> "list[Matter]":
    """Return the matters that stop something.

    Args:
        found: the make's matters.
        what: "begin", "end", "close" or "release".
        step: key of the step, or None for the whole make.
        recipe: the make's recipe on its route.
    """
    told, steps = [], [step]
    for matter in found:
        stops = [stop for stop in matter["stops"] if stop["what"] == what]
        if stops and what == BEGIN and step is not None and steps == [step]:
            steps = list(behind(recipe, step))
        if any(stop["step"] in steps for stop in stops):
            told.append(matter)
    return told


def refused(
    state: "State",
    found: "list[Matter]",
    event: "Event",
    roles: "list[str]",
    rules: "Rules",
) -> "list[Problem]":
    """Return which standing matters an entry would pass, or may not decide.

    Args:
        state: State of the make, without the entry.
        found: its matters.
        event: a sound event of it.
        roles: roles of those who record it: all must be allowed.
        rules: {rule id: the rule}.

    Returns:
        List of {"field", "key", "limit"}; the limit of "stopped" is {"matter",
        "key", "role"}: what stands, and who may decide it.
    """
    recipe = recipe_of(state)
    if recipe is None:
        return []
    kind = event["kind"]
    if kind == DECIDED:
        told = _not_decided(found, event, roles, rules)
        return told or _of_discarded(state, kind)
    if kind in CHANGING:
        told = _rested_on(found, state, event, roles, rules)
        if told:
            return told
    act = _act(state, event)
    if act is None:
        return []
    for what, step in _passes(state, recipe, act[0], act[1]):
        by = stopped(found, what, step, recipe)
        if by:
            return [_problem(by[0])]
    return _of_discarded(state, act[0])


def _of_discarded(state: "State", kind: str) -> "list[Problem]":
    """Return that nothing goes on in a make whose milk or cheese was discarded."""
    is_act = kind == DECIDED or KINDS[kind]["passes"] is not None
    if not is_act or discarding(state) is None:
        return []
    return [{"field": "make", "key": "was_discarded", "limit": None}]


def may_be_refused(event: "Event") -> "bool":
    """Tell whether an entry is of a kind that a standing matter may refuse.

    Args:
        event: a sound event.
    """
    kind = event["kind"]
    return kind == DECIDED or kind in CHANGING or KINDS[kind]["passes"] is not None


def _problem(matter: "Matter") -> "Problem":
    ways = matter["ways"]
    role = min((way["role"] for way in ways), key=ROLES.index) if ways else None
    limit = {"matter": matter["id"], "key": "matter." + matter["key"], "role": role}
    return {"field": "step", "key": "stopped", "limit": limit}


def _act(state: "State", event: "Event") -> "tuple[str, dict[str, Any]] | None":
    """Return the kind and body of the act that stands once an entry is recorded.

    Striking an act passes nothing; striking that strike brings it back. A correction
    changes no step, so it passes nothing.
    """
    if event["kind"] not in CHANGING:
        return (event["kind"], event["data"])
    about = state["events"].get(event["ref"] or "")
    if about is None or about["kind"] != "entry_struck":
        return None
    for _ in range(amends.DEEPEST):  # two entries could each name the other
        if about is None or about["kind"] not in CHANGING:
            break
        about = state["events"].get(about["ref"] or "")
    if about is None or about["kind"] in CHANGING:
        return None
    return (about["kind"], amends.effective(state, about)["data"])


def _passes(
    state: "State", recipe: "Recipe", kind: str, data: "dict[str, Any]"
) -> "list[tuple[str, str | None]]":
    """Return what an act passes: (what, step) pairs."""
    passes, step = KINDS[kind]["passes"], data.get("step")
    if passes == CLOSE:
        return [(CLOSE, None)]
    told: "list[tuple[str, str | None]]" = []
    for key in _brining(recipe, data["size"]) if passes == LOAD else [step]:
        if key is not None and not run.entries(state, "step_begun", key):
            told.append((BEGIN, key))
    if passes == END and step is not None:
        told.append((END, step))
    return told


def _brining(recipe: "Recipe", size: str) -> "list[str | None]":
    return [
        step["key"]
        for step in recipe["steps"]
        if step.get("place") == BRINE and step.get("size") in (None, size)
    ]


def _least(roles: "list[str]") -> int:
    return min((ROLES.index(role) for role in roles), default=0)


def _not_allowed(role: str) -> "list[Problem]":
    return [{"field": "person", "key": "not_allowed", "limit": role}]


def _not_decided(
    found: "list[Matter]", event: "Event", roles: "list[str]", rules: "Rules"
) -> "list[Problem]":
    data = event["data"]
    role = role_of_way(rules.get("matters"), data["way"])
    if role is None:
        return [{"field": "way", "key": "way_not_open", "limit": data["way"]}]
    if _least(roles) < ROLES.index(role):
        return _not_allowed(role)
    for matter in found:
        if matter["id"] == data["matter"]:
            ways = [way["way"] for way in matter["ways"] if way["event"] is None]
            if data["way"] in ways:
                return []
            return [{"field": "way", "key": "way_not_open", "limit": data["way"]}]
    return [{"field": "matter", "key": "matter_is_gone", "limit": data["matter"]}]


def _rested_on(
    found: "list[Matter]",
    state: "State",
    event: "Event",
    roles: "list[str]",
    rules: "Rules",
) -> "list[Problem]":
    if _least(roles) >= ROLES.index(DECIDER):
        return []
    about = state["events"].get(event["ref"] or "")
    for matter in found:
        if about is None or about["id"] not in matter["rests_on"]:
            continue
        sticks = rules["matters"]["sticks"]["value"]
        if matter["key"] in sticks or not is_undo(dict(event), dict(about)):
            return _not_allowed(DECIDER)
    return []
