"""The air of a store: how moist it is, by two thermometers."""

import math

from ...numbers.bounds import require_within
from ...numbers.refused import Refused

AIR_PRESSURE_PA = 101325.0  # sea level; 100 m of height change humidity by 0.02 %
# From about 5,500 m above the sea, higher than anybody keeps cows, to below it.
LEAST_PRESSURE_PA, MOST_PRESSURE_PA = 50000.0, 110000.0
PSYCHROMETER_1_K = 6.62e-4  # ventilated wet bulb, Sprung. From memory.


def vapour_pressure_pa(temp_c: float) -> float:
    """Return the pressure of water vapour in saturated air.

    Args:
        temp_c: temperature of the air [°C]; -10 to 50.

    Returns:
        Pressure [Pa].

    Raises:
        Refused: temperature out of range.

    Source: Magnus form, constants from memory, checked against two libraries.
    Valid: over water; within 0.35 % of the steam tables.
    Check: 1497.8 Pa at 13 °C by a reference library.

    >>> vapour_pressure_pa(13.0)
    1494.8
    """
    require_within("temp_c", temp_c, -10, 50)
    return 611.2 * math.exp(17.62 * temp_c / (243.12 + temp_c))


def humidity_frac(dry_c: float, wet_c: float, pressure_pa: float) -> float:
    """Return the relative humidity from a dry and a wet thermometer.

    Args:
        dry_c: dry bulb [°C]; -10 to 50.
        wet_c: wet bulb [°C]; at most `dry_c`.
        pressure_pa: pressure of the air [Pa]; 50000 to 110000, at sea level
            AIR_PRESSURE_PA.

    Returns:
        Relative humidity [0..1].

    Raises:
        Refused: an argument outside its range, or a wet bulb too cold for any
            air: it has dried out.

    Source: psychrometer equation; constants from memory, checked against a library.
    Valid: ventilated wet bulb above freezing.
    Check: 13 and 12 °C give 89.3 % by a reference library.

    >>> humidity_frac(13.0, 12.0, 101325.0)
    0.892
    """
    require_within("dry_c", dry_c, -10, 50)
    require_within("wet_c", wet_c, -10, dry_c)
    require_within("pressure_pa", pressure_pa, LEAST_PRESSURE_PA, MOST_PRESSURE_PA)
    vapour_pa = vapour_pressure_pa(wet_c)
    vapour_pa -= PSYCHROMETER_1_K * pressure_pa * (dry_c - wet_c)
    if vapour_pa < 0:
        raise Refused("too_far_below_dry", "wet_c", wet_c, dry_c)
    return vapour_pa / vapour_pressure_pa(dry_c)


def humidity_range(
    dry_c: float, wet_c: float, pressure_pa: float, error_k: float
) -> "dict[str, float | str]":
    """Return the relative humidity with the doubt that the thermometers leave.

    Args:
        dry_c: dry bulb [°C]; -10 to 50.
        wet_c: wet bulb [°C]; at most `dry_c`.
        pressure_pa: pressure of the air [Pa]; 50000 to 110000, at sea level
            AIR_PRESSURE_PA.
        error_k: how far the difference of the two may be off [K]; 0 to 3.

    Returns:
        {"value", "low", "high", "basis"}, fractions; never above 1.

    Raises:
        Refused: an argument outside its range.

    Source: humidity_frac with the wet bulb moved either way.
    Check: 0.2 K is about 2 % of humidity.

    >>> humidity_range(13.0, 12.0, 101325.0, 0.2)["low"]
    0.870
    """
    require_within("error_k", error_k, 0, 3)
    warmer_c = min(dry_c, wet_c + error_k)
    return {
        "value": humidity_frac(dry_c, wet_c, pressure_pa),
        "low": humidity_frac(dry_c, wet_c - error_k, pressure_pa),
        "high": humidity_frac(dry_c, warmer_c, pressure_pa),
        "basis": "wet_bulb_error",
    }


def dew_point_c(temp_c: float, humidity_frac: float) -> float:
    """Return the temperature at which water settles on a surface.

    Args:
        temp_c: temperature of the air [°C]; -10 to 50.
        humidity_frac: relative humidity [0..1]; at least 0.01.

    Returns:
        Dew point [°C].

    Raises:
        Refused: an argument outside its range.

    Source: Magnus form, solved for temperature.
    Check: saturated air is at its dew point.

    >>> dew_point_c(13.0, 0.8927)
    11.27
    """
    require_within("humidity_frac", humidity_frac, 0.01, 1)
    share = math.log(vapour_pressure_pa(temp_c) * humidity_frac / 611.2)
    return 243.12 * share / (17.62 - share)
