"""The salt of a tank: to make it up, and to keep it up."""

from ...formulas.salt import brine_tank
from ..outputs import note, output, result, value
from ..rows import number, sum_row
from .brine_inputs import SALT, TEMP

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.worked import Inputs, Worked


def _brine_make_up(x: "Inputs") -> "Worked | None":
    made = brine_tank.make_up(x["volume_l"], x["brine_salt_frac"], x["brine_temp_c"])
    return result(
        [
            value("salt_kg", made["salt_kg"]),
            value("water_kg", made["water_kg"]),
            value("brine_kg", made["brine_kg"]),
        ],
        [note("calcium_and_acid_for_new_brine")],
    )


def _brine_top_up(x: "Inputs") -> "Worked | None":
    kg = x["brine_kg"]
    if kg is None:
        if x["volume_l"] is None:
            return result([], [], [], ["brine_kg"])
        kg = brine_tank.tank_kg(x["volume_l"], x["brine_salt_frac"], x["brine_temp_c"])
    now, wanted = x["brine_salt_frac"], x["wanted_salt_frac"]
    values = [value("brine_kg", kg)]
    if wanted >= now:
        salt = brine_tank.top_up_kg(kg, now, wanted, x["brine_temp_c"])
        values.append(value("salt_kg", salt))
    else:
        values.append(value("water_kg", brine_tank.thin_down_kg(kg, now, wanted)))
    return result(values, [note("dissolve_and_stir")])


ROWS = [
    sum_row(
        "brine_make_up",
        "brine",
        [number("volume_l", "L", 1.0, 50000.0, [20.0, 20000.0]), SALT, TEMP],
        [
            output("salt_kg", "kg", headline=True),
            output("water_kg", "kg"),
            output("brine_kg", "kg"),
        ],
        _brine_make_up,
        called={"salt_frac": "brine_salt_frac", "temp_c": "brine_temp_c"},
    ),
    sum_row(
        "brine_top_up",
        "brine",
        [
            number("brine_kg", "kg", 1.0, 60000.0, optional=True),
            number("volume_l", "L", 1.0, 50000.0, optional=True),
            SALT,
            number("wanted_salt_frac", "fraction", 0.0, 0.2660, [0.16, 0.25]),
            TEMP,
        ],
        [
            output("brine_kg", "kg"),
            output("salt_kg", "kg", headline=True),
            output("water_kg", "kg", headline=True),
        ],
        _brine_top_up,
        called={
            "salt_frac": "brine_salt_frac",
            "temp_c": "brine_temp_c",
            "wanted_frac": "wanted_salt_frac",
        },
    ),
]
