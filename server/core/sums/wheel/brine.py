"""The brine: how long, and how to keep it."""

from ...formulas.salt import brining, salting
from ...formulas.usual import (
    PRESSED_MOISTURE_FRAC,
    PRESSED_MOISTURE_HIGH_FRAC,
    PRESSED_MOISTURE_LOW_FRAC,
)
from ..outputs import no_rules, note, output, rests, result, value
from ..rows import default, number, sum_row
from .brine_inputs import SALT

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.worked import Inputs, Worked, WorkedValue


FLOURY = "floury_2010_start_of_ours"
# A typed diffusivity carries no range of its own: a quarter of the salt either
# way, which is half of it, since salt goes with its square root. Our judgement.
DOUBT = 1.5
DIAMETER = number("diameter_m", "m", 0.02, 2.0, [0.06, 0.7])
HEIGHT = number("height_m", "m", 0.01, 1.0, [0.03, 0.3])
MOISTURE = number(
    "moisture_frac",
    "fraction",
    0.2,
    0.85,
    [0.35, 0.55],
    default(
        PRESSED_MOISTURE_FRAC,
        "practice",
        "washed_curd_wheel_out_press",
        PRESSED_MOISTURE_LOW_FRAC,
        PRESSED_MOISTURE_HIGH_FRAC,
    ),
)
DIFFUSION = number(
    "diffusion_m2_s",
    "m2/s",
    1e-11,
    2e-9,
    [1e-10, 5.3e-10],
    default(
        salting.DIFFUSION_START_M2_S,
        "derived",
        FLOURY,
        salting.DIFFUSION_LOW_M2_S,
        2.3e-10,
    ),
    by_hand=False,
)
RATIO = number(
    "water_salt_ratio",
    "",
    0.0,
    5.0,
    [0.5, 3.0],
    default(2.0, "abstract", "guinee_fox_1983"),
)
WANTED = number(
    "wanted_salt_frac",
    "fraction",
    0.0,
    0.1,
    [0.005, 0.035],
    default(0.02, "read", "encyclopaedia_brine_salting", 0.016, 0.022),
)


def _brine_time(x: "Inputs") -> "Worked | None":
    own = x["diffusion_m2_s"]
    low, high = x["ranges"].get("diffusion_m2_s") or [own / DOUBT, own * DOUBT]
    wheel: "list[Any]" = [
        x["diameter_m"],
        x["height_m"],
        x["moisture_frac"],
        x["brine_salt_frac"],
    ]
    needed = brining.brining_range_s(
        *(
            [x["wanted_salt_frac"]]
            + wheel
            + [[low, x["diffusion_m2_s"], high], x["water_salt_ratio"]]
        )
    )
    after = salting.wheel_salting(
        *([needed["value"]] + wheel + [x["diffusion_m2_s"], x["water_salt_ratio"]])
    )
    values = [
        value("time_s", needed["value"], needed["low"], needed["high"]),
        value("loss_frac", after["loss_frac"]),
        value("moisture_after_frac", after["moisture_frac"]),
    ]
    if x["brined_s"] is not None:
        values.append(_salt_after(x, wheel, low, high))
    notes = [note("brine.starting_estimate")]
    return result(values, notes, [])


def _salt_after(
    x: "Inputs", wheel: "list[float]", low: float, high: float
) -> "WorkedValue":
    salts = [
        salting.wheel_salting(*([x["brined_s"]] + wheel + [d, x["water_salt_ratio"]]))
        for d in (x["diffusion_m2_s"], low, high)
    ]
    return value(
        "salt_after_frac",
        salts[0]["salt_frac"],
        salts[1]["salt_frac"],
        salts[2]["salt_frac"],
    )


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
        "brine_time",
        "brine",
        [
            DIAMETER,
            HEIGHT,
            SALT,
            WANTED,
            MOISTURE,
            DIFFUSION,
            RATIO,
            number("brined_s", "s", 0.0, 31536000.0, optional=True, usual="d"),
        ],
        [
            output("time_s", "s", headline=True),
            output("salt_after_frac", "fraction"),
            output("loss_frac", "fraction"),
            output("moisture_after_frac", "fraction"),
        ],
        _brine_time,
        called={
            "brine_frac": "brine_salt_frac",
            "diffusions_m2_s": "diffusion_m2_s",
            "expected_m2_s": "diffusion_m2_s",
            "salt_frac": "wanted_salt_frac",
            "slow_m2_s": "diffusion_m2_s",
        },
    ),
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
