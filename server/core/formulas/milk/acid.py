"""The fall of pH in a make: its curve, and how temperature bends it.

The curve is Gompertz's. Two of its four numbers, the pH it starts from and the
pH it ends at, belong to the recipe; only the other two, how fast and how late,
are read off a make. The shape is approximate: the published Gouda points lie up
to 0.08 pH off it.

A trap: the curve at time 0 is already a little below `start_ph`.

pH and titratable acidity are never turned into each other.
"""

import math

from ...numbers.bounds import require_above, require_number, require_within
from ...numbers.readings import require_series
from ...numbers.refused import require

# Cardinal temperatures of a starter's growth [°C].
MIXED_STARTER = {
    # Mesophilic and thermophilic strains together, in milk.
    # Source: Medvedova et al., Fermentation 5(1):2 (2019), abstract.
    "min_c": 4.0,
    "best_c": 38.3,
    "max_c": 49.6,
}
MESOPHILIC_STARTER = {
    # Lactococci alone slow above 37 °C. From memory.
    "min_c": 4.0,
    "best_c": 34.0,
    "max_c": 40.5,
}


def gompertz_ph(
    elapsed_s: float, start_ph: float, end_ph: float, fall_ph_s: float, lag_s: float
) -> float:
    """Return the pH that the curve has at a time.

    Args:
        elapsed_s: time since the starter [s].
        start_ph: pH far before the fall; above `end_ph`.
        end_ph: pH far after it.
        fall_ph_s: steepest fall [pH/s]; above 0.
        lag_s: where the steepest tangent leaves `start_ph` [s].

    Returns:
        pH.

    Raises:
        Refused: the end not below the start, or the fall not above 0.

    Source: Gompertz in Zwietering's form (from memory), as De Brabandere & De
        Baerdemaeker, J Food Eng 41:221 (1999), use it for cheese.
    Check: 6.6 to 5.2, 0.25 per hour, lag 0.75 h: 6.0376 at 3 h.

    >>> gompertz_ph(3 * 3600, 6.6, 5.2, 0.25 / 3600, 0.75 * 3600)
    6.0376
    """
    require_number("elapsed_s", elapsed_s)
    _require_curve(start_ph, end_ph, fall_ph_s, lag_s)
    drop = start_ph - end_ph
    power = fall_ph_s * math.e / drop * (lag_s - elapsed_s) + 1
    # Beyond 700 the exponential leaves the range of a double; the curve is flat.
    return start_ph - drop * math.exp(-math.exp(min(power, 700.0)))


def gompertz_time_s(
    ph: float, start_ph: float, end_ph: float, fall_ph_s: float, lag_s: float
) -> float:
    """Return when the curve has fallen to a pH.

    Args:
        ph: pH asked about; between `end_ph` and `start_ph`, neither reached.
        start_ph: pH far before the fall; above `end_ph`.
        end_ph: pH far after it.
        fall_ph_s: steepest fall [pH/s]; above 0.
        lag_s: where the steepest tangent leaves `start_ph` [s].

    Returns:
        Time since the starter [s].

    Raises:
        Refused: a pH that the curve never has, or as `gompertz_ph`.

    Source: `gompertz_ph` solved for time.
    Check: its example reaches 5.4 at 6.662197 h.

    >>> gompertz_time_s(5.4, 6.6, 5.2, 0.25 / 3600, 0.75 * 3600) / 3600
    6.662197
    """
    _require_curve(start_ph, end_ph, fall_ph_s, lag_s)
    require_number("ph", ph)
    require(end_ph < ph < start_ph, "off_curve", "ph", ph, [end_ph, start_ph])
    drop = start_ph - end_ph
    return lag_s + drop / (fall_ph_s * math.e) * (
        1 - math.log(-math.log((start_ph - ph) / drop))
    )


def growth_factor(temp_c: float, min_c: float, best_c: float, max_c: float) -> float:
    """Return how fast a starter grows, as a share of its best.

    Args:
        temp_c: temperature [°C].
        min_c: below this it does not grow [°C].
        best_c: where it grows best [°C]; above the middle of the other two.
        max_c: above this it does not grow [°C].

    Returns:
        Growth over growth at `best_c` [0..1].

    Raises:
        Refused: the three temperatures are not in that order.

    Source: Rosso et al., Appl Environ Microbiol 61:610 (1995), cardinal
        temperature model with inflection, as Medvedova et al. use it.
    Check: 4.0, 38.3, 49.6 °C: 0.8720 at 32 °C (1.3604 of 1.56 per hour).

    >>> growth_factor(32, 4.0, 38.3, 49.6)
    0.8720
    """
    require_number("temp_c", temp_c)
    require_number("min_c", min_c)
    require_above("max_c", max_c, min_c)
    require_above("best_c", best_c, (min_c + max_c) / 2)
    require(best_c < max_c, "not_below", "best_c", best_c, max_c)
    if not min_c < temp_c < max_c:
        return 0.0
    up_k, best_k = temp_c - min_c, best_c - min_c
    curve = best_k * (temp_c - best_c)
    curve -= (best_c - max_c) * (best_c + min_c - 2 * temp_c)
    return (temp_c - max_c) * up_k * up_k / (best_k * curve)


def equivalent_time_s(
    times_s: list[float],
    temps_c: list[float],
    reference_c: float,
    starter: dict[str, float],
) -> float:
    """Return the time at a steady temperature that a warming make is worth.

    The milk runs straight between readings; growth along it is integrated by
    Simpson's rule in pieces of at most one kelvin.

    Args:
        times_s: time of each reading [s]; rising, one or more.
        temps_c: temperature of the milk or curd [°C].
        reference_c: steady temperature, that of the recipe's curve [°C].
        starter: {"min_c", "best_c", "max_c"} as `growth_factor` takes them.

    Returns:
        Equivalent time since the first reading [s].

    Raises:
        Refused: readings that do not pair or rise, or a starter that does not
            grow at the reference.

    Source: integral of growth over growth at the reference.
    Valid: where the logged temperature is that of the curd; a wheel's core stays
        warmer than its room.
    Check: at the reference itself, the time as it is.

    >>> equivalent_time_s([0, 3600], [32, 32], 32, MIXED_STARTER)
    3600.0
    """
    require_series(times_s, "temps_c", temps_c, 1)
    cardinals = (starter["min_c"], starter["best_c"], starter["max_c"])
    steady = growth_factor(reference_c, *cardinals)
    require(steady > 0, "no_growth", "reference_c", reference_c)
    total_s = 0.0
    for i in range(1, len(times_s)):
        start_c, rise_k = temps_c[i - 1], temps_c[i] - temps_c[i - 1]
        pieces = 1 + int(abs(rise_k))
        heights = [
            growth_factor(start_c + rise_k * j / (2 * pieces), *cardinals)
            for j in range(2 * pieces + 1)
        ]
        area = (
            heights[0] + 4 * sum(heights[1::2]) + 2 * sum(heights[2:-1:2]) + heights[-1]
        )
        total_s += (times_s[i] - times_s[i - 1]) * area / (6 * pieces)
    return total_s / steady


def _require_curve(
    start_ph: float, end_ph: float, fall_ph_s: float, lag_s: float
) -> None:
    require_within("end_ph", end_ph, 0, 14)
    require_within("start_ph", start_ph, 0, 14)
    require(start_ph > end_ph, "not_below", "end_ph", end_ph, start_ph)
    require_above("fall_ph_s", fall_ph_s, 0)
    require_number("lag_s", lag_s)
