"""Starter, calcium chloride and colour for a vat.

Every dose scales straight with the milk. Freeze-dried starter is counted in
packs and units as its maker states them; it has no weight to dose by.
"""

import math

from ...numbers.bounds import require_above, require_at_least, require_within
from ...numbers.refused import require

CALCIUM_CHLORIDE_G_MOL = 110.98  # g/mol, anhydrous. Source: atomic weights.
DIHYDRATE_G_MOL = 147.01  # g/mol, CaCl2 · 2 H2O. Source: atomic weights.

# Grams of anhydrous calcium chloride in a gram of what is weighed out.
FORMS = ("anhydrous", "dihydrate")
ANHYDROUS_SHARE = {
    "anhydrous": 1.0,
    "dihydrate": CALCIUM_CHLORIDE_G_MOL / DIHYDRATE_G_MOL,
}


# kg/L at 20 °C by the salt in the solution, a tenth of the mass a step. From memory;
# a reference library gives as much within 0.3 % as far as it goes, to 0.3.
SOLUTION_DENSITIES_KG_L = (0.9982, 1.0835, 1.1775, 1.2816, 1.3957)


def starter_packs(milk_l: float, dose_units_per_l: float, pack_units: float) -> float:
    """Return the packs of freeze-dried starter for a vat, as a fraction.

    Args:
        milk_l: milk [L]; 0 or more.
        dose_units_per_l: maker's units wanted in each litre; above 0.
        pack_units: maker's units in a pack; above 0.

    Returns:
        Packs; a part of a pack as a fraction, for the maker to decide on.

    Raises:
        Refused: milk below 0, dose or pack not above 0.

    Source: proportion.
    Check: a pack of 50 units for 500 L: 300 L takes 0.6 of it.

    >>> starter_packs(300, 0.1, 50)
    0.6
    """
    require_at_least("milk_l", milk_l, 0)
    require_above("dose_units_per_l", dose_units_per_l, 0)
    require_above("pack_units", pack_units, 0)
    return milk_l * dose_units_per_l / pack_units


def bulk_starter_kg(milk_kg: float, starter_frac: float) -> float:
    """Return the bulk starter for a vat.

    Args:
        milk_kg: milk [kg]; 0 or more.
        starter_frac: starter as a share of the milk [0..0.1].

    Returns:
        Starter [kg].

    Raises:
        Refused: milk below 0, or a share above a tenth.

    Source: proportion; 0.75 % for Gouda (A. Hill, University of Guelph).
    Check: 515 kg at 0.75 %: 3.8625 kg.

    >>> bulk_starter_kg(515, 0.0075)
    3.8625
    """
    require_at_least("milk_kg", milk_kg, 0)
    require_within("starter_frac", starter_frac, 0, 0.1)
    return milk_kg * starter_frac


def acid_shift_s(dose_ratio: float, growth_per_s: float) -> float:
    """Return how much earlier the acid comes with more starter.

    Args:
        dose_ratio: starter given over starter of the known curve; above 0.
        growth_per_s: rate at which the starter multiplies, natural log [1/s];
            above 0.

    Returns:
        Time by which the whole curve comes earlier [s]; below 0 when later.

    Raises:
        Refused: an argument not above 0.

    Source: exponential growth.
    Valid: while the starter still grows freely.
    Check: twice the starter, 1.36 per hour: 0.51 h earlier.

    >>> acid_shift_s(2, 1.36 / 3600) / 3600
    0.51
    """
    require_above("dose_ratio", dose_ratio, 0)
    require_above("growth_per_s", growth_per_s, 0)
    return math.log(dose_ratio) / growth_per_s


def calcium_chloride_g(milk_kg: float, dose_g_per_kg: float, form: str) -> float:
    """Return the calcium chloride to weigh out for a dose counted as anhydrous.

    Args:
        milk_kg: milk [kg]; 0 or more.
        dose_g_per_kg: anhydrous calcium chloride wanted in each kilogram [g/kg]; 0 or
            more.
        form: what is weighed out, a key of ANHYDROUS_SHARE.

    Returns:
        Salt as weighed [g].

    Raises:
        Refused: milk or dose below 0, or the form is unknown.

    Source: molar masses 110.98 and 147.01 g/mol.
    Check: 20 g anhydrous is 26.5 g dihydrate.

    >>> calcium_chloride_g(100, 0.2, "dihydrate")
    26.49
    """
    require_at_least("milk_kg", milk_kg, 0)
    require_at_least("dose_g_per_kg", dose_g_per_kg, 0)
    return milk_kg * dose_g_per_kg / _anhydrous_share(form)


def anhydrous_g(weighed_g: float, form: str) -> float:
    """Return the anhydrous calcium chloride in what was weighed out.

    Args:
        weighed_g: salt as weighed [g]; 0 or more.
        form: what was weighed out, a key of ANHYDROUS_SHARE.

    Returns:
        Anhydrous calcium chloride [g].

    Raises:
        Refused: a negative mass, or the form is unknown.

    Source: molar masses 110.98 and 147.01 g/mol.
    Check: 30 g dihydrate is 22.65 g anhydrous.

    >>> anhydrous_g(30, "dihydrate")
    22.65
    """
    require_at_least("weighed_g", weighed_g, 0)
    return weighed_g * _anhydrous_share(form)


def calcium_solution_density_kg_l(solution_frac: float) -> float:
    """Return the density of a calcium chloride solution of 20 °C.

    Args:
        solution_frac: anhydrous salt by mass [0..0.4].

    Returns:
        Density [kg/L].

    Raises:
        Refused: a share above 0.4.

    Source: a printed table of densities (from memory), read between its lines.
    Valid: 20 °C; within 0.5 %, which no jug shows.
    Check: 33 %: 1.316 kg/L.

    >>> calcium_solution_density_kg_l(0.33)
    1.3158
    """
    require_within("solution_frac", solution_frac, 0, 0.4)
    at = min(int(solution_frac * 10), len(SOLUTION_DENSITIES_KG_L) - 2)
    low, high = SOLUTION_DENSITIES_KG_L[at], SOLUTION_DENSITIES_KG_L[at + 1]
    return low + (high - low) * (solution_frac * 10 - at)


def starter_g(packs: float, pack_g: float) -> float:
    """Return what a number of packs of starter weighs.

    Args:
        packs: packs, see `starter_packs`; 0 or more.
        pack_g: what a pack holds by its label [g]; above 0.

    Returns:
        Starter [g].

    Raises:
        Refused: packs below 0, or a pack not above 0.

    Source: proportion.
    Check: 1.2 packs of 500 g: 600 g.

    >>> starter_g(1.2, 500)
    600.0
    """
    require_at_least("packs", packs, 0)
    require_above("pack_g", pack_g, 0)
    return packs * pack_g


def calcium_solution_ml(
    anhydrous_g: float, solution_frac: float, density_kg_l: float
) -> float:
    """Return the volume of a calcium chloride solution that holds a dose.

    Args:
        anhydrous_g: anhydrous calcium chloride wanted [g]; 0 or more.
        solution_frac: anhydrous salt by mass, from the label [0..0.45].
        density_kg_l: of the solution, from the label [kg/L]; above 0.

    Returns:
        Solution [mL].

    Raises:
        Refused: an argument out of range.

    Source: proportion; 33 % by mass is about 1.32 kg/L (from memory).
    Check: 20 g from 33 % at 1.32: 45.9 mL.

    >>> calcium_solution_ml(20, 0.33, 1.32)
    45.91
    """
    require_at_least("anhydrous_g", anhydrous_g, 0)
    require_above("solution_frac", solution_frac, 0)
    require_within("solution_frac", solution_frac, 0, 0.45)
    require_above("density_kg_l", density_kg_l, 0)
    return anhydrous_g / (solution_frac * density_kg_l)


def check_calcium_chloride(
    anhydrous_g: float, milk_kg: float, limit_frac: float
) -> list[dict[str, object]]:
    """Return whether calcium chloride exceeds a limit on the milk's weight.

    Args:
        anhydrous_g: anhydrous calcium chloride added [g]; 0 or more.
        milk_kg: milk [kg]; above 0.
        limit_frac: most allowed, anhydrous by mass of milk [0..1]; from the rules.

    Returns:
        List of {"field", "key", "limit"}, the limit in grams of anhydrous salt for
        this milk; empty when the dose meets it.

    Raises:
        Refused: an argument out of range.

    Source: 21 CFR 133.138(b)(3): 0.02 % of the weight of the milk, anhydrous.
    Check: 100 kg of milk: 20 g meets 0.02 %, 20.1 g does not.

    >>> check_calcium_chloride(20, 100, 0.0002)
    []
    """
    require_at_least("anhydrous_g", anhydrous_g, 0)
    require_above("milk_kg", milk_kg, 0)
    require_within("limit_frac", limit_frac, 0, 1)
    most_g = 1000 * milk_kg * limit_frac
    # A dose worked out to the limit may end a last digit above it.
    if anhydrous_g <= most_g * (1 + 1e-9):
        return []
    return [{"field": "anhydrous_g", "key": "above_limit", "limit": most_g}]


def colour_ml(milk_kg: float, dose_ml_per_t: float) -> float:
    """Return the annatto for a vat.

    Args:
        milk_kg: milk [kg]; 0 or more.
        dose_ml_per_t: annatto for 1000 kg of milk, as its strength asks [mL]; 0 or
            more.

    Returns:
        Annatto [mL].

    Raises:
        Refused: milk or dose below 0.

    Source: proportion; 1 to 2 mL for 1000 kg of winter milk (A. Hill, University
        of Guelph, Gouda).
    Check: 515 kg at 2 mL: 1.03 mL.

    >>> colour_ml(515, 2)
    1.03
    """
    require_at_least("milk_kg", milk_kg, 0)
    require_at_least("dose_ml_per_t", dose_ml_per_t, 0)
    return milk_kg * dose_ml_per_t / 1000


def _anhydrous_share(form: str) -> float:
    require(form in ANHYDROUS_SHARE, "not_a_choice", "form", form, list(FORMS))
    return ANHYDROUS_SHARE[form]
