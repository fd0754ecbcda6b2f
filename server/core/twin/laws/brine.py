"""Wheels in brine: salt goes in layer by layer, water comes out against it.

The water that leaves for the salt that enters falls from the rind to the middle, and
a film of thinned brine lies on the rind: a still tank salts slower than a stirred one.
"""

import math

from .layers import carry, depths_m, layers, spread

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.twin import Wheels

# m²/s at 13 °C in the cheese's water, and by the kelvin. Source: Floury et al., Dairy
# Sci Technol 90:477 (2010), table II: 1 to 5.3 at 10 to 15 °C; ours is of that band.
DIFFUSION_M2_S, PER_K = 2.6e-10, 0.04
# kg of water out for a kg of salt in. Source: Guinee and Fox, J Dairy Res 50 (1983),
# abstract: 2.42 at the surface to 0.5 in the middle.
AT_RIND, IN_MIDDLE = 2.42, 0.5
FILM_M = 0.0003  # brine's own layer, as thick as cheese that would hinder as much
LONGEST_S = 900.0


def advance(
    wheels: "Wheels", brine_frac: float, brine_c: float, s: float
) -> "tuple[float, float]":
    """Let one wheel lie in brine for a time.

    Args:
        wheels: wheels of a size; one of them changes for all.
        brine_frac: salt of the brine [0..1].
        brine_c: temperature [°C].
        s: how long.

    Returns:
        Salt that went into one wheel and water that came out of it [kg].
    """
    steps = int(s / LONGEST_S) + 1
    warm = math.exp(PER_K * (brine_c - 13.0))
    salt_kg = water_kg = 0.0
    for _ in range(steps):
        salt, water = soak(
            wheels, brine_frac, DIFFUSION_M2_S * warm, s / steps, AT_RIND, FILM_M
        )
        salt_kg, water_kg = salt_kg + salt, water_kg + water
    return salt_kg, water_kg


def soak(
    wheels: "Wheels",
    brine_frac: float,
    diffusion_m2_s: float,
    s: float,
    at_rind: float,
    film_m: float,
) -> "tuple[float, float]":
    """Let salt and water cross the layers of one wheel once.

    Args:
        wheels: wheels of a size; one of them changes for all.
        brine_frac: salt of the brine [0..1].
        diffusion_m2_s: diffusivity of salt in the cheese's water.
        s: how long; short, as the layers trade by what they hold at its begin.
        at_rind: water out for salt in, by mass, at the rind.
        film_m: thickness of cheese that hinders as much as the brine's film [m].

    Returns:
        Salt that went in and water that came out [kg].
    """
    radius_m, half_m = wheels["radius_m"], wheels["half_m"]
    areas, volumes = layers(radius_m, half_m)
    depths = depths_m(radius_m, half_m)
    salt, water = wheels["salt_kg"], wheels["water_kg"]
    inward = spread(salt, water, areas, volumes, depths, diffusion_m2_s * s)
    outside = brine_frac / (1.0 - brine_frac)
    gap = outside - salt[0] / water[0]
    reach_m = depths[1] / 2.0 + film_m
    inward[0] = diffusion_m2_s * s / reach_m * areas[0] * water[0] / volumes[0] * gap
    outward = [
        -inward[i] * ratio_at(depths[i] / depths[-1], at_rind) for i in range(len(salt))
    ]
    carry(salt, inward)
    carry(water, outward)
    return inward[0], -outward[0]


def ratio_at(deep_frac: float, at_rind: float) -> float:
    """Return the water that leaves for the salt that enters, by mass, at a depth.

    Args:
        deep_frac: depth, from the rind to the middle [0..1].
        at_rind: its value at the rind.
    """
    return at_rind + (min(IN_MIDDLE, at_rind) - at_rind) * deep_frac
