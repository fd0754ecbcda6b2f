"""One step of a running make, as a person at the vat needs to see it.

Status, deadline, what is measured, added and judged in it, the one number that
matters now and the one thing to do next.
"""

from ..figures.due import high_s, low_s, span_ms
from ..figures.ends import end_met_ms, ends_of
from ..heat.hold.steps import INDICATOR
from ..make import curd as curd_facts
from ..make.facts import who
from ..make.tasks import task_view
from ..make.wheels import all_moulded, wheels
from ..matters.stopped import stopped
from ..recipe.check.gates import BEGIN, END
from ..recipe.hazards import cautions_of
from ..recipe.steps.turns import TURNED_AT
from .mark import brief_mark, mark
from .next_act import button, end_blockers, main_number
from .parts.now import now_said
from .parts.origin import origin
from .parts.sized import readings_by_size, sizes_judged
from .parts.step_parts import add_view, readings_view
from .parts.targets import target_views
from .parts.turning import next_turn
from .parts.water import is_led, water_view

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.figures import Lasting
    from server.shapes.core.heat import ChartBeside, Verdict
    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Entry, Fact, State, ViewContext
    from server.shapes.core.step import (
        Lasts,
        Pad,
        Step,
        StepEnd,
        Target,
        Timing,
    )
    from server.shapes.core.words import Reasoned


def brief_view(context: "ViewContext", step: "RecipeStep") -> "dict[str, Any]":
    """Return a Step of the View without what only a step at hand needs.

    Args:
        context: as for `step_view`.
        step: step of the recipe.

    Returns:
        The part of Step that the list of steps shows; "full" is False.
    """
    fact = context["facts"][step["key"]]
    key = step["key"]
    low_ms, high_ms = _end_band_ms(context, fact, key)
    return {
        "full": False,
        "key": key,
        "title": step["title"],
        "place": step.get("place"),
        "round": step.get("round"),
        "rounds": step.get("rounds"),
        "status": fact["status"],
        "mark": brief_mark(fact),
        "is_open": fact["status"] in ("ready", "running"),
        "waits_on": fact["waits_on"],
        "planned_begin_ms": context["planned"][key]["begin_ms"],
        "planned_end_ms": context["planned"][key]["end_ms"],
        "expected_begin_ms": context["expected"][key]["begin_ms"],
        "expected_end_ms": context["expected"][key]["end_ms"],
        "begun": None if fact["begun"] is None else who(fact["begun"]),
        "ended": _with_why(fact["ended"]),
        "skipped": _with_why(fact["skipped"]),
        "due_ms": fact["due_ms"],
        "due_basis": fact["due"]["basis"],
        "end_low_ms": low_ms,
        "end_high_ms": high_ms,
        "timing": timing(fact, False, context["now_ms"]),
        "stopped_by": [],
    }


def stopped_by(context: "ViewContext", fact: "Fact", key: str) -> "list[str]":
    """Return the ids of the matters that stop what comes next in a step.

    Args:
        context: as for `step_view`.
        fact: Fact of the step.
        key: key of the step.
    """
    what = {"waiting": BEGIN, "ready": BEGIN, "running": END}.get(fact["status"])
    if what is None:
        return []
    found = stopped(context["matters"], what, key, context["recipe"])
    return [matter["id"] for matter in found]


def _end_band_ms(
    context: "ViewContext", fact: "Fact", key: str
) -> "tuple[int | None, int | None]":
    """Return the band round the instant at which a step ends, real or expected."""
    if fact["due_ms"] is not None:
        return fact["due"]["low_ms"], fact["due"]["high_ms"]
    lasts = context["lasts"][key]
    if not lasts:
        return None, None
    begin_ms = context["expected"][key]["begin_ms"]
    return begin_ms + span_ms(low_s(lasts)), begin_ms + span_ms(high_s(lasts))


def step_view(context: "ViewContext", step: "RecipeStep") -> "Step":
    """Return one Step of the View in full.

    Args:
        context: {"state", "recipe", "facts", "lasts", "planned", "expected",
            "milk", "opened", "now_ms"} of the make, see `context.context_of`.
        step: step of the recipe.

    Returns:
        Step; instants [ms], durations [s].
    """
    state = context["state"]
    fact = context["facts"][step["key"]]
    now_ms = context["now_ms"]
    key = step["key"]
    lasts = context["lasts"][key]
    judge = curd_facts.judging(
        state, step, fact["begun_ms"], fact["floc"], lasts["value"] if lasts else 0.0
    )
    met_ms = end_met_ms(context, step, fact, judge)
    met = met_ms is not None
    targets = target_views(context, step, fact, met)
    lead = None
    if step.get("heat_treatment"):
        _judge_as_typed(context, step, fact, targets)
        # Loaded when a hold is there to lead: the app starts without it.
        from ..heat.hold.lead import hold_lead

        lead = hold_lead(state, step, fact, context["rules"], now_ms)
    by_size = readings_by_size(context, fact, targets)
    sizes = sizes_judged(by_size)
    readings = readings_view(context, step, fact, met_ms, sizes, lead)
    adds = [add_view(context, step, name, fact) for name in step.get("adds", [])]
    moulds = wheels(state) if step.get("mould") else None
    can_turn = step.get("place") in TURNED_AT
    shown: "Any" = brief_view(context, step)
    shown.update(
        {
            "full": True,
            "do": step.get("do", []),
            "lasts": _lasts(lasts),
            "timing": timing(fact, met and step["end"]["by"] != "person", now_ms),
            "end": _end(context, step, fact),
            "targets": targets,
            "readings": readings,
            "by_size": by_size,
            "adds": adds,
            "water": water_view(context, step, fact) if is_led(step) else None,
            "judge": None
            if judge is None
            else {name: judge[name] for name in ("choices", "from_ms", "last")},
            "floc": fact["floc"],
            "moulds": moulds,
            "size": step.get("size"),
            "can_turn": can_turn,
            "turn_wheels": all_moulded(state) if can_turn else None,
            "turn": next_turn(context, step, fact),
            "cautions": cautions_of(step),
            "drift": step.get("drift", []),
            "chart": _chart(context, step, fact),
            "stopped_by": stopped_by(context, fact, key),
            "task": task_view(state, key, fact["status"], fact["begun_ms"], now_ms),
        }
    )
    if step.get("heat_treatment"):
        shown["verdict"] = _verdict(context, step, fact)
        shown["hold"] = lead
    shown["end_blockers"] = end_blockers(step, fact, shown, judge, met)
    shown["button"] = button(step, shown, judge, met, now_ms)
    shown["pads"] = _pads(state, step, shown, now_ms)
    shown["main"] = main_number(step, shown)
    shown["now"] = now_said(step, shown)
    shown["mark"] = mark(shown, now_ms)
    return shown


def _verdict(
    context: "ViewContext", step: "RecipeStep", fact: "Fact"
) -> "Verdict | None":
    """Return the verdict on a hold; an overdue check is told, and decides nothing."""
    from ..heat.hold.verdict import hold_verdict
    from ..make.checks import overdue_check

    told = hold_verdict(context["state"], step, fact, context["rules"])
    if told is not None and fact["begun_ms"] is not None:
        overdue = overdue_check(context, fact["begun_ms"])
        told["warnings"].extend([] if overdue is None else [overdue])
    return told


def _pads(state: "State", step: "RecipeStep", shown: "Any", now_ms: int) -> "list[Pad]":
    # They come with the core's later part; until then each reading is entered alone.
    try:
        from .parts.pads import pads_view
    except ImportError:
        return []
    return pads_view(state, step, shown, now_ms)


def _chart(
    context: "ViewContext", step: "RecipeStep", fact: "Fact"
) -> "ChartBeside | None":
    """Return what is known for the chart where a step reads its thermometer."""
    if not any(row["quantity"] == INDICATOR for row in step.get("readings", [])):
        return None
    from .parts.chart_beside import chart_beside

    return chart_beside(context, step, fact)


def _judge_as_typed(
    context: "ViewContext", step: "RecipeStep", fact: "Fact", targets: "list[Target]"
) -> None:
    # Loaded when a hold is there to lead: the app starts without it.
    from ..heat.hold.asked import met_in_own_unit

    for target in targets:
        last = target["last"]
        if last is None or last["verdict"] != "below":
            continue
        if met_in_own_unit(context["state"], step, fact, context["rules"], target):
            last["verdict"] = "in_band"


def timing(fact: "Fact", met: bool, now_ms: int) -> "Timing":
    """Return how a step stands against its own band of time.

    Args:
        fact: Fact of the step.
        met: whether what ends it has come.
        now_ms: now [ms].

    Returns:
        {"state", "by_s"}: "not_begun"; "late" past the band's end, by how much
        [s]; "early" when it is over, or could be, before the band begins;
        "on_time" otherwise.
    """
    if fact["begun_ms"] is None:
        return {"state": "not_begun", "by_s": 0.0}
    low_ms, high_ms = fact["due"]["low_ms"], fact["due"]["high_ms"]
    if low_ms is None or high_ms is None:
        return {"state": "on_time", "by_s": 0.0}
    at_ms = now_ms if fact["ended_ms"] is None else fact["ended_ms"]
    if at_ms > high_ms:
        return {"state": "late", "by_s": (at_ms - high_ms) / 1000.0}
    if at_ms < low_ms and (met or fact["ended_ms"] is not None):
        return {"state": "early", "by_s": (low_ms - at_ms) / 1000.0}
    return {"state": "on_time", "by_s": 0.0}


def _with_why(entry: "Entry | None") -> "Reasoned | None":
    if entry is None:
        return None
    return {
        "id": entry["id"],
        "at_ms": entry["t_ms"],
        "by": entry["by"],
        "why": entry["data"].get("why"),
    }


def _lasts(lasts: "Lasting | None") -> "Lasts | None":
    if not lasts:
        return None
    return {
        "value_s": lasts["value"],
        "low_s": low_s(lasts),
        "high_s": high_s(lasts),
        "origin": origin(lasts),
    }


def _end(context: "ViewContext", step: "RecipeStep", fact: "Fact") -> "StepEnd":
    end = step["end"]
    shown: "Any" = {"by": end["by"]}
    if end["by"] == "reading":
        shown["quantity"] = end["quantity"]
        shown["at_least"], shown["at_most"] = ends_of(context, step)
    if end["by"] == "judged":
        shown["judgement"] = end.get("judgement")
    if end["by"] == "floc":
        shown["factor"] = fact["floc"]["factor"]
    return shown
