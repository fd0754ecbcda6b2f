"""What the instruments of a make show, as a person would type it."""

from tests.browser.maker import TYPED

DAY_S = 86400.0


def wavers(around, by, decimals, at_s, every_s=600.0):
    """Return a figure that goes up and down by a little, and often stays."""
    turn = int(at_s / every_s) % 6
    return f"{around + by * (0, 0, 1, 1, 0, -1)[turn]:.{decimals}f}"


def moved(start, rate_min, end, at_s):
    """Return a temperature that moves from one to another in a line."""
    value = start + rate_min * at_s / 60.0
    value = min(value, end) if rate_min > 0 else max(value, end)
    return f"{value:.1f}"


def shown_by(step, quantity, at_s, is_moving):
    """Return what an instrument shows so long after a step has begun, as typed."""
    if not is_moving:
        return (TYPED.get((step, quantity)) or TYPED[quantity]).replace(",", ".")
    if (step, quantity) == ("heat", "milk_temp_c"):
        return moved(4.4, 0.9, 64.2, at_s)
    if (step, quantity) == ("heat", "air_space_temp_c"):
        return moved(9.0, 0.9, 67.2, at_s)
    if (step, quantity) == ("hold", "milk_temp_c"):
        return wavers(64.1, 0.1, 1, at_s)
    if (step, quantity) == ("hold", "air_space_temp_c"):
        return wavers(67.1, 0.1, 1, at_s)
    if (step, quantity) == ("cool", "milk_temp_c"):
        return moved(64.0, -0.9, 31.8, at_s)
    if (step, quantity) == ("ripen", "milk_temp_c"):
        return wavers(31.8, 0.1, 1, at_s)
    if (step, quantity) == ("heat_water", "water_temp_c"):
        return moved(18.0, 1.8, 61.0, at_s)
    if (step, quantity) == ("wash_1", "curd_temp_c"):
        return moved(31.6, 0.35, 34.6, at_s)
    if (step, quantity) == ("wash_2", "curd_temp_c"):
        return moved(34.4, 0.35, 37.0, at_s)
    if quantity == "store_temp_c":
        return wavers(12.5, 0.1, 1, at_s, DAY_S)
    if quantity == "store_humidity_frac":
        return wavers(86, 1, 0, at_s, DAY_S)
    if quantity == "brine_temp_c":
        return wavers(12.5, 0.1, 1, at_s, DAY_S)
    return TYPED.get((step, quantity)) or TYPED[quantity]
