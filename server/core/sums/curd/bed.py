"""The curd bed: the weights on it, and how it is cut into blocks."""

from ...formulas.curd import curd_bed, press
from ...units.table import convert
from ..outputs import note, output, result, value
from ..ranges import ranged, with_ends
from ..rows import default, number, sum_row

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.worked import Inputs, Worked


LENGTH = number("length_m", "m", 0.05, 20.0, [0.2, 6.0])
WIDTH = number("width_m", "m", 0.05, 5.0, [0.2, 2.0])


def _bed_weights(x: "Inputs") -> "Worked":
    area = x["length_m"] * x["width_m"]
    values = []
    if x["wanted_kpa"] is not None:
        weights_kg = [
            press.weight_for_pressure_kg(convert(kpa, "kPa", "Pa"), area)
            for kpa in with_ends(x, "wanted_kpa")
        ]
        values.append(ranged("weight_kg", weights_kg))
    if x["laid_on_kg"] is not None:
        on_bed = x["laid_on_kg"] * press.STANDARD_GRAVITY_M_S2 / area
        values.append(value("bed_kpa", convert(on_bed, "Pa", "kPa")))
    if x["curd_kg"] is not None:
        depth = curd_bed.bed_depth_m(
            x["curd_kg"], x["length_m"], x["width_m"], x["bed_density_kg_m3"]
        )
        values.append(value("depth_m", depth))
    return result(values)


def _block_plan(x: "Inputs") -> "Worked | None":
    plan = curd_bed.cutting_plan(
        x["curd_kg"],
        x["length_m"],
        x["width_m"],
        x["large_kg"],
        x["small_kg"],
        x["aspect_max"],
    )
    values = []
    for size in ("large", "small"):
        if size == "small" and x["small_kg"] == 0:
            continue
        values.append(value("count", plan[size + "_count"], of=size))
        values.append(value("strips", plan[size + "_strips"], of=size))
        values.append(value("across", plan[size + "_across"], of=size))
        values.append(value("strip_m", plan[size + "_strip_m"], of=size))
    values.append(value("left_m", plan["left_m"]))
    values.append(value("left_kg", plan["left_kg"]))
    return result(values, [note("trim_square_first")])


ROWS = [
    sum_row(
        "bed_weights",
        "press",
        [
            LENGTH,
            WIDTH,
            number(
                "wanted_kpa",
                "kPa",
                0.0,
                200.0,
                [0.2, 20.0],
                default(1.5, "practice", "light_pressing_under_whey", 1.0, 2.0),
            ),
            number("laid_on_kg", "kg", 0.0, 20000.0, optional=True),
            number("curd_kg", "kg", 0.1, 20000.0, optional=True),
            number(
                "bed_density_kg_m3",
                "kg/m3",
                900.0,
                1300.0,
                [1000.0, 1150.0],
                default(1075.0, "practice", "bed_density_of_our_own", 1050.0, 1100.0),
            ),
        ],
        [
            output("weight_kg", "kg", "band", headline=True),
            output("bed_kpa", "kPa"),
            output("depth_m", "m"),
        ],
        _bed_weights,
        called={"density_kg_m3": "bed_density_kg_m3", "pressure_pa": "wanted_kpa"},
        follows={"area_m2": "length_m"},
    ),
    sum_row(
        "block_plan",
        "press",
        [
            number("curd_kg", "kg", 0.1, 20000.0),
            LENGTH,
            WIDTH,
            number("large_kg", "kg", 0.05, 200.0),
            number(
                "small_kg",
                "kg",
                0.0,
                200.0,
                None,
                default(0.0, "practice", "one_size_only"),
            ),
            number(
                "aspect_max",
                "",
                1.0,
                20.0,
                None,
                default(2.5, "practice", "longer_blocks_do_not_fill"),
            ),
        ],
        [
            output("count", "", headline=True),
            output("strips", ""),
            output("across", ""),
            output("strip_m", "m"),
            output("left_m", "m"),
            output("left_kg", "kg"),
        ],
        _block_plan,
    ),
]
