"""The days in the store that count: towards the law's hold, and towards ripeness."""

from ...formulas.store import ageing, curing
from ..outputs import no_rules, note, output, rests, result, value
from ..ranges import with_ends
from ..rows import choice, default, number, series, sum_row, timed
from .drying import DAY_MS
from .store_time import MILK_IS, is_cured

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.worked import Inputs, Worked, WorkedValue


OWN_LOW, OWN_HIGH = -40.0, 140.0


def _curing_days(x: "Inputs") -> "Worked":
    rule = x["rules"].get("us_curing")
    if rule is None:
        return no_rules()
    row = rule["rows"][0]
    is_asked = is_cured(x["rules"], x["milk_is"])
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
    counted: "dict[str, Any]" = curing.check_curing(
        readings,
        unit,
        start_ms,
        now_ms,
        row,
        int(gap["value"] * 1000),
    )
    notes = [note("curing_is_a_hold_not_proof"), note("start_agreed_with_inspector")]
    for reason in counted["reasons"]:
        told = dict(reason)
        told["key"] = "note." + reason["key"]
        notes.append(told)
    values = [
        value(
            "verdict", counted["verdict"] if is_asked else "not_asked", of=row["key"]
        ),
        value("counted_days", counted["counted_days"], counted["needed_days"]),
        value("below_days", counted["below_days"]),
        value("unknown_days", counted["unknown_days"]),
    ]
    if is_asked:
        values += _first_day(counted, now_ms, x["curing_start_ms"])
    else:
        notes = [note("curing_not_asked")]
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
    counted: "dict[str, Any]", now_ms: int, base_ms: "int | None"
) -> "list[WorkedValue]":
    """Return how long is to hold, and the first instant that the days may be met."""
    if counted["verdict"] != "does_not_meet":
        return []
    still = counted["needed_days"] - counted["counted_days"]
    values = [value("still_days", still)]
    if base_ms is not None:
        # Only in a make do the minutes hang on the calendar. To the next whole
        # millisecond: a day must not be told before it is full.
        first_ms = now_ms - int(-still * DAY_MS // 1)
        values.append(value("first_met_ms", first_ms))
    return values


def _ripening_days(x: "Inputs") -> "Worked":
    readings = [
        {"at_ms": int(reading["at_min"] * 60000 + 0.5), "temp_c": reading["value"]}
        for reading in x["store_temps"]
    ]
    by_q10 = [
        ageing.ripening_days(readings, x["reference_temp_c"], q10, DAY_MS)
        for q10 in with_ends(x, "q10")
    ]
    days = [ripened["value"] for ripened in by_q10]
    return result(
        [
            value("ripening_days", days[0], min(days), max(days)),
            value("counted_days", by_q10[0]["counted_days"]),
            value("unknown_days", by_q10[0]["unknown_days"]),
        ],
        [note(str(by_q10[0]["basis"])), note("compares_wheels_of_one_recipe")],
    )


ROWS = [
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
            choice("milk_is", list(MILK_IS), optional=True),
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
