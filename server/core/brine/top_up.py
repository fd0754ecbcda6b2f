"""What a tank wants: the strength of its wheels' recipe, and salt or water for it."""

from ..formulas.salt import brine_tank
from ..log.opening import recipe_of
from ..numbers.refused import Refused
from .account import cannot_be
from .amounts import USUAL_TEMP_C

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.brine import Tank
    from server.shapes.core.state import Rules, State

USUAL_SALT_FRAC = 0.20  # where the read working range begins


def _wanted(account: "Tank", makes: "dict[str, State]") -> float:
    """Return the strength that the recipe of the newest load asks for."""
    for load in reversed(account["loads"]):
        recipe = recipe_of(makes.get(load["make"]))
        for step in recipe["steps"] if recipe else []:
            for target in step.get("targets", []):
                wanted = target["figure"]["value"]
                # Where the recipe leaves it to a sum there is none to go by.
                if target["quantity"] == "brine_salt_frac" and wanted is not None:
                    return wanted
    return USUAL_SALT_FRAC


def top_up(account: "Tank", makes: "dict[str, State]", rules: "Rules") -> None:
    """Say what a tank wants as it stands, and which working limits it is out of.

    Args:
        account: account of the tank; changed in place.
        makes: {stream id: State}.
        rules: {rule id: the rule}.
    """
    account["wanted_frac"] = _wanted(account, makes)
    temp_c = USUAL_TEMP_C if account["temp_c"] is None else account["temp_c"]
    kg, now, wanted = account["mass_kg"], account["salt_frac"], account["wanted_frac"]
    try:
        if now <= wanted:
            account["salt_to_add_kg"] = brine_tank.top_up_kg(kg, now, wanted, temp_c)
        else:
            account["water_to_add_kg"] = brine_tank.thin_down_kg(kg, now, wanted)
        rule = rules.get("brine")
        if rule is not None:
            account["outside"] = brine_tank.check_brine(now, temp_c, rule["limits"])
    except Refused as refusal:
        account["notes"].append(cannot_be(refusal))
