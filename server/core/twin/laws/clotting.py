"""Rennet clotting in three acts: hairs are cut, bare micelles clump, a gel closes.

The enzyme cuts by Michaelis and Menten; micelles clump by Smoluchowski's law of two
bodies, slowed by the hairs that are left; bonds close as two free ends meet, so the
last ones come slowly. Clotting time is thus near Foltmann's line in the inverse of
the dose without that line being put in.
"""

import math

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.twin import Clot

KELVIN = 273.15
REF_C, REF_PH, GAS = 32.0, 6.5, 8.314
# Enzyme step Q10 about 2, clumping about 11 (from memory: usual dairy chemistry).
CUT_J_MOL, CLUMP_J_MOL, FIRM_J_MOL = 53000.0, 185000.0, 70000.0
CUT_A_S = 0.000088  # share cut in a second by 1 IMCU in a kg of milk, at first
CUT_HALF = 0.35
CLUMP_A_S, HAIR_WALL = 0.17, 12.0
SEEN = 12.0  # micelles in a clump when flecks are seen on a knife
FIRM_A_S = 0.000026  # by 1 IMCU in a kg of milk
USUAL_CALCIUM_G_KG = 0.145
SOFT, CLEAN, PAST = 0.3, 0.53, 0.82  # firmness where a break is soft, clean, past it


def advance(clot: "Clot", temp_c: float, ph: float, s: float) -> None:
    """Let the milk clot for a time.

    Args:
        clot: the milk; it changes.
        temp_c: its temperature [°C].
        ph: its pH.
        s: how long; short against a minute or two.
    """
    if clot["enzyme"] <= 0.0:
        return
    calcium = 1.0 + 4.0 * (clot["calcium_g_kg"] - USUAL_CALCIUM_G_KG)
    left = 1.0 - clot["cut_frac"]
    speed = CUT_A_S * clot["enzyme"] * _warm(CUT_J_MOL, temp_c) * _sour(ph, 1.9)
    clot["cut_frac"] = 1.0 - left * math.exp(-speed * s / (CUT_HALF + left))
    bare = math.exp(-HAIR_WALL * (1.0 - clot["cut_frac"]))
    warm = _warm(CLUMP_J_MOL, temp_c) * calcium
    clot["clump"] += CLUMP_A_S * warm * bare * s
    if clot["clump"] < SEEN:
        return
    firming = FIRM_A_S * clot["enzyme"] * _warm(FIRM_J_MOL, temp_c) * calcium
    free = 1.0 - clot["firm_frac"]
    clot["firm_frac"] = 1.0 - free / (1.0 + firming * free * s)


def judged(clot: "Clot") -> str:
    """Return what a knife shows, in the words of a recipe.

    Args:
        clot: the milk.
    """
    if clot["clump"] < SEEN:
        return "not_flocculated"
    for word, least in (("past_it", PAST), ("clean_break", CLEAN), ("soft", SOFT)):
        if clot["firm_frac"] >= least:
            return word
    return "flocculated"


def _warm(j_mol: float, temp_c: float) -> float:
    """Return Arrhenius' factor against the reference; above 45 °C rennet dies."""
    factor = math.exp(j_mol / GAS * (1.0 / (REF_C + KELVIN) - 1.0 / (temp_c + KELVIN)))
    return factor / (1.0 + math.exp((temp_c - 47.0) / 1.5))


def _sour(ph: float, power: float) -> float:
    return math.exp(power * (REF_PH - max(5.5, ph)))
