"""One booking in the account of a tank: salt and water that come or go."""

from ..formulas.salt.brine_tank import ledger_step
from ..numbers.problems import of_refusal
from ..numbers.refused import Refused

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.brine import Tank
    from server.shapes.core.words import Keyed

# What the formulas call what the sums on brine ask for.
CALLED = {
    "salt_frac": "brine_salt_frac",
    "temp_c": "brine_temp_c",
    "wanted_frac": "wanted_salt_frac",
}


def change(account: "Tank", salt_kg: float, water_kg: float) -> None:
    """Book salt and water that come into a tank, or leave it where negative.

    Args:
        account: account of the tank; changed in place, its notes where it cannot be.
        salt_kg: salt [kg].
        water_kg: water [kg].
    """
    try:
        after = ledger_step(
            account["mass_kg"],
            account["salt_frac"],
            max(0.0, -salt_kg),
            0.0,
            max(0.0, salt_kg),
            water_kg,
        )
    except Refused as refusal:
        # A load that takes more salt than there is: entered wrong, so it is told
        # and the account goes on from before it.
        account["notes"].append(cannot_be(refusal))
        return
    account["mass_kg"] = after["brine_kg"]
    account["salt_frac"] = after["salt_frac"]
    account["salt_kg"] = after["salt_kg"]


def cannot_be(refusal: Refused) -> "Keyed":
    """Return the note on entries that contradict each other.

    Args:
        refusal: why the formula refused them.
    """
    refused = of_refusal(refusal)
    refused["field"] = CALLED.get(refusal.field, refusal.field)
    return {"key": "note.tank.cannot_be", "refused": refused}
