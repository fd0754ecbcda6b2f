"""Rennet: the dose of the next make, by how soon this one flocculated."""

from ...formulas.milk import setting
from ..outputs import note, output, rests, result
from ..ranges import ranged
from ..rows import default, number, sum_row
from .cut import FLOC_S

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.worked import Inputs, Worked

SETTING_Q10 = "setting_q10_from_memory"


def _rennet_next(x: "Inputs") -> "Worked":
    factors = [
        setting.next_dose_factor(x["floc_s"] * times, x["target_floc_s"], x["delay_s"])
        for times in _by_warmth(x["set_temp_c"], x["next_set_temp_c"])
    ]
    factor = factors[0]
    values = [ranged("dose_factor", factors)]
    if x["rennet_ml"] is not None:
        doses_ml = [x["rennet_ml"] * each for each in factors]
        values.append(ranged("next_rennet_ml", doses_ml))
    notes = []
    if not 0.5 <= factor <= 2.0:
        notes.append(note("factor_outside", low=0.5, high=2.0))
    told = [rests("q10", setting.Q10_USUAL, "", "memory", SETTING_Q10)]
    return result(values, notes, told if len(factors) > 1 else [])


def _by_warmth(from_c: "float | None", to_c: "float | None") -> "list[float]":
    """Return what the next temperature does to the time: usual, least and most."""
    if from_c is None or to_c is None:
        return [1.0]
    times = setting.setting_time_factor(from_c, to_c)
    return [times["value"], times["low"], times["high"]]


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
            number("set_temp_c", "C", 28.0, 36.0, optional=True),
            number("next_set_temp_c", "C", 28.0, 36.0, optional=True),
        ],
        [
            output("dose_factor", "multiple", headline=True),
            output("next_rennet_ml", "mL"),
        ],
        _rennet_next,
        called={
            "set_s": "floc_s",
            "target_s": "target_floc_s",
            "from_c": "set_temp_c",
            "to_c": "next_set_temp_c",
        },
    ),
]
