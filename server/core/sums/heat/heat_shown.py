"""What the readings of a vat show: how fast it warms, and how slow it is."""

from ...formulas.heat import heat_forecast, vat_pace
from ...units.table import convert
from ..outputs import note, output, result, value
from ..rows import default, number, sum_row, times_and_values
from .heat_inputs import CONTENTS, JACKET, READING_SD, VAT_TEMPS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.worked import Inputs, Worked


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
