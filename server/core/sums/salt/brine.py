"""The brine: what a wheel tells of it, and how to keep it."""

from ...formulas.salt import brining, salting
from ..outputs import no_rules, note, output, rests, result, value
from ..rows import number, sum_row
from ..wheel_inputs import DIAMETER, HEIGHT
from .brine_inputs import SALT
from .brine_time import MOISTURE, RATIO

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.worked import Inputs, Worked


def _brine_factor(x: "Inputs") -> "Worked | None":
    fitted: "dict[str, Any]" = brining.calibrated_diffusion(
        [
            {
                "salt_frac": x["cheese_salt_frac"],
                "brined_s": x["brined_s"],
                "diameter_m": x["diameter_m"],
                "height_m": x["height_m"],
                "moisture_frac": x["moisture_frac"],
                "brine_frac": x["brine_salt_frac"],
            }
        ],
        x["water_salt_ratio"],
    )
    own = fitted["value"]
    return result(
        [
            value("diffusion_m2_s", own),
            value("factor", own / salting.DIFFUSION_START_M2_S),
        ],
        [note("brine.one_wheel_is_one_wheel")],
    )


def _brine_check(x: "Inputs") -> "Worked":
    values, sources = [], []
    rule = x["rules"].get("brine")
    if rule is None:
        return no_rules()
    gap = x["brine_ph"] - x["cheese_ph"]
    values.append(value("ph_gap", gap))
    calcium = rule["calcium_chloride_frac"]
    values.append(value("calcium_chloride_kg", x["brine_kg"] * calcium["value"]))
    sources.append(
        rests(
            "calcium_chloride_frac",
            calcium["value"],
            "fraction",
            calcium["status"],
            calcium["source"],
        )
    )
    notes = [note("new_brine_only")]
    if gap > 0.1:
        notes.append(note("brine_ph_above_cheese", value=gap))
    elif gap < -0.1:
        notes.append(note("brine_ph_below_cheese", value=gap))
    return result(values, notes, sources)


ROWS = [
    sum_row(
        "brine_factor",
        "brine",
        [
            number("cheese_salt_frac", "fraction", 0.0005, 0.1, [0.005, 0.04]),
            number("brined_s", "s", 60.0, 31536000.0, usual="h"),
            DIAMETER,
            HEIGHT,
            SALT,
            MOISTURE,
            RATIO,
        ],
        [output("diffusion_m2_s", "m2/s"), output("factor", "multiple", headline=True)],
        _brine_factor,
        called={"brine_frac": "brine_salt_frac", "salt_frac": "cheese_salt_frac"},
        by_size=True,
    ),
    sum_row(
        "brine_check",
        "brine",
        [
            number("brine_ph", "pH", 0.0, 14.0, [4.5, 6.0]),
            number("cheese_ph", "pH", 0.0, 14.0, [4.5, 6.0]),
            number("brine_kg", "kg", 1.0, 60000.0),
        ],
        [
            output("ph_gap", "pH_rise", headline=True),
            output("calcium_chloride_kg", "kg"),
        ],
        _brine_check,
        judges=True,
    ),
]
