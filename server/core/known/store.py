"""What a make knows once it is out of the vat: press, wheels, store, lab."""

from ..heat.thermometer import as_typed, unit_read
from ..heat.verdict import hold_verdict
from ..log.readings import every, last_value, together
from ..make.wheels import cheese_kg, moulds_used, weighings
from . import brine as known_brine
from .found import from_make, from_recipe, of_figure
from .vat import base_ms

STORE_QUANTITIES = ("room_temp_c", "brine_temp_c", "store_temp_c")


def moulds(place: dict) -> "list[dict]":
    """Return the moulds in use, or the one of the size asked about.

    Args:
        place: see `known.scene`.
    """
    return moulds_used(place["state"], place["size"])


def _mould_figure(name):
    def look_up(place):
        rows = moulds(place)
        return of_figure(rows[0][name]) if len(rows) == 1 else None

    return look_up


def _sizes(place):
    rows = [{"wheel_kg": row["wheel_kg"]["value"]} for row in moulds(place)]
    return from_recipe(rows, "derived", "the recipe's moulds") if rows else None


def _size_names(place):
    return from_make([row["size"] for row in moulds(place)])


def _press_moulds(place):
    beside = place["equipment"].get("side_by_side") or 1
    rows = [
        {"diameter_m": row["diameter_m"]["value"], "side_by_side": beside}
        for row in moulds(place)
    ]
    return from_recipe(rows, "derived", "the recipe's moulds") if rows else None


def _by_mass(place):
    return sorted(
        moulds(place), key=lambda row: (row["wheel_kg"]["value"], row["size"])
    )


def _large_kg(place):
    rows = _by_mass(place)
    return of_figure(rows[-1]["wheel_kg"]) if rows else None


def _small_kg(place):
    rows = _by_mass(place)
    return of_figure(rows[0]["wheel_kg"]) if len(rows) > 1 else None


def _share_large_frac(place):
    rows = _by_mass(place)
    return of_figure(rows[-1]["share_frac"]) if len(rows) == 2 else None


def _curd_kg(place):
    figure = place["recipe"]["yield_frac"]
    milk_kg = place["context"]["milk"]["milk_kg"]
    ends = [
        None if figure.get(name) is None else figure[name] * milk_kg
        for name in ("value", "low", "high")
    ]
    return from_recipe(ends[0], figure["status"], figure["source"], ends[1], ends[2])


def _weighings(place):
    return weighings(place["state"], place["size"])


def _cheese_kg(place):
    total_kg = cheese_kg(place["state"])
    return None if total_kg is None else from_make(total_kg)


def _lab(quantity):
    def look_up(place):
        found = [
            entry["data"]["value"]
            for entry in every(place["state"], quantity)
            if place["size"] in (None, entry["data"].get("place"))
        ]
        return from_make(sum(found) / len(found)) if found else None

    return look_up


def _cheese_ph(place):
    told = _lab("cheese_ph")(place)
    if told is not None:
        return told
    ph = last_value(place["state"], "ph")
    return None if ph is None else from_make(ph)


def _store_temps(place):
    start_ms = base_ms(place)
    if start_ms is None:
        return None
    quantities: "tuple[str, ...]" = STORE_QUANTITIES
    if place["key"] == "ripening_days":
        quantities = STORE_QUANTITIES[2:]
    entries = together(place["state"], quantities, start_ms)
    unit = unit_read(entries) if place["key"] == "curing_days" else "C"
    rows = []
    for entry in entries:
        temp = entry["data"]["value"]
        if place["key"] == "curing_days":
            temp = as_typed(entry, unit)
        if temp is not None:
            at_min = (entry["t_ms"] - start_ms) / 60000.0
            rows.append({"at_min": at_min, "value": temp})
    return from_make(rows) if rows else None


def _thermometer(place):
    if place["key"] != "curing_days":
        return None
    entries = together(place["state"], STORE_QUANTITIES, None)
    return from_make(unit_read(entries)) if entries else None


def _cured_days(place):
    """Return the whole days that count toward curing, from the make's own log."""
    # Loaded when the store is first asked about.
    from ..formulas.store import curing

    asked = dict(place)
    asked.update({"topic": "store", "key": "curing_days"})
    rule = place["context"]["rules"].get("us_curing")
    temps = _store_temps(asked)
    unit = _thermometer(asked)
    start_ms = base_ms(asked)
    if rule is None or temps is None or unit is None or start_ms is None:
        return None
    least = rule["rows"][0]["min_temp"].get(unit["value"])
    if least is None or least["status"] == "memory":
        return None
    found = curing.curing_time(
        [
            {"at_ms": start_ms + int(row["at_min"] * 60000 + 0.5), "temp": row["value"]}
            for row in temps["value"]
        ],
        start_ms,
        place["now_ms"],
        least["value"],
        int(rule["gap_max_s"]["value"] * 1000),
    )
    return from_make(found["whole_days"])


def _wheel_kg(index):
    def look_up(place):
        found = _weighings(place)
        return from_make(found[index]["data"]["value"]) if len(found) > 1 else None

    return look_up


def _days(place):
    found = _weighings(place)
    if len(found) < 2 or found[-1]["t_ms"] == found[0]["t_ms"]:
        return None
    return from_make((found[-1]["t_ms"] - found[0]["t_ms"]) / 86400000.0)


def _milk_was(place):
    """Return what the legal table says of the milk; open where it says nothing."""
    for step in place["recipe"]["steps"]:
        fact = place["context"]["facts"][step["key"]]
        told = hold_verdict(place["state"], step, fact, place["context"]["rules"])
        if told is not None and told["class"] == "reads_as_pasteurised":
            return from_make("pasteurised")
        if told is not None and told["class"] == "heat_treated_only":
            return from_make("raw")
    return None


KNOWN = {
    "sizes": _sizes,
    "size_names": _size_names,
    "moulds": _press_moulds,
    "diameter_m": _mould_figure("diameter_m"),
    "height_m": _mould_figure("height_m"),
    "large_kg": _large_kg,
    "small_kg": _small_kg,
    "share_large_frac": _share_large_frac,
    "curd_kg": _curd_kg,
    "cheese_kg": _cheese_kg,
    "cheese_moisture_frac": _lab("cheese_moisture_frac"),
    "cheese_fat_frac": _lab("cheese_fat_frac"),
    "cheese_salt_frac": _lab("cheese_salt_frac"),
    "cheese_ph": _cheese_ph,
    "store_temps": _store_temps,
    "thermometer": _thermometer,
    "start_kg": _wheel_kg(0),
    "now_kg": _wheel_kg(-1),
    "days": _days,
    "milk_was": _milk_was,
    "cured_days": _cured_days,
}
KNOWN.update(known_brine.KNOWN)
