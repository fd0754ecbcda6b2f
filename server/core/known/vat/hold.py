"""What a make knows of its heat treatment: readings in the hold, and the chart."""

from ...heat.hold.chart import CHART, known_fields
from ...heat.hold.clock import hold_until_ms
from ...heat.hold.readings import hold_readings
from ...heat.hold.steps import hold_steps
from ..origins import from_make
from .temps import minutes

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

    from server.shapes.core.state import KnownValue, Scene


def _fact(scene: "Scene") -> "dict[str, Any]":
    """Return the Fact of the step that holds the milk, else of the one that asks."""
    steps = hold_steps(scene["recipe"])
    facts = scene["context"]["facts"]
    return dict(facts[steps[0]["key"]] if steps else scene["fact"])


def _until_ms(scene: "Scene") -> "int | None":
    steps, fact = hold_steps(scene["recipe"]), _fact(scene)
    begun_ms, ended_ms = fact["begun_ms"], fact["ended_ms"]
    if not steps or begun_ms is None:
        return None if ended_ms is None else int(ended_ms)
    kept = scene["kept"]
    if "hold_until_ms" not in kept:
        rules = scene["context"]["rules"]
        kept["hold_until_ms"] = hold_until_ms(
            scene["state"], steps[0], begun_ms, ended_ms, rules
        )
    until_ms: "int | None" = kept["hold_until_ms"]
    return until_ms


def _hold(scene: "Scene") -> "dict[str, Any] | None":
    # Each field of the chart asks, and pairing all readings takes time.
    kept = scene["kept"]
    if "hold" not in kept:
        fact = _fact(scene)
        kept["hold"] = None
        if fact["begun_ms"] is not None:
            kept["hold"] = hold_readings(
                scene["state"], fact["begun_ms"], _until_ms(scene)
            )
    return kept["hold"] or None


def _thermometer(scene: "Scene") -> "KnownValue | None":
    hold = _hold(scene)
    return from_make(hold["unit"]) if hold and hold["rows"] else None


def _hold_over(scene: "Scene") -> "KnownValue | None":
    fact = _fact(scene)
    if fact["begun_ms"] is None:
        return None
    return from_make("no" if fact["ended_ms"] is None else "yes")


def _hold_begun_ms(scene: "Scene") -> "KnownValue | None":
    begun_ms = _fact(scene)["begun_ms"]
    return None if begun_ms is None else from_make(begun_ms)


def _milk_temps(scene: "Scene") -> "KnownValue | None":
    hold = _hold(scene)
    if hold is None or not hold["rows"]:
        return None
    start_ms = _fact(scene)["begun_ms"]
    return from_make(
        [
            {
                "at_min": minutes(reading["at_ms"], start_ms),
                "value": reading["temp"],
                "air": reading["air_temp"],
                "recorder": reading["recorder_temp"],
            }
            for reading in hold["rows"]
        ]
    )


def _chart(scene: "Scene") -> "dict[str, Any]":
    kept = scene["kept"]
    if "chart" not in kept:
        fact: "Any" = _fact(scene)
        kept["chart"] = None
        if fact["begun_ms"] is not None:
            kept["chart"] = known_fields(scene["state"], fact, _until_ms(scene))
    return kept["chart"] or {}


def _noted(field: str) -> "Callable[[Scene], KnownValue | None]":
    """Look up whether a field of the chart record is entered in the make.

    What is not entered here may stand on the plant's own chart: it is asked.
    """
    return lambda scene: from_make("noted") if _chart(scene).get(field) else None


KNOWN: "dict[str, Callable[[Scene], KnownValue | None]]" = {
    "thermometer": _thermometer,
    "hold_over": _hold_over,
    "hold_begun_ms": _hold_begun_ms,
    "milk_temps": _milk_temps,
}
for name in CHART:
    KNOWN["chart_" + name] = _noted(name)
