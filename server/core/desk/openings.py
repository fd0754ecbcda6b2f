"""What a make is opened with: vat, wheels, and what the creamery has.

All but the first is loaded when it is asked for: the app starts without it.
"""

from ..log.equipment import altered, has_any, of_make
from ..recipe.treatments import allowed, usual

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.equipment import (
        Equipment,
        EquipmentAltered,
        EquipmentBefore,
        EquipmentRow,
        EquipmentSet,
    )
    from server.shapes.core.recipe import Recipe, RecipeChoice, Treatment
    from server.shapes.core.state import Desk


def suggestion(recipe: "Recipe", milk_l: float) -> "dict[str, Any]":
    """Return whether the milk fits the recipe, and the wheels that it should give.

    Args:
        recipe: a sound recipe.
        milk_l: milk that the make is opened with [L]; above 0.

    Returns:
        {"ask", "curd_kg", "moulds", "left_kg"}, see `opening.suggestion`.
    """
    from ..make.opening import suggestion as suggested

    return suggested(recipe, milk_l)


def treatments(recipe: "Recipe") -> "list[Treatment]":
    """Return how the milk of a recipe may be treated, its usual way first.

    Args:
        recipe: a sound recipe.
    """
    first = usual(recipe)
    return [first] + [other for other in allowed(recipe) if other != first]


def options(recipe: "Recipe", treatment: "Treatment") -> "list[RecipeChoice]":
    """Return the choices of a recipe on one route, its usual option of each first.

    Args:
        recipe: a sound recipe.
        treatment: how its milk would be treated.

    Returns:
        List of {"choice", "options"}; options is a list of {"option", "title"} with
        the title of its first step.
    """
    from ..recipe.route import choices, route

    told: "list[RecipeChoice]" = []
    for step in choices(route(recipe, treatment)):
        rows = [row["options"] for row in told if row["choice"] == step["choice"]]
        if not rows:
            told.append({"choice": step["choice"], "options": []})
            rows = [told[-1]["options"]]
        if step["option"] not in [row["option"] for row in rows[0]]:
            rows[0].append({"option": step["option"], "title": step["title"]})
    return told


def batch_code(desk: "Desk", now_ms: int, tz_min: int) -> str:
    """Return a code for a make opened now, see `batches.batch_code`.

    Args:
        desk: Desk.
        now_ms: now, by the server's clock [ms].
        tz_min: the phone's time zone east of UTC [min].
    """
    from ..creamery.batches import batch_code as free_code

    return free_code(desk, now_ms, tz_min)


def vats(desk: "Desk") -> "list[str]":
    """Return the names of the vats that real makes were opened in, newest first.

    Args:
        desk: Desk.
    """
    from ..make.opening import vats as named

    return named(desk)


def equipment_of_make(desk: "Desk", make_id: str) -> "dict[str, Any]":
    """Return the equipment of a make, see `equipment.in_effect`.

    Args:
        desk: Desk.
        make_id: UUID of the make.
    """
    return of_make(desk, make_id)


def equipment_before(desk: "Desk", vat: str) -> "EquipmentBefore | None":
    """Return the equipment to begin a make with, see `opening.equipment_before`.

    Args:
        desk: Desk.
        vat: name of the vat; "" where none is said.
    """
    from ..make.opening import equipment_before as before

    return before(desk, vat)


def alter_equipment(
    equipment: "Equipment", edits: "dict[str, EquipmentSet | None]"
) -> "EquipmentAltered":
    """Return the equipment that a make is to be opened with, see `equipment.altered`.

    Args:
        equipment: what it begins with, as of `equipment_before`.
        edits: {key: what was entered instead, or None where it was taken out}.
    """
    after = altered(equipment, edits)
    return {"equipment": after, "is_any": has_any(after)}


def equipment_rows() -> "list[EquipmentRow]":
    """Return all that a creamery may have and can enter, see `equipment.layout`."""
    from ..sums.equipment import layout

    return layout()


def read_equipment(key: str, given: "dict[str, Any]") -> "dict[str, Any]":
    """Return what was typed for one thing that a creamery has.

    Args:
        key: "name" of one of `equipment_rows`.
        given: {"typed", "unit"} or {"value"}; "sure" true once the maker stands
            by an unlikely value.

    Returns:
        {"value", "typed", "problems", "ask"}, see `equipment.read`.
    """
    from ..sums.equipment import read

    return read(key, given)
