"""What a hydrometer reads in a brine: Baumé and salometer, clean and used.

Salt is always a mass fraction of the brine here. A hydrometer feels density, so its
reading needs the brine's temperature, and it reads used brine too high.
"""

from ...numbers.bounds import require_within
from .brine import brine_density_kg_m3, salt_frac_from_density

HYDROMETER_C = 140.0 / 9.0  # 60 °F, at which the hydrometer scales are defined
SALOMETER_100_FRAC = 0.26395  # 100° salometer: saturated at 60 °F
BAUME_MODULUS = 145.0  # at 60 °F; some older instruments use 146.78


def salt_frac_from_baume(baume: float, temp_c: float, modulus: float) -> float:
    """Return the strength of a clean brine from a Baumé hydrometer.

    Args:
        baume: degrees read; 0 to about 24.
        temp_c: temperature of the brine when read [°C]; 0 to 30.
        modulus: of the instrument, BAUME_MODULUS unless it says otherwise.

    Returns:
        Salt, mass fraction of the brine.

    Raises:
        Refused: below water or above saturated brine.

    Source: definition, 145 - 145 over specific gravity at 60 °F.
    Valid: clean brine; the glass's own expansion is left out.
    Check: 20 °Bé at 15 °C is about 21 % (a dairy handbook prints 21.2 %).

    >>> salt_frac_from_baume(20.0, 140.0 / 9.0, 145.0)
    0.2107
    """
    require_within("modulus", modulus, 140, 150)
    require_within("baume", baume, 0, 30)
    water_kg_m3 = brine_density_kg_m3(0.0, HYDROMETER_C)
    return salt_frac_from_density(water_kg_m3 * modulus / (modulus - baume), temp_c)


def baume_of_brine(salt_frac: float, temp_c: float, modulus: float) -> float:
    """Return what a Baumé hydrometer reads in a clean brine.

    Args:
        salt_frac: salt, mass fraction of the brine [0..1]; 0 to saturation.
        temp_c: temperature of the brine [°C]; 0 to 30.
        modulus: of the instrument, BAUME_MODULUS unless it says otherwise.

    Returns:
        Degrees Baumé; a little below 0 for water warmer than 60 °F.

    Raises:
        Refused: a brine that cannot exist.

    Source: definition, as salt_frac_from_baume.
    Check: pure water at 60 °F reads 0.

    >>> baume_of_brine(0.20, 140.0 / 9.0, 145.0)
    19.07
    """
    require_within("modulus", modulus, 140, 150)
    density_kg_m3 = brine_density_kg_m3(salt_frac, temp_c)
    return modulus - modulus * brine_density_kg_m3(0.0, HYDROMETER_C) / density_kg_m3


def salt_frac_from_salometer(salometer: float, temp_c: float) -> float:
    """Return the strength of a clean brine from a salometer.

    Args:
        salometer: degrees read, per cent of saturation at 60 °F; 0 to 100.
        temp_c: temperature of the brine when read [°C]; 0 to 30.

    Returns:
        Salt, mass fraction of the brine.

    Raises:
        Refused: below water or above saturated brine.

    Source: a maker's page on the salometer; scale linear in salt at 60 °F.
    Valid: clean brine; the glass's own expansion is left out.
    Check: 80 degrees at 60 °F is 21.1 %.

    >>> salt_frac_from_salometer(80.0, 140.0 / 9.0)
    0.21116
    """
    require_within("salometer", salometer, 0, 100)
    at_60f_frac = salometer / 100 * SALOMETER_100_FRAC
    return salt_frac_from_density(
        brine_density_kg_m3(at_60f_frac, HYDROMETER_C), temp_c
    )


def salometer_of_brine(salt_frac: float, temp_c: float) -> float:
    """Return what a salometer reads in a clean brine.

    Args:
        salt_frac: salt, mass fraction of the brine [0..1]; 0 to saturation.
        temp_c: temperature of the brine [°C]; 0 to 30.

    Returns:
        Degrees salometer.

    Raises:
        Refused: a brine that cannot exist, or one off the scale.

    Source: as salt_frac_from_salometer.
    Check: 20 % at 60 °F reads 75.8.

    >>> salometer_of_brine(0.20, 140.0 / 9.0)
    75.77
    """
    density_kg_m3 = brine_density_kg_m3(salt_frac, temp_c)
    at_60f_frac = salt_frac_from_density(density_kg_m3, HYDROMETER_C)
    return at_60f_frac / SALOMETER_100_FRAC * 100


def clean_brine_range(baume: float, temp_c: float) -> "dict[str, float | str]":
    """Return the strength of a clean brine from Baumé, as far as it can be trusted.

    Args:
        baume: degrees read, modulus 145; 0 to about 24.
        temp_c: temperature of the brine when read [°C]; 0 to 30.

    Returns:
        {"value", "low", "high", "basis"}: mass fractions, half a per cent of salt
        either way.

    Raises:
        Refused: below water or above saturated brine.

    Source: published tables differ by half a per cent of salt at 20 °Bé.
    Valid: fresh, clear brine.
    Check: the range holds both published figures for 20 °Bé, 20.8 and 21.2 %.

    >>> clean_brine_range(20.0, 15.0)["basis"]
    'clean_brine_hydrometer'
    """
    value = salt_frac_from_baume(baume, temp_c, BAUME_MODULUS)
    return {
        "value": value,
        "low": max(0.0, value - 0.005),
        "high": value + 0.005,
        "basis": "clean_brine_hydrometer",
    }


def used_brine_range(baume: float, temp_c: float) -> "dict[str, float | str]":
    """Return the strength of a used brine from Baumé, with its over-reading.

    Whey solids make used brine denser, so the hydrometer reads one to two degrees
    too high. Only a chloride titration settles it.

    Args:
        baume: degrees read, modulus 145; 0 to about 24.
        temp_c: temperature of the brine when read [°C]; 0 to 30.

    Returns:
        {"value", "low", "high", "basis"}: mass fractions at 1.5, 2 and 1 degree
        less than read; the basis is "used_brine_reads_high", a warning to show.

    Raises:
        Refused: below water or above saturated brine.

    Source: an encyclopaedia article on brine salting after a dairy processing
        handbook: used brine reads 1 to 2 °Bé high.
    Valid: salted cheese, brine not desludged.
    Check: its high end is below what a clean brine would be.

    >>> used_brine_range(20.0, 140.0 / 9.0)["high"]
    0.1992
    """
    # The reading itself must be possible before a correction is taken off it.
    salt_frac_from_baume(baume, temp_c, BAUME_MODULUS)
    ends = []
    for excess in (1.5, 2.0, 1.0):
        lower = max(baume_of_brine(0.0, temp_c, BAUME_MODULUS), baume - excess)
        ends.append(salt_frac_from_baume(max(0.0, lower), temp_c, BAUME_MODULUS))
    return {
        "value": ends[0],
        "low": ends[1],
        "high": ends[2],
        "basis": "used_brine_reads_high",
    }
