"""The strength of a brine by weight and by titration.

Salt is always a mass fraction of the brine here. Grams in a litre and grams on a
kilogram of water are other ways of saying it, and mixing them up is the usual
mistake: 220 g on a kilogram of water is 18 %, not 22.
"""

from ...numbers.bounds import require_above, require_within
from .brine import brine_density_kg_m3, require_brine

NACL_KG_MOL = 0.0584428  # Source: Salt Institute, properties of salt


def salt_g_l_of_brine(salt_frac: float, temp_c: float) -> float:
    """Return the grams of salt in a litre of brine.

    Args:
        salt_frac: salt, mass fraction of the brine [0..1]; 0 to saturation.
        temp_c: temperature of the brine [°C]; 0 to 30.

    Returns:
        Salt in a litre of the brine [g/L].

    Raises:
        Refused: a brine that cannot exist.

    Source: density times fraction.
    Check: 20 % at 20 °C is 229.6 g/L.

    >>> salt_g_l_of_brine(0.20, 20.0)
    229.6
    """
    return salt_frac * brine_density_kg_m3(salt_frac, temp_c)


def salt_frac_from_g_kg_water(salt_g_kg: float, temp_c: float) -> float:
    """Return the strength of a brine from grams of salt on a kilogram of water.

    Args:
        salt_g_kg: salt weighed onto a kilogram of water [g/kg]; 0 or more.
        temp_c: temperature of the brine [°C]; 0 to 30.

    Returns:
        Salt, mass fraction of the brine.

    Raises:
        Refused: below 0, or more than dissolves.

    Source: definition.
    Check: 250 g on a kilogram is 20 %; 220 g is 18.0 %, not 22 %.

    >>> salt_frac_from_g_kg_water(220.0, 15.0)
    0.1803
    """
    require_within("salt_g_kg", salt_g_kg, 0, 1000)
    salt_frac = salt_g_kg / (1000 + salt_g_kg)
    require_brine("brine_salt_frac", salt_frac, temp_c)
    return salt_frac


def salt_g_kg_of_water(salt_frac: float, temp_c: float) -> float:
    """Return the grams of salt to weigh onto a kilogram of water.

    Args:
        salt_frac: salt wanted, mass fraction of the brine [0..1]; 0 to saturation.
        temp_c: temperature of the brine [°C]; 0 to 30.

    Returns:
        Salt on a kilogram of water [g/kg].

    Raises:
        Refused: a brine that cannot exist.

    Source: definition.
    Check: 20 % is 250 g.

    >>> salt_g_kg_of_water(0.20, 15.0)
    250.0
    """
    require_brine("salt_frac", salt_frac, temp_c)
    return 1000 * salt_frac / (1 - salt_frac)


def salt_frac_from_titration(
    silver_ml: float, blank_ml: float, silver_mol_l: float, sample_g: float
) -> float:
    """Return the salt of a weighed sample from a silver nitrate titration.

    Args:
        silver_ml: silver nitrate used by the sample [mL]; at least `blank_ml`.
        blank_ml: silver nitrate used by a blank [mL]; 0 or more.
        silver_mol_l: strength of the silver nitrate [mol/L]; above 0.
        sample_g: brine, or cheese, in what was titrated [g]; above 0.

    Returns:
        Salt, mass fraction of the sample, all chloride counted as salt.

    Raises:
        Refused: an argument outside its range, or more salt than sample.

    Source: one mole of silver for one of chloride; molar mass from the Salt
        Institute.
    Valid: chloride from added calcium chloride counts as salt too.
    Check: 34.22 mL of 0.1 mol/L on 1 g is 20 %.

    >>> salt_frac_from_titration(34.222, 0.0, 0.1, 1.0)
    0.2000
    """
    require_within("blank_ml", blank_ml, 0, 1000)
    require_within("silver_ml", silver_ml, blank_ml, 1000)
    require_above("silver_mol_l", silver_mol_l, 0)
    require_above("sample_g", sample_g, 0)
    salt_frac = (silver_ml - blank_ml) * silver_mol_l * NACL_KG_MOL / sample_g
    require_within("sample_salt_frac", salt_frac, 0, 1)
    return salt_frac
