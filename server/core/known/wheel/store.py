"""What a make knows of its time in the store: warmth read there, days that count.

Curing counts wherever the wheels were since they were moulded, as a thermometer
shows it; ripening is the store's alone.
"""

from ...heat.milk_class import RULES
from ...heat.thermometer import as_typed, unit_read
from ...log.readings import every, together
from ..origins import from_make, of_figure
from ..vat.temps import minutes, table

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import KnownValue, Scene


DAY_MS = 86400000
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
    cured = _cured(scene, scene["now_ms"])
    return None if cured is None else from_make(cured["whole_days"])


def _curing_rule(scene: "Scene") -> "dict[str, Any] | None":
    rules = scene["context"]["rules"]
    table = rules.get(RULES)
    return None if table is None else rules.get(table["curing_rule"]["value"])


def _cured(scene: "Scene", now_ms: int) -> "dict[str, float] | None":
    """Return the time that counts toward curing up to an instant, or None."""
    # Loaded when the store is first asked about.
    from ...formulas.store.curing import curing_time

    rule = _curing_rule(scene)
    shown = _shown(scene)
    start_ms = _start_ms(scene)
    if rule is None or shown is None or start_ms is None or now_ms < start_ms:
        return None
    least = rule["rows"][0]["min_temp"].get(shown["unit"])
    if least is None or least["status"] == "memory":
        return None
    return curing_time(
        [{"at_ms": at_ms, "temp": temp} for at_ms, temp in shown["readings"]],
        start_ms,
        now_ms,
        least["value"],
        int(rule["gap_max_s"]["value"] * 1000),
    )


def _curing_met_ms(scene: "Scene") -> "KnownValue | None":
    """Return the first instant at which the days of curing may be over [ms].

    The time since the last reading is taken to count for as long as one that
    comes now would bridge it: else the instant would run away between readings.
    """
    start_ms, rule = _start_ms(scene), _curing_rule(scene)
    if start_ms is None or rule is None:
        return None
    needed_ms = rule["rows"][0]["days"]["value"] * DAY_MS
    shown, cured = _shown(scene), _cured(scene, scene["now_ms"])
    if shown is None or cured is None:
        return from_make(max(start_ms, _bridged_ms(scene, rule, start_ms)) + needed_ms)
    from_ms = _bridged_ms(scene, rule, shown["readings"][-1][0])
    return from_make(from_ms + max(0.0, needed_ms - cured["counted_ms"]))


def _bridged_ms(scene: "Scene", rule: "dict[str, Any]", last_ms: int) -> int:
    gap_ms = int(rule["gap_max_s"]["value"] * 1000)
    now_ms = scene["now_ms"]
    return now_ms if now_ms - last_ms > gap_ms else last_ms


def _store_own_days(scene: "Scene") -> "KnownValue | None":
    """Return how long the step that asks lasts by the recipe alone [d]."""
    lasts = scene["step"].get("lasts")
    return None if lasts is None else of_figure(lasts, 1000.0 / DAY_MS)


def _store_begun_ms(scene: "Scene") -> "KnownValue | None":
    begun_ms = scene["fact"]["begun_ms"]
    return None if begun_ms is None else from_make(begun_ms)


KNOWN = {
    "store_temps": _store_temps,
    "curing_temps": _curing_temps,
    "store_thermometer": _store_thermometer,
    "curing_start_ms": _curing_start_ms,
    "now_min": _now_min,
    "cured_days": _cured_days,
    "curing_met_ms": _curing_met_ms,
    "store_own_days": _store_own_days,
    "store_begun_ms": _store_begun_ms,
}
