"""How long a wheel stays in brine for the salt wanted, and what own wheels teach.

The salt a wheel takes up depends on diffusivity times time alone. So the salt is
turned into that product once, and each diffusivity, slow or fast, only divides it.
"""

import math

from ...numbers.bounds import require_above, require_count, require_within
from ...numbers.refused import Refused
from ...numbers.roots import root
from .salting import balance, salt_on_water, spread_ratio


def brining_s(
    salt_frac: float,
    diameter_m: float,
    height_m: float,
    moisture_frac: float,
    brine_frac: float,
    diffusion_m2_s: float,
    water_salt_ratio: float,
) -> float:
    """Return the time in brine for a wanted salt.

    Args:
        salt_frac: salt wanted in the brined wheel [0..0.1].
        diameter_m: diameter of the wheel [m]; above 0.
        height_m: height of the wheel [m]; above 0.
        moisture_frac: moisture before brining [0.2..0.85].
        brine_frac: strength of the brine, mass fraction [0..0.27].
        diffusion_m2_s: effective diffusivity in the cheese's water [m²/s]; above 0.
        water_salt_ratio: water out for salt in, by mass; 0 to 5, about 2.

    Returns:
        Time in brine [s].

    Raises:
        Refused: an argument outside its range, or more salt than this brine
            can ever give.

    Source: wheel_salting, inverted: its balance by algebra, its uptake by a root.
    Check: 12 kg, 350 by 118 mm, 20 % brine, 2.0 % salt: 2.11 days.

    >>> brining_s(0.020, 0.35, 0.118, 0.44, 0.20, 2.3e-10, 2.0) / 86400
    2.11
    """
    require_above("diffusion_m2_s", diffusion_m2_s, 0)
    spread_m2 = _spread_m2(
        salt_frac, diameter_m, height_m, moisture_frac, brine_frac, water_salt_ratio
    )
    return spread_m2 / diffusion_m2_s


def _spread_m2(
    salt_frac: float,
    diameter_m: float,
    height_m: float,
    moisture_frac: float,
    brine_frac: float,
    water_salt_ratio: float,
) -> float:
    """Return the diffusivity times time that gives a wheel its salt."""
    require_within("salt_frac", salt_frac, 0, 0.1)
    require_within("moisture_frac", moisture_frac, 0.2, 0.85)
    require_within("water_salt_ratio", water_salt_ratio, 0, 5)
    require_above("diameter_m", diameter_m, 0)
    require_above("height_m", height_m, 0)
    most = balance(1.0, moisture_frac, brine_frac, water_salt_ratio)["salt_frac"]
    if salt_frac >= most:
        raise Refused("more_than_brine_gives", "salt_frac", salt_frac, most)
    if salt_frac == 0:
        return 0.0
    # The balance of salting, turned round: salt on the wheel before, then uptake.
    salt_in = salt_frac / (1 + salt_frac * (water_salt_ratio - 1))
    all_in = salt_on_water(brine_frac) * (moisture_frac - salt_in * water_salt_ratio)
    uptake = min(1.0, salt_in / all_in)  # the last digit may pass what is all

    # In the square root of time the uptake is nearly straight, and never above
    # the line it begins along: a thick cheese's.
    def missing(reach_m: float) -> float:
        return spread_ratio(reach_m * reach_m, diameter_m, height_m) - uptake

    slope = (8 / diameter_m + 4 / height_m) / math.sqrt(math.pi)
    low_m = 0.99 * uptake / slope  # less what the series' two forms differ by
    high_m = 1.5 * low_m
    while missing(high_m) < 0:
        low_m, high_m = high_m, 1.5 * high_m
    reach_m = root(missing, low_m, high_m)
    return reach_m * reach_m


def brining_range_s(
    salt_frac: float,
    diameter_m: float,
    height_m: float,
    moisture_frac: float,
    brine_frac: float,
    diffusions_m2_s: "list[float]",
    water_salt_ratio: float,
) -> "dict[str, float | str]":
    """Return the time in brine for a wanted salt, with its range.

    Args:
        salt_frac: salt wanted in the brined wheel [0..0.1].
        diameter_m: diameter of the wheel [m]; above 0.
        height_m: height of the wheel [m]; above 0.
        moisture_frac: moisture before brining [0.2..0.85].
        brine_frac: strength of the brine, mass fraction [0..0.27].
        diffusions_m2_s: slowest, expected and fastest diffusivity [m²/s].
        water_salt_ratio: water out for salt in, by mass; 0 to 5, about 2.

    Returns:
        {"value", "low", "high", "basis"}, times in brine [s].

    Raises:
        Refused: as brining_s, or the three diffusivities out of order.

    Source: brining_s at each diffusivity.
    Valid: starting estimate until a salt test decides.
    Check: equal diffusivities give no width.

    >>> brining_range_s(0.02, 0.35, 0.118, 0.44, 0.2, [1e-10] * 3, 2.0)["basis"]
    'diffusion_range'
    """
    require_count("diffusions_m2_s", len(diffusions_m2_s), 3, 3)
    slow, expected, fast = diffusions_m2_s
    require_within("expected_m2_s", expected, slow, fast)
    require_above("slow_m2_s", slow, 0)
    spread_m2 = _spread_m2(
        salt_frac, diameter_m, height_m, moisture_frac, brine_frac, water_salt_ratio
    )
    return {
        "value": spread_m2 / expected,
        "low": spread_m2 / fast,
        "high": spread_m2 / slow,
        "basis": "diffusion_range",
    }


def calibrated_diffusion(
    wheels: "list[dict[str, float]]", water_salt_ratio: float
) -> "dict[str, float | str]":
    """Return the diffusivity that a creamery's own wheels show.

    Each wheel whose salt was measured tells one value; the middle one stands for
    the creamery, the smallest and largest say how far to trust it.

    Args:
        wheels: list of {"salt_frac", "brined_s", "diameter_m", "height_m",
            "moisture_frac", "brine_frac"}; salt measured in the brined wheel,
            moisture before brining, mass fractions.
        water_salt_ratio: water out for salt in, by mass; 0 to 5, about 2.

    Returns:
        {"value", "low", "high", "basis", "count"}: m²/s; the basis is
        "own_wheels", or "one_wheel" where no spread is known and low and high
        are the value.

    Raises:
        Refused: no wheels, more than 200, or as brining_s.

    Source: brining_s; time and diffusivity enter only as their product.
    Valid: salt of the whole wheel, not of the rind.
    Check: wheels made up with one diffusivity give it back.

    >>> wheel = {
    ...     "salt_frac": 0.0195,
    ...     "brined_s": 172800.0,
    ...     "diameter_m": 0.35,
    ...     "height_m": 0.118,
    ...     "moisture_frac": 0.44,
    ...     "brine_frac": 0.20,
    ... }
    >>> calibrated_diffusion([wheel], 2.0)["value"] * 1e10
    2.3
    """
    require_count("wheels", len(wheels), 1, 200)
    diffusions = []
    for wheel in wheels:
        require_above("brined_s", wheel["brined_s"], 0)
        require_above("salt_frac", wheel["salt_frac"], 0)
        spread_m2 = _spread_m2(
            wheel["salt_frac"],
            wheel["diameter_m"],
            wheel["height_m"],
            wheel["moisture_frac"],
            wheel["brine_frac"],
            water_salt_ratio,
        )
        diffusions.append(spread_m2 / wheel["brined_s"])
    diffusions.sort()
    half = len(diffusions) // 2
    middle = (
        diffusions[half]
        if len(diffusions) % 2
        else (diffusions[half - 1] + diffusions[half]) / 2
    )
    return {
        "value": middle,
        "low": diffusions[0],
        "high": diffusions[-1],
        "basis": "own_wheels" if len(diffusions) > 1 else "one_wheel",
        "count": len(diffusions),
    }
