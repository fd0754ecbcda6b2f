"""Rennet: the dose of the next make, by how soon this one flocculated."""

from ...formulas.milk import setting
from ..outputs import note, output, result, value
from ..rows import default, number, sum_row
from .rennet import FLOC_S

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.worked import Inputs, Worked


def _rennet_next(x: "Inputs") -> "Worked":
    factor = setting.next_dose_factor(x["floc_s"], x["target_floc_s"], x["delay_s"])
    values = [value("dose_factor", factor)]
    if x["rennet_ml"] is not None:
        values.append(value("next_rennet_ml", x["rennet_ml"] * factor))
    notes = []
    if not 0.5 <= factor <= 2.0:
        notes.append(note("factor_outside", low=0.5, high=2.0))
    return result(values, notes)


ROWS = [
    sum_row(
        "rennet_next",
        "ingredients",
        [
            FLOC_S,
            number("target_floc_s", "s", 60.0, 14400.0, [480.0, 1200.0]),
            number("rennet_ml", "mL", 0.0, 100000.0, optional=True),
            number(
                "delay_s",
                "s",
                0.0,
                1800.0,
                None,
                default(120.0, "practice", "own_settings_say_better"),
            ),
        ],
        [
            output("dose_factor", "multiple", headline=True),
            output("next_rennet_ml", "mL"),
        ],
        _rennet_next,
        called={"set_s": "floc_s", "target_s": "target_floc_s"},
    ),
]
