"""Alerts: what drifts, by how much, against which band, and what to do about it.

An alert asks for an action; what asks for none is a plain line elsewhere. One
alert a matter: a new reading replaces the alert of the reading before it, since
each alert's id is made of what it is about. Acknowledging silences it and never
hides it while the step runs; an alert of a step that has ended goes once it is
acknowledged, except milk that tested positive. A word of yesterday does not
silence what falls due today.
"""

from ...log import run
from ...log.readings import last
from .acid_drift import acid_alerts
from .step_alerts import alert_of, what_to_do

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.state import State, ViewContext
    from server.shapes.core.view import Alert


LEVELS = ("act", "check")
LASTING = ("alert.drug_test_positive",)  # stays for as long as it is true


def alerts(context: "ViewContext", of_steps: "list[Alert]") -> "list[Alert]":
    """Return every alert of a make, most urgent first.

    Args:
        context: as for `steps.step_view`.
        of_steps: the alerts that its steps give rise to, see `step_alerts`.

    Returns:
        List of Alert.
    """
    of_test = _drug_test_alerts(context)
    raised = [alert for alert in of_steps if not _is_told_by(of_test, alert)]
    raised.extend(of_test)
    raised.extend(acid_alerts(context, of_steps))
    if not context["over"]:
        raised.extend(_timer_alerts(context))
    raised.extend(_hold_alerts(context))
    _acknowledge(context["state"], raised)
    standing = [alert for alert in raised if not _is_settled(context, alert)]
    return _once(sorted(standing, key=_urgency))


def _is_told_by(of_test: "list[Alert]", alert: "Alert") -> bool:
    """Tell whether the missing drug test, told for the make, tells this too."""
    if alert["quantity"] != "drug_test" or alert["form"] != "record":
        return False
    return any(other["form"] == "record" for other in of_test)


def _is_settled(context: "ViewContext", alert: "Alert") -> bool:
    if not alert["acknowledged"] or alert["key"] in LASTING:
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


def _urgency(alert: "Alert") -> "tuple[bool, int, int, str]":
    return (
        alert["acknowledged"] is not None,
        LEVELS.index(alert["level"]),
        alert["since_ms"],
        alert["id"],
    )


def _drug_test_alerts(context: "ViewContext") -> "list[Alert]":
    """Return what the drug-residue test says, from the first step after receiving."""
    asked = None
    moved_ms = None
    for step in context["recipe"]["steps"]:
        for reading in step.get("readings", []):
            if reading["quantity"] == "drug_test":
                asked = step
        begun_ms = context["facts"][step["key"]]["begun_ms"]
        if asked is not None and step is not asked and begun_ms is not None:
            moved_ms = begun_ms if moved_ms is None else min(moved_ms, begun_ms)
    if asked is None:
        return []
    test = last(context["state"], "drug_test")
    if test is not None and test["data"]["value"] == "positive":
        return [
            alert_of(
                "drug_test/" + test["id"],
                "quantity",
                "act",
                "drug_test_positive",
                test["t_ms"],
                step=asked["key"],
                quantity="drug_test",
                value="positive",
                do=what_to_do(asked, "record_missing"),
            )
        ]
    if test is None and moved_ms is not None:
        return [
            alert_of(
                "drug_test_missing",
                "record",
                "act",
                "drug_test_missing",
                moved_ms,
                step=None,
                quantity="drug_test",
                do=what_to_do(asked, "record_missing"),
            )
        ]
    return []


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


def _acknowledge(state: "State", raised: "list[Alert]") -> None:
    for alert in raised:
        entry = run.last(state, "alert_acknowledged", alert["id"])
        if entry is None or entry["t_ms"] < alert["since_ms"]:
            alert["acknowledged"] = None
        else:
            alert["acknowledged"] = {"by": entry["by"], "at_ms": entry["t_ms"]}
