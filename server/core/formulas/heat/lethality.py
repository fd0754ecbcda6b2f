"""What heat does to named organisms, for information only.

Nothing here says that milk is pasteurised. That verdict comes from the legal
table alone: every reading at or above the temperature for the whole time. The
legal pairs are separate minima and do not lie on one curve, so equal F is not
equal standing.

D and z hold near where they were measured. Beyond REACH_K of that temperature
nothing is extrapolated: colder milk is left out and said to be, hotter milk counts
as the hottest that was measured. Where all of it was colder nothing is worked out:
that is no zero, for the milk may well have been hot enough to kill.
"""

import math

from ...numbers.bounds import require_above, require_number
from ...numbers.readings import require_series

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

REACH_K = 5.0  # This project's judgement: z read off one study bends beyond it.
MOST_LOGS = 12.0  # More is arithmetic, not evidence: no study counts so far.

# Read in the abstract that each names; D at `reference_c`.
PUBLISHED = (
    {
        "key": "listeria_monocytogenes_milk",
        "d_s": 0.9,
        "reference_c": 71.7,
        "z_k": 6.3,
        "source": "bradshaw_1985_whole_milk",
    },
    {
        "key": "staphylococcus_aureus_milk",
        "d_s": 52.2,
        "reference_c": 60.0,
        "z_k": 9.46,
        "source": "can_j_microbiol_1977_milk",
    },
    {
        "key": "staphylococcus_aureus_whey",
        "d_s": 79.2,
        "reference_c": 60.0,
        "z_k": 6.1,
        "source": "iafp_2017_whey",
    },
)


def lethality_s(
    times_s: list[float], temps_c: list[float], reference_c: float, z_k: float
) -> float:
    """Return the time at a reference temperature that a heating is worth (F).

    The milk runs straight between readings; each piece is integrated exactly.

    Args:
        times_s: time of each reading [s]; rising, one or more.
        temps_c: milk temperature at the coldest point [°C].
        reference_c: reference temperature [°C].
        z_k: rise that makes the kill ten times faster [K]; above 0.

    Returns:
        F at the reference temperature [s].

    Raises:
        Refused: readings that do not pair or rise, or `z_k` not above 0.

    Source: Bigelow's law, integrated in closed form for a straight piece.
    Check: 40 to 63 °C in 20 min, 30 min hold, and down again, z 7 K, reference
        63 °C: 35.28432 min.

    >>> times_s = [0, 1200, 3000, 4200]
    >>> lethality_s(times_s, [40, 63, 63, 40], 63, 7) / 60
    35.28432
    """
    require_above("z_k", z_k, 0)
    require_number("reference_c", reference_c)
    require_series(times_s, "temps_c", temps_c, 1)
    total_s = 0.0
    for i in range(1, len(times_s)):
        span_s = times_s[i] - times_s[i - 1]
        total_s += _piece_s(span_s, temps_c[i - 1], temps_c[i], reference_c, z_k)
    return total_s


def log_reduction(
    times_s: list[float],
    temps_c: list[float],
    d_s: float,
    reference_c: float,
    z_k: float,
) -> "dict[str, Any]":
    """Return how many powers of ten of an organism a heating would kill.

    Args:
        times_s: time of each reading [s]; rising, one or more.
        temps_c: milk temperature at the coldest point [°C].
        d_s: time for one power of ten at the reference [s]; above 0.
        reference_c: temperature at which D was measured [°C].
        z_k: rise that makes the kill ten times faster [K]; above 0.

    Returns:
        {"value"}: powers of ten, at most MOST_LOGS, or None where no part was near
        enough; {"at_least"}: true when more was worked out, milk hotter than
        measured was counted as measured, or some was left out; {"left_out_s"}: how
        long milk was too cold to be counted [s]; {"basis"}: always
        "lethality.information_only".

    Raises:
        Refused: as `lethality_s`, or `d_s` not above 0.

    Source: log reduction = F / D.
    Changed: nothing is extrapolated beyond REACH_K of the reference.
    Check: 3 s at 71.7 °C with D 0.9 s: 3.33.

    >>> log_reduction([0, 3], [71.7, 71.7], 0.9, 71.7, 6.3)["value"]
    3.333
    """
    require_above("d_s", d_s, 0)
    near = near_lethality_s(times_s, temps_c, reference_c, z_k)
    logs = None if near["value_s"] is None else near["value_s"] / d_s
    return {
        "value": None if logs is None else min(logs, MOST_LOGS),
        "at_least": near["at_least"] or (logs is not None and logs > MOST_LOGS),
        "left_out_s": near["left_out_s"],
        "basis": "lethality.information_only",
    }


def near_lethality_s(
    times_s: list[float], temps_c: list[float], reference_c: float, z_k: float
) -> "dict[str, Any]":
    """Return F, counted only as far from the reference as z can be trusted.

    Args:
        times_s: time of each reading [s]; rising, one or more.
        temps_c: milk temperature at the coldest point [°C].
        reference_c: reference temperature [°C].
        z_k: rise that makes the kill ten times faster [K]; above 0.

    Returns:
        {"value_s"}: F at the reference temperature [s], or None where no part was
        near enough; {"at_least"}: true when milk was hotter than REACH_K above the
        reference and counted as that hot, or some was left out; {"left_out_s"}: how
        long milk was colder than REACH_K below it [s].

    Raises:
        Refused: as `lethality_s`.

    Source: as `lethality_s`; colder than REACH_K below is left out.
    Check: a minute 5 K below with z 5 K is worth 6 s, 6 K below is left out.

    >>> near_lethality_s([0, 60, 61, 121], [58, 58, 57, 57], 63, 5)["value_s"]
    6.0
    """
    require_above("z_k", z_k, 0)
    require_number("reference_c", reference_c)
    require_series(times_s, "temps_c", temps_c, 1)
    low_c, high_c = reference_c - REACH_K, reference_c + REACH_K
    total_s = counted_s = left_out_s = 0.0
    for i in range(1, len(times_s)):
        span_s = times_s[i] - times_s[i - 1]
        start_c, end_c = temps_c[i - 1], temps_c[i]
        edges = _edges(start_c, end_c, low_c, high_c)
        for a, b in zip(edges, edges[1:]):
            from_c, to_c = _along(start_c, end_c, a), _along(start_c, end_c, b)
            if (from_c + to_c) / 2 < low_c:
                left_out_s += span_s * (b - a)
                continue
            counted_s += span_s * (b - a)
            if (from_c + to_c) / 2 > high_c:
                from_c, to_c = high_c, high_c
            total_s += _piece_s(span_s * (b - a), from_c, to_c, reference_c, z_k)
    is_known = counted_s > 0 or left_out_s == 0
    return {
        "value_s": total_s if is_known else None,
        "at_least": is_known and (max(temps_c) > high_c or left_out_s > 0),
        "left_out_s": left_out_s,
    }


def reading_error_factor(error_k: float, z_k: float) -> float:
    """Return by how much a thermometer's error multiplies the kill worked out.

    Args:
        error_k: how much the thermometer reads above the milk [K].
        z_k: rise that makes the kill ten times faster [K]; above 0.

    Returns:
        Worked-out kill over true kill.

    Raises:
        Refused: `z_k` not above 0.

    Source: Bigelow's law.
    Check: 1 K too high with z 6.3 K: 1.44.

    >>> reading_error_factor(1, 6.3)
    1.441
    """
    require_number("error_k", error_k)
    require_above("z_k", z_k, 0)
    return 10 ** (error_k / z_k)


def z_between_k(
    cooler_c: float, longer_s: float, hotter_c: float, shorter_s: float
) -> float:
    """Return the z for which two pairs of temperature and time kill alike.

    Args:
        cooler_c: temperature of the slow pair [°C].
        longer_s: its time [s].
        hotter_c: temperature of the fast pair [°C]; above `cooler_c`.
        shorter_s: its time [s]; above 0, below `longer_s`.

    Returns:
        z [K].

    Raises:
        Refused: the second pair is not hotter and shorter.

    Source: Bigelow's law, solved for z.
    Check: 63 °C for 30 min and 72 °C for 15 s: 4.3286 K.

    >>> z_between_k(63, 1800, 72, 15)
    4.3286
    """
    require_above("hotter_c", hotter_c, cooler_c)
    require_above("shorter_s", shorter_s, 0)
    require_above("longer_s", longer_s, shorter_s)
    return (hotter_c - cooler_c) / math.log10(longer_s / shorter_s)


def _piece_s(
    span_s: float, start_c: float, end_c: float, reference_c: float, z_k: float
) -> float:
    # Mean of 10^x over a straight piece, written so that a nearly flat piece
    # does not lose its digits: (e^d - 1) / d tends to 1.
    power = math.log(10) / z_k
    rate = math.exp(power * (start_c - reference_c))
    rise = power * (end_c - start_c)
    if rise == 0:
        return span_s * rate
    return span_s * rate * math.expm1(rise) / rise


def _along(start_c: float, end_c: float, part: float) -> float:
    return start_c + part * (end_c - start_c)


def _edges(start_c: float, end_c: float, low_c: float, high_c: float) -> list[float]:
    parts = [0.0, 1.0]
    for edge_c in (low_c, high_c):
        if (start_c - edge_c) * (end_c - edge_c) < 0:
            parts.append((edge_c - start_c) / (end_c - start_c))
    return sorted(parts)
