"""Masses of brine, water and wheels as they are entered at a tank."""

from ..formulas.salt.brine_tank import tank_kg

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

USUAL_TEMP_C = 12.5  # middle of the read working range, 10 to 15 °C
MOST_LOST_FRAC = 1.0 / 6.0


def mass_kg(
    amount: float, unit: str, salt_frac: float, temp_c: "float | None"
) -> float:
    """Return the mass of so much brine, or of water, told by mass or by volume.

    Args:
        amount: as it was read, in `unit`.
        unit: of a mass or a volume, see `units.table`.
        salt_frac: strength, mass fraction of the brine [0..1]; 0 for water.
        temp_c: its temperature [°C]; None for the usual one of a cellar.

    Returns:
        Mass [kg].

    Raises:
        ValueError: a unit of neither kind, or a strength that cannot be.

    Source: volume times density.
    """
    # Loaded when first asked: the app starts without it.
    from ..units.table import UNITS, convert

    if UNITS.get(unit, {}).get("dimension") == "mass":
        return convert(amount, unit, "kg")
    temp = USUAL_TEMP_C if temp_c is None else temp_c
    return tank_kg(convert(amount, unit, "L"), salt_frac, temp)


def second_look(in_kg: float, out_kg: float) -> "dict[str, Any] | None":
    """Return what makes a mass out of the tank unlikely, or None.

    Wheels lose water and take up less salt: they rarely weigh more than before, and
    a loss of a sixth is more than any salting. Our judgement.

    Args:
        in_kg: mass of the wheels when they were put in [kg].
        out_kg: mass of the same wheels taken out [kg].

    Returns:
        {"key": "unlikely_low" or "unlikely_high", "limit"} or None.
    """
    least_kg = in_kg * (1.0 - MOST_LOST_FRAC)
    if out_kg > in_kg:
        return {"key": "unlikely_high", "limit": in_kg}
    if out_kg < least_kg:
        return {"key": "unlikely_low", "limit": least_kg}
    return None
