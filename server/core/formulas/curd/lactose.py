"""How much of the milk sugar the washes leave in the curd."""

from ...numbers.bounds import (
    require_above,
    require_at_least,
    require_within,
)
from ...numbers.refused import require

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


# Share of a full exchange of lactose that a wash reaches: low, usual, high.
# From memory: 10 to 20 min of stirring, curd under 1 cm.
EXCHANGE_LOW, EXCHANGE_USUAL, EXCHANGE_HIGH = 0.8, 0.9, 0.95


def lactose_left_frac(
    aqueous_kg: float, washes: list[list[float]], exchange_frac: float
) -> float:
    """Return the share of lactose left after one or more washes.

    Whey is run off and water stirred in; lactose then spreads over all the water
    in the vat, or as far towards that as the exchange goes.

    Args:
        aqueous_kg: water phase of curd and whey before the first wash [kg]; above 0.
        washes: list of [drained_kg, water_kg], in order.
        exchange_frac: share of a full exchange reached [0..1]; see EXCHANGE_USUAL.

    Returns:
        Lactose in the water phase, as a share of that before [0..1].

    Raises:
        Refused: more drained than there is, or an amount out of range.

    Source: mass balance; partial exchange linear in its share (from memory).
    Check: 94 kg, 30 off and 20 on, full exchange: 64/84 = 0.7619.

    >>> lactose_left_frac(94, [[30, 20]], 1)
    0.7619
    """
    require_above("aqueous_kg", aqueous_kg, 0)
    require_within("exchange_frac", exchange_frac, 0, 1)
    left_frac = 1.0
    for drained_kg, added_kg in washes:
        require_at_least("drained_kg", drained_kg, 0)
        require_at_least("water_kg", added_kg, 0)
        leaves_some = drained_kg < aqueous_kg
        require(leaves_some, "no_water_left", "drained_kg", drained_kg, aqueous_kg)
        kept_kg = aqueous_kg - drained_kg
        full_frac = kept_kg / (kept_kg + added_kg)
        left_frac *= 1 - exchange_frac * (1 - full_frac)
        aqueous_kg = kept_kg + added_kg
    return left_frac


def lactose_left(aqueous_kg: float, washes: list[list[float]]) -> "dict[str, Any]":
    """Return the share of lactose left, with the range that stirring leaves open.

    Args:
        aqueous_kg: water phase of curd and whey before the first wash [kg]; above 0.
        washes: list of [drained_kg, water_kg], in order.

    Returns:
        {"value_frac", "low_frac", "high_frac"}; {"basis"}: "wash.exchange", a
        figure from memory.

    Raises:
        Refused: as `lactose_left_frac`.

    Source: `lactose_left_frac` at the usual, the best and the poorest exchange.
    Check: 94 kg, 30 off and 20 on: 0.7857 to 0.8095 at 0.9 and 0.8.

    >>> lactose_left(94, [[30, 20]])["value_frac"]
    0.7857
    """
    return {
        "value_frac": lactose_left_frac(aqueous_kg, washes, EXCHANGE_USUAL),
        "low_frac": lactose_left_frac(aqueous_kg, washes, EXCHANGE_HIGH),
        "high_frac": lactose_left_frac(aqueous_kg, washes, EXCHANGE_LOW),
        "basis": "wash.exchange",
    }
