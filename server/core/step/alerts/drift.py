"""Alerts: what drifts, by how much, against which band, and what to do about it.

An alert asks for an action; what asks for none is a plain line elsewhere. One
alert a cause: a new reading replaces the alert of the reading before it, since each
alert's id is made of what it is about, and what has one cause has one id, see
`joined`. Acknowledging silences it and never
hides it while the step runs; an alert of a step that has ended goes once it is
acknowledged. A word of yesterday does not silence what falls due today. What must
stop the make is no alert but a matter, see `matters`, and is told there alone.
"""

from ...log.answers import acknowledged
from ...matters.repeats import told_before
from .alert import alert_of
from .joined import joined

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.state import ViewContext
    from server.shapes.core.view import Alert


LEVELS = ("act", "check")
READ = ("alert.reading_above", "alert.reading_below")


def alerts(context: "ViewContext", of_steps: "list[Alert]") -> "list[Alert]":
    """Return every alert of a make, most urgent first.

    Args:
        context: as for `steps.step_view`.
        of_steps: the alerts that its steps give rise to, see `step_alerts`.

    Returns:
        List of Alert.
    """
    raised = _with_acid(context, of_steps)
    raised = joined(raised, context["recipe"]["steps"])
    raised = told_before(context, raised)
    if not context["over"]:
        raised.extend(_timer_alerts(context))
    raised.extend(_hold_alerts(context))
    for alert in raised:
        # A word about a step that was due is none about its being late.
        asks_ms = alert["since_ms"] if alert["rings_ms"] is None else alert["rings_ms"]
        alert["acknowledged"] = acknowledged(context["state"], alert["id"], asks_ms)
    standing = [alert for alert in raised if not _is_settled(context, alert)]
    return _once(sorted(standing, key=_urgency))


def _with_acid(context: "ViewContext", of_steps: "list[Alert]") -> "list[Alert]":
    curve = context["recipe"].get("curve")
    start = context["facts"].get(curve["start_step"]) if curve else None
    if start is None or start["begun_ms"] is None:
        return list(of_steps)
    # Loaded when there is acid to watch: the app starts without it.
    from .acid_drift import acid_alerts, by_first

    return by_first(context, of_steps) + acid_alerts(context)


def _is_settled(context: "ViewContext", alert: "Alert") -> bool:
    if not alert["acknowledged"]:
        return False
    fact = context["facts"].get(alert["step"] or "")
    return fact is not None and fact["status"] == "ended"


def _once(raised: "list[Alert]") -> "list[Alert]":
    # A quantity wanted at the begin and at the end is one matter, not two.
    kept: "list[Alert]" = []
    for alert in raised:
        if all(alert["id"] != other["id"] for other in kept):
            kept.append(alert)
    return kept


def _urgency(alert: "Alert") -> "tuple[bool, int, int, str, bool, str, str]":
    return (
        alert["acknowledged"] is not None,
        LEVELS.index(alert["level"]),
        alert["since_ms"],
        alert["id"],
        # Of two that are one matter the stall is kept: it is more than a value; then
        # what was read against a band before what a curve says.
        alert["key"] != "alert.acid_stalled",
        "" if alert["key"] in READ else alert["key"],
        alert["quantity"] or "",
    )


def _timer_alerts(context: "ViewContext") -> "list[Alert]":
    raised = []
    for timer in context["timers"]:
        if timer["stopped_ms"] is None and context["now_ms"] >= timer["due_ms"]:
            raised.append(
                alert_of(
                    "timer/" + timer["id"],
                    "time",
                    "act",
                    "timer_due",
                    timer["due_ms"],
                    step=timer["step"],
                    value=timer["label"],
                    by_s=(context["now_ms"] - timer["due_ms"]) / 1000.0,
                )
            )
    return raised


def _hold_alerts(context: "ViewContext") -> "list[Alert]":
    return [
        alert_of(
            "hold/" + hold["id"],
            "record",
            "check",
            "hold",
            hold["at_ms"],
            value=hold["why"],
        )
        for hold in context["holds"]
    ]
