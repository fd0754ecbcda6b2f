"""Alerts that one step gives rise to, from its own figures and bands."""

from ...figures.due import span_ms
from ...units.table import drift_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.step import Step
    from server.shapes.core.view import Alert
    from server.shapes.core.words import Words


OVERDUE_GRACE_S = 60.0  # a reading may come this late before it is an alert
ACT_SHARE = 0.25  # overrun of a step, as a share of its length, that asks to act
ACT_OVERDUE_S = 600.0  # a reading without an interval this late asks to act


def step_alerts(step: "Step") -> "list[Alert]":
    """Return the alerts of one Step of the View.

    Args:
        step: Step of the View.

    Returns:
        List of Alert, none acknowledged yet.
    """
    if step["status"] == "ended":
        return _reading_alerts(step) + _dose_alerts(step) + _record_alerts(step)
    if step["status"] != "running":
        return []
    return (
        _reading_alerts(step)
        + _dose_alerts(step)
        + _time_alerts(step)
        + _overdue_alerts(step)
        + _curd_alerts(step)
    )


def _time_alerts(step: "Step") -> "list[Alert]":
    if step["timing"]["state"] != "late":
        return []
    by_s = step["timing"]["by_s"]
    lasts_s = step["lasts"]["value_s"] if step["lasts"] else 0.0
    low_s, high_s = _band_s(step)
    level = "act" if by_s > ACT_SHARE * lasts_s else "check"
    return [
        alert_of(
            "step_late/" + step["key"],
            "time",
            level,
            "step_late",
            step["due_ms"],
            step=step["key"],
            by_s=by_s,
            low=low_s,
            high=high_s,
            unit="s",
            do=what_to_do(step, "time_late"),
        )
    ]


def _band_s(step: "Step") -> "tuple[float, float]":
    """Return the band that the step is late against; of a setting, from the rennet."""
    from_ms: "Any" = step["begun"] and step["begun"]["at_ms"]
    if step["due_basis"] == "floc" and step["floc"]:
        from_ms = step["floc"]["added_ms"]
    elif step["lasts"] and step["due_ms"] is not None:
        # From the deadline, since a hold that began again runs from later.
        from_ms = step["due_ms"] - span_ms(step["lasts"]["value_s"])
    low_ms: "Any" = step["end_low_ms"]
    high_ms: "Any" = step["end_high_ms"]
    return (low_ms - from_ms) / 1000.0, (high_ms - from_ms) / 1000.0


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
                "reading/" + last["id"] + "/" + step["key"],
                drift["form"],
                "act" if step["status"] == "running" else "check",
                "reading_" + last["verdict"],
                last["at_ms"],
                step=step["key"],
                quantity=target["quantity"],
                value=last["value"],
                low=target["low"],
                high=target["high"],
                unit=target["unit"],
                do=what_to_do(step, drift[last["verdict"]]),
            )
        )
    return raised


def _overdue_alerts(step: "Step") -> "list[Alert]":
    raised = []
    for reading in step["readings"]:
        if not (reading["required"] or reading["every_s"]):
            continue
        if reading["overdue_s"] <= OVERDUE_GRACE_S:
            continue
        late_act_s = reading["every_s"] or ACT_OVERDUE_S
        raised.append(
            alert_of(
                "overdue/" + step["key"] + "/" + reading["quantity"],
                "record",
                "act" if reading["overdue_s"] > late_act_s else "check",
                "reading_overdue",
                reading["due_ms"],
                step=step["key"],
                quantity=reading["quantity"],
                by_s=reading["overdue_s"],
                do=what_to_do(step, "record_missing"),
            )
        )
    return raised


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
                do=what_to_do(step, form),
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
                    do=what_to_do(step, "record_missing"),
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


def what_to_do(step: "Step | RecipeStep", form: str) -> "Words | None":
    """Return what the recipe says to do about a form of drift, or None.

    Args:
        step: Step of the View, or step of a recipe.
        form: form of drift, see `recipe.steps.steps`.
    """
    for remedy in step.get("drift", []):
        if remedy["form"] == form:
            return remedy["do"]
    return None


def alert_of(
    alert_id: str,
    form: str,
    level: str,
    key: str,
    since_ms: "int | None",
    **rest: "object",
) -> "Alert":
    """Return an Alert; what is not given is None.

    Args:
        alert_id: made of what the alert is about, so that the same matter has the
            same id on every phone.
        form: "time", "temperature", "acid", "quantity" or "record".
        level: "act" or "check".
        key: message key, without "alert.".
        since_ms: since when it stands [ms].
        rest: other fields of Alert.
    """
    alert: "Any" = {
        "id": alert_id,
        "form": form,
        "level": level,
        "key": "alert." + key,
        "step": None,
        "quantity": None,
        "value": None,
        "low": None,
        "high": None,
        "unit": None,
        "by_s": None,
        "do": None,
        "since_ms": since_ms,
        "acknowledged": None,
    }
    alert.update(rest)
    return alert
