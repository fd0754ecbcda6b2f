"""What a make knows of its set: flocculation, rennet, and the recipe's doses."""

from ..log import run
from .found import from_make, from_recipe, of_figure


def _floc_s(place):
    for step in place["recipe"]["steps"]:
        floc = place["context"]["facts"][step["key"]]["floc"]
        if floc is not None and floc["floc_s"] is not None:
            return from_make(floc["floc_s"])
    return None


def _recipe_figure(name):
    def look_up(place):
        figure = (place["recipe"].get("figures") or {}).get(name)
        return None if figure is None else of_figure(figure)

    return look_up


def _target_floc_s(place):
    factor = (place["recipe"].get("figures") or {}).get("floc_factor")
    for step in place["recipe"]["steps"]:
        if step["end"]["by"] == "floc" and step.get("lasts") and factor:
            lasts = step["lasts"]
            wanted = lasts["value"] / factor["value"]
            return from_recipe(wanted, lasts["status"], lasts["source"])
    return None


def _tested_every_s(place):
    for step in place["recipe"]["steps"]:
        if step["end"]["by"] != "floc":
            continue
        looks = run.entries(place["state"], "curd_judged", step["key"])
        for index in range(1, len(looks)):
            if looks[index]["data"]["judgement"] == "flocculated":
                gap_ms = looks[index]["t_ms"] - looks[index - 1]["t_ms"]
                return from_make(gap_ms / 1000.0)
    return None


def _rennet_ml(place):
    entry = run.last(place["state"], "ingredient_added", "rennet")
    if entry is None or entry["data"]["unit"] != "mL":
        return None
    return from_make(entry["data"]["amount"])


def _dose(ingredient, unit):
    def look_up(place):
        for row in place["recipe"]["ingredients"]:
            if row["key"] != ingredient:
                continue
            figure = row["dose"]["amount"]
            milk = place["context"]["milk"]
            scale = {"g/kg": 1.0, "kg/kg": 1.0, "mL/kg": 1000.0}.get(figure["unit"])
            if figure["unit"] == "g/L" and unit == "g/kg":
                scale = milk["milk_l"] / milk["milk_kg"]
            if scale is None:
                return None
            told = of_figure(figure)
            for name in ("value", "low", "high"):
                if told[name] is not None:
                    told[name] = told[name] * scale
            return told
        return None

    return look_up


KNOWN = {
    "floc_s": _floc_s,
    "floc_factor": _recipe_figure("floc_factor"),
    "dilution_times": _recipe_figure("rennet_dilution"),
    "target_floc_s": _target_floc_s,
    "tested_every_s": _tested_every_s,
    "rennet_ml": _rennet_ml,
    "starter_frac": _dose("starter_bulk", "kg/kg"),
    "dose_g_per_kg": _dose("calcium_chloride", "g/kg"),
    "dose_ml_per_t": _dose("annatto", "mL/t"),
}
