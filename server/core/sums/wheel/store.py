"""The store: its air, what the wheels lose, and the days that count."""

from ...formulas.store import ageing, air, curing
from ...units.table import convert
from ..outputs import no_rules, note, output, rests, result, value
from ..rows import choice, default, number, series, sum_row, timed

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.worked import Inputs, Worked, WorkedValue


DAY_MS = 86400000.0
MAGNUS = "magnus_sprung_from_memory"
OWN_LOW, OWN_HIGH = -40.0, 140.0


def _humidity(x: "Inputs") -> "Worked | None":
    pressure_pa = convert(x["air_pressure_kpa"], "kPa", "Pa")
    found: "dict[str, Any]" = air.humidity_range(
        x["dry_c"], x["wet_c"], pressure_pa, x["bulb_error_k"]
    )
    dew = air.dew_point_c(x["dry_c"], found["value"])
    return result(
        [
            value(
                "humidity_frac",
                found["value"],
                found["low"],
                found["high"],
            ),
            value("dew_point_c", dew),
        ],
        [note("wet_bulb_needs_air")],
        [rests("psychrometer", None, "", "memory", MAGNUS)],
    )


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
    pairs = [[row["at_day"], row["loss_frac"]] for row in x["weighings"]]
    found = ageing.loss_forecast(pairs, x["days"])
    notes = [note(str(found["basis"]))]
    if x["days"] > 2.0 * pairs[-1][0]:
        notes.append(note("loss_guide_only", days=2.0 * pairs[-1][0]))
    return result(
        [value("loss_frac", found["value"], found["low"], found["high"])],
        notes,
    )


def _curing_days(x: "Inputs") -> "Worked":
    rule = x["rules"].get("us_curing")
    if rule is None:
        return no_rules()
    row = rule["rows"][0]
    base_ms = int(x["curing_start_ms"] or 0)
    readings = [
        {"at_ms": base_ms + int(cell["at_min"] * 60000 + 0.5), "temp": cell["value"]}
        for cell in x["curing_temps"]
    ]
    start_ms = base_ms + int(x["start_min"] * 60000 + 0.5)
    now_ms = readings[-1]["at_ms"]
    if x["now_min"] is not None:
        now_ms = base_ms + int(x["now_min"] * 60000 + 0.5)
    gap = rule["gap_max_s"]
    unit = x["store_thermometer"]
    found: "dict[str, Any]" = curing.check_curing(
        readings,
        unit,
        start_ms,
        now_ms,
        row,
        int(gap["value"] * 1000),
    )
    notes = [note("curing_is_a_hold_not_proof"), note("start_agreed_with_inspector")]
    for reason in found["reasons"]:
        told = dict(reason)
        told["key"] = "note." + reason["key"]
        notes.append(told)
    values = [
        value("verdict", found["verdict"], of=row["key"]),
        value("counted_days", found["counted_days"], found["needed_days"]),
        value("below_days", found["below_days"]),
        value("unknown_days", found["unknown_days"]),
    ] + _first_day(found, now_ms, x["curing_start_ms"])
    temp = row["min_temp"].get(unit)
    sources = [
        rests(
            "days",
            row["days"]["value"],
            "d",
            row["days"]["status"],
            row["days"]["source"],
        ),
        rests("gap_max_s", gap["value"], "s", gap["status"], gap["source"]),
    ]
    if temp is not None:
        sources.append(
            rests(
                "min_temp",
                temp["value"],
                unit,
                temp["status"],
                temp["source"],
            )
        )
    return result(values, notes, sources)


def _first_day(
    found: "dict[str, Any]", now_ms: int, base_ms: "int | None"
) -> "list[WorkedValue]":
    """Return how long is to hold, and the first instant that the days may be met."""
    if found["verdict"] != "does_not_meet":
        return []
    still = found["needed_days"] - found["counted_days"]
    values = [value("still_days", still)]
    if base_ms is not None:
        # Only in a make do the minutes hang on the calendar. To the next whole
        # millisecond: a day must not be told before it is full.
        first_ms = now_ms - int(-still * DAY_MS // 1)
        values.append(value("first_met_ms", first_ms))
    return values


def _ripening_days(x: "Inputs") -> "Worked":
    readings = [
        {"at_ms": int(row["at_min"] * 60000 + 0.5), "temp_c": row["value"]}
        for row in x["store_temps"]
    ]
    ends = [x["q10"]] + (x["ranges"].get("q10") or [])
    found = [
        ageing.ripening_days(readings, x["reference_temp_c"], q10, DAY_MS)
        for q10 in ends
    ]
    days = [row["value"] for row in found]
    return result(
        [
            value("ripening_days", days[0], min(days), max(days)),
            value("counted_days", found[0]["counted_days"]),
            value("unknown_days", found[0]["unknown_days"]),
        ],
        [note(str(found[0]["basis"])), note("compares_wheels_of_one_recipe")],
    )


ROWS = [
    sum_row(
        "humidity",
        "store",
        [
            number("dry_c", "C", -10.0, 50.0, [2.0, 20.0]),
            number("wet_c", "C", -10.0, 50.0, [1.0, 20.0]),
            number(
                "air_pressure_kpa",
                "kPa",
                50.0,
                110.0,
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
    sum_row(
        "weight_loss",
        "store",
        [
            number("start_kg", "kg", 0.05, 200.0),
            number("now_kg", "kg", 0.05, 200.0),
            number("days", "d", 0.01, 3650.0, optional=True),
            number("diameter_m", "m", 0.02, 2.0, [0.06, 0.7], optional=True),
            number("height_m", "m", 0.01, 1.0, [0.03, 0.3], optional=True),
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
    sum_row(
        "curing_days",
        "store",
        [
            choice("store_thermometer", ["F", "C"]),
            series(
                "curing_temps",
                timed([number("value", "", OWN_LOW, OWN_HIGH)]),
                1,
            ),
            number(
                "start_min",
                "min",
                0.0,
                10000000.0,
                None,
                default(0.0, "practice", "end_of_moulding_to_agree"),
            ),
            number("now_min", "min", 0.0, 10000000.0, optional=True),
            number("curing_start_ms", "ms", 0.0, 4102444800000.0, hidden=True),
        ],
        [
            output("verdict", "key"),
            output("counted_days", "d", "limit", headline=True),
            output("below_days", "d"),
            output("unknown_days", "d"),
            output("still_days", "d"),
            output("first_met_ms", "ms"),
        ],
        _curing_days,
        judges=True,
        called={"at_ms": "curing_temps", "now_ms": "now_min"},
    ),
    sum_row(
        "ripening_days",
        "store",
        [
            series(
                "store_temps",
                timed([number("value", "C", -30.0, 60.0, [2.0, 20.0])]),
                2,
            ),
            number(
                "reference_temp_c",
                "C",
                -5.0,
                40.0,
                [8.0, 18.0],
                default(13.0, "practice", "washed_curd_store"),
            ),
            number(
                "q10",
                "",
                1.0,
                5.0,
                [1.5, 3.5],
                default(2.5, "memory", "trade_knowledge_range", 2.0, 3.0),
            ),
        ],
        [
            output("ripening_days", "d", headline=True),
            output("counted_days", "d"),
            output("unknown_days", "d"),
        ],
        _ripening_days,
        called={
            "at_ms": "store_temps",
            "readings": "store_temps",
            "ref_c": "reference_temp_c",
        },
    ),
]
