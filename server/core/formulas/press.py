"""What a press really puts on the cheese, and how a curd bed is cut.

A gauge shows the pressure in the cylinder. The cheese feels the force spread
over its own face, which is many times smaller. Wheels stacked in series each
feel the whole force, and the lower ones carry the upper ones as well; wheels
side by side under one plate share it.
"""

import math

from .bounds import require_above, require_count, require_number, require_within

STANDARD_GRAVITY_M_S2 = 9.80665  # m/s², by definition

TYPE_CHECKING = False
if TYPE_CHECKING:
    # Large strips, large strip, small strips, small strip, length left; a strip is
    # (blocks across, its length).
    Cut = tuple[int, tuple[int, float], int, tuple[int, float], float]


def circle_area_m2(diameter_m: float) -> float:
    """Return the area of a circle from its diameter [m], above 0.

    >>> circle_area_m2(0.35)
    0.0962113
    """
    require_above("diameter_m", diameter_m, 0)
    return math.pi / 4 * diameter_m * diameter_m


def cylinder_force_n(
    gauge_pa: float,
    bore_m: float,
    cylinder_count: int,
    lever_ratio: float,
    efficiency_frac: float,
) -> float:
    """Return the force with which a press pushes.

    Args:
        gauge_pa: pressure on the gauge, above the air's [Pa]; 0 or more.
        bore_m: bore of one cylinder [m]; above 0.
        cylinder_count: cylinders that push together; 1 or more.
        lever_ratio: force at the cheese over force at the cylinder; 1 when direct.
        efficiency_frac: share left after friction [0..1]; above 0, at most 1.

    Returns:
        Force on the press plate [N].

    Raises:
        ValueError: an argument outside its range.

    Source: definition of pressure.
    Valid: piston pushing on its full bore, no return spring.
    Check: 63 mm at 2 bar gives 623.45 N.

    >>> cylinder_force_n(200000.0, 0.063, 1, 1.0, 1.0)
    623.45
    """
    require_within("gauge_pa", gauge_pa, 0, 2000000)
    require_count("cylinder_count", cylinder_count, 1, 100)
    require_above("lever_ratio", lever_ratio, 0)
    require_above("efficiency_frac", efficiency_frac, 0)
    require_within("efficiency_frac", efficiency_frac, 0, 1)
    area_m2 = circle_area_m2(bore_m) * cylinder_count
    return gauge_pa * area_m2 * lever_ratio * efficiency_frac


def lever_force_n(weight_kg: float, weight_arm_m: float, plate_arm_m: float) -> float:
    """Return the force of a weight hung on a press lever.

    Args:
        weight_kg: weight on the lever [kg]; 0 or more.
        weight_arm_m: distance from pivot to weight [m]; above 0.
        plate_arm_m: distance from pivot to press plate [m]; above 0.

    Returns:
        Force on the press plate [N]; the lever's own weight is not in it.

    Raises:
        ValueError: an argument outside its range.

    Source: law of the lever.
    Valid: lever near level.
    Check: equal arms give the weight itself.

    >>> lever_force_n(10.0, 0.9, 0.3)
    294.1995
    """
    require_within("weight_kg", weight_kg, 0, 20000)
    require_above("weight_arm_m", weight_arm_m, 0)
    require_above("plate_arm_m", plate_arm_m, 0)
    return weight_kg * STANDARD_GRAVITY_M_S2 * weight_arm_m / plate_arm_m


def cheese_pressure_pa(
    force_n: float, dead_weight_kg: float, face_area_m2: float, side_by_side: int
) -> float:
    """Return the pressure on the cheese under a press plate.

    Args:
        force_n: force on the plate [N]; 0 or more.
        dead_weight_kg: plate, follower and whatever lies on the wheel [kg]; 0 or more.
        face_area_m2: face of one wheel or mould [m²]; above 0.
        side_by_side: wheels that share the plate; 1 or more.

    Returns:
        Pressure on each wheel's face [Pa].

    Raises:
        ValueError: an argument outside its range.

    Source: definition of pressure.
    Valid: level plate, wheels of equal height.
    Check: 623.45 N on a 200 mm mould is 19.845 kPa.

    >>> cheese_pressure_pa(623.4490, 0.0, circle_area_m2(0.2), 1)
    19845.0
    """
    require_within("force_n", force_n, 0, 10000000)
    require_within("dead_weight_kg", dead_weight_kg, 0, 20000)
    require_above("face_area_m2", face_area_m2, 0)
    require_count("side_by_side", side_by_side, 1, 1000)
    total_n = force_n + dead_weight_kg * STANDARD_GRAVITY_M_S2
    return total_n / (face_area_m2 * side_by_side)


def stack_pressures_pa(
    force_n: float, plate_kg: float, wheel_kgs: "list[float]", face_area_m2: float
) -> "list[float]":
    """Return the pressure on each wheel of a stack, top wheel first.

    Args:
        force_n: force on the top plate [N]; 0 or more.
        plate_kg: plate or follower on each wheel [kg]; 0 or more.
        wheel_kgs: mass of each wheel with its mould, from the top down [kg].
        face_area_m2: face of one wheel [m²]; above 0.

    Returns:
        Pressure on the upper face of each wheel [Pa], in the same order.

    Raises:
        ValueError: an argument outside its range, or no wheels.

    Source: balance of forces.
    Valid: moulds of equal face standing on one another.
    Check: each wheel carries the force and all that lies on it.

    >>> stack_pressures_pa(100.0, 0.0, [10.0, 10.0], 0.1)
    [1000.0, 1980.665]
    """
    require_count("wheels", len(wheel_kgs), 1, 100)
    require_within("plate_kg", plate_kg, 0, 1000)
    pressures = []
    above_kg = 0.0
    for wheel_kg in wheel_kgs:
        require_above("wheel_kg", wheel_kg, 0)
        above_kg += plate_kg
        pressures.append(cheese_pressure_pa(force_n, above_kg, face_area_m2, 1))
        above_kg += wheel_kg
    return pressures


def gauge_for_pressure_pa(
    pressure_pa: float,
    dead_weight_kg: float,
    face_area_m2: float,
    side_by_side: int,
    bore_m: float,
    cylinder_count: int,
    lever_ratio: float,
    efficiency_frac: float,
) -> float:
    """Return the gauge pressure that puts a wanted pressure on the cheese.

    Args:
        pressure_pa: pressure wanted on each wheel [Pa]; at least what the dead
            weight alone gives.
        dead_weight_kg: plate, follower and whatever lies on the wheel [kg]; 0 or more.
        face_area_m2: face of one wheel [m²]; above 0.
        side_by_side: wheels that share the plate; 1 or more.
        bore_m: bore of one cylinder [m]; above 0.
        cylinder_count: cylinders that push together; 1 or more.
        lever_ratio: force at the cheese over force at the cylinder; 1 when direct.
        efficiency_frac: share left after friction [0..1]; above 0, at most 1.

    Returns:
        Pressure to set on the gauge [Pa].

    Raises:
        ValueError: an argument outside its range, or the dead weight alone
            presses harder than wanted.

    Source: inverse of cheese_pressure_pa.
    Check: setting the answer gives the pressure wanted.

    >>> gauge_for_pressure_pa(19845.0, 0.0, circle_area_m2(0.2), 1, 0.063, 1, 1.0, 1.0)
    200000.0
    """
    require_above("pressure_pa", pressure_pa, 0)
    unit_n = cylinder_force_n(1.0, bore_m, cylinder_count, lever_ratio, efficiency_frac)
    resting_pa = cheese_pressure_pa(0.0, dead_weight_kg, face_area_m2, side_by_side)
    if pressure_pa < resting_pa:
        raise ValueError(
            "pressure_pa %r is below %r, which the dead weight gives by itself"
            % (pressure_pa, resting_pa)
        )
    return (pressure_pa - resting_pa) * face_area_m2 * side_by_side / unit_n


def weight_for_pressure_kg(pressure_pa: float, area_m2: float) -> float:
    """Return the dead weight that presses an area, a wheel or a whole curd bed.

    Args:
        pressure_pa: pressure wanted [Pa]; 0 or more.
        area_m2: area under the plates [m²]; above 0.

    Returns:
        Weight to lay on, plates included [kg].

    Raises:
        ValueError: an argument outside its range.

    Source: definition of pressure.
    Check: 20 kg on a 145 mm mould gives 11.877 kPa.

    >>> weight_for_pressure_kg(11877.37, circle_area_m2(0.145))
    20.0
    """
    require_within("pressure_pa", pressure_pa, 0, 1000000)
    require_above("area_m2", area_m2, 0)
    return pressure_pa * area_m2 / STANDARD_GRAVITY_M_S2


def own_weight_pressure_pa(
    wheel_kg: float, load_ratio: float, face_area_m2: float
) -> float:
    """Return the pressure of a load given as a multiple of the wheel's own weight.

    Args:
        wheel_kg: mass of the wheel [kg]; above 0.
        load_ratio: load over the wheel's mass; 0 or more.
        face_area_m2: face of the wheel [m²]; above 0.

    Returns:
        Pressure on the wheel's face [Pa].

    Raises:
        ValueError: an argument outside its range.

    Source: definition of pressure; the multiples are a farmhouse custom.
    Check: 12 kg, 350 mm, five times its weight: 6.1 kPa.

    >>> own_weight_pressure_pa(12.0, 5.0, circle_area_m2(0.35))
    6115.7
    """
    require_above("wheel_kg", wheel_kg, 0)
    require_within("load_ratio", load_ratio, 0, 1000)
    return cheese_pressure_pa(0.0, wheel_kg * load_ratio, face_area_m2, 1)


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
        ValueError: an argument outside its range.

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
        ValueError: an argument outside its range.

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
        raise ValueError("curd_kg %r gives more than 1000 blocks" % curd_kg)
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


# Lengths within a nanometre are one length: binary fractions of a bed do not add
# up exactly, and no knife is finer.
_SAME_M = 1e-9


def _strips(
    block_kg: float, kg_m: float, width_m: float, aspect_max: float
) -> "list[tuple[int, float]]":
    """Return the (blocks across, strip length) that keep the blocks in shape."""
    found = [(0, 0.0)]
    across = 1
    while block_kg > 0 and across <= 1000:
        long_m = across * block_kg / kg_m
        wide_m = width_m / across
        if max(long_m / wide_m, wide_m / long_m) <= aspect_max * (1 + _SAME_M):
            found.append((across, long_m))
        across += 1
        if long_m / wide_m > aspect_max:
            break
    return found


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
