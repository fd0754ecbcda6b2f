"""What an ingredient does to the milk: each by its key and the unit it is measured in.

One that is not in the table, such as a colour, does nothing that the twin follows.
"""

from ..numbers.refused import require
from .begin import milk_kg

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.twin import Twin

PACK_MILK_KG = 515.0  # that a pack brings to usual strength; invented
BULK_FRAC = 0.0075  # kg/kg. Source: A. Hill, University of Guelph, Gouda
READY = 8.0  # eight parts of nine awake: hardly a lag


def add(twin: "Twin", name: str, amount: float, unit: str) -> None:
    """Put an ingredient into the milk, or salt onto the curd.

    Args:
        twin: the make; it changes.
        name: key of the ingredient.
        amount: how much, in its unit.
        unit: "pack", "kg", "mL" or "g".

    Raises:
        Refused: a unit that the ingredient is not measured in.
    """
    if name in DOES:
        units, does = DOES[name]
        require(unit in units, "unknown_unit", "unit", unit, units)
        does(twin, amount, unit)


def _packs(twin: "Twin", amount: float, _: str) -> None:
    _wake(twin, amount * PACK_MILK_KG)


def _bulk(twin: "Twin", amount: float, _: str) -> None:
    _wake(twin, amount / BULK_FRAC)


def _wake(twin: "Twin", cells: float) -> None:
    twin["acid"]["cells"] += cells * twin["plant"]["starter_strength"]
    twin["acid"]["ready"] = max(READY, twin["acid"]["ready"])


def _rennet(twin: "Twin", amount: float, _: str) -> None:
    imcu = amount * twin["plant"]["rennet_imcu_per_ml"]
    twin["clot"]["enzyme"] += imcu / milk_kg(twin["milk"])


def _calcium(twin: "Twin", amount: float, unit: str) -> None:
    g = amount * twin["plant"]["calcium_g_per_ml"] if unit == "mL" else amount
    twin["clot"]["calcium_g_kg"] += g / milk_kg(twin["milk"])


def _salt(twin: "Twin", amount: float, _: str) -> None:
    twin["curd"]["salt_kg"] += amount


DOES = {
    "starter": (["pack"], _packs),
    "starter_bulk": (["kg"], _bulk),
    "rennet": (["mL"], _rennet),
    "calcium_chloride": (["g", "mL"], _calcium),
    "salt": (["kg"], _salt),
}
