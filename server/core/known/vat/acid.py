"""What a make knows of its acid: readings of pH and the recipe's curve."""

from ...log.readings import one_an_instant, together, within
from ..origins import from_make, from_recipe
from ..wanted import wanted
from .temps import IN_VAT, minutes, table

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import KnownValue, Scene


def _curve_of(scene: "Scene") -> "dict[str, Any]":
    return dict(scene["recipe"].get("curve") or {})


def _start_ms(scene: "Scene") -> "int | None":
    """Return the instant at which the recipe's curve begins in this make [ms]."""
    curve = _curve_of(scene)
    if not curve:
        return None
    begun_ms = scene["context"]["facts"][curve["start_step"]]["begun_ms"]
    return None if begun_ms is None else int(begun_ms)


def _curve_start_ms(scene: "Scene") -> "KnownValue | None":
    start_ms = _start_ms(scene)
    return None if start_ms is None else from_make(start_ms)


def _curve_now_min(scene: "Scene") -> "KnownValue | None":
    start_ms = _start_ms(scene)
    return None if start_ms is None else from_make(minutes(scene["now_ms"], start_ms))


def _ph_readings(scene: "Scene") -> "KnownValue | None":
    start_ms = _start_ms(scene)
    if start_ms is None:
        return None
    entries = one_an_instant(within(scene["state"], "ph", start_ms))
    return from_make(table(entries, start_ms, "ph")) if entries else None


def _curd_temps(scene: "Scene") -> "KnownValue | None":
    start_ms = _start_ms(scene)
    if start_ms is None:
        return None
    entries = one_an_instant(together(scene["state"], IN_VAT, start_ms))
    if len(entries) < 2:
        return None
    return from_make(table(entries, start_ms, "value"))


def _curve(scene: "Scene") -> "KnownValue | None":
    curve = _curve_of(scene)
    if not curve:
        return None
    points = [
        {"at_min": curve["times_s"][i] / 60.0, "ph": curve["phs"][i]}
        for i in range(len(curve["phs"]))
    ]
    return from_recipe(points, curve["status"], curve["source"])


def _targets(scene: "Scene") -> "KnownValue | None":
    """Return the pH that each step still to come wants, as far as the curve goes."""
    curve = _curve_of(scene)
    if not curve:
        return None
    targets = []
    for step in scene["recipe"]["steps"]:
        fact = scene["context"]["facts"][step["key"]]
        if fact["ended_ms"] is None and step["key"] != curve["start_step"]:
            figure = wanted(scene, "target/ph", step)
            if figure is not None and _is_on(curve, figure["value"]):
                targets.append({"of": step["key"], "ph": figure["value"]})
    return from_recipe(targets, "derived", "recipe_targets") if targets else None


def _is_on(curve: "dict[str, Any]", ph: float) -> bool:
    return bool(curve["phs"][-1] <= ph < curve["phs"][0])


KNOWN = {
    "ph_readings": _ph_readings,
    "curve": _curve,
    "targets": _targets,
    "curd_temps": _curd_temps,
    "curve_start_ms": _curve_start_ms,
    "curve_now_min": _curve_now_min,
}
