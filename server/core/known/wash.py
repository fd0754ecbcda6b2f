"""What a make knows of its whey and water: drained, let in, left in the vat."""

from ..log.readings import every, last
from ..make.facts import readings_in
from ..recipe.figures import scaled_figure
from ..units.liquids import WATER_KG_L, WHEY_KG_L
from .found import from_make, from_recipe, of_figure

AQUEOUS_FRAC = 0.94  # water phase of milk with its lactose; facts' worked wash


def _sum_of(place, quantity, before_ms=None):
    total = 0.0
    for entry in every(place["state"], quantity):
        if before_ms is None or entry["t_ms"] < before_ms:
            total += entry["data"]["value"]
    return total


def vat_kg_now(place: dict, before_ms: "int | None" = None) -> float:
    """Return milk less whey drawn off plus water let in so far [kg].

    Args:
        place: see `known.scene`.
        before_ms: only what was read before this instant counts [ms]; None for all.
    """
    milk_kg = place["context"]["milk"]["milk_kg"]
    off_kg = _sum_of(place, "whey_drained_l", before_ms) * WHEY_KG_L
    in_kg = _sum_of(place, "water_added_l", before_ms) * WATER_KG_L
    return milk_kg - off_kg + in_kg


def _vat_kg(place):
    # The step's own water is not in yet, or is counted as added.
    kg = vat_kg_now(place, place["fact"]["begun_ms"])
    return from_make(kg) if kg > 0 else None


def _contents_kg(place):
    kg = vat_kg_now(place)
    return from_make(kg) if kg > 0 else None


def _drained_before_kg(place):
    return from_make(
        _sum_of(place, "whey_drained_l", place["fact"]["begun_ms"]) * WHEY_KG_L
    )


def _water_in_kg(place):
    return from_make(
        _sum_of(place, "water_added_l", place["fact"]["begun_ms"]) * WATER_KG_L
    )


def _added_kg(place):
    found = readings_in(place["state"], place["fact"], "water_added_l")
    if not found:
        return None
    return from_make(sum(entry["data"]["value"] for entry in found) * WATER_KG_L)


def next_wash(place: dict) -> "dict | None":
    """Return the step from this one on that warms the curd, or None.

    Args:
        place: see `known.scene`.
    """
    is_later = False
    for step in place["recipe"]["steps"]:
        is_later = is_later or step["key"] == place["step"]["key"]
        end = step["end"]
        if is_later and end["by"] == "reading" and end["quantity"] == "curd_temp_c":
            return step
    return None


def _wash_figure(place, quantity):
    step = place["step"]
    if place["key"] == "wash_drain":
        step = next_wash(place) or step
    for target in step.get("targets", []):
        if target["quantity"] == quantity:
            milk_l = place["context"]["milk"]["milk_l"]
            return scaled_figure(target["figure"], milk_l)
    return None


def _water_temp_c(place):
    entry = last(place["state"], "water_temp_c")
    if entry is not None and place["key"] != "wash_drain":
        return from_make(entry["data"]["value"])
    figure = _wash_figure(place, "water_temp_c")
    if figure is not None:
        return of_figure(figure)
    return None if entry is None else from_make(entry["data"]["value"])


def _water_kg(place):
    if place["topic"] == "yield":
        return from_make(_sum_of(place, "water_added_l") * WATER_KG_L)
    figure = _wash_figure(place, "water_added_l")
    if figure is None:
        return None
    ends = [
        None if figure.get(name) is None else figure[name] * WATER_KG_L
        for name in ("value", "low", "high")
    ]
    return from_recipe(ends[0], figure["status"], figure["source"], ends[1], ends[2])


def _drain_frac(place):
    for target in place["step"].get("targets", []):
        if target["quantity"] == "whey_drained_l":
            milk = place["context"]["milk"]
            figure = scaled_figure(target["figure"], milk["milk_l"])
            whey_l = milk["milk_kg"] * 0.89 / WHEY_KG_L
            share = [
                None if figure.get(name) is None else figure[name] / whey_l
                for name in ("value", "low", "high")
            ]
            return from_recipe(
                share[0], figure["status"], figure["source"], share[1], share[2]
            )
    return None


def _washes(place):
    """Return each wash so far: whey off before it, then its water."""
    rows = []
    off_kg = 0.0
    timeline = []
    for quantity in ("whey_drained_l", "water_added_l"):
        for entry in every(place["state"], quantity):
            timeline.append((entry["t_ms"], quantity, entry["data"]["value"]))
    for _, quantity, litres in sorted(timeline):
        if quantity == "whey_drained_l":
            off_kg += litres * WHEY_KG_L
        else:
            rows.append({"drained_kg": off_kg, "water_kg": litres * WATER_KG_L})
            off_kg = 0.0
    return from_make(rows) if rows else None


def _aqueous_kg(place):
    return from_recipe(
        place["context"]["milk"]["milk_kg"] * AQUEOUS_FRAC,
        "derived",
        "water phase of milk, 94 kg of 100",
    )


KNOWN = {
    "contents_kg": _contents_kg,
    "vat_kg": _vat_kg,
    "drained_before_kg": _drained_before_kg,
    "water_in_kg": _water_in_kg,
    "added_kg": _added_kg,
    "water_temp_c": _water_temp_c,
    "water_kg": _water_kg,
    "drain_frac": _drain_frac,
    "washes": _washes,
    "aqueous_kg": _aqueous_kg,
}
