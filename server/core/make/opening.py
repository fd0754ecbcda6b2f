"""What is known of a make about to be opened: by its recipe and by earlier makes."""

from ..formulas.milk import milk as milk_formulas
from ..log.apart import ask
from ..log.equipment import OF_VAT, has_any, in_effect
from ..log.opening import opening
from ..numbers.bounds import require_above
from .plan import USUAL_FAT_FRAC, USUAL_SNF_FRAC, USUAL_TEMP_C
from .practice import is_practice

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.equipment import EquipmentBefore
    from server.shapes.core.recipe import Recipe, RecipeMilk
    from server.shapes.core.state import Desk, State


def suggestion(recipe: "Recipe", milk_l: float) -> "dict[str, Any]":
    """Return whether the milk fits the recipe, and the wheels that it should give.

    The curd is shared among the sizes by the recipe's shares; each size gets the
    whole wheels that its share fills. What is left over is the cheesemaker's to
    place, so nothing is rounded up.

    Args:
        recipe: a sound recipe, see `recipe.check_recipe`.
        milk_l: milk that the make is opened with [L]; above 0.

    Returns:
        {"ask", "curd_kg", "moulds", "left_kg"}: ask is {"key", "limit"} when the
        milk lies outside of what the recipe is made for, else None; curd_kg is
        {"value", "low", "high"} out of the press; moulds is a list of {"size",
        "count"} in recipe order; left_kg is the curd that fills no whole wheel.

    Raises:
        ValueError: milk_l not above 0.

    Source: the recipe's own yield, wheel masses and shares.
    """
    require_above("milk_l", milk_l, 0)
    density = milk_formulas.density_kg_l(USUAL_FAT_FRAC, USUAL_SNF_FRAC, USUAL_TEMP_C)
    milk_kg = milk_l * density
    curd_kg = milk_kg * recipe["yield_frac"]["value"]
    moulds = []
    used_kg = 0.0
    for mould in recipe.get("moulds", []):
        wheel_kg = mould["wheel_kg"]["value"]
        count = int(curd_kg * mould["share_frac"]["value"] / wheel_kg)
        moulds.append({"size": mould["size"], "count": count})
        used_kg += count * wheel_kg
    return {
        "ask": _outside(recipe["milk"], milk_l),
        "curd_kg": {
            "value": curd_kg,
            "low": _times(recipe["yield_frac"].get("low"), milk_kg),
            "high": _times(recipe["yield_frac"].get("high"), milk_kg),
        },
        "moulds": moulds,
        "left_kg": curd_kg - used_kg,
    }


def equipment_before(desk: "Desk", vat: str) -> "EquipmentBefore | None":
    """Return the equipment to begin a make with: as in the newest make before it.

    The newest make in the same vat that has any goes before the newest of all;
    from another vat only what does not belong to that vat is taken over. What a
    vat showed by itself is learnt anew from its makes and is not copied. What was
    entered for practice is offered to nobody.

    Args:
        desk: Desk.
        vat: name of the vat; "" where none is said.

    Returns:
        {"equipment", "left_out", "make", "name", "vat", "opened_ms",
        "is_same_vat"}, None where no earlier make has any; left_out is a list of
        {"field", "key", "limit"} of what can no longer be, such as a gap that
        nobody is named for.
    """
    best = None
    for make_id in sorted(desk["makes"]):
        state = desk["makes"][make_id]
        earlier = ask(desk, make_id, "start", None, _equipment_of, state, vat)
        if earlier is not None and (best is None or earlier[0] > best[0]):
            best = earlier
    if best is None:
        return None
    # The limits are those of the sums, which the app starts without.
    from ..sums.equipment import check_equipment

    equipment = best[3]
    left_out: "list[Any]" = check_equipment(equipment)
    for problem in left_out:
        equipment.pop(problem["field"], None)
        equipment["typed"].pop(problem["field"], None)
    return {
        "equipment": equipment,
        "left_out": left_out,
        "make": best[1],
        "name": best[2]["name"],
        "vat": best[2].get("vat"),
        "opened_ms": best[0][1],
        "is_same_vat": best[0][0],
    }


def vats(desk: "Desk") -> "list[str]":
    """Return the names of the vats that real makes were opened in, newest first.

    Args:
        desk: Desk.
    """
    last_ms: "dict[str, int]" = {}
    for make_id in desk["makes"]:
        state = desk["makes"][make_id]
        opened = opening(state)
        vat = None if opened is None else opened["data"].get("vat")
        if opened is not None and vat and not is_practice(state):
            last_ms[vat] = max(last_ms.get(vat, 0), opened["t_ms"])
    return sorted(last_ms, key=lambda vat: (-last_ms[vat], vat))


def _equipment_of(
    state: "State", vat: str
) -> "tuple[tuple[bool, int], str, dict[str, Any], dict[str, Any]] | None":
    """Return ((whether of this vat, when opened), make, opening, equipment) or None."""
    opened = opening(state)
    if opened is None or is_practice(state):
        return None
    body = opened["data"]
    is_same = bool(vat) and body.get("vat") == vat
    equipment = _taken_over(in_effect(state), is_same)
    if not has_any(equipment):
        return None
    return ((is_same, opened["t_ms"]), state["make"], body, equipment)


def _taken_over(equipment: "dict[str, Any]", is_same: bool) -> "dict[str, Any]":
    if is_same:
        return equipment
    carried = {key: equipment[key] for key in equipment if key not in OF_VAT}
    carried["typed"] = {
        key: carried["typed"][key] for key in carried["typed"] if key not in OF_VAT
    }
    return carried


def _times(share: "float | None", milk_kg: float) -> "float | None":
    return None if share is None else milk_kg * share


def _outside(milk: "RecipeMilk", milk_l: float) -> "dict[str, Any] | None":
    if milk_l < milk["low_l"]:
        return {"key": "recipe_milk", "limit": milk["low_l"]}
    if milk_l > milk["high_l"]:
        return {"key": "recipe_milk", "limit": milk["high_l"]}
    return None
