"""How much cheese the milk gives.

All shares are mass fractions. A yield is kg of cheese for a kg of milk. The
general form follows the fat and casein that stay in the cheese; the range
carries the doubt of each figure, because a single number promises too much.
"""

import math

from ...numbers.bounds import require_above, require_within
from ...numbers.refused import Refused

# Half width of a 90 % range in standard deviations, for a normal spread.
NORMAL_90 = 1.6448536269514722

# The figures that the general form takes, in the order in which they are asked.
YIELD_FIGURES = [
    "fat_frac",
    "casein_frac",
    "moisture_frac",
    "salt_frac",
    "fat_kept_frac",
    "casein_kept_frac",
    "ash_ratio",
    "whey_solids_frac",
]


def casein_frac(protein_frac: float, casein_number: float) -> float:
    """Return the casein in milk from its protein.

    Args:
        protein_frac: true protein of the milk [0..0.2].
        casein_number: casein over protein; 0.5 to 1, about 0.77 for cows' milk.

    Returns:
        Casein of the milk [0..1].

    Raises:
        Refused: an argument outside its range.

    Source: definition of the casein number; its usual .75 to .82 is from memory.
    Check: protein 3.3 %, casein 2.6 % is a casein number of .788.

    >>> casein_frac(0.033, 0.788)
    0.0260
    """
    require_within("protein_frac", protein_frac, 0, 0.2)
    require_within("casein_number", casein_number, 0.5, 1)
    return protein_frac * casein_number


def van_slyke_yield_frac(
    fat_frac: float, casein_frac: float, moisture_frac: float
) -> float:
    """Return the cheese yield by the Van Slyke and Price formula.

    Args:
        fat_frac: fat of the milk [0..0.2].
        casein_frac: casein of the milk [0.002..0.2].
        moisture_frac: moisture wanted in the cheese [0.2..0.85].

    Returns:
        Yield, kg of cheese for a kg of milk [0..1].

    Raises:
        Refused: an argument outside its range.

    Source: Van Slyke and Price as given in words and inputs by the University of
        Guelph's yield prediction page; the page's own answer was not readable.
    Valid: Cheddar from cows' milk; a washed curd loses more, so this runs high.
    Check: fat 3.6 %, casein 2.5 %, moisture 37 % gives 9.945 %.

    >>> van_slyke_yield_frac(0.036, 0.025, 0.37)
    0.09945
    """
    require_within("fat_frac", fat_frac, 0, 0.2)
    require_within("casein_frac", casein_frac, 0.002, 0.2)
    require_within("moisture_frac", moisture_frac, 0.2, 0.85)
    return (0.93 * fat_frac + casein_frac - 0.001) * 1.09 / (1 - moisture_frac)


def general_yield_frac(
    fat_frac: float,
    casein_frac: float,
    moisture_frac: float,
    salt_frac: float,
    fat_kept_frac: float,
    casein_kept_frac: float,
    ash_ratio: float,
    whey_solids_frac: float,
) -> float:
    """Return the cheese yield from the fat and casein that stay in the cheese.

    Args:
        fat_frac: fat of the milk [0..0.2].
        casein_frac: casein of the milk [0..0.2].
        moisture_frac: moisture of the cheese [0.2..0.85].
        salt_frac: salt of the cheese [0..0.1].
        fat_kept_frac: share of the fat that stays [0.5..1], about .88 to .93.
        casein_kept_frac: share of the casein that stays [0.5..1], about .95 to .97.
        ash_ratio: ash that goes with the casein, over the casein; 0 to 0.2,
            about .08 to .09.
        whey_solids_frac: dry whey solids of the cheese [0..0.1], about .005 to .02.

    Returns:
        Yield, kg of cheese for a kg of milk [0..1].

    Raises:
        Refused: an argument outside its range, or no room left for the curd.

    Source: mass balance in the form that Barbano and Emmons use; the usual values
        of the shares are from memory, so set them from your own makes.
    Valid: rennet cheese.
    Check: .92 .955 .08 .01 with fat 3.4 %, casein 2.6 %, moisture 43 %: 10.374 %.

    >>> general_yield_frac(0.034, 0.026, 0.43, 0.0, 0.92, 0.955, 0.08, 0.01)
    0.10374
    """
    require_within("fat_frac", fat_frac, 0, 0.2)
    require_within("casein_frac", casein_frac, 0, 0.2)
    require_within("moisture_frac", moisture_frac, 0.2, 0.85)
    require_within("salt_frac", salt_frac, 0, 0.1)
    require_within("fat_kept_frac", fat_kept_frac, 0.5, 1)
    require_within("casein_kept_frac", casein_kept_frac, 0.5, 1)
    require_within("ash_ratio", ash_ratio, 0, 0.2)
    require_within("whey_solids_frac", whey_solids_frac, 0, 0.1)
    curd_frac = 1 - moisture_frac - salt_frac - whey_solids_frac
    require_above("curd_frac", curd_frac, 0.05)
    casein_part = casein_kept_frac * casein_frac * (1 + ash_ratio)
    return (fat_kept_frac * fat_frac + casein_part) / curd_frac


def yield_range(
    figures: "dict[str, float]", spreads: "dict[str, float]", model_spread: float
) -> "dict[str, float | str]":
    """Return the general yield with the range that holds nine makes in ten.

    Each figure's doubt is carried through by its slope, and the doubts add as
    squares, with the scatter of the formula itself.

    Args:
        figures: the eight arguments of general_yield_frac, by name.
        spreads: standard deviation of any of them, by name; a missing one is 0.
        model_spread: scatter of real makes about the formula, standard deviation
            as a share of the yield; 0 to 0.2, and not known better than about .01.

    Returns:
        {"value", "low", "high", "basis"}; kg of cheese for a kg of milk.

    Raises:
        Refused: a figure missing or outside its range, a name not known, or
            a spread below 0.

    Source: first-order propagation of errors. One per cent of scatter: Emmons and
        Modler 2010, abstract (predictions averaged 99.17 % of actual).
    Valid: spreads small and independent of one another.
    Check: nine of ten simulated makes fall inside.

    >>> figures = {
    ...     "fat_frac": 0.034,
    ...     "casein_frac": 0.026,
    ...     "moisture_frac": 0.43,
    ...     "salt_frac": 0.0,
    ...     "fat_kept_frac": 0.92,
    ...     "casein_kept_frac": 0.955,
    ...     "ash_ratio": 0.08,
    ...     "whey_solids_frac": 0.01,
    ... }
    >>> band = yield_range(figures, {}, 0.01)
    >>> band["low"], band["high"]
    (0.1020, 0.1054)
    """
    require_within("model_spread", model_spread, 0, 0.2)
    for name in spreads:
        if name not in YIELD_FIGURES:
            raise Refused("not_a_choice", "spread", name, YIELD_FIGURES)
    given = []
    for name in YIELD_FIGURES:
        if name not in figures:
            raise Refused("missing", name, None)
        given.append(figures[name])
    value = general_yield_frac(*given)
    variance = (value * model_spread) ** 2
    for i in range(len(YIELD_FIGURES)):
        spread = spreads.get(YIELD_FIGURES[i], 0)
        require_within("spread_of_" + YIELD_FIGURES[i], spread, 0, 0.1)
        variance += (_slope(given, i) * spread) ** 2
    half = NORMAL_90 * math.sqrt(variance)
    return {
        "value": value,
        "low": value - half,
        "high": value + half,
        "basis": "90_percent_of_makes",
    }


def _slope(given: "list[float]", i: int) -> float:
    """Return how fast the general yield moves with its i-th figure."""
    fat, casein, moisture, salt, fat_kept, casein_kept, ash, whey = given
    curd = 1 - moisture - salt - whey
    amount = fat_kept * fat + casein_kept * casein * (1 + ash)
    by_curd = amount / (curd * curd)
    return [
        fat_kept / curd,
        casein_kept * (1 + ash) / curd,
        by_curd,
        by_curd,
        fat / curd,
        casein * (1 + ash) / curd,
        casein_kept * casein / curd,
        by_curd,
    ][i]


def moisture_adjusted_frac(
    yield_frac: float, moisture_frac: float, standard_frac: float
) -> float:
    """Return a yield as it would be at a standard moisture.

    Args:
        yield_frac: yield as made, kg of cheese for a kg of milk [0..1]; above 0, below
            1.
        moisture_frac: moisture of that cheese [0..0.9].
        standard_frac: moisture to compare at [0..0.9].

    Returns:
        Yield at the standard moisture [0..1].

    Raises:
        Refused: an argument outside its range.

    Source: Hill and Ferrer, Cheese Making Technology e-Book, chapter 18.
    Check: 11 % at 37 % moisture is 11.3607 % at 39 %.

    >>> moisture_adjusted_frac(0.11, 0.37, 0.39)
    0.113607
    """
    require_above("yield_frac", yield_frac, 0)
    require_within("yield_frac", yield_frac, 0, 1)
    require_within("moisture_frac", moisture_frac, 0, 0.9)
    require_within("standard_frac", standard_frac, 0, 0.9)
    return yield_frac * (1 - moisture_frac) / (1 - standard_frac)


def moisture_salt_adjusted_frac(
    yield_frac: float,
    moisture_frac: float,
    salt_frac: float,
    standard_frac: float,
    standard_salt_frac: float,
) -> float:
    """Return a yield as it would be at a standard moisture and salt.

    Args:
        yield_frac: yield as made, kg of cheese for a kg of milk [0..1]; above 0, below
            1.
        moisture_frac: moisture of that cheese [0..0.9].
        salt_frac: salt of that cheese [0..0.1].
        standard_frac: moisture to compare at [0..0.9].
        standard_salt_frac: salt to compare at [0..0.1].

    Returns:
        Yield at the standard moisture and salt [0..1].

    Raises:
        Refused: an argument outside its range.

    Source: Hill and Ferrer, Cheese Making Technology e-Book, chapter 18, as printed.
    Check: 11 %, 37 to 39 % moisture, 1.7 to 1.5 % salt: 11.3376 %.

    >>> moisture_salt_adjusted_frac(0.11, 0.37, 0.017, 0.39, 0.015)
    0.113376
    """
    require_within("salt_frac", salt_frac, 0, 0.1)
    require_within("standard_salt_frac", standard_salt_frac, 0, 0.1)
    at_moisture = moisture_adjusted_frac(yield_frac, moisture_frac, standard_frac)
    return at_moisture * (1 - salt_frac) / (1 - standard_salt_frac)
