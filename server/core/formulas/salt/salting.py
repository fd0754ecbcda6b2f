"""How fast salt goes into a wheel in brine, and what the wheel loses meanwhile.

Salt diffuses in the water of the cheese. The share E of the way to equilibrium
depends only on diffusion × time over size squared, for a slab and for a round
cylinder; a wheel is both at once, so what is left undone multiplies:
1 - E = (1 - E of the cylinder) × (1 - E of the slab).

One effective diffusivity stands for still brine, fouled brine and drying rind
together. Published values spread fivefold, so a time from a table is a starting
estimate: weigh or analyse your own wheels and calibrate. Before that, expect a
quarter of the salt either way, and more on time, as time goes with salt squared.
"""

import math

from ...numbers.bounds import require_above, require_within

# Effective diffusivity in the water of the cheese [m²/s], 10 to 15 °C.
# Source: Floury et al. 2010, abstract: 1 to 5.3e-10; its table II has 0.62 (Emmental)
# and 2.3e-10 (Gouda type).
DIFFUSION_LOW_M2_S = 1.0e-10
DIFFUSION_HIGH_M2_S = 5.3e-10
# A judgement, no source: published brining times of washed-curd wheels are met
# by a value near the low end.
DIFFUSION_START_M2_S = 1.5e-10
# Water out for salt in, by mass. Source: Guinee and Fox 1983, abstract: 2.42 at
# the surface to 0.5 in the middle; 2.0 for a whole wheel is a judgement.
WATER_SALT_RATIO = 2.0

# First zeros of the Bessel function J0, for the long-time series of a cylinder.
_J0_ZEROS = [
    2.404825557695773,
    5.520078110286311,
    8.653727912911013,
    11.791534439014281,
    14.930917708487787,
    18.071063967910924,
    21.21163662987926,
    24.352471530749302,
    27.493479132040253,
    30.634606468431976,
]


def salt_taken_kg_m2(
    brine_frac: float,
    salt_in_water_frac: float,
    diffusion_m2_s: float,
    brined_s: float,
    density_kg_m3: float,
    moisture_frac: float,
) -> float:
    """Return the salt that passes through a square metre of a thick cheese's face.

    Args:
        brine_frac: strength of the brine, mass fraction [0..0.27].
        salt_in_water_frac: salt already in the cheese, on its water [0..0.3].
        diffusion_m2_s: effective diffusivity in the cheese's water [m²/s]; above 0.
        brined_s: time in brine [s]; 0 or more.
        density_kg_m3: density of the cheese, about 1060 [kg/m³].
        moisture_frac: moisture of the cheese [0.2..0.85].

    Returns:
        Salt taken up, kg on a square metre.

    Raises:
        Refused: an argument outside its range.

    Source: half-infinite solid in the form that Geurts gave it (from memory).
    Valid: while the salt has not reached the middle.
    Check: four times the time takes up twice the salt.

    >>> salt_taken_kg_m2(0.20, 0.0, 2.3e-10, 86400.0, 1060.0, 0.44)
    0.58651
    """
    require_within("brine_frac", brine_frac, 0, 0.27)
    require_within("salt_in_water_frac", salt_in_water_frac, 0, 0.3)
    require_above("diffusion_m2_s", diffusion_m2_s, 0)
    require_within("brined_s", brined_s, 0, 1e12)
    require_within("density_kg_m3", density_kg_m3, 800, 1300)
    require_within("moisture_frac", moisture_frac, 0.2, 0.85)
    water_kg_m3 = density_kg_m3 * moisture_frac
    drive = salt_on_water(brine_frac) - salt_in_water_frac
    return 2 * drive * math.sqrt(diffusion_m2_s * brined_s / math.pi) * water_kg_m3


def salt_on_water(brine_frac: float) -> float:
    """Return the kg of salt on a kg of water in a brine, from its mass fraction.

    >>> salt_on_water(0.20)
    0.25
    """
    require_within("brine_frac", brine_frac, 0, 0.27)
    return brine_frac / (1 - brine_frac)


def uptake_ratio(
    diffusion_m2_s: float, brined_s: float, diameter_m: float, height_m: float
) -> float:
    """Return how far a round wheel is on its way to equilibrium with the brine.

    Args:
        diffusion_m2_s: effective diffusivity in the cheese's water [m²/s]; above 0.
        brined_s: time in brine [s]; 0 or more.
        diameter_m: diameter of the wheel [m]; above 0.
        height_m: height of the wheel [m]; above 0.

    Returns:
        Salt taken up over salt at equilibrium, 0 to 1.

    Raises:
        Refused: an argument outside its range.

    Source: Crank, The Mathematics of Diffusion: short- and long-time series of
        slab and cylinder (from memory; checked against full series).
    Valid: all faces in well mixed brine, salt-free cheese.
    Check: a flat wide wheel behaves as a slab, a tall thin one as a cylinder.

    >>> uptake_ratio(2.3e-10, 86400.0, 0.13, 1000.0)
    0.15001
    """
    require_above("diffusion_m2_s", diffusion_m2_s, 0)
    require_within("brined_s", brined_s, 0, 1e12)
    require_above("diameter_m", diameter_m, 0)
    require_above("height_m", height_m, 0)
    return spread_ratio(diffusion_m2_s * brined_s, diameter_m, height_m)


def spread_ratio(spread_m2: float, diameter_m: float, height_m: float) -> float:
    """Return how far a wheel is toward equilibrium, without looking at the values.

    Args:
        spread_m2: diffusivity times time [m²]; 0 or more.
        diameter_m: diameter of the wheel [m]; above 0.
        height_m: height of the wheel [m]; above 0.

    Returns:
        As uptake_ratio.

    Source: as uptake_ratio.
    Valid: positive sizes; its callers have looked.

    >>> spread_ratio(2.3e-10 * 86400.0, 0.13, 1000.0)
    0.15001
    """
    slab = _slab_ratio(spread_m2 / (height_m / 2) ** 2)
    cylinder = _cylinder_ratio(spread_m2 / (diameter_m / 2) ** 2)
    return 1 - (1 - slab) * (1 - cylinder)


# Below the change-over the short-time form is good to 2e-5, above it the terms
# kept of the long-time series are good to more.
def _slab_ratio(reach: float) -> float:
    if reach < 0.1:
        return 2 * math.sqrt(reach / math.pi)
    left = 0.0
    for i in range(8):
        root = (2 * i + 1) * math.pi / 2
        left += 2 / (root * root) * math.exp(-root * root * reach)
    return 1 - left


def _cylinder_ratio(reach: float) -> float:
    if reach < 0.01:
        x = math.sqrt(reach)
        return 4 * x / math.sqrt(math.pi) - x**2 - x**3 / (3 * math.sqrt(math.pi))
    left = 0.0
    for zero in _J0_ZEROS:
        left += 4 / (zero * zero) * math.exp(-zero * zero * reach)
    return 1 - left


def wheel_salting(
    brined_s: float,
    diameter_m: float,
    height_m: float,
    moisture_frac: float,
    brine_frac: float,
    diffusion_m2_s: float,
    water_salt_ratio: float,
) -> "dict[str, float]":
    """Return what a wheel has taken up and lost after a time in brine.

    Args:
        brined_s: time in brine [s]; 0 or more.
        diameter_m: diameter of the wheel [m]; above 0.
        height_m: height of the wheel [m]; above 0.
        moisture_frac: moisture before brining [0.2..0.85].
        brine_frac: strength of the brine, mass fraction [0..0.27].
        diffusion_m2_s: effective diffusivity in the cheese's water [m²/s]; above 0.
        water_salt_ratio: water out for salt in, by mass; 0 to 5, about 2.

    Returns:
        {"uptake_ratio", "salt_frac", "moisture_frac", "salt_in_ratio",
        "water_out_ratio", "loss_frac"}: the brined wheel's salt and moisture, and
        salt in, water out and net loss over the wheel's mass before brining.

    Raises:
        Refused: an argument outside its range.

    Source: uptake_ratio with a balance of salt and water.
    Valid: salt-free wheel; brine far larger than the load.
    Check: 12 kg, 350 by 118 mm, 2 days in 20 %: 1.95 % salt.

    >>> wheel_salting(172800.0, 0.35, 0.118, 0.44, 0.20, 2.3e-10, 2.0)["salt_frac"]
    0.0195
    """
    require_within("moisture_frac", moisture_frac, 0.2, 0.85)
    require_within("water_salt_ratio", water_salt_ratio, 0, 5)
    uptake = uptake_ratio(diffusion_m2_s, brined_s, diameter_m, height_m)
    return balance(uptake, moisture_frac, brine_frac, water_salt_ratio)


def balance(
    uptake: float, moisture_frac: float, brine_frac: float, water_salt_ratio: float
) -> "dict[str, float]":
    """Return the brined wheel of an uptake, as wheel_salting does of a time.

    Args:
        uptake: share of the way to equilibrium, 0 to 1.
        moisture_frac: moisture before brining [0.2..0.85].
        brine_frac: strength of the brine, mass fraction [0..0.27].
        water_salt_ratio: water out for salt in, by mass; 0 to 5, about 2.

    Returns:
        As wheel_salting.

    Source: balance of salt and water.
    Check: at equilibrium the salt stands on its water as in the brine.

    >>> balance(1.0, 0.44, 0.20, 2.0)["salt_in_ratio"]
    0.073333
    """
    on_water = salt_on_water(brine_frac)
    # Water leaves as salt enters, so the salt stands on less water: hence the
    # denominator.
    salt = (
        uptake * on_water * moisture_frac / (1 + uptake * on_water * water_salt_ratio)
    )
    water = water_salt_ratio * salt
    left = 1 + salt - water
    return {
        "uptake_ratio": uptake,
        "salt_frac": salt / left,
        "moisture_frac": (moisture_frac - water) / left,
        "salt_in_ratio": salt,
        "water_out_ratio": water,
        "loss_frac": water - salt,
    }


def brine_exchange(wheel_kg: float, salting: "dict[str, float]") -> "dict[str, float]":
    """Return what a load of wheels takes from and gives to the brine tank.

    Args:
        wheel_kg: mass of all wheels of the load before brining [kg]; above 0.
        salting: answer of wheel_salting.

    Returns:
        {"salt_out_kg", "water_in_kg", "wheel_kg"}: for the tank's ledger, and the
        mass of the wheels after.

    Raises:
        Refused: `wheel_kg` not above 0.

    Source: mass balance.
    Check: what the wheels gain and lose, the tank loses and gains.

    >>> salting = {"salt_in_ratio": 0.02, "water_out_ratio": 0.04}
    >>> brine_exchange(100.0, salting)["water_in_kg"]
    4.0
    """
    require_above("wheel_kg", wheel_kg, 0)
    salt_kg = wheel_kg * salting["salt_in_ratio"]
    water_kg = wheel_kg * salting["water_out_ratio"]
    return {
        "salt_out_kg": salt_kg,
        "water_in_kg": water_kg,
        "wheel_kg": wheel_kg + salt_kg - water_kg,
    }
