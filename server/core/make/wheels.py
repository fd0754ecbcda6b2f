"""The wheels of a make: how many of each size, which sizes it has, what they weigh."""

from ..log import run
from ..log.opening import opening
from ..log.readings import every

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeMould
    from server.shapes.core.state import Entry, State
    from server.shapes.core.step import Mould


def wheels(state: "State") -> "list[Mould]":
    """Return the wheels planned and moulded of each size of the recipe.

    Args:
        state: State of the make.

    Returns:
        List of {"size", "title", "planned", "moulded"} in recipe order; planned
        None when no count was given. Empty before the opening is known.
    """
    opened = opening(state)
    if opened is None:
        return []
    data = opened["data"]
    planned = {mould["size"]: mould["count"] for mould in data.get("moulds") or []}
    return [
        {
            "size": mould["size"],
            "title": mould["title"],
            "planned": planned.get(mould["size"]),
            "moulded": moulded(state, mould["size"]),
        }
        for mould in data["recipe"].get("moulds", [])
    ]


def moulded(state: "State", size: str) -> int:
    """Return how many wheels of a size were moulded.

    Args:
        state: State of the make.
        size: size of wheel.
    """
    return sum(entry["data"]["count"] for entry in _moulding(state, size))


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
    opened = opening(state)
    if opened is None:
        return []
    sizes = sizes_used(state) if size is None else [size]
    moulds = opened["data"]["recipe"].get("moulds", [])
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
