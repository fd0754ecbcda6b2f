"""What a make knows of its set: flocculation, rennet, and the recipe's doses."""

from ...log import run
from ...make.curd import floc_s
from ...recipe.own import ingredient
from ...units.table import UNITS, convert
from ..origins import from_make, from_recipe, of_figure

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

    from server.shapes.core.state import KnownValue, Scene


def _floc_s(scene: "Scene") -> "KnownValue | None":
    seen_s = floc_s(scene["state"], scene["recipe"])
    return None if seen_s is None else from_make(seen_s)


def recipe_figure(name: str) -> "Callable[[Scene], KnownValue | None]":
    """Return a look-up of one of the recipe's own figures.

    Args:
        name: its name.
    """

    def look_up(scene: "Scene") -> "KnownValue | None":
        figure = (scene["recipe"].get("figures") or {}).get(name)
        return None if figure is None else of_figure(figure)

    return look_up


def target_floc(scene: "Scene") -> "KnownValue | None":
    """Return when the recipe wants flocculation, after the rennet [s], or None.

    Args:
        scene: see `inputs.scene`.
    """
    factor = (scene["recipe"].get("figures") or {}).get("floc_factor")
    for step in scene["recipe"]["steps"]:
        if step["end"]["by"] == "floc" and step.get("lasts") and factor:
            lasts = step["lasts"]
            wanted_s = lasts["value"] / factor["value"]
            return from_recipe(wanted_s, lasts["status"], lasts["source"])
    return None


def _tested_every_s(scene: "Scene") -> "KnownValue | None":
    for step in scene["recipe"]["steps"]:
        if step["end"]["by"] != "floc":
            continue
        looks = run.entries(scene["state"], "curd_judged", step["key"])
        for index in range(1, len(looks)):
            if looks[index]["data"]["judgement"] == "flocculated":
                gap_ms = looks[index]["t_ms"] - looks[index - 1]["t_ms"]
                return from_make(gap_ms / 1000.0)
    return None


def _rennet_ml(scene: "Scene") -> "KnownValue | None":
    entry = run.last(scene["state"], "ingredient_added", "rennet")
    if entry is None or entry["data"]["unit"] != "mL":
        return None
    return from_make(entry["data"]["amount"])


def _dose(name: str, unit: str) -> "Callable[[Scene], KnownValue | None]":
    """Look up the recipe's dose of an ingredient in a unit; another cannot serve."""

    def look_up(scene: "Scene") -> "KnownValue | None":
        dosed = ingredient(scene["recipe"], name)
        if dosed is None:
            return None
        figure = dosed["dose"]["amount"]
        times = _times(scene, figure["unit"], unit)
        return None if times is None else of_figure(figure, times)

    return look_up


def _times(scene: "Scene", given: str, wanted: str) -> "float | None":
    times = 1.0
    if given == "g/L":  # by the make's own litres and kilograms
        milk = scene["context"]["milk"]
        times, given = float(milk["milk_l"] / milk["milk_kg"]), "g/kg"
    if UNITS[given]["dimension"] != UNITS[wanted]["dimension"]:
        return None
    return convert(times, given, wanted)


KNOWN = {
    "floc_s": _floc_s,
    "floc_factor": recipe_figure("floc_factor"),
    "dilution_times": recipe_figure("rennet_dilution"),
    "target_floc_s": target_floc,
    "tested_every_s": _tested_every_s,
    "rennet_ml": _rennet_ml,
    "starter_frac": _dose("starter_bulk", "kg/kg"),
    "dose_g_per_kg": _dose("calcium_chloride", "g/kg"),
    "dose_ml_per_t": _dose("annatto", "mL/t"),
}
