"""Milk by volume and by mass, its heat, and standardising it.

The maker reads litres; heat, yield and dose by weight need kilograms. Milk read
at 32 °C with the density of 15 °C is 0.6 % wrong, so density takes temperature.
"""

from ...numbers.bounds import require_above, require_at_least, require_within
from ...numbers.refused import require

WATER_CP_J_KG_K = 4180.0  # J/(kg K), 20 to 60 °C. Source: IAPWS water, 4182 to 4185.
MILK_CP_J_KG_K = 3850.0  # J/(kg K), 4 % fat. Source: 0.5/0.3 rule and Kessler agree.
WHEY_CP_J_KG_K = 3980.0  # J/(kg K), 6.5 % solids. Source: as milk, 3970 to 3999.
CURD_CP_J_KG_K = 3200.0  # J/(kg K), 60 % water. Source: as milk, 3141 to 3258.
CHEESE_CP_J_KG_K = 2800.0  # J/(kg K), 42 % water. Source: as milk, 2685 to 2882.

# °C, then apparent density of water, fat and solids-not-fat in milk [kg/L].
# Fitted by least squares to the 32 figures of the table that `density_kg_l`
# names; dissolved solids contract, so these are not densities of dry matter.
_DENSITIES = (
    (4.4, 0.99997, 0.96407, 1.64016),
    (10.0, 0.99970, 0.95749, 1.61897),
    (20.0, 0.99821, 0.93417, 1.60235),
    (38.9, 0.99263, 0.90513, 1.57335),
)


def density_kg_l(fat_frac: float, snf_frac: float, temp_c: float) -> float:
    """Return the density of milk, skim, cream or whey.

    Water, fat and solids-not-fat each take up their own volume. Between the
    temperatures of the table the three densities are interpolated; the end
    segments are carried on to 0 and 44 °C.

    Args:
        fat_frac: fat by mass [0..0.4].
        snf_frac: solids-not-fat by mass [0..0.2].
        temp_c: temperature [°C]; 0 to 44.

    Returns:
        Density [kg/L].

    Raises:
        Refused: an argument outside its range.

    Source: density table of fluid dairy products, D. Goff, University of Guelph.
    Changed: its 32 figures fitted by three densities a temperature; largest
        error 0.0009 kg/L, the table being printed to 0.001.
    Valid: 0.02 to 36.6 % fat, 5.55 to 10.15 % solids-not-fat, 4.4 to 38.9 °C; it
        bends little beyond (a slope of -0.00038 kg/L per K is published for
        milk from 18 to 44 °C).
    Check: 4.0 % fat, 8.95 % solids-not-fat, 20 °C: 1.030.

    >>> density_kg_l(0.04, 0.0895, 20)
    1.030
    """
    require_within("fat_frac", fat_frac, 0, 0.4)
    require_within("snf_frac", snf_frac, 0, 0.2)
    require_within("temp_c", temp_c, 0, 44)
    i = 0
    while i < len(_DENSITIES) - 2 and temp_c > _DENSITIES[i + 1][0]:
        i += 1
    low, high = _DENSITIES[i], _DENSITIES[i + 1]
    part = (temp_c - low[0]) / (high[0] - low[0])
    water, fat, snf = [low[j] + part * (high[j] - low[j]) for j in (1, 2, 3)]
    return 1 / ((1 - fat_frac - snf_frac) / water + fat_frac / fat + snf_frac / snf)


def mass_kg(volume_l: float, density_kg_l: float) -> float:
    """Return the mass of a volume.

    Args:
        volume_l: volume at the temperature of the density [L]; 0 or more.
        density_kg_l: density [kg/L]; above 0.

    Returns:
        Mass [kg].

    Raises:
        Refused: a negative volume, or density not above 0.

    Source: definition of density.
    Check: 100 L at 1.030 is 103.0 kg.

    >>> mass_kg(100, 1.030)
    103.0
    """
    require_at_least("volume_l", volume_l, 0)
    require_above("density_kg_l", density_kg_l, 0)
    return volume_l * density_kg_l


def volume_l(mass_kg: float, density_kg_l: float) -> float:
    """Return the volume of a mass.

    Args:
        mass_kg: mass [kg]; 0 or more.
        density_kg_l: density [kg/L]; above 0.

    Returns:
        Volume at the temperature of the density [L].

    Raises:
        Refused: a negative mass, or density not above 0.

    Source: definition of density.
    Check: undoes `mass_kg`.

    >>> volume_l(103.0, 1.030)
    100.0
    """
    require_at_least("mass_kg", mass_kg, 0)
    require_above("density_kg_l", density_kg_l, 0)
    return mass_kg / density_kg_l


def specific_heat_j_kg_k(fat_frac: float, snf_frac: float) -> float:
    """Return the specific heat of milk, whey, curd or cheese.

    Water counts in full, fat half, other solids three tenths.

    Args:
        fat_frac: fat by mass [0..1].
        snf_frac: solids-not-fat by mass [0..1]; with fat at most 1.

    Returns:
        Specific heat [J/(kg K)].

    Raises:
        Refused: a fraction below 0, or both together above 1.

    Source: Institute course text on thermal properties of milk (IASRI, lesson 3).
    Valid: within 1 % for milk and whey, 5 % for cheese; fat melting below 40 °C
        raises the apparent value.
    Check: milk of 4.0 % fat, 8.95 % solids-not-fat: 3835.

    >>> specific_heat_j_kg_k(0.04, 0.0895)
    3834.6
    """
    require_within("fat_frac", fat_frac, 0, 1)
    require_within("snf_frac", snf_frac, 0, 1 - fat_frac)
    water_frac = 1 - fat_frac - snf_frac
    return WATER_CP_J_KG_K * (water_frac + 0.5 * fat_frac + 0.3 * snf_frac)


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
