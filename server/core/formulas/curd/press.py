"""What a press really puts on the cheese.

A gauge shows the pressure in the cylinder. The cheese feels the force spread
over its own face, which is many times smaller. Wheels stacked in series each
feel the whole force, and the lower ones carry the upper ones as well; wheels
side by side under one plate share it.
"""

import math

from ...numbers.bounds import require_above, require_count, require_within
from ...numbers.refused import Refused

STANDARD_GRAVITY_M_S2 = 9.80665  # m/s², by definition


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
        Refused: an argument outside its range.

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
        Refused: an argument outside its range.

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
        Refused: an argument outside its range.

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
        Refused: an argument outside its range, or no wheels.

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
        Refused: an argument outside its range, or the dead weight alone
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
        raise Refused("below_dead_weight", "pressure_pa", pressure_pa, resting_pa)
    return (pressure_pa - resting_pa) * face_area_m2 * side_by_side / unit_n


def weight_for_pressure_kg(pressure_pa: float, area_m2: float) -> float:
    """Return the dead weight that presses an area, a wheel or a whole curd bed.

    Args:
        pressure_pa: pressure wanted [Pa]; 0 or more.
        area_m2: area under the plates [m²]; above 0.

    Returns:
        Weight to lay on, plates included [kg].

    Raises:
        Refused: an argument outside its range.

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
        Refused: an argument outside its range.

    Source: definition of pressure; the multiples are a farmhouse custom.
    Check: 12 kg, 350 mm, five times its weight: 6.1 kPa.

    >>> own_weight_pressure_pa(12.0, 5.0, circle_area_m2(0.35))
    6115.7
    """
    require_above("wheel_kg", wheel_kg, 0)
    require_within("load_ratio", load_ratio, 0, 1000)
    return cheese_pressure_pa(0.0, wheel_kg * load_ratio, face_area_m2, 1)
