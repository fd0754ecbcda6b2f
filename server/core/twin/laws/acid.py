"""The starter: cells that wake, grow on lactose, and stall in their own acid.

Growth follows temperature by Ratkowsky's square root, lactose by Monod, and its own
undissociated acid by a brake; the lag is a store of what cells need to begin
(Baranyi). Acid comes with growth and with mere living (Luedeking and Piret).
"""

import math

from . import buffer

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.twin import Acid

H_S = 3600.0
# Mesophilic mixed starter. Forms by the names above (from memory); the figures are
# fitted to the published course of a washed-curd make, see the tests of the course.
LEAST_C, MOST_C, SLOPE, CLIFF = 2.5, 41.5, 0.029, 0.25
LACTOSE_HALF = 0.004  # kg on a kg of water
OWN_ACID_GROWTH, OWN_ACID_LIFE = 0.0010, 0.0055  # mol undissociated on a kg of water
MADE_BY_GROWTH, MADE_BY_LIFE = 0.0011, 0.0008  # mol a kg of milk and unit of cells; /h
SALT_STOP = 0.065  # kg on a kg of water: no growth beyond
KG_LACTOSE_A_MOL = 0.094  # of acid; a tenth becomes other things, from memory


def rate_per_h(temp_c: float) -> float:
    """Return how fast cells grow with all they want, by temperature [°C].

    Source: Ratkowsky et al., J Bacteriol 154:1222 (1983), square-root model over
        the whole range (from memory).

    >>> rate_per_h(2.0)
    0.0
    """
    if not LEAST_C < temp_c < MOST_C:
        return 0.0
    root = SLOPE * (temp_c - LEAST_C) * (1.0 - math.exp(CLIFF * (temp_c - MOST_C)))
    return root * root


def advance(
    acid: "Acid",
    temp_c: float,
    water_kg: float,
    lactose_kg: float,
    salt_frac: float,
    inhibitor_frac: float,
    s: float,
) -> float:
    """Let the starter work for a time, short against an hour.

    Args:
        acid: cells, acid and what buffers; it changes.
        temp_c: temperature where the cells are [°C].
        water_kg: water that the acid is in [kg].
        lactose_kg: lactose that the cells can reach [kg].
        salt_frac: salt on the water [0..1].
        inhibitor_frac: share of growth that residues or phage take away [0..1].
        s: how long.

    Returns:
        Lactose used up [kg].
    """
    if acid["cells"] <= 0.0 or water_kg <= 0.0:
        return 0.0
    h, warm = s / H_S, rate_per_h(temp_c)
    reach_kg = max(0.0, lactose_kg)
    food = reach_kg / (reach_kg + LACTOSE_HALF * water_kg)
    able = food * (1.0 - inhibitor_frac) * max(0.0, 1.0 - salt_frac / SALT_STOP)
    sour = buffer.undissociated_frac(acid["ph"]) * acid["lactate_mol"] / water_kg
    awake = warm * able * acid["ready"] / (1.0 + acid["ready"])
    growth = awake / (1.0 + (sour / OWN_ACID_GROWTH) ** 2)
    life = awake / (1.0 + (sour / OWN_ACID_LIFE) ** 2)
    grown = acid["cells"] * (math.exp(growth * h) - 1.0)
    made_mol = MADE_BY_GROWTH * grown + MADE_BY_LIFE * acid["cells"] * life * h
    made_mol = min(made_mol, reach_kg / KG_LACTOSE_A_MOL)
    acid["ph"] = buffer.after_acid(acid, made_mol)
    acid["cells"] += grown
    acid["ready"] *= math.exp(warm * h)
    acid["lactate_mol"] += made_mol
    return made_mol * KG_LACTOSE_A_MOL
