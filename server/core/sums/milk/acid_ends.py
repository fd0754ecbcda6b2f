"""When a pH comes, from the readings alone: for a make whose recipe has no curve.

Where the fall begins and ends is the recipe's; how fast and how late is read off the
readings. Before they can tell, there is no forecast, and why is said.
"""

from ...formulas.milk import acid_forecast
from ..outputs import note, output, result, value
from ..rows import default, number, series, sum_row, timed, times_and_values

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.worked import Inputs, Worked


EBOOK = "hill_ferrer_gouda"


def _acid_ends(x: "Inputs") -> "Worked | None":
    times_s, phs = times_and_values(x["ph_readings"], "ph")
    forecast = acid_forecast.forecast(
        times_s,
        phs,
        x["target_ph"],
        x["start_ph"],
        x["end_ph"],
        x["meter_sd_ph"],
        x["shape_sd_ph"],
        x["end_sd_ph"],
    )
    notes = [note(forecast["basis"])]
    for index in forecast["set_aside"]:
        at_min = times_s[index] / 60.0
        notes.append(note("ph_set_aside", at_min=at_min, ph=phs[index]))
    ends = [forecast["value_s"], forecast["low_s"], forecast["high_s"]]
    if ends[0] is None:
        return result([value("reach_s", None)], notes)
    left = [None if end is None else end - times_s[-1] for end in ends]
    return result(
        [
            value("reach_s", ends[0], ends[1], ends[2]),
            value("left_s", left[0], left[1], left[2]),
        ],
        notes,
    )


ROW = sum_row(
    "acid_ends",
    "acid",
    [
        series("ph_readings", timed([number("ph", "pH", 0.0, 14.0, [4.0, 7.2])]), 1),
        number("target_ph", "pH", 3.0, 8.0, [4.4, 6.7]),
        number(
            "start_ph",
            "pH",
            5.0,
            8.0,
            [6.2, 6.9],
            default(6.6, "read", EBOOK, 6.5, 6.7),
        ),
        number(
            "end_ph", "pH", 3.0, 7.0, [4.3, 5.5], default(5.2, "read", EBOOK, 5.1, 5.3)
        ),
        number(
            "meter_sd_ph",
            "pH",
            0.001,
            0.5,
            None,
            default(0.02, "practice", "meter_set_day"),
        ),
        number(
            "shape_sd_ph",
            "pH",
            0.0,
            0.5,
            None,
            default(
                acid_forecast.SHAPE_SD_PH,
                "derived",
                "five_schedules_against_curve",
            ),
        ),
        number(
            "end_sd_ph",
            "pH",
            0.0,
            0.5,
            None,
            default(0.05, "practice", "makes_end_apart"),
        ),
    ],
    [output("reach_s", "s", headline=True), output("left_s", "s")],
    _acid_ends,
    called={
        "elapsed_s": "ph_readings",
        "ph": "target_ph",
        "phs": "ph_readings",
        "reading_sd_ph": "meter_sd_ph",
        "times_s": "ph_readings",
    },
    follows={"fall_ph_s": "ph_readings", "lag_s": "ph_readings"},
)
