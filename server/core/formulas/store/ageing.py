"""The store: what the wheels lose, and how far they have come."""

import math

from ...numbers.bounds import require_above, require_count, require_within
from ...numbers.refused import Refused

MS_PER_DAY = 86400000.0


def wheel_area_m2(diameter_m: float, height_m: float) -> float:
    """Return the whole surface of a round wheel.

    Args:
        diameter_m: diameter [m]; above 0.
        height_m: height [m]; above 0.

    Returns:
        Both faces and the side [m²].

    Raises:
        Refused: an argument not above 0.

    Source: geometry.
    Check: 350 by 110 mm has 0.3134 m².

    >>> wheel_area_m2(0.35, 0.11)
    0.3134
    """
    require_above("diameter_m", diameter_m, 0)
    require_above("height_m", height_m, 0)
    return math.pi * diameter_m * (diameter_m / 2 + height_m)


def weight_loss_frac(start_kg: float, now_kg: float) -> float:
    """Return the share of its mass that a wheel has lost.

    Args:
        start_kg: mass at the start [kg]; above 0.
        now_kg: mass now [kg]; above 0.

    Returns:
        Share lost [0..1]; below 0 when it has gained.

    Raises:
        Refused: an argument not above 0.

    Source: definition.
    Check: 12 to 11.76 kg is 2 %.

    >>> weight_loss_frac(12.0, 11.76)
    0.02
    """
    require_above("start_kg", start_kg, 0)
    require_above("now_kg", now_kg, 0)
    return 1 - now_kg / start_kg


def loss_g_m2_day(
    start_kg: float, now_kg: float, area_m2: float, aged_ms: float
) -> float:
    """Return how fast a wheel dries, for a square metre of rind.

    Args:
        start_kg: mass at the start [kg]; above 0.
        now_kg: mass now [kg]; above 0.
        area_m2: surface of the wheel [m²]; above 0.
        aged_ms: time between the two weighings [ms]; above 0.

    Returns:
        Grams lost from a square metre in a day.

    Raises:
        Refused: an argument not above 0.

    Source: definition.
    Check: 12 kg, 0.3134 m², 2 % in 28 days: 27.35.

    >>> loss_g_m2_day(12.0, 11.76, 0.3134, 28 * 86400000.0)
    27.35
    """
    lost_kg = start_kg * weight_loss_frac(start_kg, now_kg)
    require_above("area_m2", area_m2, 0)
    require_above("aged_ms", aged_ms, 0)
    return lost_kg * 1000 / area_m2 / (aged_ms / MS_PER_DAY)


def moisture_after_frac(moisture_frac: float, start_kg: float, now_kg: float) -> float:
    """Return the moisture of a wheel after it has dried, from its mass alone.

    Args:
        moisture_frac: moisture at the start [0..0.9].
        start_kg: mass at the start [kg]; above 0.
        now_kg: mass now [kg]; at least the solids of the start.

    Returns:
        Moisture now [0..1].

    Raises:
        Refused: an argument outside its range, or lighter than its own solids.

    Source: mass balance, solids unchanged.
    Valid: between coats; a coat or rubbing off changes the solids.
    Check: 100 kg at 43 % dried to 95 kg is 40 %.

    >>> moisture_after_frac(0.43, 100.0, 95.0)
    0.40
    """
    require_within("moisture_frac", moisture_frac, 0, 0.9)
    require_above("start_kg", start_kg, 0)
    solids_kg = start_kg * (1 - moisture_frac)
    require_within("now_kg", now_kg, solids_kg, 1000000)
    return 1 - solids_kg / now_kg


def mass_at_moisture_kg(
    moisture_frac: float, start_kg: float, wanted_frac: float
) -> float:
    """Return what a wheel weighs when it has dried to a wanted moisture.

    Args:
        moisture_frac: moisture at the start [0..0.9].
        start_kg: mass at the start [kg]; above 0.
        wanted_frac: moisture wanted [0..0.9]; at most that of the start.

    Returns:
        Mass at the wanted moisture [kg].

    Raises:
        Refused: an argument outside its range.

    Source: mass balance, solids unchanged.
    Check: 100 kg at 43 % reach 40 % at 95 kg.

    >>> mass_at_moisture_kg(0.43, 100.0, 0.40)
    95.0
    """
    require_within("moisture_frac", moisture_frac, 0, 0.9)
    require_above("start_kg", start_kg, 0)
    require_within("wanted_frac", wanted_frac, 0, moisture_frac)
    return start_kg * (1 - moisture_frac) / (1 - wanted_frac)


def loss_forecast(
    weighings: "list[list[float]]", at_day: float
) -> "dict[str, float | str]":
    """Return the loss to expect on a later day from a batch's own weighings.

    Drying starts with the square root of time, while the rind forms, and goes on
    in proportion to it; both shares are fitted.

    Args:
        weighings: list of [day, share lost], 3 to 200 of them, days above 0.
        at_day: day wanted, counted from the same start; above 0.

    Returns:
        {"value", "low", "high", "basis"}: share lost; low and high are two
        standard errors of the fit away, the weighings' own scatter included.

    Raises:
        Refused: too few weighings, all on one day, or an argument out of range.

    Source: least squares of two shares.
    Valid: same store, same coat; a guide, not a promise, beyond twice the days
        weighed.
    Check: exact data come back exactly.

    >>> days = [[1.0, 0.011], [4.0, 0.024], [9.0, 0.039]]
    >>> loss_forecast(days, 16.0)["value"]
    0.056
    """
    require_count("weighings", len(weighings), 3, 200)
    require_above("at_day", at_day, 0)
    aa = ab = bb = ay = by = yy = 0.0
    for day, lost_frac in weighings:
        require_above("day", day, 0)
        require_within("lost_frac", lost_frac, -0.1, 0.9)
        root = math.sqrt(day)
        aa += root * root
        ab += root * day
        bb += day * day
        ay += root * lost_frac
        by += day * lost_frac
        yy += lost_frac * lost_frac
    spread = aa * bb - ab * ab
    if spread <= 1e-12 * aa * bb:
        raise Refused("all_on_one_day", "weighings", weighings[0][0])
    by_root = (ay * bb - by * ab) / spread
    by_day = (by * aa - ay * ab) / spread
    root = math.sqrt(at_day)
    value = by_root * root + by_day * at_day
    left = max(0.0, yy - by_root * ay - by_day * by) / (len(weighings) - 2)
    reach = (root * root * bb - 2 * root * at_day * ab + at_day * at_day * aa) / spread
    half = 2 * math.sqrt(left * (1 + reach))
    return {
        "value": value,
        "low": value - half,
        "high": value + half,
        "basis": "own_weighings",
    }


def ripening_days(
    readings: "list[dict[str, float]]", ref_c: float, q10: float, gap_max_ms: float
) -> "dict[str, float | str]":
    """Return how many days at a reference temperature a wheel's time was worth.

    Between two readings the temperature is taken as a straight line. A gap longer
    than allowed is not counted: nobody knows how warm it was.

    Args:
        readings: list of {"at_ms", "temp_c"}, in order of time.
        ref_c: temperature to express the days at [°C]; -5 to 40.
        q10: how much faster ripening goes 10 K warmer; 1 to 5, often 2 to 3.
        gap_max_ms: longest time between readings that is bridged [ms]; above 0.

    Returns:
        {"value", "basis", "counted_days", "unknown_days"}: days at the reference,
        "all_known" or "gaps_left_out", and calendar days counted and not.

    Raises:
        Refused: fewer than two readings, out of order, or an argument out of
            range.

    Source: Q10 rule, integrated exactly; 2 to 3 is from memory.
    Valid: compares wheels of one recipe; says nothing of flavour.
    Check: 14 days at 15 °C at Q10 2.5 are 16.816 days at 13 °C.

    >>> two = [{"at_ms": 0, "temp_c": 15.0}, {"at_ms": 14 * 86400000, "temp_c": 15.0}]
    >>> ripening_days(two, 13.0, 2.5, 20 * 86400000.0)["value"]
    16.816
    """
    require_count("readings", len(readings), 2, 100000)
    require_within("ref_c", ref_c, -5, 40)
    require_within("q10", q10, 1, 5)
    require_above("gap_max_ms", gap_max_ms, 0)
    worth_ms = counted_ms = unknown_ms = 0.0
    rate_1_k = math.log(q10) / 10
    for i in range(1, len(readings)):
        before, after = readings[i - 1], readings[i]
        span_ms = after["at_ms"] - before["at_ms"]
        if span_ms < 0:
            raise Refused("not_in_order", "at_ms", after["at_ms"], before["at_ms"])
        if span_ms > gap_max_ms:
            unknown_ms += span_ms
            continue
        low = rate_1_k * (before["temp_c"] - ref_c)
        rise = rate_1_k * (after["temp_c"] - before["temp_c"])
        # expm1 over its argument keeps its digits when the rise is small.
        mean = math.exp(low) * (math.expm1(rise) / rise if rise != 0 else 1.0)
        worth_ms += span_ms * mean
        counted_ms += span_ms
    return {
        "value": worth_ms / MS_PER_DAY,
        "basis": "gaps_left_out" if unknown_ms > 0 else "all_known",
        "counted_days": counted_ms / MS_PER_DAY,
        "unknown_days": unknown_ms / MS_PER_DAY,
    }
