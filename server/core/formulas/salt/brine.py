"""The salt and the density of a brine, each from the other.

Salt is always a mass fraction of the brine here. The module of scales turns what
instruments read into it.
"""

from ...numbers.bounds import require_number, require_within
from ...numbers.refused import Refused
from ...numbers.roots import root

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable


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
        Refused: temperature outside the table.

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
        Refused: salt below 0 or above saturation, or temperature out of range.

    Source: saturation_frac.
    Check: 27 % is refused at any temperature.

    >>> require_brine("salt_frac", 0.27, 0.1)
    Traceback (most recent call last):
    server.core.numbers.refused.Refused: salt_frac 0.27 above_saturation 0.2631 at_c 0.1
    """
    require_within("temp_c", temp_c, 0, 30)
    require_number(field, salt_frac)
    if salt_frac < 0:
        raise Refused("below", field, salt_frac, 0)
    limit_frac = saturation_frac(temp_c)
    if salt_frac > limit_frac:
        raise Refused("above_saturation", field, salt_frac, limit_frac, at_c=temp_c)


def brine_density_kg_m3(salt_frac: float, temp_c: float) -> float:
    """Return the density of a clean brine.

    Args:
        salt_frac: salt, mass fraction of the brine [0..1]; 0 to saturation.
        temp_c: temperature of the brine [°C]; 0 to 30.

    Returns:
        Density [kg/m³].

    Raises:
        Refused: a brine that cannot exist, or temperature out of range.

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
        Refused: lighter than water or denser than saturated brine.

    Source: brine_density_kg_m3, inverted by a root.
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
        raise Refused("below_water", field, value, lowest, at_c=temp_c)
    if value > highest:
        raise Refused("above_saturated_brine", field, value, highest, at_c=temp_c)
    return root(lambda salt_frac: of(salt_frac, temp_c) - value, low_frac, high_frac)


def salt_frac_from_g_l(salt_g_l: float, temp_c: float) -> float:
    """Return the strength of a brine from grams of salt in a litre of brine.

    Args:
        salt_g_l: salt in a litre of the finished brine [g/L].
        temp_c: temperature of the brine [°C]; 0 to 30.

    Returns:
        Salt, mass fraction of the brine.

    Raises:
        Refused: below 0 or above saturated brine.

    Source: density times fraction, inverted by a root.
    Check: 229.56 g/L at 20 °C is 20 % (WNT 1974).

    >>> salt_frac_from_g_l(229.56, 20.0)
    0.19996
    """
    return _invert("salt_g_l", salt_g_l, temp_c, _per_litre)
