"""What a tank wants: salt or water, for the strength that its wheels ask for."""

from ..formulas.salt import brine_tank
from ..numbers.refused import Refused
from .account import cannot_be
from .amounts import USUAL_TEMP_C

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.brine import Tank
    from server.shapes.core.state import Rules

USUAL_SALT_FRAC = 0.20  # where the read working range begins


def top_up(account: "Tank", wanted_frac: float, rules: "Rules") -> None:
    """Say what a tank wants as it stands, and which working limits it is out of.

    Args:
        account: account of the tank; changed in place.
        wanted_frac: strength that it should have, mass fraction [0..1].
        rules: {rule id: the rule}.
    """
    account["wanted_frac"] = wanted_frac
    temp_c = USUAL_TEMP_C if account["temp_c"] is None else account["temp_c"]
    kg, now, wanted = account["mass_kg"], account["salt_frac"], wanted_frac
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
