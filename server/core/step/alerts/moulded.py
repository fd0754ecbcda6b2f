"""Alerts on how many wheels were moulded, against how many were planned."""

from .alert import alert_of, what_to_do

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.step import Step
    from server.shapes.core.view import Alert


def mould_alerts(step: "Step") -> "list[Alert]":
    """Return one alert for each size of which fewer or more were moulded than planned.

    Planned for the milk that came. Fewer are told once the step has ended: until
    then there are some to come.

    Args:
        step: Step of the View.
    """
    raised = []
    for mould in step["moulds"] or []:
        planned, moulded = mould["suggested"], mould["moulded"]
        if not planned or moulded == planned:
            continue
        word = "below" if moulded < planned else "above"
        if word == "below" and step["status"] == "running":
            continue
        raised.append(
            alert_of(
                "moulds/" + step["key"] + "/" + mould["size"],
                "quantity",
                "check",
                "moulds_" + word,
                _since_ms(step),
                step=step["key"],
                quantity=mould["size"],
                value=moulded,
                low=planned,
                high=planned,
                unit="",
                do=what_to_do(
                    step, "quantity_low" if word == "below" else "quantity_high"
                ),
            )
        )
    return raised


def _since_ms(step: "Step") -> "int | None":
    said = step["ended"] or step["begun"]
    return said and said["at_ms"]
