"""How long a wheel lies in the brine: by the salt that is wanted in it."""

from ...formulas.salt import brining, salting
from ...formulas.usual import (
    PRESSED_MOISTURE_FRAC,
    PRESSED_MOISTURE_HIGH_FRAC,
    PRESSED_MOISTURE_LOW_FRAC,
)
from ..outputs import note, output, result, value
from ..rows import default, number, sum_row
from ..wheel_inputs import DIAMETER, HEIGHT
from .brine_inputs import SALT

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.worked import Inputs, Worked, WorkedValue


FLOURY = "floury_2010_start_of_ours"
# A typed diffusivity carries no range of its own: a quarter of the salt either
# way, which is half of it, since salt goes with its square root. Our judgement.
DOUBT = 1.5
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
    default(0.02, "practice", "salt_wanted_of_our_own", 0.016, 0.022),
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
        by_size=True,
    ),
]
