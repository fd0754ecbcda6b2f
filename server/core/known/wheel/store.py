"""What a make knows of its time in the store: warmth read there, days that count.

Curing counts wherever the wheels were since they were moulded, as a thermometer
shows it; ripening is the store's alone.
"""

from ...heat.thermometer import as_typed, unit_read
from ...log.readings import every, together
from ..origins import from_make
from ..vat.temps import minutes, table

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import KnownValue, Scene


PLACES = ("room_temp_c", "brine_temp_c", "store_temp_c")


def _store_temps(scene: "Scene") -> "KnownValue | None":
    entries = every(scene["state"], "store_temp_c")
    if not entries:
        return None
    return from_make(table(entries, entries[0]["t_ms"], "value"))


def _start_ms(scene: "Scene") -> "int | None":
    """Return when the last wheels were moulded [ms], or None before."""
    times = []
    for step in scene["recipe"]["steps"]:
        fact = scene["context"]["facts"][step["key"]]
        if step.get("mould") and fact["ended_ms"] is not None:
            times.append(fact["ended_ms"])
    return max(times) if times else None


def _curing_start_ms(scene: "Scene") -> "KnownValue | None":
    start_ms = _start_ms(scene)
    return None if start_ms is None else from_make(start_ms)


def _now_min(scene: "Scene") -> "KnownValue | None":
    start_ms = _start_ms(scene)
    return None if start_ms is None else from_make(minutes(scene["now_ms"], start_ms))


def _shown(scene: "Scene") -> "dict[str, Any] | None":
    """Return {"unit", "readings" [(instant, number)]} of the thermometers, or None."""
    start_ms = _start_ms(scene)
    if start_ms is None:
        return None
    entries = together(scene["state"], PLACES, start_ms)
    unit = unit_read(entries)
    typed = [(entry["t_ms"], as_typed(entry, unit)) for entry in entries]
    readings = [(at_ms, temp) for at_ms, temp in typed if temp is not None]
    return {"unit": unit, "readings": readings} if readings else None


def _curing_temps(scene: "Scene") -> "KnownValue | None":
    shown = _shown(scene)
    start_ms = _start_ms(scene)
    if shown is None or start_ms is None:
        return None
    return from_make(
        [
            {"at_min": minutes(at_ms, start_ms), "value": temp}
            for at_ms, temp in shown["readings"]
        ]
    )


def _store_thermometer(scene: "Scene") -> "KnownValue | None":
    shown = _shown(scene)
    return None if shown is None else from_make(shown["unit"])


def _cured_days(scene: "Scene") -> "KnownValue | None":
    """Return the whole days that count toward curing, from the make's own log."""
    # Loaded when the store is first asked about.
    from ...formulas.store.curing import curing_time

    rule = scene["context"]["rules"].get("us_curing")
    shown = _shown(scene)
    start_ms = _start_ms(scene)
    if rule is None or shown is None or start_ms is None:
        return None
    least = rule["rows"][0]["min_temp"].get(shown["unit"])
    if least is None or least["status"] == "memory":
        return None
    cured = curing_time(
        [{"at_ms": at_ms, "temp": temp} for at_ms, temp in shown["readings"]],
        start_ms,
        scene["now_ms"],
        least["value"],
        int(rule["gap_max_s"]["value"] * 1000),
    )
    return from_make(cured["whole_days"])


KNOWN = {
    "store_temps": _store_temps,
    "curing_temps": _curing_temps,
    "store_thermometer": _store_thermometer,
    "curing_start_ms": _curing_start_ms,
    "now_min": _now_min,
    "cured_days": _cured_days,
}
