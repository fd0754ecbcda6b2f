"""What is known of a make and must act: its matters, each told once.

A gate of the recipe says where a fact is waited for and what it stops; a watcher
says how the fact stands; the row of the rules for that word says what may be done
about it, and by whom. A matter goes when its fact changes. Else a person with the
right role decides, in one of the ways that the rule leaves open: `matter_decided`.
A decision of before the matter stood is about another one.
"""

from ..heat.hold.steps import hold_steps
from ..log import run
from ..log.answers import acknowledged
from ..log.opening import DISCARD
from ..recipe.check.gates import CLOSE, OF_A_STEP, RELEASE, gates_of
from ..units.notes import with_units
from .watch.table import changes_ms, look
from .ways import ways_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.matters import Decided, Matter, Seen, Stop, Way
    from server.shapes.core.recipe import RecipeGate
    from server.shapes.core.state import Context, State


RULES = "matters"
WAIT, CHECK, ACT = "wait", "check", "act"
LEVELS = (ACT, CHECK, WAIT)


def matters(context: "Context") -> "list[Matter]":
    """Return the matters of a make, the most urgent first.

    Args:
        context: Context of the make.

    Returns:
        List of Matter; what is of level "wait" is nothing wrong yet: it stops, and
        is told only to who would go on past it.
    """
    rules = context["rules"].get(RULES)
    if rules is None:
        return []
    told = []
    for gate in gates(context):
        seen = look(context, gate)
        if seen is not None:
            told.append(_matter(context, rules, gate, seen))
    return sorted(told, key=_urgency)


def gates(context: "Context") -> "list[RecipeGate]":
    """Return the gates of a make: its recipe's, else those that all makes have.

    A recipe of before there were gates stops nothing; what was told of it all the
    same is told still. What is waited for at each hold is the rules' to say.

    Args:
        context: Context of the make.
    """
    recipe, rules = context["recipe"], context["rules"].get(RULES)
    of_holds: "list[Any]" = [
        dict(gate, key=gate["key"] + "." + step["key"], step=step["key"])
        for step in hold_steps(recipe)
        for gate in (rules or {}).get("of_each_hold", [])
    ]
    if recipe.get("gates") is not None or rules is None:
        return gates_of(recipe) + of_holds
    found: "list[Any]" = of_holds
    for gate in rules["without_gates"]:
        for step in recipe["steps"]:
            asked = [reading["quantity"] for reading in step.get("readings", [])]
            if gate["quantity"] in asked:
                found.append(dict(gate, step=step["key"]))
                break
    return found


def next_ms(context: "Context") -> "list[int]":
    """Return the instants at which matters come or change by the clock alone [ms].

    Args:
        context: Context of the make.
    """
    told = [changes_ms(context, gate) for gate in gates(context)]
    return [at_ms for at_ms in told if at_ms is not None]


def is_open(matter: "Matter") -> bool:
    """Tell whether a matter still asks for somebody."""
    return matter["decided"] is None and matter["level"] != WAIT


def _matter(
    context: "Context", rules: "dict[str, Any]", gate: "RecipeGate", seen: "Seen"
) -> "Matter":
    row: "Any" = row_of(rules, gate["watch"], seen["says"])
    ways = ways_of(context, row)
    decided = _decided(context["state"], gate["key"], seen["since_ms"], ways)
    return {
        "id": gate["key"],
        "key": row["key"],
        "kind": row["watch"],
        "step": gate["step"],
        "since_ms": seen["since_ms"],
        "level": row["level"],
        "reasons": [_with_units(reason) for reason in seen["reasons"]],
        "rests_on": seen["rests_on"],
        "stops": _stops(gate, seen["says"], decided, ways),
        "ways": ways,
        "do": gate.get("do"),
        "decided": decided,
        "alert": alert_id(gate["key"]),
        "told_ms": seen["since_ms"],
        "acknowledged": acknowledged(
            context["state"], alert_id(gate["key"]), seen["since_ms"]
        ),
        "rule": row["section"]["value"],
        "source": row["section"]["source"],
        "status": row["section"]["status"],
    }


def _with_units(reason: "dict[str, Any]") -> "dict[str, Any]":
    # A verdict's reasons carry theirs, in the unit of its thermometer.
    return reason if "units" in reason else with_units(reason, reason.get("unit"))


def row_of(rules: "dict[str, Any]", watch: str, says: str) -> "dict[str, Any]":
    """Return the row of the rules for a word of a watcher.

    Args:
        rules: the rules of matters.
        watch: word of the watcher.
        says: what it says.
    """
    for row in rules["rows"]:
        if row["watch"] == watch and row["says"] == says:
            found: "dict[str, Any]" = row
            return found
    raise ValueError("no row of matters for %s, %s" % (watch, says))


def _stops(
    gate: "RecipeGate", says: str, decided: "Decided | None", ways: "list[Way]"
) -> "list[Stop]":
    """Return what is stopped: what a decision lifts is stopped no longer.

    What was discarded is neither closed nor released, whatever the gate stops.
    """
    lifted: "list[str]" = []
    stops: "list[Any]" = gate["stops"]
    if decided is not None and decided["way"] == DISCARD:
        of_steps = [stop for stop in stops if stop["what"] in OF_A_STEP]
        stops = of_steps + [{"what": CLOSE}, {"what": RELEASE}]
    for way in ways:
        if decided is not None and way["way"] == decided["way"]:
            lifted = way["lifts"]
    return [
        {"what": stop["what"], "step": stop.get("step")}
        for stop in stops
        if says in stop.get("when", [says]) and stop["what"] not in lifted
    ]


def _decided(
    state: "State", matter: str, since_ms: "int | None", ways: "list[Way]"
) -> "Decided | None":
    open_ways = [way["way"] for way in ways if way["event"] is None]
    for entry in reversed(run.entries(state, "matter_decided", matter)):
        if entry["data"]["way"] not in open_ways:
            continue
        if since_ms is None or entry["t_ms"] < since_ms:
            continue
        return {
            "id": entry["id"],
            "by": entry["by"],
            "at_ms": entry["t_ms"],
            "way": entry["data"]["way"],
            "why": entry["data"]["why"],
        }
    return None


def alert_id(matter: str) -> str:
    """Return the name by which a matter rings that no reading has told before."""
    return "matter/" + matter


def _urgency(matter: "Matter") -> "tuple[bool, int, int, str]":
    return (
        matter["decided"] is not None,
        LEVELS.index(matter["level"]),
        matter["since_ms"] or 0,
        matter["id"],
    )
