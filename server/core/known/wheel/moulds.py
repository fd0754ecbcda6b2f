"""What a make knows of its moulds and of the curd that fills them."""

from ...log.readings import every
from ...make.wheels import moulds_used
from ..origins import from_make, from_recipe, of_figure
from ..vat.milk import as_read, read_last

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable, Mapping
    from typing import Any

    from server.shapes.core.recipe import RecipeMould
    from server.shapes.core.state import KnownValue, Scene


def _moulds(scene: "Scene") -> "list[RecipeMould]":
    """Return the moulds in use, or the one of the size asked about."""
    return moulds_used(scene["state"], scene["size"])


def _figure(name: str) -> "Callable[[Scene], KnownValue | None]":
    """Look up a figure of the only mould there is to ask about."""

    def look_up(scene: "Scene") -> "KnownValue | None":
        moulds = _moulds(scene)
        figures: "Mapping[str, Any]" = moulds[0] if len(moulds) == 1 else {}
        return of_figure(figures[name]) if figures else None

    return look_up


def _sizes(scene: "Scene") -> "KnownValue | None":
    sizes = [{"wheel_kg": mould["wheel_kg"]["value"]} for mould in _moulds(scene)]
    return from_recipe(sizes, "derived", "recipe_moulds") if sizes else None


def _size_names(scene: "Scene") -> "KnownValue":
    return from_make([mould["size"] for mould in _moulds(scene)])


def _to_press(scene: "Scene") -> "KnownValue | None":
    beside = scene["equipment"].get("side_by_side") or 1
    sizes = [
        {"diameter_m": mould["diameter_m"]["value"], "side_by_side": beside}
        for mould in _moulds(scene)
    ]
    return from_recipe(sizes, "derived", "recipe_moulds") if sizes else None


def _by_mass(scene: "Scene") -> "list[RecipeMould]":
    return sorted(
        _moulds(scene), key=lambda mould: (mould["wheel_kg"]["value"], mould["size"])
    )


def _large_kg(scene: "Scene") -> "KnownValue | None":
    moulds = _by_mass(scene)
    return of_figure(moulds[-1]["wheel_kg"]) if moulds else None


def _small_kg(scene: "Scene") -> "KnownValue | None":
    moulds = _by_mass(scene)
    return of_figure(moulds[0]["wheel_kg"]) if len(moulds) > 1 else None


def _share_large_frac(scene: "Scene") -> "KnownValue | None":
    moulds = _by_mass(scene)
    return of_figure(moulds[-1]["share_frac"]) if len(moulds) == 2 else None


def _curd_kg(scene: "Scene") -> "KnownValue":
    milk_kg = scene["context"]["milk"]["milk_kg"]
    return of_figure(scene["recipe"]["yield_frac"], milk_kg)


def _gauge_kpa(scene: "Scene") -> "KnownValue | None":
    """Return what the gauge of the size asked about showed last."""
    used = [mould["size"] for mould in moulds_used(scene["state"])]
    # One that names no size is of the only one there is.
    sizes = [scene["size"]] if len(used) > 1 else [None] + used
    entries = every(scene["state"], "press_gauge_kpa")
    of_size = [entry for entry in entries if entry["data"].get("place") in sizes]
    return as_read(of_size[-1]) if of_size else None


KNOWN = {
    "sizes": _sizes,
    "size_names": _size_names,
    "moulds": _to_press,
    "diameter_m": _figure("diameter_m"),
    "height_m": _figure("height_m"),
    "large_kg": _large_kg,
    "small_kg": _small_kg,
    "share_large_frac": _share_large_frac,
    "curd_kg": _curd_kg,
    "gauge_kpa": _gauge_kpa,
    "laid_on_kg": read_last("bed_load_kg"),
}
