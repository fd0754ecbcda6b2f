"""How fast a vat follows its jacket, and how long a power needs."""

from ...numbers.bounds import require_above, require_at_least

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


def tau_of_vat_s(
    contents_kg: float, specific_heat_j_kg_k: float, conductance_w_k: float
) -> float:
    """Return the time constant of a vat from its contents and jacket.

    Args:
        contents_kg: milk, or curd and whey [kg]; above 0.
        specific_heat_j_kg_k: of the contents [J/(kg K)]; above 0.
        conductance_w_k: heat passed per kelvin of gap (U times A) [W/K]; above 0.

    Returns:
        Time constant [s].

    Raises:
        Refused: an argument not above 0.

    Source: lumped heat balance.
    Check: 515 kg, 3850 J/(kg K), 800 W/K: 1982750 / 800 = 2478.4 s.

    >>> tau_of_vat_s(515, 3850, 800)
    2478.4
    """
    require_above("contents_kg", contents_kg, 0)
    require_above("specific_heat_j_kg_k", specific_heat_j_kg_k, 0)
    require_above("conductance_w_k", conductance_w_k, 0)
    return contents_kg * specific_heat_j_kg_k / conductance_w_k


def tau_at_fill(
    known_tau_s: float, known_kg: float, contents_kg: float
) -> "dict[str, Any]":
    """Return what a time constant known at one fill says about another.

    With a jacket under the vat only, tau goes with the mass. With a jacket round
    the sides, the wetted wall grows with the fill and tau hardly moves. Which it
    is, is not known until a make at this fill has been measured.

    Args:
        known_tau_s: time constant measured [s]; above 0.
        known_kg: contents when it was measured [kg]; above 0.
        contents_kg: contents now [kg]; above 0.

    Returns:
        {"value_s", "low_s", "high_s", "basis"}: the value is the middle of the
        two; basis "tau.same_fill" or "tau.other_fill".

    Raises:
        Refused: an argument not above 0.

    Source: tau = m c / (U A) with A steady, and with A going with m.
    Check: double the milk: between once and twice the time constant.

    >>> tau_at_fill(2400, 500, 1000)["high_s"]
    4800.0
    """
    require_above("known_tau_s", known_tau_s, 0)
    require_above("known_kg", known_kg, 0)
    require_above("contents_kg", contents_kg, 0)
    by_mass_s = known_tau_s * contents_kg / known_kg
    return {
        "value_s": (known_tau_s + by_mass_s) / 2,
        "low_s": min(known_tau_s, by_mass_s),
        "high_s": max(known_tau_s, by_mass_s),
        "basis": "tau.same_fill" if contents_kg == known_kg else "tau.other_fill",
    }


def time_at_power_s(
    start_c: float,
    target_c: float,
    contents_kg: float,
    specific_heat_j_kg_k: float,
    power_w: float,
) -> float:
    """Return the time to warm when the heater's power is the limit.

    Args:
        start_c: temperature now [°C].
        target_c: temperature wanted [°C]; at least `start_c`.
        contents_kg: milk, or curd and whey [kg]; above 0.
        specific_heat_j_kg_k: of the contents [J/(kg K)]; above 0.
        power_w: heat that reaches the contents [W]; above 0.

    Returns:
        Time [s].

    Raises:
        Refused: the target below the start, or an argument not above 0.

    Source: heat balance at steady power.
    Valid: losses to the room small against `power_w`.
    Check: 100 kg water by 10 K at 4180 W: 1000 s.

    >>> time_at_power_s(20, 30, 100, 4180, 4180)
    1000.0
    """
    require_at_least("target_c", target_c, start_c)
    require_above("contents_kg", contents_kg, 0)
    require_above("specific_heat_j_kg_k", specific_heat_j_kg_k, 0)
    require_above("power_w", power_w, 0)
    return contents_kg * specific_heat_j_kg_k * (target_c - start_c) / power_w
