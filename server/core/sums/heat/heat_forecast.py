"""When a vat that is being warmed or cooled reaches its temperature, and if in time."""

from ...formulas.heat import heat, heat_forecast
from ...formulas.heat.lateness import lateness
from ..outputs import note, output, result, value
from ..rows import number, sum_row, times_and_values
from .heat_inputs import (
    HEATING,
    JACKET_OPTIONAL,
    READING_SD,
    TARGET,
    TAU_OPTIONAL,
    VAT_TEMPS,
)

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.worked import Inputs, Worked, WorkedValue


def _heat_forecast(x: "Inputs") -> "Worked | None":
    times_s, temps_c = times_and_values(x["vat_temps"], "value")
    prior = _prior(x)
    notes = []
    if x["heating"] == "jacket" and x["jacket_temp_c"] is None:
        return result([], [note("jacket_needed")], [], ["jacket_temp_c"])
    if x["heating"] == "power":
        reach = heat_forecast.forecast_line(
            times_s, temps_c, x["target_temp_c"], x["reading_sd_k"]
        )
        rate = reach["rate_k_s"]
    else:
        reach = heat_forecast.forecast(
            times_s,
            temps_c,
            x["target_temp_c"],
            x["jacket_temp_c"],
            x["reading_sd_k"],
            prior,
        )
        rate = None
        if reach["tau_s"] is not None:
            rate = heat.rate_k_s(temps_c[-1], x["jacket_temp_c"], reach["tau_s"])
    notes.append(note(reach["basis"]))
    for index in reach["set_aside"]:
        notes.append(
            note(
                "reading_set_aside", at_min=times_s[index] / 60.0, temp_c=temps_c[index]
            )
        )
    return result(_reach_values(x, reach, times_s, rate), notes)


def _prior(x: "Inputs") -> "dict[str, Any] | None":
    if x["tau_s"] is None:
        return None
    low, high = x["ranges"].get("tau_s") or [x["tau_s"] * 0.8, x["tau_s"] * 1.25]
    # A range of nine in ten spans 3.29 standard deviations.
    sd_s = max((high - low) / 3.29, 0.02 * x["tau_s"])
    return {"tau_s": x["tau_s"], "tau_sd_s": sd_s}


def _reach_values(
    x: "Inputs", reach: "dict[str, Any]", times_s: "list[float]", rate: float
) -> "list[WorkedValue]":
    ends = [reach["value_s"], reach["low_s"], reach["high_s"]]
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
    if reach.get("tau_s") is not None:
        values.append(value("tau_s", reach["tau_s"]))
    if x["due_s"] is not None:
        word = lateness(reach["low_s"], reach["high_s"], x["due_s"])
        values.append(
            value("in_time", word["basis"], high=x["due_s"], read=reach["value_s"])
        )
    return values


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
]
