"""Warming and cooling a stirred vat: the laws.

One temperature in the vat, one at the jacket: the gap between them shrinks by
the same share each minute, with time constant tau. When the heater, not the
jacket, is the limit, the vat warms in a straight line. `heat_forecast` reads
both off the readings.
"""

import math

from ...numbers.bounds import require_above, require_at_least, require_number
from ...numbers.readings import require_series
from ...numbers.refused import require


def time_to_target_s(
    start_c: float, target_c: float, jacket_c: float, tau_s: float
) -> float:
    """Return the time for a stirred vat to go from one temperature to another.

    Args:
        start_c: vat temperature now [°C].
        target_c: vat temperature wanted [°C]; from start towards the jacket.
        jacket_c: jacket temperature, steady [°C].
        tau_s: time constant of this vat at this fill [s]; above 0.

    Returns:
        Time from start to target [s]; 0.0 when already there.

    Raises:
        Refused: the target is at or beyond the jacket, or lies away from it,
            or `tau_s` is not above 0.

    Source: Newton's law of cooling, solved for time.
    Valid: stirred contents, steady jacket.
    Check: 32 to 38 °C, jacket 60 °C, tau 40 min: 9.6465 min.

    >>> time_to_target_s(32, 38, 60, 2400) / 60
    9.6465
    """
    require_above("tau_s", tau_s, 0)
    if target_c == start_c:
        return 0.0
    require_towards_jacket(start_c, target_c, jacket_c)
    return tau_s * math.log((jacket_c - start_c) / (jacket_c - target_c))


def temp_after_c(
    start_c: float, jacket_c: float, tau_s: float, elapsed_s: float
) -> float:
    """Return the temperature of a stirred vat after a time.

    Args:
        start_c: vat temperature at the start [°C].
        jacket_c: jacket temperature, steady [°C].
        tau_s: time constant of this vat at this fill [s]; above 0.
        elapsed_s: time since the start [s]; 0 or more.

    Returns:
        Vat temperature [°C].

    Raises:
        Refused: `tau_s` not above 0, or a negative time.

    Source: Newton's law of cooling.
    Check: after one tau, 63.2 % of the way.

    >>> temp_after_c(32, 60, 2400, 2400)
    49.699
    """
    require_above("tau_s", tau_s, 0)
    require_at_least("elapsed_s", elapsed_s, 0)
    return jacket_c - (jacket_c - start_c) * math.exp(-elapsed_s / tau_s)


def temp_after_drift_c(
    start_c: float, jacket_times_s: list[float], jackets_c: list[float], tau_s: float
) -> float:
    """Return the temperature of a stirred vat after its jacket has drifted.

    The jacket runs straight between its readings; each piece is solved exactly.

    Args:
        start_c: vat temperature at the first jacket reading [°C].
        jacket_times_s: time of each jacket reading [s]; rising, two or more.
        jackets_c: jacket temperature at those times [°C].
        tau_s: time constant of this vat at this fill [s]; above 0.

    Returns:
        Vat temperature at the last jacket reading [°C].

    Raises:
        Refused: times do not rise or pair, or `tau_s` not above 0.

    Source: dT/dt = (jacket - T) / tau, solved for a straight jacket.
    Check: a steady jacket gives `temp_after_c`.

    >>> temp_after_drift_c(32, [0, 1200, 2400], [60, 60, 60], 2400)
    49.699
    """
    require_above("tau_s", tau_s, 0)
    require_series(jacket_times_s, "jackets_c", jackets_c, 2)
    temp_c = start_c
    for i in range(1, len(jackets_c)):
        span_s = jacket_times_s[i] - jacket_times_s[i - 1]
        lag_k = tau_s * (jackets_c[i] - jackets_c[i - 1]) / span_s
        gap_k = temp_c - jackets_c[i - 1] + lag_k
        temp_c = jackets_c[i] - lag_k + gap_k * math.exp(-span_s / tau_s)
    return temp_c


def rate_k_s(temp_c: float, jacket_c: float, tau_s: float) -> float:
    """Return how fast a stirred vat warms (or, below 0, cools) just now.

    Args:
        temp_c: vat temperature [°C].
        jacket_c: jacket temperature [°C].
        tau_s: time constant of this vat at this fill [s]; above 0.

    Returns:
        Rate [K/s].

    Raises:
        Refused: `tau_s` not above 0.

    Source: Newton's law of cooling.
    Check: 32 °C, jacket 60 °C, tau 40 min: 0.700 K/min.

    >>> rate_k_s(32, 60, 2400) * 60
    0.700
    """
    require_above("tau_s", tau_s, 0)
    return (jacket_c - temp_c) / tau_s


def jacket_needed_c(
    start_c: float, target_c: float, tau_s: float, time_s: float
) -> float:
    """Return the steady jacket that reaches a target in a given time.

    Args:
        start_c: vat temperature now [°C].
        target_c: vat temperature wanted [°C].
        tau_s: time constant of this vat at this fill [s]; above 0.
        time_s: time allowed [s]; above 0.

    Returns:
        Jacket temperature [°C]; whether the jacket can give it is not asked.

    Raises:
        Refused: `tau_s` or `time_s` not above 0.

    Source: Newton's law of cooling, solved for the jacket.
    Check: undoes `time_to_target_s`.

    >>> jacket_needed_c(32, 38, 2400, 578.79)
    60.00
    """
    require_above("tau_s", tau_s, 0)
    require_above("time_s", time_s, 0)
    return start_c + (target_c - start_c) / -math.expm1(-time_s / tau_s)


def require_towards_jacket(start_c: float, target_c: float, jacket_c: float) -> None:
    """Refuse a target that the jacket cannot bring about.

    Args:
        start_c: vat temperature now [°C].
        target_c: vat temperature wanted [°C].
        jacket_c: jacket temperature, steady [°C].

    Raises:
        Refused: the target is at or beyond the jacket, or lies away from it.

    >>> require_towards_jacket(32, 70, 60)
    Traceback (most recent call last):
    ...
    server.core.numbers.refused.Refused: target_c 70 beyond_jacket 60
    """
    for field, temp_c in (("start_c", start_c), ("target_c", target_c)):
        require_number(field, temp_c)
    require_number("jacket_c", jacket_c)
    reach_k, way_k = jacket_c - start_c, target_c - start_c
    is_away = reach_k * way_k < 0
    is_within = is_away or abs(way_k) < abs(reach_k)
    require(is_within, "beyond_jacket", "target_c", target_c, jacket_c)
    require(not is_away, "away_from_jacket", "target_c", target_c, jacket_c)
