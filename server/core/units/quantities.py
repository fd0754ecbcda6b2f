"""What can be read off an instrument at the vat, in which unit and range.

One row a quantity. `low`/`high` are hard: outside them the value cannot be
true and is refused. `ask_low`/`ask_high` are soft: outside them the maker is
asked for a second look, and the value is kept as typed. Hard and soft ranges
are this project's own judgement of what an instrument can show (common
practice, no source); recipe bands are a different thing and live in recipes.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import Problem


def _number(
    unit: str, decimals: int, low: float, high: float, ask_low: float, ask_high: float
) -> "dict[str, Any]":
    return {
        "type": "number",
        "unit": unit,
        "decimals": decimals,
        "low": low,
        "high": high,
        "ask_low": ask_low,
        "ask_high": ask_high,
    }


QUANTITIES = {
    "milk_volume_l": _number("L", 0, 0.0, 50000.0, 20.0, 20000.0),
    "milk_mass_kg": _number("kg", 1, 0.0, 52000.0, 20.0, 21000.0),
    "milk_age_h": _number("h", 1, 0.0, 240.0, 0.0, 72.0),
    "milk_temp_c": _number("C", 1, -2.0, 110.0, 0.0, 75.0),
    "air_space_temp_c": _number("C", 1, -10.0, 130.0, 0.0, 95.0),
    "jacket_temp_c": _number("C", 1, -10.0, 160.0, 0.0, 100.0),
    "indicator_temp_c": _number("C", 1, -2.0, 110.0, 0.0, 75.0),
    "recorder_temp_c": _number("C", 1, -2.0, 110.0, 0.0, 75.0),
    # A thermometer known to be right, beside the indicating one.
    "check_temp_c": _number("C", 1, -2.0, 110.0, 0.0, 75.0),
    "curd_temp_c": _number("C", 1, -2.0, 110.0, 10.0, 58.0),
    "water_temp_c": _number("C", 1, -2.0, 110.0, 2.0, 90.0),
    "room_temp_c": _number("C", 1, -30.0, 60.0, 5.0, 40.0),
    "ph": _number("pH", 2, 0.0, 14.0, 4.0, 7.2),
    "titratable_acidity_frac": _number("fraction lactic", 5, 0.0, 0.05, 0.0008, 0.012),
    "fat_frac": _number("fraction", 4, 0.0, 0.6, 0.015, 0.09),
    "snf_frac": _number("fraction", 4, 0.0, 0.4, 0.06, 0.13),
    "protein_frac": _number("fraction", 4, 0.0, 0.2, 0.024, 0.06),
    "whey_drained_l": _number("L", 0, 0.0, 50000.0, 1.0, 20000.0),
    "water_added_l": _number("L", 0, 0.0, 50000.0, 1.0, 20000.0),
    "bed_load_kg": _number("kg", 1, 0.0, 20000.0, 1.0, 2000.0),
    "press_gauge_kpa": _number("kPa", 0, 0.0, 2000.0, 5.0, 800.0),
    "wheel_mass_kg": _number("kg", 2, 0.0, 200.0, 0.1, 60.0),
    "brine_temp_c": _number("C", 1, -20.0, 60.0, 4.0, 20.0),
    # 0.2645 is the saturation of sodium chloride at 21 °C; a little is left for
    # colder or warmer tanks. Source: salt solubility table, see facts in recipes.
    "brine_salt_frac": _number("fraction", 4, 0.0, 0.2660, 0.15, 0.2640),
    "brine_ph": _number("pH", 2, 0.0, 14.0, 4.5, 6.0),
    # What a room found for itself: water that cheese gives up for 1 of salt.
    "water_salt_ratio": _number("", 2, 0.0, 5.0, 0.5, 3.0),
    "store_temp_c": _number("C", 1, -30.0, 60.0, 2.0, 20.0),
    "store_humidity_frac": _number("fraction", 3, 0.0, 1.0, 0.6, 0.99),
    # From the laboratory; the place of the reading is the size of the wheel.
    "cheese_moisture_frac": _number("fraction", 4, 0.0, 0.9, 0.28, 0.6),
    "cheese_fat_frac": _number("fraction", 4, 0.0, 0.7, 0.1, 0.45),
    "cheese_salt_frac": _number("fraction", 4, 0.0, 0.1, 0.002, 0.04),
    "cheese_ph": _number("pH", 2, 0.0, 14.0, 4.5, 6.2),
    # Alkaline phosphatase, each in the unit that its limit is printed in; the two
    # are measured in different things and are never converted. Raw milk shows
    # some hundred thousand mU/L (from memory; only the hard range rests on it).
    "milk_phosphatase_mu_l": _number("mU/L", 0, 0.0, 10000000.0, 0.0, 350.0),
    "cheese_phosphatase_ug": _number("ug", 1, 0.0, 10000.0, 0.0, 5.0),
    "staph_per_g": _number("", 0, 0.0, 1e11, 0.0, 1e8),
    "listeria_test": {"type": "choice", "choices": ["negative", "positive"]},
    "salmonella_test": {"type": "choice", "choices": ["negative", "positive"]},
    "phosphatase_test": {"type": "choice", "choices": ["negative", "positive"]},
    "drug_test": {"type": "choice", "choices": ["negative", "positive"]},
}

# Cold enough to have a sign, these are ice. Their hard range begins below 0 for what a
# thermometer may err by there.
LIQUID = ("milk_temp_c", "curd_temp_c", "water_temp_c")


def is_signed(quantity: str) -> bool:
    """Tell whether a figure below 0 may be typed of a quantity, in its own unit.

    Args:
        quantity: key of QUANTITIES.
    """
    low: float = QUANTITIES[quantity].get("low", 0.0)
    return low < 0 and quantity not in LIQUID


# What is read with which instrument, of those that not every creamery has.
INSTRUMENTS = {
    "ph_meter": ("ph", "brine_ph"),
    "titration": ("titratable_acidity_frac",),
}

# A change since the last reading that is asked about: a slip of the finger is as
# likely as so large a step. By how much in the quantity's own unit, or how many
# times; this project's own judgement (common practice, no source). Milk that is
# heated or cooled may step by any number of degrees, so it is not asked about.
JUMPS = {
    "curd_temp_c": 8.0,
    "ph": 0.5,
    "titratable_acidity_frac": 0.002,
    "brine_temp_c": 6.0,
    "brine_salt_frac": 0.03,
    "brine_ph": 0.5,
    "store_temp_c": 6.0,
    "store_humidity_frac": 0.15,
}
# Poured or run off in parts, each read by itself: a step's figure is for all of it.
ADDS_UP = ("whey_drained_l", "water_added_l")
# What is out by ten where a point or a zero went wrong.
TIMES = 8.0
TIMES_ASKED = (
    "milk_volume_l",
    "milk_mass_kg",
    "whey_drained_l",
    "water_added_l",
    "bed_load_kg",
    "press_gauge_kpa",
    "wheel_mass_kg",
)


def check_value(quantity: str, value: "float | str") -> "list[Problem]":
    """Return what makes a reading impossible, as a list of problems.

    Args:
        quantity: a key of QUANTITIES.
        value: number in the quantity's own unit, or one of its choices.

    Returns:
        List of {"field", "key", "limit"}; empty when the value can be true.
    """
    # A list or a mapping cannot be looked up, and has no place here either.
    entry = QUANTITIES.get(quantity) if isinstance(quantity, str) else None
    if entry is None:
        return [{"field": "quantity", "key": "unknown", "limit": quantity}]
    if entry["type"] == "choice":
        if value in entry["choices"]:
            return []
        return [{"field": "value", "key": "not_a_choice", "limit": entry["choices"]}]
    return check_number("value", value, entry["low"], entry["high"])


def check_number(
    field: str, value: object, low: "float | None", high: "float | None"
) -> "list[Problem]":
    """Return the problems of one number against inclusive limits.

    Args:
        field: name to report.
        value: the number as received; anything else is a problem.
        low: smallest possible value, or None.
        high: largest possible value, or None.

    Returns:
        List of {"field", "key", "limit"}: "not_a_number", "below" or "above".
    """
    if value is True or value is False or not isinstance(value, (int, float)):
        return [{"field": field, "key": "not_a_number", "limit": None}]
    if value != value or value in (float("inf"), float("-inf")):
        return [{"field": field, "key": "not_a_number", "limit": None}]
    if low is not None and value < low:
        return [{"field": field, "key": "below", "limit": low}]
    if high is not None and value > high:
        return [{"field": field, "key": "above", "limit": high}]
    return []


def needs_second_look(quantity: str, value: "float | str") -> "dict[str, Any] | None":
    """Return the soft limit that a possible value lies outside of, if any.

    Args:
        quantity: a key of QUANTITIES.
        value: a value that `check_value` finds possible.

    Returns:
        {"key": "unlikely_low" or "unlikely_high", "limit"} or None.
    """
    entry = QUANTITIES[quantity]
    if entry["type"] == "choice":
        return None
    if value < entry["ask_low"]:
        return {"key": "unlikely_low", "limit": entry["ask_low"]}
    if value > entry["ask_high"]:
        return {"key": "unlikely_high", "limit": entry["ask_high"]}
    return None


def is_jump(quantity: str, value: float, last: float) -> bool:
    """Tell whether a value lies so far from the last one that it is asked about.

    Args:
        quantity: a key of QUANTITIES.
        value: the value now, in the quantity's own unit.
        last: the value before, in the same unit.
    """
    if quantity in JUMPS:
        return abs(value - last) > JUMPS[quantity]
    if quantity in TIMES_ASKED and value > 0.0 and last > 0.0:
        return value >= TIMES * last or last >= TIMES * value
    return False
