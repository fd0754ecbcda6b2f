"""What a make knows of its acid: readings of pH and the recipe's curve."""

from ..log.readings import one_an_instant, together, within
from .found import from_make, from_recipe
from .temps import TEMPS, table


def curve_start_ms(place: dict) -> "int | None":
    """Return the instant at which the recipe's curve begins in this make [ms].

    Args:
        place: see `known.scene`.
    """
    curve = place["recipe"].get("curve")
    if not curve:
        return None
    return place["context"]["facts"][curve["start_step"]]["begun_ms"]


def _ph_readings(place):
    start_ms = curve_start_ms(place)
    if start_ms is None:
        return None
    entries = one_an_instant(within(place["state"], "ph", start_ms))
    return from_make(table(entries, start_ms, "ph")) if entries else None


def _curve(place):
    curve = place["recipe"].get("curve")
    if not curve:
        return None
    rows = [
        {"at_min": curve["times_s"][i] / 60.0, "ph": curve["phs"][i]}
        for i in range(len(curve["phs"]))
    ]
    return from_recipe(rows, curve["status"], curve["source"])


def _targets(place):
    """Return the pH that each step still to come wants, as far as the curve goes."""
    curve = place["recipe"].get("curve")
    if not curve:
        return None
    rows = []
    for step in place["recipe"]["steps"]:
        fact = place["context"]["facts"][step["key"]]
        if fact["ended_ms"] is not None or step["key"] == curve["start_step"]:
            continue
        for target in step.get("targets", []):
            ph = target["figure"]["value"]
            if target["quantity"] == "ph" and curve["phs"][-1] <= ph < curve["phs"][0]:
                rows.append({"of": step["key"], "ph": ph})
    return from_recipe(rows, "derived", "the recipe's targets") if rows else None


def _curd_temps(place):
    start_ms = curve_start_ms(place)
    if start_ms is None:
        return None
    entries = one_an_instant(together(place["state"], TEMPS[:2], start_ms))
    if len(entries) < 2:
        return None
    return from_make(table(entries, start_ms, "value"))


KNOWN = {
    "ph_readings": _ph_readings,
    "curve": _curve,
    "targets": _targets,
    "curd_temps": _curd_temps,
}
