"""An ordinary day: milk, equipment and instruments a little off, as on every day.

Makes that differ by noise alone would be one make; what is true of many must hold
for milk that is richer, a room that is colder and a thermometer that is a tenth out.
"""

from . import plant
from .chance import normal, stream

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

MOST_SDS = 2.0
# Standard deviations from day to day; invented, each well within what a creamery
# would still call ordinary.
MILK_SD = {
    "fat_frac": 0.0010,
    "protein_frac": 0.0006,
    "snf_frac": 0.0007,
    "temp_c": 0.5,
    "ph": 0.012,
    "age_h": 3.0,
    "somatic_per_ml": 40000.0,
}
EQUIPMENT_SD = {
    "starter_strength": 0.06,
    "rennet_imcu_per_ml": 4.0,
    "hot_c": 1.5,
    "cold_c": 1.0,
    "room_c": 1.0,
    "press_room_c": 0.8,
    "brine_frac": 0.002,
    "brine_c": 0.4,
    "store_c": 0.1,
    "store_humidity_frac": 0.004,
}
OFFSET_SD = {
    "milk_temp_c": 0.1,
    "air_space_temp_c": 0.15,
    "curd_temp_c": 0.1,
    "water_temp_c": 0.3,
    "ph": 0.012,
    "brine_temp_c": 0.15,
    "store_temp_c": 0.06,
    "store_humidity_frac": 0.003,
}


def ordinary(seed: int) -> "dict[str, Any]":
    """Return the setting of an ordinary day, for `play.play`; by its seed."""
    of = stream(seed, "day")
    milk = {
        name: _about(of, plant.MILK[name][0], MILK_SD[name]) for name in sorted(MILK_SD)
    }
    has = {
        name: _about(of, plant.EQUIPMENT[name][0], EQUIPMENT_SD[name])
        for name in sorted(EQUIPMENT_SD)
    }
    shows = {
        name: {"offset": _about(of, 0.0, OFFSET_SD[name])} for name in sorted(OFFSET_SD)
    }
    return {"milk": milk, "equipment": has, "instruments": shows}


def _about(of: "Any", usual: float, sd: float) -> float:
    return usual + sd * max(-MOST_SDS, min(MOST_SDS, normal(of)))
