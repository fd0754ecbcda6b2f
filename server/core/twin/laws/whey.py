"""Grains in whey: they shrink towards what they can hold, and trade lactose.

What a grain can hold falls with heat, acid and pressure; how fast it shrinks goes
with the inverse of its size. Lactose in the grain follows the whey around it, so
wash water works through the whey and takes its time.
"""

import math

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.twin import Acid, Curd

# All fitted to usual practice: a third of the whey within a quarter of an hour of
# the cut, curd of 60 to 65 % water when it leaves the vat (from memory).
SHRINK_S, TRADE_S, USUAL_MM = 900.0, 420.0, 8.0
HOLDS, HOLDS_PER_K, HOLDS_PER_PH = 1.5, -0.05, 0.55  # kg water on a kg of solids


def holds(temp_c: float, ph: float, load_frac: float) -> float:
    """Return the water that a kilogram of curd's solids holds in the end.

    Args:
        temp_c: temperature [°C].
        ph: pH.
        load_frac: weights on the curd, of weights and curd together [0..1].
    """
    found = HOLDS + HOLDS_PER_K * (temp_c - 36.0) + HOLDS_PER_PH * (ph - 6.4)
    return max(0.7, found - 1.6 * load_frac)


def shrink(curd: "Curd", temp_c: float, ph: float, load_kg: float, s: float) -> None:
    """Let grains give off whey, and trade lactose with it, for a time.

    Args:
        curd: grains and whey; they change.
        temp_c: temperature [°C].
        ph: pH.
        load_kg: weights that lie on the curd [kg].
        s: how long.
    """
    if curd["grain_mm"] is None:
        return
    size = curd["grain_mm"] / USUAL_MM
    load_frac = load_kg / (load_kg + curd["solids_kg"] + curd["water_kg"])
    over_kg = curd["water_kg"] - curd["solids_kg"] * holds(temp_c, ph, load_frac)
    warm = math.exp(0.05 * (temp_c - 34.0))
    out_kg = max(0.0, over_kg) * (1.0 - math.exp(-warm * s / (SHRINK_S * size)))
    give(curd, out_kg)
    _trade(curd, s / (TRADE_S * size * size))


def give(curd: "Curd", out_kg: float) -> None:
    """Let water go from grains to whey with the lactose that is in it.

    Args:
        curd: grains and whey; they change.
        out_kg: water [kg].
    """
    share = out_kg / curd["water_kg"]
    moved_kg = curd["lactose_kg"] * share
    curd["water_kg"] -= out_kg
    curd["whey_kg"] += out_kg
    curd["lactose_kg"] -= moved_kg
    curd["whey_lactose_kg"] += moved_kg


def drain(curd: "Curd", acid: "Acid", out_kg: float) -> float:
    """Run whey off, with what is dissolved in it.

    Args:
        curd: grains and whey; they change.
        acid: what the contents hold of acid and buffers; it changes.
        out_kg: whey wanted [kg].

    Returns:
        Whey that came [kg]: no more than there was.
    """
    gone_kg = min(out_kg, curd["whey_kg"])
    if gone_kg <= 0.0:
        return 0.0
    all_kg = curd["whey_kg"] + curd["water_kg"]
    curd["whey_lactose_kg"] *= 1.0 - gone_kg / curd["whey_kg"]
    curd["whey_kg"] -= gone_kg
    acid["soluble_mol"] *= 1.0 - gone_kg / all_kg
    acid["lactate_mol"] *= 1.0 - gone_kg / all_kg
    return gone_kg


def _trade(curd: "Curd", times: float) -> None:
    """Bring lactose of grain and whey nearer to one strength."""
    all_kg = curd["water_kg"] + curd["whey_kg"]
    if curd["whey_kg"] <= 0.0:
        return
    whole_kg = curd["lactose_kg"] + curd["whey_lactose_kg"]
    even_kg = whole_kg * curd["water_kg"] / all_kg
    left_kg = (curd["lactose_kg"] - even_kg) * math.exp(-times)
    curd["lactose_kg"] = even_kg + left_kg
    curd["whey_lactose_kg"] = whole_kg - curd["lactose_kg"]
