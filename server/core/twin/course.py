"""How the truth moves on: each law for a short time, in the order of the dairy."""

from ..numbers.refused import require
from .begin import MILK_KG_L, heat_j_k
from .laws import acid, brine, clotting, pressing, store, vat, whey

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.twin import Twin, Wheels

# How long truth may move at once, by what goes on; short against what changes fastest.
MILK_S, COLD_S, PRESS_S, BRINE_S, STORE_S = 30.0, 600.0, 300.0, 1800.0, 7200.0
TABLE_W_K = 0.2  # W/K to the room for a kilogram of curd on the table; invented
COLD_C = 12.0


def advance(twin: "Twin", to_ms: int) -> None:
    """Let the make go on until an instant.

    Args:
        twin: the make; it changes.
        to_ms: until when [ms].

    Raises:
        Refused: an instant before now.
    """
    now_ms = twin["now_ms"]
    require(to_ms >= now_ms, "before_start", "to_ms", to_ms, now_ms)
    while twin["now_ms"] < to_ms:
        left_s = (to_ms - twin["now_ms"]) / 1000.0
        part_s = min(left_s, _longest_s(twin))
        _move(twin, part_s)
        # Whole ms, so that no instant is missed by a last digit.
        twin["now_ms"] = min(to_ms, twin["now_ms"] + max(1, int(part_s * 1000.0)))


def _longest_s(twin: "Twin") -> float:
    places = [row["place"] for row in twin["wheels"]]
    if twin["where"] == "wheels":
        if "press" in places:
            return PRESS_S
        return BRINE_S if "brine" in places else STORE_S
    is_cold = twin["vat"]["milk_c"] < COLD_C and twin["vat"]["supply"] == "off"
    is_still = is_cold and twin["acid"]["cells"] == 0.0 and twin["water_aim_c"] is None
    return COLD_S if is_still else MILK_S


def _move(twin: "Twin", s: float) -> None:
    _warm_water(twin, s)
    if twin["where"] == "wheels":
        _move_wheels(twin, s)
        return
    curd, clot = twin["curd"], twin["clot"]
    if twin["where"] == "vat":
        full = (curd["solids_kg"] + curd["water_kg"] + curd["whey_kg"]) / MILK_KG_L
        vat.advance(
            twin["vat"], twin["plant"], min(1.0, full / twin["plant"]["vat_l"]), s
        )
    else:
        _lose_heat(twin, s)
    temp_c = twin["vat"]["milk_c"]
    _sour(twin, temp_c, s)
    clotting.advance(clot, temp_c, twin["acid"]["ph"], s)
    whey.shrink(curd, temp_c, twin["acid"]["ph"], twin["bed_kg"], s)
    if twin["where"] == "table":
        whey.drain(curd, twin["acid"], curd["whey_kg"])
        twin["vat"]["cp_j_k"] = heat_j_k(curd)


def _sour(twin: "Twin", temp_c: float, s: float) -> None:
    curd = twin["curd"]
    wet_kg = curd["water_kg"] + curd["whey_kg"]
    salt_kg = sum(row["count"] * sum(row["salt_kg"]) for row in twin["wheels"])
    used_kg = acid.advance(
        twin["acid"],
        temp_c,
        wet_kg,
        curd["lactose_kg"],
        (salt_kg + curd["salt_kg"]) / wet_kg,
        twin["milk"]["inhibitor_frac"],
        s,
    )
    curd["lactose_kg"] = max(0.0, curd["lactose_kg"] - used_kg)


def _lose_heat(twin: "Twin", s: float) -> None:
    """Let curd on the table cool; milk in the tank keeps its cold."""
    if twin["where"] == "table":
        curd = twin["curd"]
        passes = TABLE_W_K * (curd["solids_kg"] + curd["water_kg"])
        gap_k = twin["plant"]["room_c"] - twin["vat"]["milk_c"]
        twin["vat"]["milk_c"] += gap_k * min(1.0, passes * s / twin["vat"]["cp_j_k"])


def _warm_water(twin: "Twin", s: float) -> None:
    aim_c = twin["water_aim_c"]
    if aim_c is not None:
        rise_k = twin["plant"]["water_k_min"] * s / 60.0
        twin["water_c"] = max(twin["water_c"], min(aim_c, twin["water_c"] + rise_k))


def _move_wheels(twin: "Twin", s: float) -> None:
    for wheels in twin["wheels"]:
        MOVES[wheels["place"]](twin, wheels, s)
    heat = [row["count"] * pressing.mass_kg(row) for row in twin["wheels"]]
    rows = twin["wheels"]
    temp_c = sum(rows[i]["temp_c"] * heat[i] for i in range(len(rows))) / sum(heat)
    curd = twin["curd"]
    curd["water_kg"] = sum(row["count"] * sum(row["water_kg"]) for row in rows)
    _sour(twin, temp_c, s)


def _press(twin: "Twin", wheels: "Wheels", s: float) -> None:
    unturned_s = (twin["now_ms"] - wheels["turned_ms"]) / 1000.0
    out_kg = pressing.advance(wheels, twin["acid"]["ph"], unturned_s, s)
    whey.give(twin["curd"], out_kg * wheels["count"])
    whey.drain(twin["curd"], twin["acid"], twin["curd"]["whey_kg"])
    pressing.cool(wheels, twin["plant"]["press_room_c"], pressing.MOULD_W_M2_K, s)


def _soak(twin: "Twin", wheels: "Wheels", s: float) -> None:
    has = twin["plant"]
    pressing.cool(wheels, has["brine_c"], pressing.BRINE_W_M2_K, s)
    salt_kg, water_kg = brine.advance(wheels, has["brine_frac"], has["brine_c"], s)
    in_tank_kg = has["brine_kg"] * has["brine_frac"] - salt_kg * wheels["count"]
    has["brine_kg"] += (water_kg - salt_kg) * wheels["count"]
    has["brine_frac"] = in_tank_kg / has["brine_kg"]


def _dry(twin: "Twin", wheels: "Wheels", s: float) -> None:
    has = twin["plant"]
    pressing.cool(wheels, has["store_c"], pressing.STORE_W_M2_K, s)
    store.advance(wheels, has["store_c"], has["store_humidity_frac"], s)


MOVES = {"press": _press, "brine": _soak, "store": _dry}
