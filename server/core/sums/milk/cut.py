"""When to cut: by how soon the milk flocculated."""

from ...formulas.milk import cutting
from ..outputs import note, output, result, value
from ..rows import default, number, sum_row

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.worked import Inputs, Worked


FLOC_S = number("floc_s", "s", 1.0, 14400.0, [360.0, 1500.0])


def _cut_time(x: "Inputs") -> "Worked":
    floc, factor = x["floc_s"], x["floc_factor"]
    cut = cutting.cut_time(floc, factor, x["tested_every_s"])
    first, last = x["ranges"].get("floc_factor") or [factor, factor]
    # It may have flocculated as early as at the look before. Outside its window the
    # point is doubtful, and still the only one that the cut can go by.
    low = first * (floc - x["tested_every_s"])
    return result(
        [value("cut_s", factor * floc, low, last * floc)],
        [note(cut["basis"], low=cutting.FLOC_EARLIEST_S, high=cutting.FLOC_LATEST_S)],
    )


ROWS = [
    sum_row(
        "cut_time",
        "ingredients",
        [
            FLOC_S,
            number(
                "floc_factor",
                "",
                1.0,
                10.0,
                [2.0, 6.0],
                default(3.0, "practice", "trade_rule_gouda_types", 2.5, 3.5),
            ),
            number(
                "tested_every_s",
                "s",
                0.0,
                3600.0,
                None,
                default(120.0, "practice", "look_every_two_minutes"),
            ),
        ],
        [output("cut_s", "s", "band", headline=True)],
        _cut_time,
        called={"multiple": "floc_factor"},
    ),
]
