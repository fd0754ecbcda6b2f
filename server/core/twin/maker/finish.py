"""How a maker ends a step: last readings, what is done then, the tap, what follows."""

from ..faults import levers
from ..where import reads
from . import duties, habits
from .begins import round_now
from .work import TAP_S, do, late_ms, plan_at, spend, write

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.twin import Maker


def end(maker: "Maker", step: "RecipeStep", why: "Any") -> None:
    """End a step now.

    Args:
        maker: the work; it changes.
        step: the step.
        why: {"why": words} where it departs from the recipe, or {}.
    """
    if step["key"] not in maker["doing"]:
        return
    if reads(step, "whey_drained_l"):
        wanted_l = habits.litres(maker, step, "whey_drained_l")
        do(maker, step, {"kind": "drain", "l": wanted_l})
    if step.get("mould"):
        _mould(maker, step)
    round_now(maker, step, "during", None)
    # What ended it was written down as it was seen.
    round_now(maker, step, "end", None, step["end"].get("quantity"))
    for act in duties.at_end(step):
        do(maker, step, act)
    at_ms = maker["twin"]["now_ms"] + 1000.0 * levers.late_entry_s(maker, step)
    plan_at(maker, at_ms, step["key"], "ended", why)


def ended(maker: "Maker", step: "RecipeStep", why: "Any") -> None:
    """Write the end of a step down, and plan what it let begin.

    Args:
        maker: the work; it changes.
        step: the step.
        why: as `end` got it.
    """
    write(maker, step, "step_ended", why)
    maker["doing"].pop(step["key"])
    maker["done"][step["key"]] = maker["twin"]["now_ms"]
    if maker["twin"]["milk"]["drug_residue"] > 0.0 and reads(step, "drug_test"):
        # Who reads a positive test keeps the milk apart and makes no cheese of it.
        maker["stopped"] = True
    if not maker["stopped"]:
        follow(maker)


def follow(maker: "Maker") -> None:
    """Plan each step whose steps before it are all over.

    Args:
        maker: the work; it changes.
    """
    planned = [row[2] for row in maker["agenda"] if row[3] == "begin"]
    for step in maker["recipe"]["steps"]:
        key = step["key"]
        if key in maker["done"] or key in maker["doing"] or key in planned:
            continue
        if any(before not in maker["done"] for before in step.get("after") or []):
            continue
        if levers.omits(maker, step, "step", None):
            maker["done"][key] = 0
            follow(maker)
            return
        wait_ms = late_ms(maker, step) + 1000.0 * levers.late_s(maker, step, "begin")
        plan_at(maker, maker["twin"]["now_ms"] + wait_ms, key, "begin", None)


def _mould(maker: "Maker", step: "RecipeStep") -> None:
    """Fill all moulds that the curd gives, near the mass that a wheel is to have."""
    rows = moulds(maker)
    do(maker, step, {"kind": "mould", "moulds": rows})
    for row in rows:
        data = {"size": row["mould"]["size"], "count": row["count"]}
        write(maker, step, "wheels_moulded", data)
        spend(maker, TAP_S)


def moulds(maker: "Maker") -> "list[dict[str, Any]]":
    """Return which moulds are filled: those planned, fewer where there is less milk.

    Args:
        maker: the work.
    """
    share = min(1.0, habits.milk(maker) / maker["plan"]["milk_l"])
    rows = []
    for mould in maker["recipe"].get("moulds") or []:
        for planned in maker["plan"]["moulds"]:
            if planned["size"] == mould["size"]:
                count = max(1, int(planned["count"] * share + 0.5))
                rows.append({"mould": mould, "count": count})
    return rows
