"""A wheel as layers from its rind inward, thin at the rind where most goes on.

Top, bottom and side are one rind here: a layer is all that lies between two depths.
What moves goes from layer to layer, by what each holds, so a wheel that dries and
salts at once needs no closed form, and its middle is saltless while it is.
"""

import math

COUNT = 12
THICKER = 1.15  # than the one outside it


def layers(radius_m: float, half_m: float) -> "tuple[list[float], list[float]]":
    """Return the outer area of each layer [m²] and its volume [m³], rind first.

    Args:
        radius_m: radius of the wheel [m].
        half_m: half of its height [m].
    """
    areas, inner = [], []
    for depth_m in depths_m(radius_m, half_m):
        across_m, up_m = radius_m - depth_m, half_m - depth_m
        areas.append(2 * math.pi * across_m * (across_m + 2 * up_m))
        inner.append(2 * math.pi * across_m * across_m * up_m)
    return areas[:COUNT], [inner[i] - inner[i + 1] for i in range(COUNT)]


def depths_m(radius_m: float, half_m: float) -> "list[float]":
    """Return the depth of each layer's outer face, and of the middle [m].

    Args:
        radius_m: radius of the wheel [m].
        half_m: half of its height [m].
    """
    first_m = min(radius_m, half_m) * (THICKER - 1.0) / (THICKER**COUNT - 1.0)
    # The last is the middle itself, so that nothing is left over by a last digit.
    found = [first_m * (THICKER**i - 1.0) / (THICKER - 1.0) for i in range(COUNT)]
    return found + [min(radius_m, half_m)]


def spread(
    amounts_kg: "list[float]",
    in_kg: "list[float]",
    areas_m2: "list[float]",
    volumes_m3: "list[float]",
    depths: "list[float]",
    spread_m2: float,
) -> "list[float]":
    """Return what crosses into each layer from the one outside it [kg].

    Args:
        amounts_kg: what spreads, by layer [kg].
        in_kg: what it is dissolved in, by layer [kg].
        areas_m2: outer area of each layer [m²].
        volumes_m3: volume of each layer [m³].
        depths: answer of `depths_m`.
        spread_m2: diffusivity × time [m²].

    Source: Fick's law between neighbours, by finite volumes.
    """
    crossed = [0.0]
    for i in range(1, len(amounts_kg)):
        strength = amounts_kg[i - 1] / in_kg[i - 1] - amounts_kg[i] / in_kg[i]
        thin = min(in_kg[i - 1] / volumes_m3[i - 1], in_kg[i] / volumes_m3[i])
        apart_m = (depths[i + 1] - depths[i - 1]) / 2.0
        crossed.append(spread_m2 / apart_m * areas_m2[i] * thin * strength)
    return crossed


def carry(amounts_kg: "list[float]", crossed_kg: "list[float]") -> None:
    """Move what crosses inward from layer to layer; nothing is made or lost.

    Args:
        amounts_kg: by layer; they change [kg].
        crossed_kg: inward through each layer's outer face; the first comes from
            outside [kg].
    """
    for i in range(len(amounts_kg)):
        amounts_kg[i] += crossed_kg[i]
        if i:
            amounts_kg[i - 1] -= crossed_kg[i]
