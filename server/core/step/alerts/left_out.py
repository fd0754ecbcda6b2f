"""What was left out: an ingredient that its step ended without, wheels not turned.

Whoever ends a step without an ingredient is told so then; the alert tells the others,
while the next steps can still make up for it. A turn is late by a whole round: nothing
spoils in between.
"""

from .alert import alert_of, what_to_do

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.step import Add, Step
    from server.shapes.core.view import Alert


def add_alerts(step: "Step") -> "list[Alert]":
    """Return an alert for each ingredient that an ended step lacks.

    Args:
        step: Step of the View.
    """
    return [
        _add_alert(step, add)
        for add in step["adds"]
        if not add["done"] and not add["optional"]
    ]


def _add_alert(step: "Step", add: "Add") -> "Alert":
    planned = add["planned"]
    return alert_of(
        "left_out/" + step["key"] + "/" + add["ingredient"],
        "quantity",
        "check",
        "add_missing",
        step["ended"] and step["ended"]["at_ms"],
        step=step["key"],
        quantity=add["ingredient"],
        low=None if planned is None else planned["low"],
        high=None if planned is None else planned["high"],
        unit=None if planned is None else planned["unit"],
        do=what_to_do(step, "quantity_low", add["ingredient"]),
    )


def turn_alerts(step: "Step") -> "list[Alert]":
    """Return the alert of wheels that lie a round too long on one side, if they do.

    Args:
        step: Step of the View.
    """
    turn = step["turn"]
    if turn is None or turn["overdue_s"] <= turn["every_s"]:
        return []
    return [
        alert_of(
            "turn/" + step["key"],
            "time",
            "act",
            "turn_late",
            turn["due_ms"],
            step=step["key"],
            by_s=turn["overdue_s"],
            rings_ms=turn["due_ms"] + int(turn["every_s"] * 1000),
        )
    ]
