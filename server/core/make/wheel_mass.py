"""The mass of all the wheels of a make, as far as it was weighed."""

from ..log import run
from ..log.readings import every


def weighings(state: dict, size: "str | None", only_size: bool) -> "list[dict]":
    """Return the weighings of single wheels of a size, oldest first.

    The place of the reading names the size. Where a make has one size only, a
    weighing that names none is of that size.

    Args:
        state: State of the make.
        size: size of wheel; None for weighings that name none.
        only_size: whether the make has no other size.

    Returns:
        List of entries, see `run.entries`.
    """
    wanted = [size, None] if only_size else [size]
    return [
        entry
        for entry in every(state, "wheel_mass_kg")
        if (entry["data"].get("place") or None) in wanted
    ]


def cheese_kg(state: dict, recipe: dict) -> "float | None":
    """Return the mass of all wheels moulded, or None where a size was not weighed.

    Args:
        state: State of the make.
        recipe: its recipe.

    Returns:
        Mass [kg]: of each size the count times the mean of its weighed wheels,
        else the mass told when they were moulded.
    """
    sizes = [
        mould["size"]
        for mould in recipe.get("moulds", [])
        if run.entries(state, "wheels_moulded", mould["size"])
    ]
    total_kg = 0.0
    for size in sizes:
        told = run.entries(state, "wheels_moulded", size)
        count = sum(entry["data"]["count"] for entry in told)
        kgs = [
            entry["data"]["value"] for entry in weighings(state, size, len(sizes) == 1)
        ]
        masses = [entry["data"].get("mass_kg") for entry in told]
        if not count:
            continue
        if kgs:
            total_kg += count * sum(kgs) / len(kgs)
        elif all(mass is not None for mass in masses):
            total_kg += sum(masses)
        else:
            return None
    return total_kg if total_kg > 0.0 else None
