"""The hazards that a step may name, and the signs by which each is known.

One table, for the check of a recipe and for whoever is shown a caution. A sign is
of a kind, "warning" or "mandatory", and has a pictogram: the page draws both. What
to do about a hazard is told in the page's words, or in the step's own (`cautions_of`).
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.step import Caution, Sign


def _signs(warning: str, *mandatory: str) -> "list[Sign]":
    signs: "list[Sign]" = [{"kind": "warning", "pictogram": warning}]
    for pictogram in mandatory:
        signs.append({"kind": "mandatory", "pictogram": pictogram})
    return signs


HAZARDS = {
    "scald": _signs("heat", "gloves"),
    "steam": _signs("steam"),
    "hot_water": _signs("heat"),
    "hot_drain": _signs("heat"),
    "stirrer": _signs("moving"),
    "blades": _signs("blade", "lock"),
    "knife": _signs("blade", "gloves"),
    "lock_out": _signs("electricity", "lock"),
    "electricity": _signs("electricity"),
    "compressed_air": _signs("pressure", "goggles"),
    "pinch": _signs("crush"),
    "weights": _signs("crush"),
    "lifting": _signs("load"),
    "wet_floor": _signs("slip"),
    "chemical": _signs("corrosive", "goggles", "gloves"),
    "coating": _signs("general", "gloves"),
    "calcium_heat": _signs("heat", "goggles"),
    "frozen_culture": _signs("cold", "gloves"),
    "glycol": _signs("general"),
    "carbon_dioxide": _signs("gas"),
    "ammonia": _signs("gas"),
    "lye": _signs("corrosive", "goggles", "gloves"),
    "silver_nitrate": _signs("corrosive", "goggles", "gloves"),
    "alone": _signs("general", "call"),
    # Of no step of ours any more; makes opened before hold them.
    "moving_parts": _signs("moving"),
}

# A reading that is taken with a chemical: its hazard, and the equipment that shows
# that this creamery takes it so (None: there is no other way).
OF_READINGS = {
    "titratable_acidity_frac": ("lye", None),
    "brine_salt_frac": ("silver_nitrate", "silver_mol_l"),
}


def caution(hazard: str) -> "Caution":
    """Return the Caution of a hazard in the page's words.

    Args:
        hazard: key of HAZARDS; one of a newer app has the general sign.
    """
    signs = HAZARDS.get(hazard, _signs("general"))
    return {"id": hazard, "hazard": hazard, "signs": signs, "do": None}


def cautions_of(step: "RecipeStep") -> "list[Caution]":
    """Return the cautions of a step, in the order of the recipe.

    Args:
        step: step of a sound recipe. A hazard that it has words of its own for is
            another caution than the same hazard elsewhere: its id names the step.

    Returns:
        List of {"id", "hazard", "signs", "do"}; do is the step's own words or None.
    """
    told = [caution(hazard) for hazard in step.get("cautions", [])]
    for row in step.get("own_cautions", []):
        own = caution(row["hazard"])
        own["id"] = row["hazard"] + "/" + step["key"]
        own["do"] = row["do"]
        told.append(own)
    return told


def cautions_of_reading(
    quantity: str, equipment: "dict[str, object]"
) -> "list[Caution]":
    """Return the cautions of a reading that is taken with a chemical.

    Args:
        quantity: key of the quantity.
        equipment: what the creamery has, see `log.equipment.in_effect`.
    """
    hazard, needs = OF_READINGS.get(quantity, (None, None))
    if hazard is None or (needs is not None and needs not in equipment):
        return []
    return [caution(hazard)]
