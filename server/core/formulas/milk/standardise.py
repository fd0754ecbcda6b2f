"""Bring milk to a wanted fat, or to a wanted protein for its fat."""

from ...numbers.bounds import require_above, require_at_least, require_within
from ...numbers.refused import require


def blend_share(first_frac: float, second_frac: float, target_frac: float) -> float:
    """Return the share of the first milk in a blend of two (Pearson's square).

    Args:
        first_frac: fat, or whatever is blended, of the first [0..1].
        second_frac: the same of the second [0..1]; not equal to the first.
        target_frac: the same wanted in the blend [0..1]; from one to the other.

    Returns:
        Kilograms of the first per kilogram of blend [0..1].

    Raises:
        Refused: the two are equal, or the target is not between them.

    Source: mass balance; the square is taught as Pearson's.
    Check: 40 % cream and 0.02 % skim to 3.5 %: 8.70 % cream.

    >>> blend_share(0.40, 0.0002, 0.035)
    0.0870
    """
    is_other = first_frac != second_frac
    require(is_other, "equals_first", "second_frac", second_frac, first_frac)
    low, high = min(first_frac, second_frac), max(first_frac, second_frac)
    require_within("target_frac", target_frac, low, high)
    return (target_frac - second_frac) / (first_frac - second_frac)


def added_kg(
    milk_kg: float, milk_frac: float, added_frac: float, target_frac: float
) -> float:
    """Return how much of a second milk brings all of the first to a target.

    Args:
        milk_kg: milk at hand [kg]; 0 or more.
        milk_frac: its fat [0..1].
        added_frac: fat of what is added, skim or cream [0..1].
        target_frac: fat wanted [0..1]; from `milk_frac` to short of `added_frac`.

    Returns:
        Mass to add [kg].

    Raises:
        Refused: the target is not between the two, or equals what is added.

    Source: mass balance.
    Check: 100 kg of 4.0 % with skim of 0.0 % to 3.2 %: 25 kg.

    >>> added_kg(100, 0.04, 0.0, 0.032)
    25.0
    """
    require_at_least("milk_kg", milk_kg, 0)
    share = blend_share(milk_frac, added_frac, target_frac)
    require(share > 0, "not_reached_by", "target_frac", target_frac, added_frac)
    return milk_kg * (1 - share) / share


def cream_off_kg(
    milk_kg: float, milk_frac: float, cream_frac: float, target_frac: float
) -> float:
    """Return how much cream to take off to bring milk down to a target fat.

    Args:
        milk_kg: milk at hand [kg]; 0 or more.
        milk_frac: its fat [0..1].
        cream_frac: fat of the cream [0..1]; above `milk_frac`.
        target_frac: fat wanted in what is left [0..1]; at most `milk_frac`.

    Returns:
        Mass of cream [kg].

    Raises:
        Refused: cream not richer than the milk, or the target richer than it.

    Source: mass balance.
    Check: 100 kg of 4.0 % with 40 % cream to 3.2 %: 0.8/36.8 of it, 2.174 kg.

    >>> cream_off_kg(100, 0.04, 0.40, 0.032)
    2.1739
    """
    require_at_least("milk_kg", milk_kg, 0)
    require_above("cream_frac", cream_frac, milk_frac)
    require_within("target_frac", target_frac, 0, milk_frac)
    return milk_kg * (milk_frac - target_frac) / (cream_frac - target_frac)


def fat_for_ratio_frac(protein_frac: float, protein_fat_ratio: float) -> float:
    """Return the fat that gives a protein to fat ratio.

    Args:
        protein_frac: protein of the milk [0..1].
        protein_fat_ratio: protein over fat wanted; above 0.

    Returns:
        Fat by mass [0..1].

    Raises:
        Refused: protein outside 0 to 1, or the ratio not above 0.

    Source: A. Hill, University of Guelph, Gouda page: ratio 1.07.
    Check: protein 3.3 %, ratio 1.07: fat 3.084 %.

    >>> fat_for_ratio_frac(0.033, 1.07)
    0.03084
    """
    require_within("protein_frac", protein_frac, 0, 1)
    require_above("protein_fat_ratio", protein_fat_ratio, 0)
    return protein_frac / protein_fat_ratio


def added_for_ratio_kg(
    milk_kg: float,
    protein_frac: float,
    fat_frac: float,
    added_protein_frac: float,
    added_fat_frac: float,
    protein_fat_ratio: float,
) -> float:
    """Return how much skim or cream brings milk to a protein to fat ratio.

    What is added carries protein too, so this is not the square on fat alone.

    Args:
        milk_kg: milk at hand [kg]; 0 or more.
        protein_frac: its protein [0..1].
        fat_frac: its fat [0..1].
        added_protein_frac: protein of what is added [0..1].
        added_fat_frac: fat of what is added [0..1].
        protein_fat_ratio: protein over fat wanted; above 0.

    Returns:
        Mass to add [kg]; 0.0 when the ratio is met already.

    Raises:
        Refused: adding this milk moves the ratio the other way, or never
            far enough.

    Source: mass balance of protein and of fat.
    Check: 100 kg, 3.3 % protein, 4.0 % fat, skim of 3.4 % and 0 %, ratio 1.07:
        (4.28 - 3.3) / 0.034 = 28.82 kg.

    >>> added_for_ratio_kg(100, 0.033, 0.04, 0.034, 0.0, 1.07)
    28.82
    """
    require_at_least("milk_kg", milk_kg, 0)
    require_above("protein_fat_ratio", protein_fat_ratio, 0)
    short = protein_fat_ratio * fat_frac - protein_frac
    gain = added_protein_frac - protein_fat_ratio * added_fat_frac
    if short == 0:
        return 0.0
    is_reached = short * gain > 0
    require(is_reached, "not_reached", "protein_fat_ratio", protein_fat_ratio)
    return milk_kg * short / gain
