"""Whether what came out of a make accounts for what went in.

Shares are mass fractions. The same check serves whole mass and one component.
"""

from ...numbers.bounds import require_above, require_within


def kept_frac(
    milk_kg: float, milk_frac: float, cheese_kg: float, cheese_frac: float
) -> float:
    """Return the share of a component of the milk that ended in the cheese.

    Args:
        milk_kg: milk in the vat [kg]; above 0.
        milk_frac: fat, or casein, of the milk [0..1]; above 0.
        cheese_kg: cheese made [kg]; 0 or more.
        cheese_frac: the same component of the cheese [0..1].

    Returns:
        Share kept [0..1]; above 1 when the figures cannot all be right.

    Raises:
        Refused: an argument outside its range.

    Source: mass balance.
    Check: 100 kg at 3.4 % and 10.43 kg at 29.99 % is .92.

    >>> kept_frac(100.0, 0.034, 10.43, 0.2999)
    0.920
    """
    require_above("milk_kg", milk_kg, 0)
    require_above("milk_frac", milk_frac, 0)
    require_within("milk_frac", milk_frac, 0, 1)
    require_within("cheese_kg", cheese_kg, 0, 100000)
    require_within("cheese_frac", cheese_frac, 0, 1)
    return cheese_kg * cheese_frac / (milk_kg * milk_frac)


def cheese_fat_frac(
    milk_fat_frac: float, fat_kept_frac: float, yield_frac: float
) -> float:
    """Return the fat of the cheese that a yield implies.

    Args:
        milk_fat_frac: fat of the milk [0..0.2].
        fat_kept_frac: share of the fat that stays in the cheese [0..1].
        yield_frac: kg of cheese for a kg of milk [0..1]; above 0, below 1.

    Returns:
        Fat of the cheese [0..1].

    Raises:
        Refused: an argument outside its range, or more fat than cheese.

    Source: mass balance.
    Check: 3.4 %, .92, yield 10.430 %: 29.99 %.

    >>> cheese_fat_frac(0.034, 0.92, 0.1043)
    0.2999
    """
    require_within("milk_fat_frac", milk_fat_frac, 0, 0.2)
    require_within("fat_kept_frac", fat_kept_frac, 0, 1)
    require_above("yield_frac", yield_frac, 0)
    require_within("yield_frac", yield_frac, 0, 1)
    fat_frac = milk_fat_frac * fat_kept_frac / yield_frac
    require_within("cheese_fat_frac", fat_frac, 0, 1)
    return fat_frac


def whey_kg(milk_kg: float, water_kg: float, cheese_kg: float) -> float:
    """Return the whey that is left when the cheese is taken out.

    Args:
        milk_kg: milk in the vat [kg]; above 0.
        water_kg: wash water added [kg]; 0 or more.
        cheese_kg: cheese taken out [kg]; 0 or more, at most milk and water.

    Returns:
        Whey, wash water included [kg].

    Raises:
        Refused: an argument outside its range.

    Source: mass balance; loss to the air left out.
    Check: what goes in comes out.

    >>> whey_kg(515.0, 100.0, 54.0)
    561.0
    """
    require_above("milk_kg", milk_kg, 0)
    require_within("water_kg", water_kg, 0, 100000)
    require_within("cheese_kg", cheese_kg, 0, milk_kg + water_kg)
    return milk_kg + water_kg - cheese_kg


def account(
    in_kg: float, out_kg: float, low_ratio: float, high_ratio: float
) -> "dict[str, float | str]":
    """Return whether what came out of a make accounts for what went in.

    Serves whole mass (milk and water against cheese and whey) and one component
    (kg of fat in against kg of fat in cheese and whey).

    Args:
        in_kg: what went in [kg]; above 0.
        out_kg: what came out [kg]; 0 or more.
        low_ratio: smallest ratio that counts as accounted for, usually .97.
        high_ratio: largest ratio that counts as accounted for, usually 1.03.

    Returns:
        {"value", "low", "high", "basis"}: out over in, the limits, and
        "accounted", "some_missing" or "more_than_went_in".

    Raises:
        Refused: an argument outside its range.

    Source: mass balance; .97 to 1.03 is common practice, no source.
    Check: all out gives 1 and "accounted".

    >>> account(100.0, 96.0, 0.97, 1.03)["basis"]
    'some_missing'
    """
    require_above("in_kg", in_kg, 0)
    require_within("out_kg", out_kg, 0, 1000000)
    require_within("low_ratio", low_ratio, 0, 1)
    require_within("high_ratio", high_ratio, 1, 10)
    ratio = out_kg / in_kg
    basis = "accounted"
    if ratio < low_ratio:
        basis = "some_missing"
    elif ratio > high_ratio:
        basis = "more_than_went_in"
    return {"value": ratio, "low": low_ratio, "high": high_ratio, "basis": basis}


def component_kg(parts: "list[list[float]]") -> float:
    """Return the kg of one component in several lots, such as fat in cheese and whey.

    Args:
        parts: list of [kg, mass fraction].

    Returns:
        Sum of kg times fraction [kg].

    Raises:
        Refused: a mass below 0 or a fraction outside 0 to 1.

    Source: mass balance.
    Check: 10 kg at 30 % and 90 kg at .3 % hold 3.27 kg.

    >>> component_kg([[10.0, 0.30], [90.0, 0.003]])
    3.27
    """
    total = 0.0
    for kg, frac in parts:
        require_within("part_kg", kg, 0, 1000000)
        require_within("part_frac", frac, 0, 1)
        total += kg * frac
    return total
