"""What every screen shows of one make: one JSON, numbers and message keys only.

`view` is a function of the state and the instant, nothing else, so two phones
with the same events show the same thing. `next_change_ms` says when it has to
be asked again although nothing was entered: a deadline, a reading that falls
due, a band that ends.
"""

from ..figures.figure import figure
from ..figures.rests import bound
from ..log import run
from ..log.kinds.columns import DOSES, EQUIPMENT, FACTS, HEAT, MILK, WHEELS
from ..log.opening import opening
from ..log.readings import last_value
from ..log.standing import make_state
from ..log.touches import keep, kept, of_step, topic
from ..make import plan
from ..make.duplicates import duplicates
from ..make.practice import is_practice
from ..make.wheels import sizes_used, wheels
from ..matters.matters import next_ms
from ..recipe.parts import step_of
from .alerts.drift import alerts
from .alerts.not_begun import begin_alerts
from .alerts.step_alerts import step_alerts
from .changes import next_change_ms
from .context import context_of
from .countdowns import countdowns
from .focus import focus, left_open
from .in_store import before_store, store_step
from .parts.milk import milk_view
from .record import lines
from .steps import brief_view, step_view

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Desk, Entry, Rules, State, ViewContext
    from server.shapes.core.step import Step
    from server.shapes.core.view import Alert, BandStage, Make, TimeSpan, ToJudge, View


LOG_LINES = 10  # the record itself is asked for by desk.record


def view(
    state: "State",
    now_ms: int,
    rules: "Rules | None" = None,
    desk: "Desk | None" = None,
) -> "View | None":
    """Return the View of a make.

    Args:
        state: State of the make.
        now_ms: now, by the server's clock [ms].
        rules: {rule id: the rule}, for the verdict on a heat treatment.
        desk: Desk, for what other makes teach; None where this make stands alone.

    Returns:
        View; None while the make's opening is not
        known on this device.
    """
    opened_entry = opening(state)
    context = context_of(state, now_ms, rules, desk)
    if opened_entry is None or context is None:
        return None
    shown = [_shown(context, step) for step in context["recipe"]["steps"]]
    left = left_open(shown)
    day = _span(context, [plan.closing_step(context["ordered"])["key"]])
    seen: "View" = {
        "make": _make(context, opened_entry, shown),
        "now_ms": now_ms,
        "next_change_ms": None,
        "focus": focus(shown, left, context["now_ms"]),
        "left_open": left,
        "steps": shown,
        "timers": context["timers"],
        "countdowns": [] if context["over"] else countdowns(shown, context["timers"]),
        "alerts": alerts(context, _step_alerts(context, shown)),
        "matters": context["matters"],
        "to_judge": _to_judge(context),
        "day": day,
        "whole": _span(context, list(context["facts"])),
        "band": [] if context["over"] else _band(context, opened_entry, shown, day),
        "log": list(reversed(lines(state, LOG_LINES))),
        "unread": run.unread(state),
    }
    if not context["over"]:
        ahead = next_ms(context)
        seen["next_change_ms"] = next_change_ms(seen, now_ms, ahead)
    return seen


def step(
    state: "State",
    key: str,
    now_ms: int,
    rules: "Rules | None" = None,
    desk: "Desk | None" = None,
) -> "Step | None":
    """Return one Step in full, whatever its status; None when there is none.

    Args:
        state: State of the make.
        key: key of the step.
        now_ms: now, by the server's clock [ms].
        rules: {rule id: the rule}, for the verdict on a heat treatment.
        desk: Desk, for what other makes teach; None where this make stands alone.
    """
    context = context_of(state, now_ms, rules, desk)
    if context is None:
        return None
    recipe_step = step_of(context["recipe"], key)
    return None if recipe_step is None else step_view(context, recipe_step)


def _shown(context: "ViewContext", recipe_step: "RecipeStep") -> "Any":
    """Return a step in full where work is at hand, in brief elsewhere."""
    if context["facts"][recipe_step["key"]]["status"] in ("running", "ready"):
        return step_view(context, recipe_step)
    return brief_view(context, recipe_step)


def _band(
    context: "ViewContext", opened_entry: "Entry", shown: "list[Step]", day: "TimeSpan"
) -> "list[BandStage]":
    # On a phone it comes with the core's later part; a make without sums is led and
    # rung before that, and is drawn at its next change.
    try:
        from .parts.band import band
    except ImportError:
        return []
    steps = context["recipe"]["steps"]
    return band(steps, shown, opened_entry["t_ms"], context["now_ms"], day)


def _step_alerts(context: "ViewContext", shown: "list[Step]") -> "list[Alert]":
    """Return the alerts of all steps; those of steps that are over are kept."""
    raised = []
    for index, recipe_step in enumerate(context["recipe"]["steps"]):
        status = shown[index]["status"]
        if status == "running" and not context["over"]:
            raised.extend(step_alerts(shown[index]))
        elif status == "ready" and not context["over"]:
            raised.extend(begin_alerts(context, recipe_step, shown[index]))
        elif status == "ended":
            raised.extend(_kept_alerts(context, recipe_step))
    return raised


def _kept_alerts(context: "ViewContext", recipe_step: "RecipeStep") -> "list[Alert]":
    state, key = context["state"], recipe_step["key"]
    held = kept(state, "alerts", key)
    if held is None or _are_other(context, recipe_step, held["figures"]):
        names = bound(context["recipe"], recipe_step)
        held = {
            "figures": {name: figure(context, recipe_step, name) for name in names},
            "alerts": step_alerts(step_view(context, recipe_step)),
        }
        keep(state, "alerts", key, held, _rests_on(recipe_step))
    told: "list[Alert]" = held["alerts"]
    return told


def _are_other(
    context: "ViewContext", recipe_step: "RecipeStep", figures: "dict[str, Any]"
) -> bool:
    """Tell whether a sum answers a figure of a step otherwise than it did."""
    return any(figure(context, recipe_step, name) != figures[name] for name in figures)


def _rests_on(recipe_step: "RecipeStep") -> "list[str]":
    """Return what the alerts of a step that is over rest on, see `touches`."""
    words = of_step(recipe_step["key"]) + [FACTS, MILK, DOSES, EQUIPMENT]
    if recipe_step.get("heat_treatment"):
        words.append(HEAT)
    if recipe_step.get("mould"):
        words.append(WHEELS)
    if recipe_step["end"].get("from_step"):
        words.append(topic("step_begun", recipe_step["end"]["from_step"]))
    return words


def _make(context: "ViewContext", opened_entry: "Entry", shown: "list[Step]") -> "Make":
    state = context["state"]
    opened = context["opened"]
    store = store_step(make_state(state), shown)
    return {
        "id": state["make"],
        "name": opened["name"],
        "batch": opened["batch"],
        "practice": is_practice(state),
        "recipe_id": context["recipe"]["id"],
        "recipe_version": context["recipe"]["version"],
        "recipe_title": context["recipe"]["title"],
        "milk_l": opened["milk_l"],
        "milk_measured_l": last_value(state, "milk_volume_l"),
        "milk_kg": context["milk"]["milk_kg"],
        "milk_from": context["milk"]["milk_from"],
        "vat": opened.get("vat"),
        "opened_ms": opened_entry["t_ms"],
        "opened_by": opened_entry["by"],
        "state": make_state(state),
        "is_open": not context["over"],
        "holds": context["holds"],
        "moulds": wheels(state),
        "sizes": sizes_used(state),
        "store_step": store,
        "before_store": before_store(store, shown),
        "milk": milk_view(state, context["rules"]),
    }


def _to_judge(context: "ViewContext") -> "list[ToJudge]":
    """Return what two phones recorded of the same act, kept until one of them does."""
    state = context["state"]
    held: "list[ToJudge] | None" = kept(state, "to_judge", "all")
    if held is None:
        held = []
        for step in context["recipe"]["steps"]:
            held.extend(duplicates(state, step))
        keep(state, "to_judge", "all", held, [FACTS, DOSES])
    return held


# What nobody would call late. Our own judgement, no source.
DAY_OFF_S = 60.0


def _span(context: "ViewContext", keys: "list[str]") -> "TimeSpan":
    planned_ms = max(context["planned"][key]["end_ms"] for key in keys)
    expected_ms = max(context["expected"][key]["end_ms"] for key in keys)
    late_s = (expected_ms - planned_ms) / 1000.0
    return {
        "planned_end_ms": planned_ms,
        "expected_end_ms": expected_ms,
        "late_s": late_s,
        "state": "on_time"
        if abs(late_s) <= DAY_OFF_S
        else ("late" if late_s > 0 else "early"),
    }
