"""A whole make: a maker follows a recipe on a twin, and writes down what people do.

The entries are the product's own, so that its core can fold them; the course beside
them is what was really so. The same arguments give the same make, on server and
phone alike.
"""

from ..numbers.bounds import require_above
from ..numbers.refused import require
from ..recipe.parts import step_of
from ..recipe.route import route, taken, usual_options
from ..recipe.treatments import usual
from . import begin as start
from . import plant
from .begin import MILK_KG_L
from .chance import uuid
from .course import advance
from .faults import levers
from .maker import begins, ends, entries, finish

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import Recipe
    from server.shapes.core.twin import Maker, Play, Told, Twin

LONGEST_MS = 400 * 86400000
DOES = {
    "begin": begins.begin,
    "act": begins.act_now,
    "during": begins.during,
    "turn": begins.turn,
    "look": ends.look,
    "end": finish.end,
    "ended": finish.ended,
}


def play(
    recipe: "Recipe",
    setting: "dict[str, Any]",
    plan: "dict[str, Any]",
    seed: int,
    at_ms: int,
    faults: "list[str]",
    told: "Told | None" = None,
) -> "Play":
    """Play a make from its opening to its last step.

    Args:
        recipe: a sound recipe.
        setting: any of {"equipment", "milk", "instruments", "people"}: what differs
            from the usual of `plant` and `maker.entries`.
        plan: {"name", "batch", "milk_l"} and what else opens a make; "moulds" are
            worked out where left out; "treatment" is the recipe's usual where left
            out; "until": key of the step that is the last.
        seed: whole number that chance is drawn from.
        at_ms: when it is opened [ms].
        faults: keys of `faults.table.FAULTS`.
        told: asks the product what the maker is told, or None; see `maker.habits`.

    Returns:
        {"events": envelopes in order, "course": the truth at each, "twin"}.

    Raises:
        Refused: a figure that cannot be, with its name, value and limit.
    """
    maker = new(recipe, setting, plan, seed, at_ms, faults, told)
    while go_on(maker):
        pass
    return {
        "events": maker["events"],
        "course": maker["course"],
        "twin": maker["twin"],
    }


def new(
    recipe: "Recipe",
    setting: "dict[str, Any]",
    plan: "dict[str, Any]",
    seed: int,
    at_ms: int,
    faults: "list[str]",
    told: "Told | None" = None,
) -> "Maker":
    """Return a maker who has just opened a make; `go_on` lets them work.

    Args:
        recipe: as `play`.
        setting: as `play`.
        plan: as `play`.
        seed: as `play`.
        at_ms: as `play` [ms].
        faults: as `play`.
        told: as `play`.

    Raises:
        Refused: as `play`.
    """
    milk_l: "Any" = plan.get("milk_l")
    require(milk_l is not None, "missing", "milk_l", None)
    require_above("milk_l", milk_l, 0.0)
    own = dict(plan)
    own.setdefault("treatment", usual(recipe))
    way = route(recipe, own["treatment"])
    way = taken(way, usual_options(way))
    rows: "Any" = levers.chosen(faults, way)
    twin = _twin(setting, milk_l, rows, seed, at_ms)
    own["moulds"] = plan.get("moulds") or planned_moulds(recipe, own["milk_l"])
    maker: "Maker" = {
        "twin": twin,
        "recipe": way,
        "plan": own,
        "people": entries.people(setting.get("people", [])),
        "faults": rows,
        "told": told,
        "agenda": [],
        "doing": {},
        "done": {},
        "doses_ms": {},
        "seen": {},
        "asked": 0,
        "seqs": {},
        "boots": {},
        "make": "",
        "events": [],
        "course": [],
        "stopped": False,
    }
    levers.before(maker)
    entries.own_streams(maker)
    maker["make"] = uuid(twin["streams"]["ids"], at_ms)
    entries.record(maker, at_ms, "make_opened", _opening(maker, recipe), None)
    finish.follow(maker)
    return maker


def go_on(maker: "Maker") -> bool:
    """Do the next thing on the agenda; tell whether there was one.

    Args:
        maker: the work; it changes.
    """
    twin = maker["twin"]
    if not maker["agenda"] or maker["stopped"]:
        return False
    at_ms, _, key, what, arg = maker["agenda"].pop(0)
    span_ms = at_ms - twin["start_ms"]
    require(span_ms <= LONGEST_MS, "above", "at_ms", at_ms, LONGEST_MS)
    advance(twin, max(at_ms, twin["now_ms"]))
    step = step_of(maker["recipe"], key)
    if step is not None:
        DOES[what](maker, step, arg)
    if what == "ended" and key == maker["plan"].get("until"):
        maker["stopped"] = True
    return True


def planned_moulds(recipe: "Recipe", milk_l: float) -> "list[dict[str, Any]]":
    """Return how many wheels of each size the milk should give.

    Args:
        recipe: a sound recipe.
        milk_l: milk [L].
    """
    curd_kg = milk_l * MILK_KG_L * recipe["yield_frac"]["value"]
    rows = []
    for mould in recipe.get("moulds") or []:
        share_kg = curd_kg * mould["share_frac"]["value"]
        count = max(1, int(share_kg / mould["wheel_kg"]["value"] + 0.5))
        rows.append({"size": mould["size"], "count": count})
    return rows


def _twin(
    setting: "dict[str, Any]", milk_l: float, rows: "Any", seed: int, at_ms: int
) -> "Twin":
    """Return the twin of the milk that really comes, with what really stands there."""
    milk = {"volume_l": milk_l}
    milk.update(setting.get("milk", {}))
    whole = plant.complete(milk, plant.MILK)
    has = plant.equipment(setting.get("equipment", {}), whole["volume_l"])
    return start.begin(
        levers.from_start(rows, "equipment", has),
        levers.from_start(rows, "milk", whole),
        setting.get("instruments", {}),
        seed,
        at_ms,
    )


def _opening(maker: "Maker", recipe: "Recipe") -> "dict[str, Any]":
    plan = maker["plan"]
    names = "name batch milk_l moulds vat equipment practice treatment".split()
    body: "dict[str, Any]" = {name: plan[name] for name in names if name in plan}
    body["recipe"] = recipe
    body.setdefault("name", "Twin")
    body.setdefault("batch", "T-" + str(maker["twin"]["seed"]))
    return body
