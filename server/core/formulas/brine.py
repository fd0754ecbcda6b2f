"""The strength of a brine, however it was measured.

Salt is always a mass fraction of the brine here. Hydrometer scales, grams in a
litre and grams on a kilogram of water are five other ways of saying it, and
mixing them up is the usual mistake: 220 g on a kilogram of water is 18 %, not 22.
A hydrometer feels density, so its reading needs the brine's temperature, and it
reads used brine too high.
"""

from .bounds import require_above, require_number, require_within

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable

HYDROMETER_C = 140.0 / 9.0  # 60 °F, at which the hydrometer scales are defined
SALOMETER_100_FRAC = 0.26395  # 100° salometer: saturated at 60 °F
BAUME_MODULUS = 145.0  # at 60 °F; some older instruments use 146.78
NACL_KG_MOL = 0.0584428  # Source: Salt Institute, properties of salt

# (temperature [°C], saturated brine, mass fraction). Source: Salt Institute,
# solubility of salt at various temperatures, 32 to 100 °F.
SATURATION = [
    (0.0, 0.2629),
    (0.1, 0.2631),
    (4.44, 0.2633),
    (10.0, 0.2636),
    (15.56, 0.26395),
    (21.11, 0.2645),
    (26.67, 0.2652),
    (37.78, 0.2668),
]


def saturation_frac(temp_c: float) -> float:
    """Return the most salt that a brine holds at a temperature.

    Args:
        temp_c: temperature of the brine [°C]; 0 to 37.

    Returns:
        Salt, mass fraction of the brine [0..1].

    Raises:
        ValueError: temperature outside the table.

    Source: Salt Institute, solubility of salt at various temperatures.
    Valid: sodium chloride in water; linear between the table's rows.
    Check: 26.395 % at 60 °F.

    >>> saturation_frac(15.56)
    0.26395
    """
    require_within("temp_c", temp_c, 0, 37)
    i = 1
    while SATURATION[i][0] < temp_c:
        i += 1
    low_c, low_frac = SATURATION[i - 1]
    high_c, high_frac = SATURATION[i]
    return low_frac + (high_frac - low_frac) * (temp_c - low_c) / (high_c - low_c)


def require_brine(field: str, salt_frac: float, temp_c: float) -> None:
    """Raise unless a brine of this strength can exist.

    Args:
        field: name of the argument.
        salt_frac: salt, mass fraction of the brine [0..1].
        temp_c: temperature of the brine [°C]; 0 to 30.

    Raises:
        ValueError: salt below 0 or above saturation, or temperature out of range.

    Source: saturation_frac.
    Check: 27 % is refused at any temperature.

    >>> require_brine("salt_frac", 0.27, 21.11)
    Traceback (most recent call last):
    ValueError: salt_frac 0.27 is above saturation 0.2645 at 21.11 C
    """
    require_within("temp_c", temp_c, 0, 30)
    require_number(field, salt_frac)
    if salt_frac < 0:
        raise ValueError("%s %r is below 0" % (field, salt_frac))
    limit_frac = saturation_frac(temp_c)
    if salt_frac > limit_frac:
        # Only the words shorten the limit; the comparison used all of it.
        raise ValueError(
            "%s %r is above saturation %.6g at %r C"
            % (field, salt_frac, limit_frac, temp_c)
        )


def brine_density_kg_m3(salt_frac: float, temp_c: float) -> float:
    """Return the density of a clean brine.

    Args:
        salt_frac: salt, mass fraction of the brine [0..1]; 0 to saturation.
        temp_c: temperature of the brine [°C]; 0 to 30.

    Returns:
        Density [kg/m³].

    Raises:
        ValueError: a brine that cannot exist, or temperature out of range.

    Source: Laliberté and Cooper 2004 as programmed in the open library `thermo`.
    Changed: a polynomial fitted to it, largest difference 0.03 kg/m³.
    Valid: sodium chloride in clean water; used brine is denser.
    Check: 20 % at 20 °C is 1147.8 kg/m³ (WNT, Poradnik fizykochemiczny, 1974).

    >>> brine_density_kg_m3(0.20, 20.0)
    1148.1
    """
    require_brine("salt_frac", salt_frac, temp_c)
    return _density_kg_m3(salt_frac, temp_c)


def _density_kg_m3(salt_frac: float, temp_c: float) -> float:
    w, t = salt_frac, temp_c
    by_salt = 735.25 * w + 269.803 * w**2 - 67.7041 * w**3
    by_temp = 0.0592899 * t - 0.00784814 * t**2 + 4.10992e-05 * t**3
    by_both = w * t * (-2.05161 + 0.0140688 * t - 1.03113 * w + 0.0303713 * w * t)
    return 999.847 + by_salt + by_temp + by_both


def salt_frac_from_density(density_kg_m3: float, temp_c: float) -> float:
    """Return the strength of a clean brine from its density.

    Args:
        density_kg_m3: density read [kg/m³]; from water to saturated brine.
        temp_c: temperature of the brine when read [°C]; 0 to 30.

    Returns:
        Salt, mass fraction of the brine.

    Raises:
        ValueError: lighter than water or denser than saturated brine.

    Source: brine_density_kg_m3, inverted by bisection.
    Valid: clean brine; see used_brine_range for a used one.
    Check: 1147.8 kg/m³ at 20 °C is 20.0 %.

    >>> salt_frac_from_density(1147.8, 20.0)
    0.1996
    """
    return _invert("density_kg_m3", density_kg_m3, temp_c, _density_kg_m3)


def _per_litre(salt_frac: float, temp_c: float) -> float:
    return salt_frac * _density_kg_m3(salt_frac, temp_c)


def _invert(
    field: str, value: float, temp_c: float, of: "Callable[[float, float], float]"
) -> float:
    """Return the strength at which a rising function of it takes a value."""
    require_within("temp_c", temp_c, 0, 30)
    require_number(field, value)
    low_frac, high_frac = 0.0, saturation_frac(temp_c)
    lowest, highest = of(low_frac, temp_c), of(high_frac, temp_c)
    if value < lowest:
        raise ValueError(
            "%s %r is below %.6g, that of water at %r C"
            % (field, value, lowest, temp_c)
        )
    if value > highest:
        raise ValueError(
            "%s %r is above %.6g, that of saturated brine at %r C"
            % (field, value, highest, temp_c)
        )
    # Sixty halvings leave less than the last binary digit.
    for _ in range(60):
        middle_frac = (low_frac + high_frac) / 2
        if of(middle_frac, temp_c) < value:
            low_frac = middle_frac
        else:
            high_frac = middle_frac
    return (low_frac + high_frac) / 2


def salt_frac_from_baume(baume: float, temp_c: float, modulus: float) -> float:
    """Return the strength of a clean brine from a Baumé hydrometer.

    Args:
        baume: degrees read; 0 to about 24.
        temp_c: temperature of the brine when read [°C]; 0 to 30.
        modulus: of the instrument, BAUME_MODULUS unless it says otherwise.

    Returns:
        Salt, mass fraction of the brine.

    Raises:
        ValueError: below water or above saturated brine.

    Source: definition, 145 - 145 over specific gravity at 60 °F.
    Valid: clean brine; the glass's own expansion is left out.
    Check: 20 °Bé at 15 °C is about 21 % (a dairy handbook prints 21.2 %).

    >>> salt_frac_from_baume(20.0, 140.0 / 9.0, 145.0)
    0.2107
    """
    require_within("modulus", modulus, 140, 150)
    require_within("baume", baume, 0, 30)
    water_kg_m3 = _density_kg_m3(0.0, HYDROMETER_C)
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
        ValueError: a brine that cannot exist.

    Source: definition, as salt_frac_from_baume.
    Check: pure water at 60 °F reads 0.

    >>> baume_of_brine(0.20, 140.0 / 9.0, 145.0)
    19.07
    """
    require_within("modulus", modulus, 140, 150)
    density_kg_m3 = brine_density_kg_m3(salt_frac, temp_c)
    return modulus - modulus * _density_kg_m3(0.0, HYDROMETER_C) / density_kg_m3


def salt_frac_from_salometer(salometer: float, temp_c: float) -> float:
    """Return the strength of a clean brine from a salometer.

    Args:
        salometer: degrees read, per cent of saturation at 60 °F; 0 to 100.
        temp_c: temperature of the brine when read [°C]; 0 to 30.

    Returns:
        Salt, mass fraction of the brine.

    Raises:
        ValueError: below water or above saturated brine.

    Source: a maker's page on the salometer; scale linear in salt at 60 °F.
    Valid: clean brine; the glass's own expansion is left out.
    Check: 80 degrees at 60 °F is 21.1 %.

    >>> salt_frac_from_salometer(80.0, 140.0 / 9.0)
    0.21116
    """
    require_within("salometer", salometer, 0, 100)
    at_60f_frac = salometer / 100 * SALOMETER_100_FRAC
    return salt_frac_from_density(_density_kg_m3(at_60f_frac, HYDROMETER_C), temp_c)


def salometer_of_brine(salt_frac: float, temp_c: float) -> float:
    """Return what a salometer reads in a clean brine.

    Args:
        salt_frac: salt, mass fraction of the brine [0..1]; 0 to saturation.
        temp_c: temperature of the brine [°C]; 0 to 30.

    Returns:
        Degrees salometer.

    Raises:
        ValueError: a brine that cannot exist, or one off the scale.

    Source: as salt_frac_from_salometer.
    Check: 20 % at 60 °F reads 75.8.

    >>> salometer_of_brine(0.20, 140.0 / 9.0)
    75.77
    """
    density_kg_m3 = brine_density_kg_m3(salt_frac, temp_c)
    at_60f_frac = salt_frac_from_density(density_kg_m3, HYDROMETER_C)
    return at_60f_frac / SALOMETER_100_FRAC * 100


def salt_frac_from_g_l(salt_g_l: float, temp_c: float) -> float:
    """Return the strength of a brine from grams of salt in a litre of brine.

    Args:
        salt_g_l: salt in a litre of the finished brine [g/L].
        temp_c: temperature of the brine [°C]; 0 to 30.

    Returns:
        Salt, mass fraction of the brine.

    Raises:
        ValueError: below 0 or above saturated brine.

    Source: density times fraction, inverted by bisection.
    Check: 229.56 g/L at 20 °C is 20 % (WNT 1974).

    >>> salt_frac_from_g_l(229.56, 20.0)
    0.19996
    """
    return _invert("salt_g_l", salt_g_l, temp_c, _per_litre)


def salt_g_l_of_brine(salt_frac: float, temp_c: float) -> float:
    """Return the grams of salt in a litre of brine.

    Args:
        salt_frac: salt, mass fraction of the brine [0..1]; 0 to saturation.
        temp_c: temperature of the brine [°C]; 0 to 30.

    Returns:
        Salt in a litre of the brine [g/L].

    Raises:
        ValueError: a brine that cannot exist.

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
        ValueError: below 0, or more than dissolves.

    Source: definition.
    Check: 250 g on a kilogram is 20 %; 220 g is 18.0 %, not 22 %.

    >>> salt_frac_from_g_kg_water(220.0, 15.0)
    0.1803
    """
    require_within("salt_g_kg", salt_g_kg, 0, 1000)
    salt_frac = salt_g_kg / (1000 + salt_g_kg)
    require_brine("strength of this brine", salt_frac, temp_c)
    return salt_frac


def salt_g_kg_of_water(salt_frac: float, temp_c: float) -> float:
    """Return the grams of salt to weigh onto a kilogram of water.

    Args:
        salt_frac: salt wanted, mass fraction of the brine [0..1]; 0 to saturation.
        temp_c: temperature of the brine [°C]; 0 to 30.

    Returns:
        Salt on a kilogram of water [g/kg].

    Raises:
        ValueError: a brine that cannot exist.

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
        ValueError: an argument outside its range, or more salt than sample.

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
    require_within("salt of the sample", salt_frac, 0, 1)
    return salt_frac


def clean_brine_range(baume: float, temp_c: float) -> "dict[str, float | str]":
    """Return the strength of a clean brine from Baumé, as far as it can be trusted.

    Args:
        baume: degrees read, modulus 145; 0 to about 24.
        temp_c: temperature of the brine when read [°C]; 0 to 30.

    Returns:
        {"value", "low", "high", "basis"}: mass fractions, half a per cent of salt
        either way.

    Raises:
        ValueError: below water or above saturated brine.

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
        ValueError: below water or above saturated brine.

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
