"""When a maker thinks a step over: by time, by thermometer, by knife, by hand."""

from ..chance import between
from ..faults import levers
from ..instruments import read
from ..laws import clotting
from ..where import reads
from . import habits
from .work import do, late_ms, plan_at, put_down, write

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.twin import Maker

WATCH_MS, KNIFE_MS, AGAIN_MS = 40000.0, 60000.0, 120000.0
FIRST_KNIFE_MS = 360000.0
SAID_MS = 240000.0  # the same word is written down again after so long
PATIENCE = 4.0  # times its usual length, then a step is given up
PORTIONS = 10.0
POUR_FRAC = 0.8  # of a wash's time the water that was worked out takes
MOST_WATER = 2.0  # times what was planned
USUAL_FACTOR = 3.0
# What a person ends is a little shorter or longer each time.
PACE_FRAC, PACE_MOST_MS = 0.08, 900000.0
NOT_UP = "It did not come up to the figure."


def look_at_ms(maker: "Maker", step: "RecipeStep") -> float:
    """Return when a maker first looks whether a step is over [ms].

    Args:
        maker: the work.
        step: the step, just begun.
    """
    now_ms, by = maker["twin"]["now_ms"], step["end"]["by"]
    if by == "reading":
        return now_ms + WATCH_MS
    if by == "floc":
        return _dosed_ms(maker, step) + FIRST_KNIFE_MS
    if by == "judged":
        # Hands are at the curd: nobody comes late to what they are doing.
        return _due_ms(maker, step)
    return _due_ms(maker, step) + late_ms(maker, step)


def look(maker: "Maker", step: "RecipeStep", _: "Any") -> None:
    """Look whether a step is over; end it, or look again.

    Args:
        maker: the work; it changes.
        step: the step.
        _: nothing.
    """
    if step["key"] in maker["doing"]:
        LOOKS[step["end"]["by"]](maker, step)


def _due_ms(maker: "Maker", step: "RecipeStep") -> float:
    doing = maker["doing"][step["key"]]
    lasts_ms = 1000.0 * habits.lasts_s(maker, step)
    if step["end"]["by"] != "time":
        more_ms = min(PACE_FRAC * lasts_ms, PACE_MOST_MS)
        of = maker["twin"]["streams"]["people"]
        return doing["begun_ms"] + lasts_ms + between(of, -more_ms, more_ms)
    since_ms = doing["begun_ms"]
    if step.get("heat_treatment"):
        # Not hot yet: the clock has not begun, and the next round tells.
        since_ms = doing["hot_ms"] or maker["twin"]["now_ms"]
    return since_ms + lasts_ms


def _by_person(maker: "Maker", step: "RecipeStep") -> None:
    _over(maker, step, {})


def _by_time(maker: "Maker", step: "RecipeStep") -> None:
    now_ms = maker["twin"]["now_ms"]
    due_ms = _due_ms(maker, step)
    if due_ms <= now_ms:
        _over(maker, step, {})
    elif _is_given_up(maker, step):
        _over(maker, step, {"why": NOT_UP})
    else:
        at_ms = due_ms + late_ms(maker, step)
        plan_at(maker, min(at_ms, now_ms + 600000.0), step["key"], "look", None)


def _by_reading(maker: "Maker", step: "RecipeStep") -> None:
    end: "Any" = step["end"]
    shown: "Any" = read(maker["twin"], end["quantity"])
    least, most = end.get("at_least"), end.get("at_most")
    is_there = shown >= least["value"] if least else shown <= most["value"]
    is_dry = reads(step, "water_added_l") and not is_there and not _pour(maker, step)
    if is_there or is_dry or _is_given_up(maker, step):
        put_down(maker, step, end["quantity"], shown, None)
        _over(maker, step, {} if is_there else {"why": NOT_UP})
        return
    again_ms = maker["twin"]["now_ms"] + _watch_ms(maker, step)
    plan_at(maker, again_ms, step["key"], "look", None)


def _watch_ms(maker: "Maker", step: "RecipeStep") -> float:
    """Return when a maker looks again: water runs in as slowly as the step lasts."""
    if not reads(step, "water_added_l"):
        return WATCH_MS
    return 1000.0 * POUR_FRAC * habits.lasts_s(maker, step) / PORTIONS


def _pour(maker: "Maker", step: "RecipeStep") -> bool:
    """Add a part of the wash water; tell whether there is still some."""
    whole_l = habits.litres(maker, step, "water_added_l")
    twin = maker["twin"]
    if twin["washed_l"] >= MOST_WATER * whole_l:
        return False
    act = {"kind": "wash", "l": whole_l / PORTIONS, "water_c": twin["water_c"]}
    do(maker, step, act)
    return True


def _by_floc(maker: "Maker", step: "RecipeStep") -> None:
    word = clotting.judged(maker["twin"]["clot"])
    doing, now_ms = maker["doing"][step["key"]], maker["twin"]["now_ms"]
    if word == "not_flocculated":
        if now_ms - doing["words"] > SAID_MS:
            _judge(maker, step, word)
        if _is_given_up(maker, step):
            _over(maker, step, {"why": "It did not set."})
            return
        plan_at(maker, now_ms + KNIFE_MS, step["key"], "look", None)
    elif doing["floc_ms"] is None:
        _judge(maker, step, "flocculated")
        doing["floc_ms"] = now_ms
        since_ms = now_ms - _dosed_ms(maker, step)
        cut_ms = now_ms + since_ms * (_factor(maker) - 1.0)
        plan_at(maker, cut_ms + late_ms(maker, step) / 2.0, step["key"], "look", None)
    elif word in ("clean_break", "past_it"):
        _judge(maker, step, word)
        _over(maker, step, {})
    else:
        _judge(maker, step, "soft")
        plan_at(maker, now_ms + AGAIN_MS, step["key"], "look", None)


def _by_judgement(maker: "Maker", step: "RecipeStep") -> None:
    end: "Any" = step["end"]
    _judge(maker, step, end["judgement"][0])
    _over(maker, step, {})


def _judge(maker: "Maker", step: "RecipeStep", word: str) -> None:
    maker["doing"][step["key"]]["words"] = maker["twin"]["now_ms"]
    write(maker, step, "curd_judged", {"judgement": word})


def _dosed_ms(maker: "Maker", step: "RecipeStep") -> int:
    end: "Any" = step["end"]
    begun_ms = maker["doing"][step["key"]]["begun_ms"]
    return maker["doses_ms"].get(end.get("from_step"), begun_ms)


def _factor(maker: "Maker") -> float:
    figure = (maker["recipe"].get("figures") or {}).get("floc_factor")
    return figure["value"] if figure else USUAL_FACTOR


def _is_given_up(maker: "Maker", step: "RecipeStep") -> bool:
    doing = maker["doing"][step["key"]]
    spent_ms = maker["twin"]["now_ms"] - doing["begun_ms"]
    figure = step.get("lasts")
    return spent_ms > PATIENCE * 1000.0 * (figure["value"] if figure else 3600.0)


def _over(maker: "Maker", step: "RecipeStep", why: "dict[str, Any]") -> None:
    """End a step, at once or as late as a fault has it."""
    at_ms = maker["twin"]["now_ms"] + 1000.0 * levers.late_s(maker, step, "end")
    plan_at(maker, at_ms, step["key"], "end", why)


LOOKS = {
    "person": _by_person,
    "time": _by_time,
    "reading": _by_reading,
    "floc": _by_floc,
    "judged": _by_judgement,
}
