"""Heat of the vat: three stores of heat that trade with each other.

Contents, jacket and air space each have one temperature. The jacket trades with the
water that is run round it, through a valve that a person closes as the aim comes
near; the air space has a heater of its own. So the contents lag behind the valve and
go on warming after it is shut. A forecast by one exponential knows none of this.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.twin import Vat

WATER_J_KG_K = 4186.0  # J/(kg K), 15 °C, liquid.
# The valve is fully open this far from the aim, and less within; invented.
VALVE_K, AIR_VALVE_K = 6.0, 1.5
LONGEST_S = 60.0
SHARE_A_STEP = 0.25  # of the fastest trade's time; the midpoint is then exact to 1 %


def advance(vat: "Vat", plant: "dict[str, float]", full_frac: float, s: float) -> None:
    """Let heat flow for a time.

    Args:
        vat: the vat; it changes.
        plant: the equipment.
        full_frac: how full the vat is [0..1].
        s: how long.

    Source: lumped heat balance, integrated by the midpoint rule in fluxes, so that
        what leaves one store enters another.
    """
    steps = int(s / _step_s(vat, plant, full_frac)) + 1
    part_s = s / steps
    for _ in range(steps):
        here = (vat["milk_c"], vat["jacket_c"], vat["air_c"])
        first = _rates(vat, plant, full_frac, here)
        mid = tuple(here[i] + first[i] * part_s / 2.0 for i in range(3))
        then = _rates(vat, plant, full_frac, mid)
        vat["milk_c"] = here[0] + then[0] * part_s
        vat["jacket_c"] = here[1] + then[1] * part_s
        vat["air_c"] = here[2] + then[2] * part_s


def jacket_w_k(plant: "dict[str, float]", full_frac: float) -> float:
    """Return how well the jacket reaches the contents: the bottom, and the wet wall.

    Args:
        plant: the equipment.
        full_frac: how full the vat is [0..1].
    """
    return plant["jacket_w_k"] * (0.3 + 0.7 * full_frac)


def _step_s(vat: "Vat", plant: "dict[str, float]", full_frac: float) -> float:
    """Return a step in which nothing moves far: fast trades need short ones."""
    through = jacket_w_k(plant, full_frac)
    supply = 0.0 if vat["supply"] == "off" else plant["supply_w_k"]
    jacket_j_k = plant["jacket_kg"] * WATER_J_KG_K
    air = plant["air_milk_w_k"] + plant["air_room_w_k"]
    air += plant["air_heat_w"] / AIR_VALVE_K if vat["air_aim_c"] is not None else 0.0
    fastest = max(
        (through + supply) / jacket_j_k,
        (through + plant["loss_w_k"]) / vat["cp_j_k"],
        air / plant["air_j_k"],
    )
    return min(LONGEST_S, SHARE_A_STEP / fastest)


def _rates(
    vat: "Vat", plant: "dict[str, float]", full_frac: float, at: "tuple[float, ...]"
) -> "tuple[float, float, float]":
    milk_c, jacket_c, air_c = at
    to_milk_w = jacket_w_k(plant, full_frac) * (jacket_c - milk_c)
    from_air_w = plant["air_milk_w_k"] * (air_c - milk_c)
    lost_w = plant["loss_w_k"] * (milk_c - plant["room_c"])
    air_w = _air_w(vat, plant, air_c) - plant["air_room_w_k"] * (
        air_c - plant["room_c"]
    )
    supply_w = _supply_w(vat, plant, milk_c, jacket_c)
    return (
        (to_milk_w + from_air_w - lost_w) / vat["cp_j_k"],
        (supply_w - to_milk_w) / (plant["jacket_kg"] * WATER_J_KG_K),
        (air_w - from_air_w) / plant["air_j_k"],
    )


def _supply_w(
    vat: "Vat", plant: "dict[str, float]", milk_c: float, jacket_c: float
) -> float:
    if vat["supply"] == "off":
        return 0.0
    is_hot = vat["supply"] == "hot"
    gap_k = 1e9
    if vat["aim_c"] is not None:
        gap_k = vat["aim_c"] - milk_c if is_hot else milk_c - vat["aim_c"]
    water_c = plant["hot_c"] if is_hot else plant["cold_c"]
    return plant["supply_w_k"] * _open(gap_k / VALVE_K) * (water_c - jacket_c)


def _air_w(vat: "Vat", plant: "dict[str, float]", air_c: float) -> float:
    if vat["air_aim_c"] is None:
        return 0.0
    return plant["air_heat_w"] * _open((vat["air_aim_c"] - air_c) / AIR_VALVE_K)


def _open(share: float) -> float:
    return min(1.0, max(0.0, share))
