"""The store: its air; what wheels lose in it and the days that count stand beside."""

from ...formulas.store import air
from ...units.table import convert
from ..outputs import note, output, rests, result, value
from ..rows import default, number, sum_row
from . import drying, store_days, store_time

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.worked import Inputs, Worked


MAGNUS = "magnus_sprung_from_memory"


def _humidity(x: "Inputs") -> "Worked | None":
    pressure_pa = convert(x["air_pressure_kpa"], "kPa", "Pa")
    humidity: "dict[str, Any]" = air.humidity_range(
        x["dry_c"], x["wet_c"], pressure_pa, x["bulb_error_k"]
    )
    dew = air.dew_point_c(x["dry_c"], humidity["value"])
    return result(
        [
            value(
                "humidity_frac",
                humidity["value"],
                humidity["low"],
                humidity["high"],
            ),
            value("dew_point_c", dew),
        ],
        [note("wet_bulb_needs_air")],
        [rests("psychrometer", None, "", "memory", MAGNUS)],
    )


AIR = [
    sum_row(
        "humidity",
        "store",
        [
            number("dry_c", "C", -10.0, 50.0, [2.0, 20.0]),
            number("wet_c", "C", -10.0, 50.0, [1.0, 20.0]),
            number(
                "air_pressure_kpa",
                "kPa",
                convert(air.LEAST_PRESSURE_PA, "Pa", "kPa"),
                convert(air.MOST_PRESSURE_PA, "Pa", "kPa"),
                [80.0, 106.0],
                default(101.325, "practice", "sea_level"),
            ),
            number(
                "bulb_error_k",
                "K",
                0.0,
                3.0,
                [0.0, 1.0],
                default(0.2, "practice", "two_thermometers_compared"),
            ),
        ],
        [
            output("humidity_frac", "fraction", headline=True),
            output("dew_point_c", "C"),
        ],
        _humidity,
        called={"error_k": "bulb_error_k", "pressure_pa": "air_pressure_kpa"},
        follows={"humidity_frac": "wet_c", "temp_c": "dry_c"},
    ),
]

ROWS = AIR + drying.ROWS + [store_time.ROW] + store_days.ROWS
