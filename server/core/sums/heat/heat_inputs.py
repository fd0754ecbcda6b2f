"""What the sums of a vat's warmth ask for, one by one or several of them."""

from ..rows import choice, default, number, series, timed

TEMP = number("value", "C", -2.0, 110.0, [0.0, 95.0])
VAT_TEMPS = series("vat_temps", timed([TEMP]), 1)
START = number("vat_temp_c", "C", -2.0, 110.0, [0.0, 95.0])
TARGET = number("target_temp_c", "C", -2.0, 110.0, [2.0, 75.0])
HEATING = choice(
    "heating",
    ["jacket", "power"],
    default("jacket", "practice", "jacket_steady_temperature"),
)
JACKET = number("jacket_temp_c", "C", -10.0, 160.0, [0.0, 100.0])
JACKET_OPTIONAL = dict(JACKET, optional=True)
TAU = number("tau_s", "s", 60.0, 86400.0, [300.0, 21600.0])
TAU_OPTIONAL = dict(TAU, optional=True)
CONTENTS = number("contents_kg", "kg", 1.0, 52000.0, [20.0, 21000.0], optional=True)
READING_SD = number(
    "reading_sd_k",
    "K",
    0.01,
    2.0,
    None,
    default(0.2, "practice", "stirred_vat_thermometer"),
)
