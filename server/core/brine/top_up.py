"""What a tank wants: salt or water, for the strength that its wheels ask for."""

from ..formulas.salt import brine_tank
from ..numbers.refused import Refused
from ..numbers.share import banded
from .account import cannot_be
from .amounts import USUAL_TEMP_C

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.brine import BrineBand, Tank
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
            account["band"] = _band(now, wanted, rule["limits"])
    except Refused as refusal:
        account["notes"].append(cannot_be(refusal))


def _band(now: float, wanted: float, limits: "dict[str, Any]") -> "BrineBand | None":
    low, high = limits.get("salt_min_frac"), limits.get("salt_max_frac")
    if low is None or high is None or "memory" in (low["status"], high["status"]):
        return None
    return {
        "low_frac": low["value"],
        "high_frac": high["value"],
        "bar": banded(now, low["value"], high["value"], wanted),
    }
