"""Alerts that one step gives rise to, from its own figures and bands."""

from ...units.table import drift_of
from .alert import alert_of, what_to_do
from .left_out import add_alerts, turn_alerts
from .moulded import mould_alerts
from .overdue import overdue_alerts
from .timely import early_alerts, time_alerts

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.step import JudgedReading, Step
    from server.shapes.core.view import Alert


def step_alerts(step: "Step") -> "list[Alert]":
    """Return the alerts of one Step of the View.

    Args:
        step: Step of the View.

    Returns:
        List of Alert, none acknowledged yet.
    """
    if step["status"] == "ended":
        return (
            _reading_alerts(step)
            + _unsized_alerts(step)
            + _dose_alerts(step)
            + mould_alerts(step)
            + _record_alerts(step)
            + add_alerts(step)
        )
    if step["status"] != "running":
        return []
    return (
        _reading_alerts(step)
        + _unsized_alerts(step)
        + _dose_alerts(step)
        + mould_alerts(step)
        + time_alerts(step)
        + early_alerts(step)
        + overdue_alerts(step)
        + turn_alerts(step)
        + _curd_alerts(step)
    )


def _is_ramp(step: "Step", quantity: str, word: str) -> bool:
    """Tell whether a reading is merely on its way to the value that ends the step."""
    end = step["end"]
    if step["status"] != "running" or end["by"] != "reading":
        return False
    if end["quantity"] != quantity:
        return False
    side = "below" if end.get("at_least") is not None else "above"
    return word == side


def _reading_alerts(step: "Step") -> "list[Alert]":
    raised = []
    for target in step["targets"]:
        last = target["last"]
        if last is None or last["verdict"] == "in_band":
            continue
        if _is_ramp(step, target["quantity"], last["verdict"]):
            continue
        drift = drift_of(target["unit"])
        raised.append(
            alert_of(
                "reading/" + last["since"]["id"] + "/" + step["key"],
                drift["form"],
                "act" if step["status"] == "running" else "check",
                "reading_" + last["verdict"],
                _stands_ms(step, target["quantity"], last),
                step=step["key"],
                quantity=target["quantity"],
                value=last["value"],
                low=target["low"],
                high=target["high"],
                unit=target["unit"],
                do=what_to_do(step, drift[last["verdict"]], target["quantity"]),
            )
        )
    return raised


def _stands_ms(step: "Step", quantity: str, last: "JudgedReading") -> int:
    """Return since when a reading is off: on its way, only since the step is over."""
    since_ms = last["since"]["at_ms"]
    if step["ended"] is None or step["end"].get("quantity") != quantity:
        return since_ms
    return max(since_ms, step["ended"]["at_ms"])


def _unsized_alerts(step: "Step") -> "list[Alert]":
    """Return one alert of a reading that is judged by no size's figure."""
    return [
        alert_of(
            "no_size/" + of["unsized"]["id"],
            "record",
            "check",
            "reading_no_size",
            of["unsized"]["at_ms"],
            step=step["key"],
            quantity=of["quantity"],
            value=of["unsized"]["value"],
        )
        for of in step["by_size"]
        if of["unsized"] is not None
    ]


def _dose_alerts(step: "Step") -> "list[Alert]":
    raised = []
    for add in step["adds"]:
        added, planned = add["added"], add["planned"]
        if (
            planned is None
            or not added
            or added[-1]["verdict"] not in ("below", "above")
        ):
            continue
        word = added[-1]["verdict"]
        form = "quantity_low" if word == "below" else "quantity_high"
        raised.append(
            alert_of(
                "dose/" + added[-1]["id"],
                "quantity",
                "check",
                "dose_" + word,
                added[-1]["at_ms"],
                step=step["key"],
                quantity=add["ingredient"],
                value=add["total"],
                low=planned["low"],
                high=planned["high"],
                unit=planned["unit"],
                do=what_to_do(step, form, add["ingredient"]),
            )
        )
    return raised


def _record_alerts(step: "Step") -> "list[Alert]":
    """Return the required readings that an ended step lacks: the record has a gap."""
    raised = []
    for reading in step["readings"]:
        if reading["required"] and not reading["count"]:
            raised.append(
                alert_of(
                    "missing/" + step["key"] + "/" + reading["quantity"],
                    "record",
                    "check",
                    "reading_missing",
                    step["ended"] and step["ended"]["at_ms"],
                    step=step["key"],
                    quantity=reading["quantity"],
                    do=what_to_do(step, "record_missing", reading["quantity"]),
                )
            )
    return raised


def _curd_alerts(step: "Step") -> "list[Alert]":
    raised = []
    judge = step["judge"]
    if judge and judge["last"] and judge["last"]["judgement"] == "past_it":
        raised.append(
            alert_of(
                "past_it/" + judge["last"]["id"],
                "time",
                "act",
                "past_it",
                judge["last"]["at_ms"],
                step=step["key"],
                do=what_to_do(step, "time_late"),
            )
        )
    floc = step["floc"]
    if floc and floc["problem"]:
        raised.append(
            alert_of(
                "floc/" + step["key"] + "/" + str(floc["floc_ms"]),
                "time",
                "check",
                "floc_window",
                floc["floc_ms"],
                step=step["key"],
                value=floc["floc_s"],
                unit="s",
                do=what_to_do(
                    step,
                    "time_early"
                    if floc["problem"] == "floc_too_early"
                    else "time_late",
                ),
            )
        )
    return raised
