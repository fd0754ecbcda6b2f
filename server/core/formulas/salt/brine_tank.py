"""Keep a brine tank: make it up, top it up, and book what the wheels do to it.

Every load of cheese takes salt out and gives water back, so the tank grows and
weakens together. The ledger carries mass and strength from load to load.
"""

from ...numbers.bounds import require_above, require_number, require_within
from .brine import brine_density_kg_m3, require_brine

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import ValueProblem


def tank_kg(volume_l: float, salt_frac: float, temp_c: float) -> float:
    """Return the mass of brine in a tank.

    Args:
        volume_l: brine in the tank [L]; above 0.
        salt_frac: salt, mass fraction of the brine [0..1]; 0 to saturation.
        temp_c: temperature of the brine [°C]; 0 to 30.

    Returns:
        Mass of the brine [kg].

    Raises:
        Refused: an argument outside its range.

    Source: volume times density.
    Check: 1000 L of 20 % at 20 °C is 1148 kg.

    >>> tank_kg(1000.0, 0.20, 20.0)
    1148.1
    """
    require_above("volume_l", volume_l, 0)
    return volume_l * brine_density_kg_m3(salt_frac, temp_c) / 1000


def make_up(volume_l: float, salt_frac: float, temp_c: float) -> "dict[str, float]":
    """Return the salt and water for a fresh brine.

    Args:
        volume_l: brine wanted [L]; above 0.
        salt_frac: strength wanted [0..1]; 0 to saturation.
        temp_c: temperature of the finished brine [°C]; 0 to 30.

    Returns:
        {"salt_kg", "water_kg", "brine_kg"}.

    Raises:
        Refused: an argument outside its range.

    Source: mass balance.
    Check: salt and water add up to the brine.

    >>> make_up(100.0, 0.20, 20.0)["salt_kg"]
    22.96
    """
    brine_kg = tank_kg(volume_l, salt_frac, temp_c)
    salt_kg = brine_kg * salt_frac
    return {"salt_kg": salt_kg, "water_kg": brine_kg - salt_kg, "brine_kg": brine_kg}


def top_up_kg(
    brine_kg: float, salt_frac: float, wanted_frac: float, temp_c: float
) -> float:
    """Return the dry salt that brings a brine up to strength.

    Args:
        brine_kg: brine in the tank [kg]; above 0.
        salt_frac: strength now [0..1]; 0 to `wanted_frac`.
        wanted_frac: strength wanted [0..1]; at most saturation.
        temp_c: temperature of the brine [°C]; 0 to 30.

    Returns:
        Salt to dissolve [kg].

    Raises:
        Refused: an argument outside its range, or already stronger than wanted.

    Source: mass balance, m (w2 - w1) / (1 - w2).
    Check: 500 kg from 19 to 21 % takes 12.658 kg.

    >>> top_up_kg(500.0, 0.19, 0.21, 12.0)
    12.658
    """
    require_above("brine_kg", brine_kg, 0)
    require_brine("wanted_frac", wanted_frac, temp_c)
    require_within("salt_frac", salt_frac, 0, wanted_frac)
    return brine_kg * (wanted_frac - salt_frac) / (1 - wanted_frac)


def thin_down_kg(brine_kg: float, salt_frac: float, wanted_frac: float) -> float:
    """Return the water that brings a brine down to strength.

    Args:
        brine_kg: brine in the tank [kg]; above 0.
        salt_frac: strength now [0..1]; `wanted_frac` to 0.27.
        wanted_frac: strength wanted [0..1]; above 0.

    Returns:
        Water to add [kg].

    Raises:
        Refused: an argument outside its range, or already weaker than wanted.

    Source: mass balance.
    Check: halving the strength doubles the mass.

    >>> thin_down_kg(500.0, 0.22, 0.20)
    50.0
    """
    require_above("brine_kg", brine_kg, 0)
    require_above("wanted_frac", wanted_frac, 0)
    require_within("salt_frac", salt_frac, wanted_frac, 0.27)
    return brine_kg * (salt_frac / wanted_frac - 1)


def ledger_step(
    brine_kg: float,
    salt_frac: float,
    salt_out_kg: float,
    water_in_kg: float,
    salt_added_kg: float,
    water_added_kg: float,
) -> "dict[str, float]":
    """Return mass and strength of a tank after one load and what was added.

    Args:
        brine_kg: brine before [kg]; above 0.
        salt_frac: strength before [0..0.27].
        salt_out_kg: salt that the cheese took up [kg]; 0 or more.
        water_in_kg: water that the cheese gave up [kg]; 0 or more.
        salt_added_kg: dry salt dissolved [kg]; 0 or more.
        water_added_kg: water poured in [kg]; below 0 is brine water lost to the air.

    Returns:
        {"brine_kg", "salt_frac", "salt_kg"} after.

    Raises:
        Refused: an argument outside its range, more salt taken out than was
            there, or more water lost than was there.

    Source: mass balance of salt and of water.
    Valid: all the salt dissolved; undissolved salt on the floor is not brine.
    Check: 2 kg of salt out of 500 kg at 20 % and 4 kg of water in: 19.5219 %.

    >>> ledger_step(500.0, 0.20, 2.0, 4.0, 0.0, 0.0)["salt_frac"]
    0.195219
    """
    require_above("brine_kg", brine_kg, 0)
    require_within("salt_frac", salt_frac, 0, 0.27)
    require_within("water_in_kg", water_in_kg, 0, 100000)
    require_within("salt_added_kg", salt_added_kg, 0, 100000)
    require_number("water_added_kg", water_added_kg)
    salt_kg = brine_kg * salt_frac
    water_kg = brine_kg - salt_kg
    require_within("salt_out_kg", salt_out_kg, 0, salt_kg)
    salt_kg += salt_added_kg - salt_out_kg
    water_kg += water_in_kg + water_added_kg
    require_above("water_left_kg", water_kg, 0)
    total_kg = salt_kg + water_kg
    return {"brine_kg": total_kg, "salt_frac": salt_kg / total_kg, "salt_kg": salt_kg}


def check_brine(
    salt_frac: float, temp_c: float, limits: "dict[str, dict[str, Any]]"
) -> "list[ValueProblem]":
    """Return where a brine leaves the working limits of a rule table.

    Args:
        salt_frac: strength [0..1]; 0 to saturation.
        temp_c: temperature of the brine [°C]; 0 to 30.
        limits: figures by name, each {"value", "status"}: "salt_min_frac",
            "salt_max_frac", "temp_min_c", "temp_max_c"; any may be left out. A
            figure known from memory is passed over.

    Returns:
        List of {"field", "key", "value", "limit"}; empty when inside the limits.

    Raises:
        Refused: a brine that cannot exist.

    Source: the rule table given.
    Check: 15.9 % is reported against a least of 16 %.

    >>> weak = {"salt_min_frac": {"value": 0.16, "status": "secondary"}}
    >>> check_brine(0.159, 12.0, weak)[0]["key"]
    'below_working_range'
    """
    require_brine("salt_frac", salt_frac, temp_c)
    problems: "list[ValueProblem]" = []
    for field, value, unit in (("salt", salt_frac, "frac"), ("temp", temp_c, "c")):
        low = _known(limits, field + "_min_" + unit)
        high = _known(limits, field + "_max_" + unit)
        key, limit = "", 0.0
        if low is not None and value < low:
            key, limit = "below_working_range", low
        elif high is not None and value > high:
            key, limit = "above_working_range", high
        if key:
            name = field + "_" + unit
            problems.append({"field": name, "key": key, "value": value, "limit": limit})
    return problems


def _known(limits: "dict[str, dict[str, object]]", name: str) -> "float | None":
    figure = limits.get(name)
    if figure is None or figure["status"] == "memory":
        return None
    value = figure["value"]
    return value if isinstance(value, (int, float)) else None
