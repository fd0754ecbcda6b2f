"""What the sums of a brine are asked: how strong it is, and how warm."""

from ..rows import default, number

SALT = number("brine_salt_frac", "fraction", 0.0, 0.2660, [0.15, 0.264])
TEMP = number(
    "brine_temp_c",
    "C",
    0.0,
    30.0,
    [4.0, 20.0],
    default(12.5, "read", "fermentation_handbook_brine_temp"),
)
