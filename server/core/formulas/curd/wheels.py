"""How many wheels the curd makes, and how heavy to fill them."""

from ...numbers.bounds import (
    require_above,
    require_count,
    require_number,
    require_within,
)
from ...numbers.refused import Refused

TYPE_CHECKING = False
if TYPE_CHECKING:
    Plan = dict[str, object]  # counts, used_kg, left_kg
    Full = tuple[float, int, list[int]]  # what is left, wheels, counts

# A microgram: binary fractions of a kilogram do not add up exactly.
_SAME_KG = 1e-9


def fill_kg(ripe_kg: float, brine_loss_frac: float, store_loss_frac: float) -> float:
    """Return how much curd to fill for a wheel of a wanted ripe mass.

    Args:
        ripe_kg: mass wanted when ripe [kg]; above 0.
        brine_loss_frac: share lost in brine [0..0.3]. Below 0 is a gain.
        store_loss_frac: share of the brined wheel lost in the store [0..0.7].

    Returns:
        Mass out of the press [kg].

    Raises:
        Refused: an argument outside its range.

    Source: the losses follow one another.
    Check: 12 kg, 2 % then 3 %: 12.624 kg.

    >>> fill_kg(12.0, 0.02, 0.03)
    12.6236
    """
    require_above("ripe_kg", ripe_kg, 0)
    require_within("brine_loss_frac", brine_loss_frac, -0.05, 0.3)
    require_within("store_loss_frac", store_loss_frac, 0, 0.7)
    return ripe_kg / ((1 - brine_loss_frac) * (1 - store_loss_frac))


def fill_check(
    filled_kg: float, wanted_kg: float, tolerance_frac: float
) -> "dict[str, float | str]":
    """Return whether a filled mould weighs what was wanted.

    Args:
        filled_kg: mass filled [kg]; above 0.
        wanted_kg: mass wanted [kg]; above 0.
        tolerance_frac: how far off is accepted, as a share [0..0.5], usually .02.

    Returns:
        {"value", "low", "high", "basis"}: the mass, its limits, and "in_band",
        "light" or "heavy".

    Raises:
        Refused: an argument outside its range.

    Source: common practice, no source.
    Check: the wanted mass is in band at any tolerance.

    >>> fill_check(12.3, 12.624, 0.02)["basis"]
    'light'
    """
    require_above("filled_kg", filled_kg, 0)
    require_above("wanted_kg", wanted_kg, 0)
    require_within("tolerance_frac", tolerance_frac, 0, 0.5)
    low_kg = wanted_kg * (1 - tolerance_frac)
    high_kg = wanted_kg * (1 + tolerance_frac)
    basis = "in_band"
    if filled_kg < low_kg - _SAME_KG:
        basis = "light"
    elif filled_kg > high_kg + _SAME_KG:
        basis = "heavy"
    return {"value": filled_kg, "low": low_kg, "high": high_kg, "basis": basis}


def wheel_plans(curd_kg: float, size_kgs: "list[float]") -> "list[Plan]":
    """Return every way to fill whole wheels to which no further wheel can be added.

    Args:
        curd_kg: curd to mould [kg]; 0 or more.
        size_kgs: fill mass of each size [kg]; 1 to 4 sizes, each above 0.

    Returns:
        List of {"counts", "used_kg", "left_kg"}; counts in the order of the
        sizes; the plan that leaves least comes first, of equals the one with
        fewer wheels.

    Raises:
        Refused: an argument outside its range, or more than 2000 plans.

    Source: integer search.
    Check: 30.9 kg in 12 and 4.5 kg: two and one leave 2.4; one and four leave .9.

    >>> [plan["counts"] for plan in wheel_plans(30.9, [12.0, 4.5])]
    [[1, 4], [2, 1], [0, 6]]
    """
    return [_plan(full, curd_kg) for full in sorted(_full(curd_kg, size_kgs))]


def _plan(full: "Full", curd_kg: float) -> "Plan":
    left_kg, _, counts = full
    return {"counts": counts, "used_kg": curd_kg - left_kg, "left_kg": left_kg}


def _full(curd_kg: float, size_kgs: "list[float]") -> "list[Full]":
    """Return the fillings that leave no room for one wheel more."""
    require_within("curd_kg", curd_kg, 0, 100000)
    require_count("sizes", len(size_kgs), 1, 4)
    for size_kg in size_kgs:
        require_above("size_kg", size_kg, 0)
    ways = 1
    for size_kg in size_kgs[:-1]:
        ways *= int((curd_kg + _SAME_KG) / size_kg) + 1
    # The phone's sort is quadratic on sorted input, so the list is kept short.
    if ways > 2000:
        raise Refused("too_many_plans", "curd_kg", curd_kg, most_plans=2000)
    smallest_kg = min(size_kgs)
    # The counts make the order total: the phone's sort is not stable.
    return [
        (max(0.0, left_kg), sum(counts), counts)
        for counts, left_kg in _counts(curd_kg, size_kgs)
        if left_kg < smallest_kg - _SAME_KG
    ]


def _counts(curd_kg: float, size_kgs: "list[float]") -> "list[tuple[list[int], float]]":
    """Return [(counts, what is left)], the last size filled as far as it goes."""
    no_counts: list[int] = []
    partial = [(no_counts, curd_kg)]
    for i in range(len(size_kgs)):
        grown = []
        for counts, left_kg in partial:
            most = int((left_kg + _SAME_KG) / size_kgs[i])
            lowest = most if i == len(size_kgs) - 1 else 0
            for count in range(lowest, most + 1):
                grown.append((counts + [count], left_kg - count * size_kgs[i]))
        partial = grown
    return partial


def wheel_plan(curd_kg: float, size_kgs: "list[float]") -> "Plan":
    """Return the whole wheels that leave the least curd.

    Args:
        curd_kg: curd to mould [kg]; 0 or more.
        size_kgs: fill mass of each size [kg]; 1 to 4 sizes, each above 0.

    Returns:
        {"counts", "used_kg", "left_kg"}; counts in the order of the sizes.

    Raises:
        Refused: as wheel_plans.

    Source: integer search.
    Check: 54.075 kg in 4.5 kg wheels: twelve, .075 kg left.

    >>> wheel_plan(54.075, [4.5])["counts"]
    [12]
    """
    return _plan(min(_full(curd_kg, size_kgs)), curd_kg)


def wheel_plan_range(
    low_kg: float, value_kg: float, high_kg: float, size_kgs: "list[float]"
) -> "dict[str, object]":
    """Return how many wheels to have moulds ready for, when the yield is not sure.

    Args:
        low_kg: least curd expected [kg]; 0 or more.
        value_kg: curd expected [kg]; between the other two.
        high_kg: most curd expected [kg].
        size_kgs: fill mass of each size [kg]; 1 to 4 sizes, each above 0.

    Returns:
        {"value", "low", "high", "basis"}: a plan, as wheel_plan, for each mass.

    Raises:
        Refused: as wheel_plans, or the three masses out of order.

    Source: integer search at each mass.
    Check: equal masses give equal plans.

    >>> wheel_plan_range(52.5, 54.075, 55.7, [12.0])["low"]["counts"]
    [4]
    """
    require_number("value_kg", value_kg)
    require_within("low_kg", low_kg, 0, value_kg)
    require_within("value_kg", value_kg, low_kg, high_kg)
    return {
        "value": wheel_plan(value_kg, size_kgs),
        "low": wheel_plan(low_kg, size_kgs),
        "high": wheel_plan(high_kg, size_kgs),
        "basis": "yield_range",
    }
