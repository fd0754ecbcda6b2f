"""The wheels of a make: how many of each size, which sizes it has, what they weigh."""

from ..log import run
from ..log.opening import opening, recipe_of
from ..log.readings import every, last

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeMould
    from server.shapes.core.state import Entry, State
    from server.shapes.core.step import Mould


# Milk within this of what was planned is as planned: metering and dipstick differ by
# as much. Our own judgement, as the recipes' band for the milk that is received.
AS_PLANNED_FRAC = 0.03
USUAL_DENSITY_KG_L = 1.03  # of a volume that was not metered; whole milk


def wheels(state: "State") -> "list[Mould]":
    """Return the wheels planned and moulded of each size of the recipe.

    Args:
        state: State of the make.

    Returns:
        List of {"size", "title", "planned", "suggested", "moulded"} in recipe order;
        planned None when no count was given; suggested is as many of these as the
        milk that came fills. Empty before the opening is known.
    """
    opened, recipe = opening(state), recipe_of(state)
    if opened is None or recipe is None:
        return []
    planned = {
        mould["size"]: mould["count"] for mould in opened["data"].get("moulds") or []
    }
    share = _milk_share(state, opened["data"])
    return [
        {
            "size": mould["size"],
            "title": mould["title"],
            "planned": planned.get(mould["size"]),
            "suggested": _suggested(planned.get(mould["size"]), share),
            "moulded": moulded(state, mould["size"]),
        }
        for mould in recipe.get("moulds", [])
    ]


def _milk_share(state: "State", opened: "dict[str, Any]") -> float:
    """Return how much of the milk that was planned has come; 1.0 where unmeasured."""
    volume, mass = last(state, "milk_volume_l"), last(state, "milk_mass_kg")
    came: "Any" = None
    if volume is not None:
        came = volume["data"]["value"]
    elif mass is not None:
        came = mass["data"]["value"] / USUAL_DENSITY_KG_L
    share: float = 1.0 if came is None else came / opened["milk_l"]
    return share if abs(share - 1.0) > AS_PLANNED_FRAC else 1.0


def _suggested(planned: "int | None", share: float) -> "int | None":
    # Rounded down: curd for half a mould fills none. What is left over, and how it
    # is shared best, the sum of the wheel plan tells.
    return None if planned is None else int(planned * share + 1e-9)


def moulded(state: "State", size: str) -> int:
    """Return how many wheels of a size were moulded.

    Args:
        state: State of the make.
        size: size of wheel.
    """
    return sum(entry["data"]["count"] for entry in _moulding(state, size))


def all_moulded(state: "State") -> int:
    """Return how many wheels of all sizes were moulded, as far as is known.

    Args:
        state: State of the make.
    """
    return sum(mould["moulded"] for mould in wheels(state))


def _moulding(state: "State", size: str) -> "list[Entry]":
    return run.entries(state, "wheels_moulded", size)


def sizes_used(state: "State") -> "list[str]":
    """Return the sizes of wheel that a make has; all while nobody has said.

    A size that was moulded is used, whether it was planned or not.

    Args:
        state: State of the make.
    """
    sizes = wheels(state)
    used = [size["size"] for size in sizes if size["planned"] or size["moulded"]]
    return used or [size["size"] for size in sizes]


def moulds_used(state: "State", size: "str | None" = None) -> "list[RecipeMould]":
    """Return the moulds of the recipe that a make uses.

    Args:
        state: State of the make.
        size: only the mould of this size; None for all in use.
    """
    recipe = recipe_of(state)
    if recipe is None:
        return []
    sizes = sizes_used(state) if size is None else [size]
    moulds = recipe.get("moulds", [])
    return [mould for mould in moulds if mould["size"] in sizes]


def weighings(state: "State", size: "str | None") -> "list[Entry]":
    """Return the weighings of single wheels of a size, oldest first.

    The place of the reading names the size. One that names none is of the only
    size that was moulded; before that, of the only one in use.

    Args:
        state: State of the make.
        size: size of wheel; None for weighings that name none.

    Returns:
        List of entries, see `run.entries`.
    """
    wanted = [size, None] if _only_size(state) == size else [size]
    return [
        entry
        for entry in every(state, "wheel_mass_kg")
        if (entry["data"].get("place") or None) in wanted
    ]


def _only_size(state: "State") -> "str | None":
    sizes = _sizes_moulded(state) or sizes_used(state)
    return sizes[0] if len(sizes) == 1 else None


def _sizes_moulded(state: "State") -> "list[str]":
    return [size["size"] for size in wheels(state) if size["moulded"]]


def cheese_kg(state: "State") -> "float | None":
    """Return the mass of all wheels moulded, or None where a size was not weighed.

    Args:
        state: State of the make.

    Returns:
        Mass [kg]: of each size the count times the mean of its weighed wheels,
        else the mass told when they were moulded.
    """
    total_kg = 0.0
    for size in _sizes_moulded(state):
        kg = _size_kg(state, size)
        if kg is None:
            return None
        total_kg += kg
    return total_kg if total_kg > 0.0 else None


def _size_kg(state: "State", size: str) -> "float | None":
    kgs = [entry["data"]["value"] for entry in weighings(state, size)]
    if kgs:
        return moulded(state, size) * sum(kgs) / len(kgs)
    told: "list[Any]" = [
        filled["data"].get("mass_kg") for filled in _moulding(state, size)
    ]
    return None if any(kg is None for kg in told) else sum(told)
