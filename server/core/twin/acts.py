"""What people do to the milk: each act by its word, with its figures and limits."""

from ..numbers.bounds import require_within
from ..numbers.refused import Refused, require
from ..units.quantities import QUANTITIES
from . import doses, wheel_acts
from .begin import heat_j_k
from .laws import whey
from .plant import EQUIPMENT, MILK

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.twin import Twin

WHEY_WATER_KG_L = 0.958  # water in a litre of whey: 6.5 % solids, 1.025 kg/L
HOT_C = QUANTITIES["milk_temp_c"]["high"]
MOST_L, MOST_KG = 50000.0, 20000.0


def act(twin: "Twin", done: "dict[str, Any]") -> None:
    """Do one thing at the instant that the twin has reached.

    Args:
        twin: the make; it changes.
        done: {"kind": a key of ACTS} and the figures that the act has there.

    Raises:
        Refused: an act that is not known, or a figure missing or impossible.
    """
    kind: "Any" = done.get("kind")
    require(kind in ACTS, "not_a_choice", "kind", kind, sorted(ACTS))
    does, limits = ACTS[kind]
    for name in limits:
        require(done.get(name) is not None, "missing", name, None)
        require_within(name, done[name], limits[name][0], limits[name][1])
    does(twin, done)


def _to_vat(twin: "Twin", done: "dict[str, Any]") -> None:
    twin["where"] = "vat"


def _heat(twin: "Twin", done: "dict[str, Any]") -> None:
    twin["vat"]["supply"] = "hot"
    twin["vat"]["aim_c"] = done["to_c"]
    twin["vat"]["air_aim_c"] = done.get("air_c")


def _cool(twin: "Twin", done: "dict[str, Any]") -> None:
    twin["vat"]["supply"] = "cold"
    twin["vat"]["aim_c"] = done["to_c"]
    twin["vat"]["air_aim_c"] = None


def _stop(twin: "Twin", done: "dict[str, Any]") -> None:
    twin["vat"]["supply"] = "off"
    twin["vat"]["air_aim_c"] = None


def _warm_water(twin: "Twin", done: "dict[str, Any]") -> None:
    # A tank is filled anew for each warming.
    twin["water_c"] = min(twin["water_c"], done["to_c"])
    twin["water_aim_c"] = done["to_c"]


def _temper_water(twin: "Twin", done: "dict[str, Any]") -> None:
    """Mix the wash water to a temperature: with cold, or with hot from elsewhere."""
    twin["water_c"] = done["to_c"]
    twin["water_aim_c"] = None


def _add(twin: "Twin", done: "dict[str, Any]") -> None:
    doses.add(
        twin, done.get("ingredient") or "", done["amount"], done.get("unit") or ""
    )


def _cut(twin: "Twin", done: "dict[str, Any]") -> None:
    twin["curd"]["grain_mm"] = done["size_mm"]
    # Soft curd shatters: what is too fine goes with the whey.
    soft = max(0.0, 0.5 - twin["clot"]["firm_frac"])
    twin["curd"]["solids_kg"] *= 1.0 - 0.12 * soft


def _drain(twin: "Twin", done: "dict[str, Any]") -> None:
    wanted_kg = done["l"] * WHEY_WATER_KG_L
    got_kg = whey.drain(twin["curd"], twin["acid"], wanted_kg)
    twin["drained_l"] = got_kg / WHEY_WATER_KG_L
    twin["vat"]["cp_j_k"] = heat_j_k(twin["curd"])


def _wash(twin: "Twin", done: "dict[str, Any]") -> None:
    """Mix water in: heat and mass add up, and the whey is thinned."""
    vat, water_kg = twin["vat"], done["l"]
    gain_j_k = water_kg * 4186.0
    heat = vat["milk_c"] * vat["cp_j_k"] + done["water_c"] * gain_j_k
    vat["milk_c"] = heat / (vat["cp_j_k"] + gain_j_k)
    twin["curd"]["whey_kg"] += water_kg
    twin["washed_l"] += done["l"]
    vat["cp_j_k"] = heat_j_k(twin["curd"])


def _new_wash(twin: "Twin", done: "dict[str, Any]") -> None:
    twin["washed_l"] = 0.0


def _table(twin: "Twin", done: "dict[str, Any]") -> None:
    _stop(twin, done)
    twin["where"] = "table"


def _bed(twin: "Twin", done: "dict[str, Any]") -> None:
    twin["bed_kg"] = done["load_kg"]


def _change(twin: "Twin", done: "dict[str, Any]") -> None:
    """Let the equipment or the milk be otherwise from now on."""
    name, value = done.get("field"), done["value"]
    for table, held in ((EQUIPMENT, twin["plant"]), (MILK, twin["milk"])):
        if name in table:
            require_within(name, value, table[name][1], table[name][2])
            held[name] = value
            return
    raise Refused("unknown_input", str(name), value)


ANY = (-1e9, 1e9)
ACTS = {
    "to_vat": (_to_vat, {}),
    "heat": (_heat, {"to_c": (-2.0, HOT_C)}),
    "cool": (_cool, {"to_c": (-2.0, HOT_C)}),
    "stop": (_stop, {}),
    "warm_water": (_warm_water, {"to_c": (0.0, 98.0)}),
    "temper_water": (_temper_water, {"to_c": (0.0, 98.0)}),
    "add": (_add, {"amount": (0.0, 100000.0)}),
    "cut": (_cut, {"size_mm": (1.0, 60.0)}),
    "drain": (_drain, {"l": (0.0, MOST_L)}),
    "new_wash": (_new_wash, {}),
    "wash": (_wash, {"l": (0.0, MOST_L), "water_c": (0.0, 98.0)}),
    "table": (_table, {}),
    "bed": (_bed, {"load_kg": (0.0, MOST_KG)}),
    "mould": (wheel_acts.mould, {}),
    "press": (wheel_acts.press, {"gauge_kpa": (0.0, 2000.0)}),
    "release": (wheel_acts.release, {}),
    "turn": (wheel_acts.turn, {}),
    "brine": (wheel_acts.brine, {}),
    "shelf": (wheel_acts.shelf, {}),
    "coat": (wheel_acts.coat, {}),
    "change": (_change, {"value": ANY}),
}
