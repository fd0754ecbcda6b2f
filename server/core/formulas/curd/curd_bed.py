"""A levelled bed of curd: how deep it lies and how it is cut into blocks."""

from ...numbers.bounds import require_above, require_number, require_within
from ...numbers.refused import Refused

TYPE_CHECKING = False
if TYPE_CHECKING:
    # Large strips, large strip, small strips, small strip, length left; a strip is
    # (blocks across, its length).
    Cut = tuple[int, tuple[int, float], int, tuple[int, float], float]

# Lengths within a nanometre are one length: binary fractions of a bed do not add
# up exactly, and no knife is finer.
_SAME_M = 1e-9


def bed_depth_m(
    curd_kg: float, length_m: float, width_m: float, density_kg_m3: float
) -> float:
    """Return how deep a levelled curd bed lies.

    Args:
        curd_kg: curd in the bed [kg]; above 0.
        length_m: length of the bed [m]; above 0.
        width_m: width of the bed [m]; above 0.
        density_kg_m3: density of the pressed bed, about 1050 to 1100 [kg/m³].

    Returns:
        Depth of the bed [m].

    Raises:
        Refused: an argument outside its range.

    Source: conservation of mass; bed density from memory, weigh a block to set it.
    Check: 66 kg on 1.0 m by 0.6 m at 1100 kg/m³ lies 0.1 m deep.

    >>> bed_depth_m(66.0, 1.0, 0.6, 1100.0)
    0.1
    """
    require_above("curd_kg", curd_kg, 0)
    require_above("length_m", length_m, 0)
    require_above("width_m", width_m, 0)
    require_within("density_kg_m3", density_kg_m3, 800, 1300)
    return curd_kg / (length_m * width_m * density_kg_m3)


def cutting_plan(
    curd_kg: float,
    length_m: float,
    width_m: float,
    large_kg: float,
    small_kg: float,
    aspect_max: float,
) -> "dict[str, float]":
    """Return how to cut a level curd bed into blocks for two sizes of wheel.

    The bed is cut across its width into strips, and each strip into equal
    blocks. All plans of whole strips are tried; the one that leaves the least
    curd wins, and of equals the one with more large blocks.

    Args:
        curd_kg: curd in the bed [kg]; above 0.
        length_m: length of the bed [m]; above 0.
        width_m: width of the bed [m]; above 0.
        large_kg: block for the large mould [kg]; above `small_kg`.
        small_kg: block for the small mould [kg]; 0 when there is none.
        aspect_max: longest side of a block over its shortest; 1 or more.

    Returns:
        {"large_count", "large_strips", "large_across", "large_strip_m",
        "small_count", "small_strips", "small_across", "small_strip_m",
        "left_m", "left_kg"}; a size that does not fit has zeros.

    Raises:
        Refused: an argument outside its range.

    Source: integer search over strips.
    Valid: bed of even depth and density, trimmed square.
    Check: blocks and remainder add up to the curd.

    >>> plan = cutting_plan(60.0, 1.0, 0.6, 5.0, 0.0, 2.2)
    >>> plan["large_count"], plan["left_kg"]
    (12, 0.0)
    """
    require_above("curd_kg", curd_kg, 0)
    require_above("length_m", length_m, 0)
    require_above("width_m", width_m, 0)
    require_number("small_kg", small_kg)
    require_above("large_kg", large_kg, small_kg)
    require_within("small_kg", small_kg, 0, large_kg)
    require_within("aspect_max", aspect_max, 1, 10)
    if curd_kg / (small_kg if small_kg > 0 else large_kg) > 1000:
        raise Refused("too_many_blocks", "curd_kg", curd_kg, most_blocks=1000)
    kg_m = curd_kg / length_m
    best = (0, (0, 0.0), 0, (0, 0.0), length_m)
    for large in _strips(large_kg, kg_m, width_m, aspect_max):
        for small in _strips(small_kg, kg_m, width_m, aspect_max):
            best = _better(best, _fill(length_m, large, small))
    large_strips, large, small_strips, small, left_m = best
    return {
        "large_count": large_strips * large[0],
        "large_strips": large_strips,
        "large_across": large[0],
        "large_strip_m": large[1],
        "small_count": small_strips * small[0],
        "small_strips": small_strips,
        "small_across": small[0],
        "small_strip_m": small[1],
        "left_m": left_m,
        "left_kg": left_m * kg_m,
    }


def _strips(
    block_kg: float, kg_m: float, width_m: float, aspect_max: float
) -> "list[tuple[int, float]]":
    """Return the (blocks across, strip length) that keep the blocks in shape."""
    strips = [(0, 0.0)]
    across = 1
    while block_kg > 0 and across <= 1000:
        long_m = across * block_kg / kg_m
        wide_m = width_m / across
        if max(long_m / wide_m, wide_m / long_m) <= aspect_max * (1 + _SAME_M):
            strips.append((across, long_m))
        across += 1
        if long_m / wide_m > aspect_max:
            break
    return strips


def _fill(
    length_m: float, large: "tuple[int, float]", small: "tuple[int, float]"
) -> "Cut":
    """Return the whole strips of two kinds that leave the least of the length."""
    most = int((length_m + _SAME_M) / large[1]) if large[0] else 0
    best = (0, large, 0, small, length_m)
    for large_strips in range(most + 1):
        left_m = length_m - large_strips * large[1]
        small_strips = int((left_m + _SAME_M) / small[1]) if small[0] else 0
        left_m = max(0.0, left_m - small_strips * small[1])
        best = _better(best, (large_strips, large, small_strips, small, left_m))
    return best


def _better(first: "Cut", second: "Cut") -> "Cut":
    if second[4] < first[4] - _SAME_M:
        return second
    if second[4] > first[4] + _SAME_M:
        return first
    more = second[0] * second[1][0] > first[0] * first[1][0]
    return second if more else first
