"""Alerts on the acid of a make against its recipe's curve: slow, fast, stalled.

One alert for the newest pH reading, with what the recipe says to do about it, since
the first of the readings that are off on that side without a break. Where the step has
a band of its own for the pH, that is the nearer word: the curve tells a stall alone.
"""

from ...figures.due import span_ms
from ...figures.figure import of_target
from ...log.readings import one_an_instant, within
from ...make.instruments import is_measured
from ..parts.step_parts import verdict
from ..parts.targets import judges
from .alert import alert_of, what_to_do
from .joined import SIDES

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeCurve, RecipeStep
    from server.shapes.core.state import Entry, ViewContext
    from server.shapes.core.view import Alert
    from server.shapes.core.words import Words


# What the recipe says of each, the nearest first.
FORMS = {
    "slow": ("acid_slow",),
    "stalled": ("acid_stalled", "acid_slow"),
    "fast": ("acid_fast",),
}
ACIDS = ("ph", "titratable_acidity_frac")
# A stall asks to act: the make may have no live starter.
LEVEL = {"slow": "check", "stalled": "act", "fast": "check"}


def acid_alerts(context: "ViewContext") -> "list[Alert]":
    """Return the alert on the acid of a make, if there is one.

    Args:
        context: as for `steps.step_view`.

    Returns:
        List of Alert, at most one.
    """
    curve = context["recipe"].get("curve")
    if context["over"] or not curve:
        return []
    start = context["facts"].get(curve["start_step"])
    if start is None or start["begun_ms"] is None:
        return []
    entries = one_an_instant(within(context["state"], "ph", start["begun_ms"]))
    if not entries:
        return _by_time(context, curve["start_step"], start["begun_ms"])
    acid = _acid(entries, start["begun_ms"], curve)
    last = entries[-1]
    step = _step_of(context, last)
    if acid["state"] not in FORMS or _is_as_wanted(context, step, acid):
        return []
    since = _since(entries, start["begun_ms"], curve, acid["state"])
    return [
        alert_of(
            _name(context, since),
            "acid",
            LEVEL[acid["state"]],
            "acid_" + acid["state"],
            since["t_ms"],
            step=step["key"],
            quantity="ph",
            value=acid["ph"],
            low=acid["low_ph"],
            high=acid["high_ph"],
            unit="pH",
            by_s=acid["behind_s"],
            due_ms=_again_ms(last) if acid["state"] == "stalled" else None,
            do=_do(context, step, FORMS[acid["state"]]),
        )
    ]


def by_first(context: "ViewContext", of_steps: "list[Alert]") -> "list[Alert]":
    """Return the alerts of steps, one on the pH named by the first that was off so.

    That one may have stood by the curve alone, and be gone when the step is over.

    Args:
        context: as for `steps.step_view`.
        of_steps: list of Alert; not changed, since some are kept.
    """
    curve = context["recipe"].get("curve")
    start = context["facts"].get(curve["start_step"]) if curve else None
    if not curve or start is None or start["begun_ms"] is None:
        return of_steps
    entries = one_an_instant(within(context["state"], "ph", start["begun_ms"]))
    told = []
    for alert in of_steps:
        if alert["quantity"] == "ph" and alert["key"] in SIDES:
            before = [row for row in entries if row["t_ms"] < alert["since_ms"]]
            alert = _named(context, alert, before, start["begun_ms"], curve)
        told.append(alert)
    return told


def _named(
    context: "ViewContext",
    alert: "Alert",
    before: "list[Entry]",
    begun_ms: int,
    curve: "RecipeCurve",
) -> "Alert":
    state = _acid(before, begun_ms, curve)["state"] if before else "not_known"
    if SIDES.get("alert.acid_" + state) != SIDES[alert["key"]]:
        return alert
    first = _since(before, begun_ms, curve, state)
    alert = alert.copy()
    alert["id"], alert["since_ms"] = _name(context, first), first["t_ms"]
    return alert


def _name(context: "ViewContext", entry: "Entry") -> str:
    # As the step's own target would name it: it is the same matter.
    return "reading/" + entry["id"] + "/" + _step_of(context, entry)["key"]


def _acid(
    entries: "list[Entry]", begun_ms: int, curve: "RecipeCurve"
) -> "dict[str, Any]":
    # Loaded when there is a pH to judge: the app starts without it.
    from ...formulas.milk.acid_watch import acid_state

    return acid_state(
        [(entry["t_ms"] - begun_ms) / 1000.0 for entry in entries],
        [entry["data"]["value"] for entry in entries],
        curve,
    )


def _again_ms(last: "Entry") -> int:
    from ...formulas.milk.acid_watch import STALL_AGAIN_S

    return last["t_ms"] + span_ms(STALL_AGAIN_S)


def _since(
    entries: "list[Entry]", begun_ms: int, curve: "RecipeCurve", state: str
) -> "Entry":
    """Return the first of the unbroken row of readings that are off on this side."""
    side = SIDES["alert.acid_" + state]
    count = len(entries)
    while count > 1:
        before = _acid(entries[: count - 1], begun_ms, curve)["state"]
        if SIDES.get("alert.acid_" + before) != side:
            break
        count -= 1
    return entries[count - 1]


def _by_time(context: "ViewContext", step: str, begun_ms: int) -> "list[Alert]":
    """Say once that nothing measures the acid of this make."""
    if any(is_measured(context["state"], quantity) for quantity in ACIDS):
        return []
    return [
        alert_of("acid_by_time", "acid", "check", "acid_by_time", begun_ms, step=step)
    ]


def _is_as_wanted(
    context: "ViewContext", step: "RecipeStep", acid: "dict[str, Any]"
) -> bool:
    """Tell whether a pH lies in its own step's band; a stall is more than a value."""
    if acid["state"] == "stalled":
        return False
    for target in step.get("targets", []):
        if target["quantity"] == "ph" and target.get("when") != "end":
            wanted = of_target(context, step, target)
            if judges(wanted):
                word = verdict(acid["ph"], wanted["low"], wanted["high"])
                return word == "in_band"
    return False


def _step_of(context: "ViewContext", entry: "Entry") -> "RecipeStep":
    steps = context["recipe"]["steps"]
    named = entry["data"].get("step")
    latest = steps[0]
    for step in steps:
        begun_ms = context["facts"][step["key"]]["begun_ms"]
        if step["key"] == named:
            return step
        if begun_ms is not None and begun_ms <= entry["t_ms"]:
            latest = step
    return latest


def _do(
    context: "ViewContext", step: "RecipeStep", forms: "tuple[str, ...]"
) -> "Words | None":
    """Return what the recipe says: in this step, else in the next that says it."""
    is_later = False
    for other in context["recipe"]["steps"]:
        is_later = is_later or other["key"] == step["key"]
        for form in forms if is_later else ():
            said = what_to_do(other, form)
            if said is not None:
                return said
    return None
