"""Washing curd: the heat of the water.

The balance counts no loss to vat or room; published practice lands about 1 K
below it. So most of the water goes in first, the vat is measured, and the rest
is worked out from what was measured.
"""

from ...numbers.bounds import (
    require_above,
    require_at_least,
    require_number,
    require_within,
)
from ...numbers.refused import require
from ..milk.milk import WATER_CP_J_KG_K

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


def water_density_kg_l(temp_c: float) -> float:
    """Return the density of water.

    Args:
        temp_c: its temperature [°C]; 0 to 100.

    Returns:
        Density [kg/L].

    Raises:
        Refused: a temperature out of range.

    Source: IAPWS-95, at 101.325 kPa.
    Changed: a polynomial fitted to it, largest difference 0.00006 kg/L.
    Check: 60 °C is 0.98320 kg/L.

    >>> water_density_kg_l(60)
    0.9832
    """
    require_within("temp_c", temp_c, 0, 100)
    t = temp_c
    bend = -7.42229473e-06 + t * (4.04029937e-08 - t * 1.26170229e-10)
    return 0.999898687 + t * (4.85429703e-05 + t * bend)


def mixed_temp_c(
    vat_kg: float,
    vat_cp_j_kg_k: float,
    vat_c: float,
    water_kg: float,
    water_c: float,
) -> float:
    """Return the temperature after water is stirred into curd and whey.

    Args:
        vat_kg: curd and whey left in the vat [kg]; above 0.
        vat_cp_j_kg_k: their specific heat [J/(kg K)]; above 0.
        vat_c: their temperature [°C].
        water_kg: water added [kg]; 0 or more.
        water_c: its temperature [°C].

    Returns:
        Temperature of the mixture without losses [°C].

    Raises:
        Refused: an amount out of range.

    Source: heat balance.
    Valid: no loss to vat and room; published washes come out about 1 K lower.
    Check: 70.3 kg at 31 °C, 3900 J/(kg K), 20 kg of 60 °C: 37.78 °C.

    >>> mixed_temp_c(70.3, 3900, 31, 20, 60)
    37.78
    """
    capacity_j_k = _capacity_j_k(vat_kg, vat_cp_j_kg_k)
    require_number("vat_c", vat_c)
    require_number("water_c", water_c)
    require_at_least("water_kg", water_kg, 0)
    water_j_k = water_kg * WATER_CP_J_KG_K
    heat = capacity_j_k * vat_c + water_j_k * water_c
    return heat / (capacity_j_k + water_j_k)


def water_kg(
    vat_kg: float,
    vat_cp_j_kg_k: float,
    vat_c: float,
    target_c: float,
    water_c: float,
) -> float:
    """Return the water that brings curd and whey to a temperature.

    Args:
        vat_kg: curd and whey left in the vat [kg]; above 0.
        vat_cp_j_kg_k: their specific heat [J/(kg K)]; above 0.
        vat_c: their temperature [°C].
        target_c: temperature wanted [°C]; from `vat_c` to short of `water_c`.
        water_c: temperature of the water [°C].

    Returns:
        Water [kg]; 0.0 when the vat is there already.

    Raises:
        Refused: the target is not between vat and water.

    Source: heat balance solved for the water.
    Check: 70.3 kg at 31 °C, 3900 J/(kg K), to 37 °C with 60 °C: 17.11 kg.

    >>> water_kg(70.3, 3900, 31, 37, 60)
    17.11
    """
    capacity_j_k = _capacity_j_k(vat_kg, vat_cp_j_kg_k)
    require_number("vat_c", vat_c)
    require_number("target_c", target_c)
    require_number("water_c", water_c)
    if target_c == vat_c:
        return 0.0
    between = (target_c - vat_c) * (water_c - target_c) > 0
    require(
        between,
        "not_between_vat_and_water",
        "target_c",
        target_c,
        vat_c=vat_c,
        water_c=water_c,
    )
    gain_j = capacity_j_k * (target_c - vat_c)
    return gain_j / (WATER_CP_J_KG_K * (water_c - target_c))


def water_temp_c(
    vat_kg: float,
    vat_cp_j_kg_k: float,
    vat_c: float,
    target_c: float,
    water_kg: float,
) -> float:
    """Return how warm a given water must be to bring the vat to a temperature.

    Args:
        vat_kg: curd and whey left in the vat [kg]; above 0.
        vat_cp_j_kg_k: their specific heat [J/(kg K)]; above 0.
        vat_c: their temperature [°C].
        target_c: temperature wanted [°C].
        water_kg: water to be added [kg]; above 0.

    Returns:
        Temperature of the water [°C].

    Raises:
        Refused: an amount not above 0, or water would have to be ice or steam.

    Source: heat balance solved for the water's temperature.
    Check: 70.3 kg at 31 °C, 3900 J/(kg K), to 37 °C with 20 kg: 56.68 °C.

    >>> water_temp_c(70.3, 3900, 31, 37, 20)
    56.68
    """
    capacity_j_k = _capacity_j_k(vat_kg, vat_cp_j_kg_k)
    require_number("vat_c", vat_c)
    require_number("target_c", target_c)
    require_above("water_kg", water_kg, 0)
    gain_j = capacity_j_k * (target_c - vat_c)
    needed_c = target_c + gain_j / (WATER_CP_J_KG_K * water_kg)
    is_liquid = 0 < needed_c < 100
    require(is_liquid, "water_not_liquid", "water_kg", water_kg, needed_c=needed_c)
    return needed_c


def check_water_temp(water_c: float, most_c: float) -> list[dict[str, object]]:
    """Return whether wash water is hotter than the recipe lets touch the curd.

    Args:
        water_c: temperature of the water [°C].
        most_c: hottest allowed, from the recipe [°C].

    Returns:
        List of {"field", "key", "limit"}; empty when the water meets it.

    Raises:
        Refused: a value that is not a number.

    Source: comparison; the limit is the recipe's.
    Check: 60.1 °C does not meet 60 °C.

    >>> check_water_temp(60, 60)
    []
    """
    require_number("water_c", water_c)
    require_number("most_c", most_c)
    if water_c <= most_c:
        return []
    return [{"field": "water_c", "key": "above_limit", "limit": most_c}]


def wash_plan(
    vat_kg: float,
    vat_cp_j_kg_k: float,
    vat_c: float,
    target_c: float,
    water_c: float,
    first_frac: float,
) -> "dict[str, Any]":
    """Return how much water to add first, before measuring.

    Args:
        vat_kg: curd and whey left in the vat [kg]; above 0.
        vat_cp_j_kg_k: their specific heat [J/(kg K)]; above 0.
        vat_c: their temperature [°C].
        target_c: temperature wanted [°C]; from `vat_c` to short of `water_c`.
        water_c: temperature of the water [°C].
        first_frac: share to add before measuring [0..1]; 0.9 is usual.

    Returns:
        {"water_kg"}: all of it by the balance; {"first_kg"}; {"first_c"}:
        temperature to expect after the first part; {"basis"}: "wash.balance".

    Raises:
        Refused: as `water_kg`, or a share outside 0 to 1.

    Source: heat balance.
    Check: 17.11 kg, of which 15.40 first; 36.5 °C expected.

    >>> wash_plan(70.3, 3900, 31, 37, 60, 0.9)["first_kg"]
    15.40
    """
    require_within("first_frac", first_frac, 0, 1)
    whole_kg = water_kg(vat_kg, vat_cp_j_kg_k, vat_c, target_c, water_c)
    first_kg = first_frac * whole_kg
    return {
        "water_kg": whole_kg,
        "first_kg": first_kg,
        "first_c": mixed_temp_c(vat_kg, vat_cp_j_kg_k, vat_c, first_kg, water_c),
        "basis": "wash.balance",
    }


def rest_kg(
    vat_kg: float,
    vat_cp_j_kg_k: float,
    added_kg: float,
    measured_c: float,
    target_c: float,
    water_c: float,
) -> float:
    """Return the water still to add, from the temperature measured after the first.

    Args:
        vat_kg: curd and whey before any water [kg]; above 0.
        vat_cp_j_kg_k: their specific heat [J/(kg K)]; above 0.
        added_kg: water in the vat already [kg]; 0 or more.
        measured_c: temperature measured after stirring [°C].
        target_c: temperature wanted [°C]; from `measured_c` to short of `water_c`.
        water_c: temperature of the water left [°C].

    Returns:
        Water still to add [kg]; 0.0 when the vat is there already.

    Raises:
        Refused: an amount out of range, or the target is not between the vat and
            the water.

    Source: heat balance of curd, whey and the water already in.
    Check: without losses, first and rest make up the whole.

    >>> rest_kg(70.3, 3900, 15.402, 36.51, 37, 60)
    1.7
    """
    capacity_j_k = _capacity_j_k(vat_kg, vat_cp_j_kg_k)
    require_at_least("added_kg", added_kg, 0)
    all_kg = vat_kg + added_kg
    mixed_cp = (capacity_j_k + added_kg * WATER_CP_J_KG_K) / all_kg
    return water_kg(all_kg, mixed_cp, measured_c, target_c, water_c)


def _capacity_j_k(vat_kg: float, vat_cp_j_kg_k: float) -> float:
    require_above("vat_kg", vat_kg, 0)
    require_above("vat_cp_j_kg_k", vat_cp_j_kg_k, 0)
    return vat_kg * vat_cp_j_kg_k
