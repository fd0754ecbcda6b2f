"""What several topics are asked of the milk."""

from ..rows import number

MILK_KG = number("milk_kg", "kg", 0.0, 52000.0, [20.0, 21000.0])
MILK_L = number("milk_l", "L", 0.0, 50000.0, [20.0, 20000.0])
