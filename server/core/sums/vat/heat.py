"""Warming and cooling the vat: how long, how fast, and whether in time."""

from ...formulas.heat import heat, heat_forecast, vat_pace
from ...formulas.heat.lateness import lateness
from ...formulas.milk import milk
from ...units.table import convert
from ..outputs import note, output, result, value
from ..rows import choice, default, number, series, sum_row, timed

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.worked import Inputs, Worked, WorkedValue


TEMP = number("value", "C", -2.0, 110.0, [0.0, 95.0])
VAT_TEMPS = series("vat_temps", timed([TEMP]), 1)
JACKET = number("jacket_temp_c", "C", -10.0, 160.0, [0.0, 100.0])
TARGET = number("target_temp_c", "C", -2.0, 110.0, [2.0, 75.0])
START = number("vat_temp_c", "C", -2.0, 110.0, [0.0, 95.0])
TAU = number("tau_s", "s", 60.0, 86400.0, [300.0, 21600.0])
READING_SD = number(
    "reading_sd_k",
    "K",
    0.01,
    2.0,
    None,
    default(0.2, "practice", "stirred_vat_thermometer"),
)


def split(rows: "list[dict[str, Any]]", name: str) -> "tuple[list[float], list[float]]":
    """Return times [s] and values of a table of readings.

    Args:
        rows: list of {"at_min", name}.
        name: the column.
    """
    times_s = [row["at_min"] * 60.0 for row in rows]
    return times_s, [row[name] for row in rows]


def _heat_forecast(x: "Inputs") -> "Worked | None":
    times_s, temps_c = split(x["vat_temps"], "value")
    prior = _prior(x)
    notes = []
    if x["heating"] == "jacket" and x["jacket_temp_c"] is None:
        return result([], [note("jacket_needed")], [], ["jacket_temp_c"])
    if x["heating"] == "power":
        found = heat_forecast.forecast_line(
            times_s, temps_c, x["target_temp_c"], x["reading_sd_k"]
        )
        rate = found["rate_k_s"]
    else:
        found = heat_forecast.forecast(
            times_s,
            temps_c,
            x["target_temp_c"],
            x["jacket_temp_c"],
            x["reading_sd_k"],
            prior,
        )
        rate = None
        if found["tau_s"] is not None:
            rate = heat.rate_k_s(temps_c[-1], x["jacket_temp_c"], found["tau_s"])
    notes.append(note(found["basis"]))
    for index in found["set_aside"]:
        notes.append(
            note(
                "reading_set_aside", at_min=times_s[index] / 60.0, temp_c=temps_c[index]
            )
        )
    return result(_reach_values(x, found, times_s, rate), notes)


def _prior(x: "Inputs") -> "dict[str, Any] | None":
    if x["tau_s"] is None:
        return None
    low, high = x["ranges"].get("tau_s") or [x["tau_s"] * 0.8, x["tau_s"] * 1.25]
    # A range of nine in ten spans 3.29 standard deviations.
    sd_s = max((high - low) / 3.29, 0.02 * x["tau_s"])
    return {"tau_s": x["tau_s"], "tau_sd_s": sd_s}


def _reach_values(
    x: "Inputs", found: "dict[str, Any]", times_s: "list[float]", rate: float
) -> "list[WorkedValue]":
    ends = [found["value_s"], found["low_s"], found["high_s"]]
    values = [value("reach_s", ends[0], ends[1], ends[2])]
    now_s = times_s[-1] if x["temps_now_min"] is None else x["temps_now_min"] * 60.0
    left = [None if end is None else end - now_s for end in ends]
    values.append(value("left_s", left[0], left[1], left[2]))
    start_ms = x["temps_start_ms"]
    if start_ms is not None:
        instants = [None if end is None else start_ms + int(end * 1000) for end in ends]
        values.append(value("reach_ms", instants[0], instants[1], instants[2]))
    if rate is not None:
        values.append(value("rate_k_s", rate))
    if found.get("tau_s") is not None:
        values.append(value("tau_s", found["tau_s"]))
    if x["due_s"] is not None:
        word = lateness(found["low_s"], found["high_s"], x["due_s"])
        values.append(
            value("in_time", word["basis"], high=x["due_s"], read=found["value_s"])
        )
    return values


def _heat_time(x: "Inputs") -> "Worked | None":
    start, target = x["vat_temp_c"], x["target_temp_c"]
    if x["heating"] == "power":
        lacking = [n for n in ("contents_kg", "power_kw") if x[n] is None]
        if lacking:
            return result([], [], [], lacking)
        time_s = vat_pace.time_at_power_s(
            start,
            target,
            x["contents_kg"],
            milk.MILK_CP_J_KG_K,
            convert(x["power_kw"], "kW", "W"),
        )
        rate = (target - start) / time_s if time_s else 0.0
        return result(
            [value("time_s", time_s), value("rate_k_s", rate)],
            [note("heat.losses_left_out")],
        )
    lacking = [n for n in ("jacket_temp_c", "tau_s") if x[n] is None]
    if lacking:
        return result([], [], [], lacking)
    ends = [x["tau_s"]] + (x["ranges"].get("tau_s") or [None, None])
    jacket = x["jacket_temp_c"]
    times = [
        None if tau is None else heat.time_to_target_s(start, target, jacket, tau)
        for tau in ends
    ]
    return result(
        [
            value("time_s", times[0], times[1], times[2]),
            value("rate_k_s", heat.rate_k_s(start, jacket, ends[0])),
        ]
    )


def _jacket_needed(x: "Inputs") -> "Worked":
    jacket = heat.jacket_needed_c(
        x["vat_temp_c"], x["target_temp_c"], x["tau_s"], x["time_s"]
    )
    notes = []
    if jacket > 100.0 or jacket < 0.0:
        notes.append(note("jacket_out_of_reach", value=jacket))
    return result([value("jacket_temp_c", jacket)], notes)


def _scald_rate(x: "Inputs") -> "Worked":
    times_s, temps_c = split(x["vat_temps"], "value")
    found = heat_forecast.measured_rate(times_s, temps_c, x["reading_sd_k"])
    notes = [note(found["basis"])]
    values = [
        value(
            "rate_k_s",
            found["value_k_s"],
            found["low_k_s"],
            found["high_k_s"],
        )
    ]
    if x["wanted_rate_k_min"] is not None and found["value_k_s"] is not None:
        per_min = convert(found["value_k_s"], "K/s", "K/min")
        low, high = x["ranges"].get("wanted_rate_k_min") or [None, None]
        word = "in_band"
        if high is not None and per_min > high:
            word = "above"
        elif low is not None and per_min < low:
            word = "below"
        values.append(value("rate_verdict", word, low, high, read=per_min))
    return result(values, notes)


def _vat_time_constant(x: "Inputs") -> "Worked | None":
    times_s, temps_c = split(x["vat_temps"], "value")
    jacket = x["jacket_temp_c"]
    found = heat_forecast.fit_tau_robust(times_s, temps_c, jacket)
    values = [value("tau_s", found["tau_s"])]
    if x["contents_kg"] is not None and x["other_contents_kg"] is not None:
        other = vat_pace.tau_at_fill(
            found["tau_s"], x["contents_kg"], x["other_contents_kg"]
        )
        values.append(
            value(
                "other_tau_s",
                other["value_s"],
                other["low_s"],
                other["high_s"],
            )
        )
    return result(values)


HEATING = choice(
    "heating",
    ["jacket", "power"],
    default("jacket", "practice", "jacket_steady_temperature"),
)
TAU_OPTIONAL = number("tau_s", "s", 60.0, 86400.0, [300.0, 21600.0], optional=True)
JACKET_OPTIONAL = number(
    "jacket_temp_c", "C", -10.0, 160.0, [0.0, 100.0], optional=True
)
CONTENTS = number("contents_kg", "kg", 1.0, 52000.0, [20.0, 21000.0], optional=True)

ROWS = [
    sum_row(
        "heat_forecast",
        "heat",
        [
            VAT_TEMPS,
            TARGET,
            HEATING,
            JACKET_OPTIONAL,
            TAU_OPTIONAL,
            READING_SD,
            number("due_s", "s", 0.0, 604800.0, optional=True),
            number("temps_now_min", "min", 0.0, 1000000.0, hidden=True),
            number("temps_start_ms", "ms", 0.0, 4102444800000.0, hidden=True),
        ],
        [
            output("reach_s", "s", headline=True, told_by="reach_ms"),
            output("left_s", "s", told_by="reach_ms"),
            output("reach_ms", "ms", headline=True),
            output("rate_k_s", "K/s"),
            output("tau_s", "s"),
            output("in_time", "key", "band", ends="s"),
        ],
        _heat_forecast,
        called={
            "high_s": "due_s",
            "jacket_c": "jacket_temp_c",
            "start_c": "vat_temps",
            "target_c": "target_temp_c",
            "tau_sd_s": "tau_s",
            "temps_c": "vat_temps",
            "times_s": "vat_temps",
        },
    ),
    sum_row(
        "heat_time",
        "heat",
        [
            START,
            TARGET,
            HEATING,
            JACKET_OPTIONAL,
            TAU_OPTIONAL,
            CONTENTS,
            number("power_kw", "kW", 0.1, 2000.0, [1.0, 300.0], optional=True),
        ],
        [output("time_s", "s", headline=True), output("rate_k_s", "K/s")],
        _heat_time,
        called={
            "jacket_c": "jacket_temp_c",
            "power_w": "power_kw",
            "start_c": "vat_temp_c",
            "target_c": "target_temp_c",
        },
    ),
    sum_row(
        "jacket_needed",
        "heat",
        [
            START,
            TARGET,
            TAU,
            number("time_s", "s", 60.0, 86400.0),
        ],
        [output("jacket_temp_c", "C", headline=True)],
        _jacket_needed,
        called={"start_c": "vat_temp_c", "target_c": "target_temp_c"},
    ),
    sum_row(
        "scald_rate",
        "heat",
        [
            VAT_TEMPS,
            READING_SD,
            number(
                "wanted_rate_k_min",
                "K/min",
                0.01,
                20.0,
                None,
                # 31 to 37 °C in 15 to 20 min.
                default(
                    0.35,
                    "read",
                    "guelph_gouda_scald_time",
                    0.3,
                    0.4,
                ),
            ),
        ],
        [
            output("rate_k_s", "K/s", headline=True),
            output("rate_verdict", "key", "band", ends="K/min"),
        ],
        _scald_rate,
        called={"temps_c": "vat_temps", "times_s": "vat_temps"},
    ),
    sum_row(
        "vat_time_constant",
        "heat",
        [
            VAT_TEMPS,
            JACKET,
            CONTENTS,
            number("other_contents_kg", "kg", 1.0, 52000.0, optional=True),
        ],
        [output("tau_s", "s", headline=True), output("other_tau_s", "s")],
        _vat_time_constant,
        called={
            "jacket_c": "jacket_temp_c",
            "known_kg": "contents_kg",
            "temps_c": "vat_temps",
            "times_s": "vat_temps",
        },
    ),
]
