"""Wheels filled, pressed, turned and cooled.

Pressure lowers what curd holds; whey leaves through the rind, and a rind that is
squeezed hard while it is wet closes and keeps whey in. A wheel that is not turned
closes on one side first.
"""

import math

from .layers import COUNT, layers

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.recipe import RecipeMould
    from server.shapes.core.twin import Wheels

LEAVES_S = 4800.0  # a large wheel's whey, loose rind; invented
# Water on a kilogram of solids: unpressed, and how pressure and pH lower it.
# Fitted to cheese of 43 to 45 % water out of the press at pH 5.4.
HOLDS, PER_PA_LOG, PER_PH = 0.99, -0.075, 0.10
CLOSES_PA, CLOSES_S = 25000.0, 6000.0
UNTURNED_S = 10800.0
MOULD_W_M2_K, BRINE_W_M2_K, STORE_W_M2_K = 5.0, 60.0, 6.0
CHEESE_J_KG_K = 2850.0  # J/(kg K), about 43 % water; from memory
DENSITY_KG_M3 = 1080.0


def fill(
    mould: "RecipeMould",
    count: int,
    solids_kg: float,
    water_kg: float,
    temp_c: float,
    at_ms: int,
) -> "Wheels":
    """Return wheels of a size, just filled.

    Args:
        mould: the recipe's mould.
        count: how many.
        solids_kg: solids of one [kg].
        water_kg: its water [kg].
        temp_c: temperature of the curd [°C].
        at_ms: when [ms].
    """
    radius_m = mould["diameter_m"]["value"] / 2.0
    # A mould filled short or heaped gives a lower or a higher wheel of its width.
    ripe_kg = solids_kg + min(water_kg, solids_kg * HOLDS)
    half_m = ripe_kg / DENSITY_KG_M3 / (math.pi * radius_m * radius_m) / 2.0
    _, volumes = layers(radius_m, half_m)
    whole_m3 = sum(volumes)
    return {
        "size": mould["size"],
        "count": count,
        "radius_m": radius_m,
        "half_m": half_m,
        "solids_kg": solids_kg,
        "water_kg": [water_kg * volume / whole_m3 for volume in volumes],
        "salt_kg": [0.0] * COUNT,
        "temp_c": temp_c,
        "closed_frac": 0.0,
        "place": "press",
        "pressure_pa": 0.0,
        "coated": False,
        "turned_ms": at_ms,
    }


def advance(wheels: "Wheels", ph: float, unturned_s: float, s: float) -> float:
    """Press one wheel for a time.

    Args:
        wheels: wheels of a size; one of them changes for all.
        ph: pH of the curd.
        unturned_s: since the last turn [s].
        s: how long.

    Returns:
        Whey that ran out of one wheel [kg].
    """
    water_kg = sum(wheels["water_kg"])
    held_kg = wheels["solids_kg"] * holds(wheels["pressure_pa"], ph)
    wet = max(0.0, water_kg / held_kg - 1.0)
    squeeze = (wheels["pressure_pa"] / CLOSES_PA) ** 3 * min(1.0, 2.0 * wet)
    open_frac = (1.0 - wheels["closed_frac"]) * math.exp(-squeeze * s / CLOSES_S)
    wheels["closed_frac"] = 1.0 - open_frac
    flow = open_frac * (1.0 if unturned_s < UNTURNED_S else 0.6)
    flow *= 0.11 / (2.0 * wheels["half_m"]) * math.exp(0.03 * (wheels["temp_c"] - 30.0))
    out_kg = max(0.0, water_kg - held_kg) * (1.0 - math.exp(-flow * s / LEAVES_S))
    share = 1.0 - out_kg / water_kg
    wheels["water_kg"] = [kg * share for kg in wheels["water_kg"]]
    return out_kg


def holds(pressure_pa: float, ph: float) -> float:
    """Return the water that a kilogram of solids holds under a pressure.

    Args:
        pressure_pa: pressure on the cheese [Pa].
        ph: pH of the curd.
    """
    squeezed = PER_PA_LOG * math.log(1.0 + pressure_pa / 2000.0)
    return HOLDS + squeezed + PER_PH * (ph - 5.4)


def cool(wheels: "Wheels", around_c: float, w_m2_k: float, s: float) -> None:
    """Let one wheel come nearer to the temperature around it.

    Args:
        wheels: wheels of a size; one of them changes for all.
        around_c: temperature around [°C].
        w_m2_k: how well heat passes its face.
        s: how long.

    Source: Newton's law, with the cheese's own resistance to its middle in series.
    """
    areas, volumes = layers(wheels["radius_m"], wheels["half_m"])
    inside = min(wheels["radius_m"], wheels["half_m"]) / (3.0 * 0.35)  # m / (W/(m K))
    passes = areas[0] / (1.0 / w_m2_k + inside)
    store_j_k = sum(volumes) * DENSITY_KG_M3 * CHEESE_J_KG_K
    left = math.exp(-passes * s / store_j_k)
    wheels["temp_c"] = around_c + (wheels["temp_c"] - around_c) * left


def mass_kg(wheels: "Wheels") -> float:
    """Return the mass of one wheel of a size [kg]."""
    return wheels["solids_kg"] + sum(wheels["water_kg"]) + sum(wheels["salt_kg"])


def salt_frac(wheels: "Wheels") -> float:
    """Return the salt of one wheel in its mass [0..1]."""
    return sum(wheels["salt_kg"]) / mass_kg(wheels)


def moisture_frac(wheels: "Wheels") -> float:
    """Return the water of one wheel in its mass [0..1]."""
    return sum(wheels["water_kg"]) / mass_kg(wheels)
