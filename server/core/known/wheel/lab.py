"""What a make knows of its cheese: weighed, and as the laboratory found it."""

from ...heat.milk_class import follows, milk_class
from ...log.readings import every, last_value
from ...make.wheels import cheese_kg, weighings
from ..origins import from_make

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

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


def _milk_is(scene: "Scene") -> "KnownValue | None":
    milk = milk_class(scene["state"], scene["context"]["rules"])
    return None if milk is None else from_make(milk["class"])


def _following(scene: "Scene") -> "dict[str, Any]":
    """Return what follows from what the milk is; {} where the rules say nothing."""
    rules = scene["context"]["rules"]
    return follows(milk_class(scene["state"], rules), rules) or {}


def _milk_was(scene: "Scene") -> "KnownValue | None":
    """Return what the standards of identity call the milk; open while undecided."""
    told = _following(scene).get("identity")
    return None if told is None or told["value"] is None else from_make(told["value"])


def _made_from(scene: "Scene") -> "KnownValue | None":
    """Return the row of the plan for staphylococci; open while undecided."""
    rows = _following(scene).get("staph")
    if rows is None:
        return None
    places = [step.get("place") for step in scene["recipe"]["steps"]]
    told = rows["ripened" if "store" in places else "fresh"]
    return None if told["value"] is None else from_make(told["value"])


KNOWN = {
    "cheese_kg": _cheese_kg,
    "cheese_moisture_frac": _lab("cheese_moisture_frac"),
    "cheese_fat_frac": _lab("cheese_fat_frac"),
    "cheese_salt_frac": _lab("cheese_salt_frac"),
    "cheese_ph": _cheese_ph,
    "start_kg": _wheel_kg(0),
    "now_kg": _wheel_kg(-1),
    "days": _days,
    "milk_is": _milk_is,
    "milk_was": _milk_was,
    "made_from": _made_from,
}
