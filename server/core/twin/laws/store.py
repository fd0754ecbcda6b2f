"""Wheels in the store: the rind gives water to the air, the inside feeds the rind.

What leaves goes with the vapour that the rind holds above what the air has. A rind
that dries or salts holds less, so loss slows by itself; a coat hinders it.
"""

import math

from .layers import carry, depths_m, layers, spread

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.twin import Wheels

# kg of water a second from a square metre for a pascal; fitted to 2 to 4 % in the
# first four weeks of a coated wheel (common practice, no source).
BARE_KG_S_M2_PA, COAT = 8.0e-9, 0.26
WATER_M2_S = 2.6e-10  # water in cheese; of the order of salt's (from memory)
LONGEST_S = 1800.0


def vapour_pa(temp_c: float) -> float:
    """Return the pressure of water vapour over water, by temperature [°C].

    Source: Antoine's equation with the usual constants for 1 to 100 °C (from
        memory; tested against an independent library).

    >>> vapour_pa(12.5) / 100
    14.4
    """
    return 133.322 * 10.0 ** (8.07131 - 1730.63 / (233.426 + temp_c))


def activity(water_kg: float, salt_kg: float, solids_kg: float) -> float:
    """Return the water activity of a layer.

    Args:
        water_kg: its water [kg].
        salt_kg: its salt [kg].
        solids_kg: its other solids [kg].

    Source: Raoult's law for salt, two ions to a molecule, and a curve for solids
        that bind the last water.
    """
    free = 1.0 / (1.0 + 2.0 * 0.93 * salt_kg / 58.44 * 18.02 / water_kg)
    return free * (1.0 - math.exp(-5.0 * water_kg / solids_kg))


def advance(wheels: "Wheels", temp_c: float, humidity_frac: float, s: float) -> None:
    """Let one wheel lie in the air for a time.

    Args:
        wheels: wheels of a size; one of them changes for all.
        temp_c: temperature of the store [°C].
        humidity_frac: relative humidity [0..1].
        s: how long.
    """
    areas, volumes = layers(wheels["radius_m"], wheels["half_m"])
    depths = depths_m(wheels["radius_m"], wheels["half_m"])
    whole_m3 = sum(volumes)
    solids = [wheels["solids_kg"] * volume / whole_m3 for volume in volumes]
    steps = int(s / LONGEST_S) + 1
    part_s = s / steps
    speed = BARE_KG_S_M2_PA * (COAT if wheels["coated"] else 1.0)
    salt, water = wheels["salt_kg"], wheels["water_kg"]
    for _ in range(steps):
        held = activity(water[0], salt[0], solids[0])
        gap_pa = (held - humidity_frac) * vapour_pa(temp_c)
        inward = spread(water, solids, areas, volumes, depths, WATER_M2_S * part_s)
        inward[0] = -min(speed * areas[0] * gap_pa * part_s, 0.2 * water[0])
        salts = spread(salt, water, areas, volumes, depths, WATER_M2_S * part_s)
        carry(water, inward)
        carry(salt, salts)
