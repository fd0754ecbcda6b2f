"""What several topics are asked of a wheel: how wide and how high it is."""

from .rows import number

DIAMETER = number("diameter_m", "m", 0.02, 2.0, [0.06, 0.7])
HEIGHT = number("height_m", "m", 0.01, 1.0, [0.03, 0.3])
