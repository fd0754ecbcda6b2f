"""Alerts on the acid of a make against its recipe's curve: slow, fast, stalled.

One alert for the newest pH reading, with what the recipe says to do about it. A
reading that its own step's target tells already is not told twice.
"""

from ...log.readings import one_an_instant, within
from .step_alerts import alert_of, what_to_do

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Entry, ViewContext
    from server.shapes.core.view import Alert
    from server.shapes.core.words import Words


FORM = {"slow": "acid_slow", "stalled": "acid_slow", "fast": "acid_fast"}
# A stall asks to act: the make may have no live starter.
LEVEL = {"slow": "check", "stalled": "act", "fast": "check"}


def acid_alerts(context: "ViewContext", of_steps: "list[Alert]") -> "list[Alert]":
    """Return the alert on the acid of a make, if there is one.

    Args:
        context: as for `steps.step_view`.
        of_steps: alerts of its steps, so that none is told twice.

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
        return []
    # Loaded when there is a pH to judge: the app starts without it.
    from ...formulas.milk.acid_watch import acid_state

    last = entries[-1]
    acid = acid_state(
        [(entry["t_ms"] - start["begun_ms"]) / 1000.0 for entry in entries],
        [entry["data"]["value"] for entry in entries],
        curve,
    )
    if acid["state"] not in FORM or _is_told(of_steps, last["id"], acid["state"]):
        return []
    step = _step_of(context, last)
    return [
        alert_of(
            "acid/" + last["id"],
            "acid",
            LEVEL[acid["state"]],
            "acid_" + acid["state"],
            last["t_ms"],
            step=step["key"],
            quantity="ph",
            value=acid["ph"],
            low=acid["low_ph"],
            high=acid["high_ph"],
            unit="pH",
            by_s=acid["behind_s"],
            do=_do(context, step, FORM[acid["state"]]),
        )
    ]


def _is_told(of_steps: "list[Alert]", reading_id: str, state: str) -> bool:
    # A stall is more than a value out of its band, so it is told beside that.
    if state == "stalled":
        return False
    return any(alert["id"].startswith("reading/" + reading_id) for alert in of_steps)


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


def _do(context: "ViewContext", step: "RecipeStep", form: str) -> "Words | None":
    """Return what the recipe says: in this step, else in the next that says it."""
    is_later = False
    for other in context["recipe"]["steps"]:
        is_later = is_later or other["key"] == step["key"]
        if is_later:
            said = what_to_do(other, form)
            if said is not None:
                return said
    return None
