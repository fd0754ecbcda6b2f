"""Rennet: how much of a bottle goes into the milk, and into how much water.

A bottle is dosed by the strength printed on it. Soxhlet strength and
international units (IMCU) have no exact factor between them, so neither is ever
turned into the other.
"""

from ...numbers.bounds import require_above, require_at_least

SOXHLET_S = 2400.0  # s; 40 min by definition. From memory; one page says 45 min.


def rennet_ml(
    milk_l: float, dose_imcu_per_l: float, strength_imcu_per_ml: float
) -> float:
    """Return the rennet for a vat from the strength on its bottle.

    Args:
        milk_l: milk [L]; 0 or more.
        dose_imcu_per_l: units wanted in each litre of milk [IMCU/L]; above 0.
        strength_imcu_per_ml: units in each millilitre of rennet [IMCU/mL]; above 0.

    Returns:
        Rennet, undiluted [mL].

    Raises:
        Refused: milk below 0, dose or strength not above 0.

    Source: proportion; doses of 35 to 55 IMCU/L are usual (supplier page: 52.5).
    Check: 30 mL of 175 IMCU/mL in 100 L is 52.5 IMCU/L.

    >>> rennet_ml(100, 52.5, 175)
    30.0
    """
    require_at_least("milk_l", milk_l, 0)
    require_above("dose_imcu_per_l", dose_imcu_per_l, 0)
    require_above("strength_imcu_per_ml", strength_imcu_per_ml, 0)
    return milk_l * dose_imcu_per_l / strength_imcu_per_ml


def soxhlet_strength(
    milk_ml: float, rennet_ml: float, clot_s: float, reference_s: float
) -> float:
    """Return the strength of a rennet from a clotting test at 35 °C.

    Args:
        milk_ml: milk in the test [mL]; above 0.
        rennet_ml: undiluted rennet in the test [mL]; above 0.
        clot_s: time to clot [s]; above 0.
        reference_s: time in the definition [s]; 2400, or what the label says.

    Returns:
        Parts of milk that one part of rennet clots in the reference time.

    Raises:
        Refused: an argument not above 0.

    Source: Soxhlet's definition (from memory).
    Check: 500 mL, 0.05 mL, 160 s: 150 000.

    >>> soxhlet_strength(500, 0.05, 160, 2400)
    150000.0
    """
    require_above("milk_ml", milk_ml, 0)
    require_above("rennet_ml", rennet_ml, 0)
    require_above("clot_s", clot_s, 0)
    require_above("reference_s", reference_s, 0)
    return reference_s * milk_ml / (rennet_ml * clot_s)


def soxhlet_rennet_ml(
    milk_l: float, strength_soxhlet: float, clot_s: float, reference_s: float
) -> float:
    """Return the rennet that clots a vat at 35 °C in a wanted time.

    Args:
        milk_l: milk [L]; 0 or more.
        strength_soxhlet: parts of milk clotted by one part, 15000 for 1:15000;
            above 0; of a powder 1 g counts as a part for 1 mL of milk.
        clot_s: time to clot wanted [s]; above 0.
        reference_s: time in the definition [s]; 2400, or what the label says.

    Returns:
        Rennet, undiluted [mL]; of a powder [g].

    Raises:
        Refused: milk below 0, or another argument not above 0.

    Source: Soxhlet's definition (from memory).
    Valid: fresh milk at 35 °C; `setting_time_factor` carries it to the vat.
    Check: 100 L, 1:15000, 40 min: 6.67 mL.

    >>> soxhlet_rennet_ml(100, 15000, 2400, 2400)
    6.667
    """
    require_at_least("milk_l", milk_l, 0)
    require_above("strength_soxhlet", strength_soxhlet, 0)
    require_above("clot_s", clot_s, 0)
    require_above("reference_s", reference_s, 0)
    return 1000 * milk_l * reference_s / (strength_soxhlet * clot_s)


def rennet_g(
    milk_l: float, dose_imcu_per_l: float, strength_imcu_per_g: float
) -> float:
    """Return the rennet powder for a vat from the strength on its label.

    Args:
        milk_l: milk [L]; 0 or more.
        dose_imcu_per_l: units wanted in each litre of milk [IMCU/L]; above 0.
        strength_imcu_per_g: units in each gram of powder [IMCU/g]; above 0.

    Returns:
        Rennet powder [g].

    Raises:
        Refused: milk below 0, dose or strength not above 0.

    Source: proportion.
    Check: 600 L at 52.5 IMCU/L of 2100 IMCU/g: 15 g.

    >>> rennet_g(600, 52.5, 2100)
    15.0
    """
    require_at_least("milk_l", milk_l, 0)
    require_above("dose_imcu_per_l", dose_imcu_per_l, 0)
    require_above("strength_imcu_per_g", strength_imcu_per_g, 0)
    return milk_l * dose_imcu_per_l / strength_imcu_per_g


def rennet_tablets(milk_l: float, tablet_sets_l: float) -> float:
    """Return the rennet tablets for a vat, by the milk that one sets.

    Args:
        milk_l: milk [L]; 0 or more.
        tablet_sets_l: milk that one tablet sets by its label [L]; above 0.

    Returns:
        Tablets; a part of one as a fraction.

    Raises:
        Refused: milk below 0, or the label not above 0.

    Source: proportion.
    Check: one for 100 L: 250 L takes two and a half.

    >>> rennet_tablets(250, 100)
    2.5
    """
    require_at_least("milk_l", milk_l, 0)
    require_above("tablet_sets_l", tablet_sets_l, 0)
    return milk_l / tablet_sets_l


def dilution_water_ml(rennet_ml: float, times: float) -> float:
    """Return the water to dilute rennet in before it goes into the vat.

    The water must be cold, drinkable and free of chlorine: 2 ppm takes 40 % of
    the strength in 3 min.

    Args:
        rennet_ml: undiluted rennet [mL]; 0 or more.
        times: volumes of water to one of rennet; above 0.

    Returns:
        Water [mL].

    Raises:
        Refused: rennet below 0, or `times` not above 0.

    Source: A. Hill, University of Guelph: 10 volumes for Gouda, about 20 as a rule.
    Check: 19 mL in 10 volumes: 190 mL.

    >>> dilution_water_ml(19, 10)
    190
    """
    require_at_least("rennet_ml", rennet_ml, 0)
    require_above("times", times, 0)
    return rennet_ml * times
