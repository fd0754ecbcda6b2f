"""Warming and cooling the vat: how long it takes, how fast, and what it tells."""

from ...formulas.heat import heat, heat_forecast, vat_pace
from ...formulas.milk import milk
from ...units.table import convert
from ..outputs import note, output, result, value
from ..rows import default, number, sum_row, times_and_values
from .heat_inputs import (
    CONTENTS,
    HEATING,
    JACKET,
    JACKET_OPTIONAL,
    READING_SD,
    START,
    TARGET,
    TAU,
    TAU_OPTIONAL,
    VAT_TEMPS,
)

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.worked import Inputs, Worked


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
    times_s, temps_c = times_and_values(x["vat_temps"], "value")
    rate = heat_forecast.measured_rate(times_s, temps_c, x["reading_sd_k"])
    notes = [note(rate["basis"])]
    values = [
        value(
            "rate_k_s",
            rate["value_k_s"],
            rate["low_k_s"],
            rate["high_k_s"],
        )
    ]
    if x["wanted_rate_k_min"] is not None and rate["value_k_s"] is not None:
        per_min = convert(rate["value_k_s"], "K/s", "K/min")
        low, high = x["ranges"].get("wanted_rate_k_min") or [None, None]
        word = "in_band"
        if high is not None and per_min > high:
            word = "above"
        elif low is not None and per_min < low:
            word = "below"
        values.append(value("rate_verdict", word, low, high, read=per_min))
    return result(values, notes)


def _vat_time_constant(x: "Inputs") -> "Worked | None":
    times_s, temps_c = times_and_values(x["vat_temps"], "value")
    jacket = x["jacket_temp_c"]
    fit = heat_forecast.fit_tau_robust(times_s, temps_c, jacket)
    values = [value("tau_s", fit["tau_s"])]
    if x["contents_kg"] is not None and x["other_contents_kg"] is not None:
        other = vat_pace.tau_at_fill(
            fit["tau_s"], x["contents_kg"], x["other_contents_kg"]
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


ROWS = [
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
