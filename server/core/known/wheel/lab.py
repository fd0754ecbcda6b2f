"""What a make knows of its cheese: weighed, and as the laboratory found it."""

from ...heat.rule import hold_steps
from ...heat.verdict import hold_verdict
from ...log.readings import every, last_value
from ...make.wheels import cheese_kg, weighings
from ..origins import from_make

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

    from server.shapes.core.state import Entry, KnownValue, Scene

DAY_MS = 86400000.0


def _cheese_kg(scene: "Scene") -> "KnownValue | None":
    total_kg = cheese_kg(scene["state"])
    return None if total_kg is None else from_make(total_kg)


def _lab(quantity: str) -> "Callable[[Scene], KnownValue | None]":
    """Look up the mean of what was found in the wheels of the size asked about."""

    def look_up(scene: "Scene") -> "KnownValue | None":
        results = [
            entry["data"]["value"]
            for entry in every(scene["state"], quantity)
            if scene["size"] in (None, entry["data"].get("place"))
        ]
        return from_make(sum(results) / len(results)) if results else None

    return look_up


_measured_ph = _lab("cheese_ph")


def _cheese_ph(scene: "Scene") -> "KnownValue | None":
    """Return the pH of the cheese; that of its curd where none was taken."""
    measured = _measured_ph(scene)
    ph = last_value(scene["state"], "ph") if measured is None else None
    return measured if ph is None else from_make(ph)


def _weighings(scene: "Scene") -> "list[Entry]":
    return weighings(scene["state"], scene["size"])


def _wheel_kg(index: int) -> "Callable[[Scene], KnownValue | None]":
    """Look up the first or the last of two weighings and more."""

    def look_up(scene: "Scene") -> "KnownValue | None":
        weighed = _weighings(scene)
        return from_make(weighed[index]["data"]["value"]) if len(weighed) > 1 else None

    return look_up


def _days(scene: "Scene") -> "KnownValue | None":
    weighed = _weighings(scene)
    if len(weighed) < 2 or weighed[-1]["t_ms"] == weighed[0]["t_ms"]:
        return None
    return from_make((weighed[-1]["t_ms"] - weighed[0]["t_ms"]) / DAY_MS)


MILK_WAS = {"reads_as_pasteurised": "pasteurised", "heat_treated_only": "raw"}


def _milk_was(scene: "Scene") -> "KnownValue | None":
    """Return what the legal table says of the milk; open where it says nothing."""
    rules = scene["context"]["rules"]
    for step in hold_steps(scene["recipe"]):
        fact = scene["context"]["facts"][step["key"]]
        told = hold_verdict(scene["state"], step, fact, rules)
        if told is not None and told["class"] in MILK_WAS:
            return from_make(MILK_WAS[told["class"]])
    return None


KNOWN = {
    "cheese_kg": _cheese_kg,
    "cheese_moisture_frac": _lab("cheese_moisture_frac"),
    "cheese_fat_frac": _lab("cheese_fat_frac"),
    "cheese_salt_frac": _lab("cheese_salt_frac"),
    "cheese_ph": _cheese_ph,
    "start_kg": _wheel_kg(0),
    "now_kg": _wheel_kg(-1),
    "days": _days,
    "milk_was": _milk_was,
}
