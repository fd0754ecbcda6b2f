"""One matter, told once: which alerts say what a standing matter says already.

The verdict on what readings have told goes on under the name of the first of them: a
word about that one is a word about the verdict, and nothing rings a second time.
"""

from ..log.answers import acknowledged
from .matters import WAIT, gates

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.matters import Matter
    from server.shapes.core.state import ViewContext
    from server.shapes.core.view import Alert


HIGH_PH = ("alert.acid_slow", "alert.acid_stalled", "alert.reading_above")


def told_before(context: "ViewContext", raised: "list[Alert]") -> "list[Alert]":
    """Return the alerts that no standing matter says; those others give it their name.

    Args:
        context: ViewContext of the make; its matters change.
        raised: list of Alert, each cause with one name.
    """
    quantities = {gate["key"]: gate.get("quantity") for gate in gates(context)}
    said: "list[str]" = []
    for matter in context["matters"]:
        if matter["level"] == WAIT:
            continue
        of_it = [row for row in raised if _says(matter, quantities[matter["id"]], row)]
        said.extend(alert["id"] for alert in of_it)
        _name(context, matter, of_it)
    return [alert for alert in raised if alert["id"] not in said]


def _name(context: "ViewContext", matter: "Matter", of_it: "list[Alert]") -> None:
    """Give a matter the name of the alert that told of it first, if one did before."""
    since_ms = matter["since_ms"] or 0
    before = [alert for alert in of_it if alert["since_ms"] < since_ms]
    if not before:
        return
    first = min(before, key=_age)
    matter["alert"], matter["told_ms"] = first["id"], first["since_ms"]
    if matter["acknowledged"] is None:
        matter["acknowledged"] = acknowledged(
            context["state"], first["id"], first["since_ms"]
        )


def _age(alert: "Alert") -> "tuple[int, str]":
    return (alert["since_ms"], alert["id"])


def _says(matter: "Matter", quantity: "str | None", alert: "Alert") -> bool:
    if matter["kind"] == "test":
        return alert["form"] == "record" and alert["quantity"] == quantity
    if matter["kind"] == "hold":
        is_of_hold = alert["step"] == matter["step"]
        return is_of_hold and alert["form"] in ("temperature", "record")
    if matter["kind"] == "acid":
        return alert["form"] == "acid" and alert["key"] in HIGH_PH
    if matter["kind"] == "curing":
        return alert["key"] == "alert.step_late" and alert["step"] == matter["step"]
    return False
