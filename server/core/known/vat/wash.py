"""What a make knows of its whey and water: drained, let in, left in the vat.

The wash that a step speaks of is its own, else the next that warms the curd.
"""

from ...formulas.curd.wash import mixed_temp_c, water_density_kg_l
from ...formulas.usual import AQUEOUS_FRAC, WHEY_FRAC
from ...log.readings import every, together, within
from ...make.facts import readings_in
from ...recipe.own import own_figure
from ...sums.curd.wash_water import READ_K, VAT_CP_J_KG_K
from ...units.liquids import WATER_KG_L, WHEY_KG_L
from ..origins import from_make, from_recipe, of_figure
from ..wanted import wanted
from .temps import IN_VAT, is_wash, next_wash

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.figures import OwnFigure
    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Fact, KnownValue, Scene, State


MOST_LOSS_K = 3.0  # a vat that seems to lose more was not read as it was; practice


def _litres(state: "State", quantity: str, before_ms: "int | None") -> float:
    """Return all that was read of a volume, up to an instant [L]."""
    litres = [
        entry["data"]["value"]
        for entry in every(state, quantity)
        if before_ms is None or entry["t_ms"] < before_ms
    ]
    return float(sum(litres))


def _drained_kg(state: "State", before_ms: "int | None" = None) -> float:
    return _litres(state, "whey_drained_l", before_ms) * WHEY_KG_L


def _let_in_l(state: "State", before_ms: "int | None" = None) -> float:
    return _litres(state, "water_added_l", before_ms)


def _let_in_kg(state: "State", before_ms: "int | None" = None) -> float:
    return _let_in_l(state, before_ms) * WATER_KG_L


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

    What is read after this step is of another wash, and so is what was read before
    the last wash was over.
    """
    until_ms = scene["fact"]["ended_ms"]
    read = within(scene["state"], "water_temp_c", _last_wash_ms(scene), until_ms)
    return from_make(read[-1]["data"]["value"]) if read else _water_wanted_c(scene)


def _last_wash_ms(scene: "Scene") -> "int | None":
    """Return when the wash before this step was over, or None [ms]."""
    told = None
    for step in scene["recipe"]["steps"]:
        if step["key"] == scene["step"]["key"]:
            break
        if is_wash(step):
            told = scene["context"]["facts"][step["key"]]["ended_ms"] or told
    return told


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
    """Return the water that the recipe's washes still want, with the one to come.

    What an earlier wash took more or less is made up for: all of the water together
    washes out the milk sugar.
    """
    step = next_wash(scene)
    figure = None if step is None else _own(scene, step, "water_added_l")
    if step is None or figure is None or not figure["value"]:
        return None
    before_ms = scene["context"]["facts"][step["key"]]["begun_ms"]
    wanted_l = _water_up_to(scene, step) - _let_in_l(scene["state"], before_ms)
    if wanted_l <= 0:
        return None
    planned = _own(scene, step, "water_temp_c")
    kg_l = WATER_KG_L if planned is None else water_density_kg_l(planned["value"])
    share = wanted_l / figure["value"]
    return of_figure(figure, share * kg_l)


def _own(scene: "Scene", step: "RecipeStep", quantity: str) -> "OwnFigure | None":
    # A sum may answer the figure from this very water: its own is asked.
    milk, opened_l = scene["context"]["milk"], scene["opened"]["milk_l"]
    return own_figure(scene["recipe"], step, "target/" + quantity, milk, opened_l)


def _water_up_to(scene: "Scene", last: "RecipeStep") -> float:
    """Return the water of the recipe's washes up to one of them [L]."""
    total_l = 0.0
    for step in scene["recipe"]["steps"]:
        figure = _own(scene, step, "water_added_l") if is_wash(step) else None
        total_l += 0.0 if figure is None else figure["value"] or 0.0
        if step["key"] == last["key"]:
            return total_l
    return total_l


def _loss_k(scene: "Scene") -> "KnownValue | None":
    """Return how far the last wash of this make fell short of its heat balance [K]."""
    told = None
    for step in scene["recipe"]["steps"]:
        if step["key"] == scene["step"]["key"]:
            break
        if is_wash(step):
            told = _shortfall_k(scene, scene["context"]["facts"][step["key"]])
    if told is None:
        return None
    loss_k = min(max(told, 0.0), MOST_LOSS_K)
    return from_make(loss_k, max(loss_k - READ_K, 0.0), loss_k + READ_K)


def _shortfall_k(scene: "Scene", fact: "Fact") -> "float | None":
    state, begun_ms = scene["state"], fact["begun_ms"]
    water_l = sum(
        entry["data"]["value"] for entry in readings_in(state, fact, "water_added_l")
    )
    water = readings_in(state, fact, "water_temp_c")
    after = readings_in(state, fact, "curd_temp_c")
    before = [] if begun_ms is None else together(state, IN_VAT, None, begun_ms)
    if not (water_l and water and after and before):
        return None
    water_c = water[-1]["data"]["value"]
    mixed_c = mixed_temp_c(
        vat_kg_now(scene, begun_ms),
        VAT_CP_J_KG_K,
        before[-1]["data"]["value"],
        water_l * water_density_kg_l(water_c),
        water_c,
    )
    return mixed_c - float(after[-1]["data"]["value"])


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
    "loss_k": _loss_k,
    "drain_frac": _drain_frac,
    "washes": _washes,
    "aqueous_kg": _aqueous_kg,
}
