"""What a make knows of its whey and water: drained, let in, left in the vat.

The wash that a step speaks of is its own, else the next that warms the curd.
"""

from ...formulas.usual import AQUEOUS_FRAC, WHEY_FRAC
from ...log.readings import every, within
from ...make.facts import readings_in
from ...units.liquids import WATER_KG_L, WHEY_KG_L
from ..origins import from_make, from_recipe, of_figure
from ..wanted import wanted
from .temps import next_wash

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import KnownValue, Scene, State


def _kg_read(
    state: "State", quantity: str, kg_l: float, before_ms: "int | None" = None
) -> float:
    """Return all that was read of a volume, up to an instant, as a mass [kg]."""
    litres = [
        entry["data"]["value"]
        for entry in every(state, quantity)
        if before_ms is None or entry["t_ms"] < before_ms
    ]
    return sum(litres) * kg_l


def _drained_kg(state: "State", before_ms: "int | None" = None) -> float:
    return _kg_read(state, "whey_drained_l", WHEY_KG_L, before_ms)


def _let_in_kg(state: "State", before_ms: "int | None" = None) -> float:
    return _kg_read(state, "water_added_l", WATER_KG_L, before_ms)


def kg_in_vat(state: "State", milk_kg: float, before_ms: "int | None") -> float:
    """Return milk less whey drawn off plus water let in [kg].

    Args:
        state: State of the make.
        milk_kg: milk that it began with [kg].
        before_ms: only what was read before this instant counts [ms]; None for all.
    """
    return milk_kg - _drained_kg(state, before_ms) + _let_in_kg(state, before_ms)


def vat_kg_now(scene: "Scene", before_ms: "int | None" = None) -> float:
    """Return what is in the vat of the make that asks [kg].

    Args:
        scene: see `inputs.scene`.
        before_ms: as for `kg_in_vat` [ms].
    """
    return kg_in_vat(scene["state"], scene["context"]["milk"]["milk_kg"], before_ms)


def _vat_kg(scene: "Scene") -> "KnownValue | None":
    # The step's own water is not in yet, or is counted as added.
    kg = vat_kg_now(scene, scene["fact"]["begun_ms"])
    return from_make(kg) if kg > 0 else None


def _contents_kg(scene: "Scene") -> "KnownValue | None":
    kg = vat_kg_now(scene)
    return from_make(kg) if kg > 0 else None


def _drained_before_kg(scene: "Scene") -> "KnownValue":
    return from_make(_drained_kg(scene["state"], scene["fact"]["begun_ms"]))


def _water_in_kg(scene: "Scene") -> "KnownValue":
    return from_make(_let_in_kg(scene["state"], scene["fact"]["begun_ms"]))


def _water_added_kg(scene: "Scene") -> "KnownValue":
    return from_make(_let_in_kg(scene["state"]))


def _added_kg(scene: "Scene") -> "KnownValue | None":
    entries = readings_in(scene["state"], scene["fact"], "water_added_l")
    if not entries:
        return None
    return from_make(sum(entry["data"]["value"] for entry in entries) * WATER_KG_L)


def _target_of_wash(scene: "Scene", quantity: str) -> "dict[str, Any] | None":
    return wanted(scene, "target/" + quantity, next_wash(scene))


def _water_temp_c(scene: "Scene") -> "KnownValue | None":
    """Return how warm the water is: as read, else as its recipe wants it.

    What is read after this step is of another wash.
    """
    read = within(scene["state"], "water_temp_c", None, scene["fact"]["ended_ms"])
    return from_make(read[-1]["data"]["value"]) if read else _water_wanted_c(scene)


def _water_planned_c(scene: "Scene") -> "KnownValue | None":
    """Return how warm the water of the wash to come will be.

    What was read is of an earlier wash, or of water that is still heating up.
    """
    wanted = _water_wanted_c(scene)
    return _water_temp_c(scene) if wanted is None else wanted


def _water_wanted_c(scene: "Scene") -> "KnownValue | None":
    figure = _target_of_wash(scene, "water_temp_c")
    return None if figure is None else of_figure(figure)


def _water_kg(scene: "Scene") -> "KnownValue | None":
    figure = _target_of_wash(scene, "water_added_l")
    return None if figure is None else of_figure(figure, WATER_KG_L)


def _drain_frac(scene: "Scene") -> "KnownValue | None":
    figure = wanted(scene, "target/whey_drained_l")
    if figure is None:
        return None
    whey_l = scene["context"]["milk"]["milk_kg"] * WHEY_FRAC / WHEY_KG_L
    return of_figure(figure, 1.0 / whey_l)


def _washes(scene: "Scene") -> "KnownValue | None":
    """Return each wash so far: whey off before it, then its water."""
    timeline = [
        (entry["t_ms"], quantity, entry["data"]["value"])
        for quantity in ("whey_drained_l", "water_added_l")
        for entry in every(scene["state"], quantity)
    ]
    washes = []
    off_kg = 0.0
    for _, quantity, litres in sorted(timeline):
        if quantity == "whey_drained_l":
            off_kg += litres * WHEY_KG_L
        else:
            washes.append({"drained_kg": off_kg, "water_kg": litres * WATER_KG_L})
            off_kg = 0.0
    return from_make(washes) if washes else None


def _aqueous_kg(scene: "Scene") -> "KnownValue":
    return from_recipe(
        scene["context"]["milk"]["milk_kg"] * AQUEOUS_FRAC,
        "derived",
        "water_phase_of_milk",
    )


KNOWN = {
    "contents_kg": _contents_kg,
    "vat_kg": _vat_kg,
    "drained_before_kg": _drained_before_kg,
    "water_in_kg": _water_in_kg,
    "water_added_kg": _water_added_kg,
    "added_kg": _added_kg,
    "water_temp_c": _water_temp_c,
    "water_planned_c": _water_planned_c,
    "water_kg": _water_kg,
    "drain_frac": _drain_frac,
    "washes": _washes,
    "aqueous_kg": _aqueous_kg,
}
