"""Warming and cooling the vat: how long it takes, and how warm a jacket."""

from ...formulas.heat import heat, vat_pace
from ...formulas.milk import milk
from ...units.table import convert
from ..needs import lacking_for
from ..outputs import note, output, result, value
from ..ranges import ranged, with_ends
from ..rows import number, sum_row
from .heat_inputs import (
    CONTENTS,
    HEATING,
    JACKET_OPTIONAL,
    START,
    TARGET,
    TAU,
    TAU_OPTIONAL,
)

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.worked import Inputs, Worked


def _heat_time(x: "Inputs") -> "Worked | None":
    start, target = x["vat_temp_c"], x["target_temp_c"]
    lacking = lacking_for("heat_time", x)
    if lacking:
        return result([], [], [], lacking)
    if x["heating"] == "power":
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
    jacket = x["jacket_temp_c"]
    times_s = [
        heat.time_to_target_s(start, target, jacket, tau)
        for tau in with_ends(x, "tau_s")
    ]
    rate = heat.rate_k_s(start, jacket, x["tau_s"])
    return result([ranged("time_s", times_s), value("rate_k_s", rate)])


def _jacket_needed(x: "Inputs") -> "Worked":
    jacket = heat.jacket_needed_c(
        x["vat_temp_c"], x["target_temp_c"], x["tau_s"], x["time_s"]
    )
    notes = []
    if jacket > 100.0 or jacket < 0.0:
        notes.append(note("jacket_out_of_reach", value=jacket))
    return result([value("jacket_temp_c", jacket)], notes)


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
]
