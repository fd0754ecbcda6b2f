"""What wheels lose in the store: by their weight, and how it will go on."""

from ...formulas.store import ageing
from ..outputs import note, output, result, value
from ..rows import number, series, sum_row
from ..wheel_inputs import DIAMETER, HEIGHT

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.worked import Inputs, Worked


DAY_MS = 86400000.0


def _weight_loss(x: "Inputs") -> "Worked":
    start, now = x["start_kg"], x["now_kg"]
    values = [value("loss_frac", ageing.weight_loss_frac(start, now))]
    if x["diameter_m"] is not None and x["height_m"] is not None:
        area = ageing.wheel_area_m2(x["diameter_m"], x["height_m"])
        if x["days"] is not None:
            values.append(
                value(
                    "loss_g_m2_day",
                    ageing.loss_g_m2_day(start, now, area, x["days"] * DAY_MS),
                )
            )
    if x["moisture_frac"] is not None:
        after = ageing.moisture_after_frac(x["moisture_frac"], start, now)
        values.append(value("moisture_after_frac", after))
        if x["wanted_moisture_frac"] is not None:
            kg = ageing.mass_at_moisture_kg(
                x["moisture_frac"], start, x["wanted_moisture_frac"]
            )
            values.append(value("wanted_kg", kg))
    return result(values, [note("between_coats_only")])


def _loss_forecast(x: "Inputs") -> "Worked | None":
    pairs = [[weighing["at_day"], weighing["loss_frac"]] for weighing in x["weighings"]]
    loss = ageing.loss_forecast(pairs, x["days"])
    notes = [note(str(loss["basis"]))]
    if x["days"] > 2.0 * pairs[-1][0]:
        notes.append(note("loss_guide_only", days=2.0 * pairs[-1][0]))
    return result(
        [value("loss_frac", loss["value"], loss["low"], loss["high"])],
        notes,
    )


ROWS = [
    sum_row(
        "weight_loss",
        "store",
        [
            number("start_kg", "kg", 0.05, 200.0),
            number("now_kg", "kg", 0.05, 200.0),
            number("days", "d", 0.01, 3650.0, optional=True),
            dict(DIAMETER, optional=True),
            dict(HEIGHT, optional=True),
            number("moisture_frac", "fraction", 0.0, 0.9, [0.3, 0.6], optional=True),
            number(
                "wanted_moisture_frac", "fraction", 0.0, 0.9, [0.3, 0.5], optional=True
            ),
        ],
        [
            output("loss_frac", "fraction", headline=True),
            output("loss_g_m2_day", "g/m2/d"),
            output("moisture_after_frac", "fraction"),
            output("wanted_kg", "kg"),
        ],
        _weight_loss,
        called={"aged_ms": "days", "wanted_frac": "wanted_moisture_frac"},
        follows={"area_m2": "diameter_m"},
        by_size=True,
    ),
    sum_row(
        "loss_forecast",
        "store",
        [
            series(
                "weighings",
                [
                    number("at_day", "d", 0.01, 3650.0),
                    number("loss_frac", "fraction", -0.2, 0.8, [0.0, 0.3]),
                ],
                3,
            ),
            number("days", "d", 0.01, 3650.0),
        ],
        [output("loss_frac", "fraction", headline=True)],
        _loss_forecast,
        called={"at_day": "days", "day": "weighings", "lost_frac": "weighings"},
    ),
]
