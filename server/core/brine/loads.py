"""The wheels in a tank: what they take from the brine and give back to it.

By what they lost on the scale where both masses are known, else by the model for
the wheel's size, else not at all, and then it says so.
"""

from ..formulas.salt import salting
from ..formulas.usual import PRESSED_MOISTURE_FRAC
from ..log.opening import recipe_of
from ..numbers.share import grown
from ..recipe.parts import mould_of
from .account import change

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.brine import Tank, TankLoad
    from server.shapes.core.state import State

# A wheel that gives up hardly more water than it takes salt loses nothing on the
# scale: what it lost divided by next to nothing is no measure. Our judgement.
RATIO_FOR_SCALE = 1.2


def load_of(entry: "dict[str, Any]") -> "TankLoad":
    """Return the load that an entry put into a tank, nothing taken up yet.

    When it is due follows from figures, see `figures.brining`.

    Args:
        entry: tank_loaded.
    """
    data = entry["data"]
    return {
        "id": entry["id"],
        "make": data["load_make"],
        "size": data["size"],
        "wheels": data["wheels"],
        "mass_kg": data["mass_kg"],
        "in_ms": entry["t_ms"],
        "due_ms": None,
        "out_ms": None,
        "out_kg": None,
        "basis": None,
        "salt_kg": 0.0,
        "water_kg": 0.0,
        "salt_due_kg": None,
        "time": None,
        "uptake": None,
    }


def unload(account: "Tank", makes: "dict[str, State]", entry: "dict[str, Any]") -> None:
    """Take a load out, and book what it took from the brine and gave to it.

    Args:
        account: account of the tank; changed in place.
        makes: {stream id: State}.
        entry: tank_unloaded.
    """
    for load in account["loads"]:
        if load["id"] != entry["data"]["load"] or load["out_ms"] is not None:
            continue
        load["out_ms"] = entry["t_ms"]
        load["out_kg"] = out_kg = entry["data"]["mass_kg"]
        lost_kg = load["mass_kg"] - out_kg
        ratio = account["water_salt_ratio"]["value"]
        if lost_kg > 0 and ratio >= RATIO_FOR_SCALE:
            # Salt in, so many times its mass of water out: the loss is the rest.
            salt_kg = lost_kg / (ratio - 1.0)
            _book_load(account, load, "tank.weighed", salt_kg, ratio * salt_kg)
        else:
            _by_model(account, makes, load, entry["t_ms"])
        return
    account["notes"].append({"key": "note.tank.unknown_load", "id": entry["id"]})


def book_inside(account: "Tank", makes: "dict[str, State]", at_ms: int) -> None:
    """Count what the wheels still inside have taken up to an instant.

    Args:
        account: account of the tank; changed in place.
        makes: {stream id: State}.
        at_ms: the instant [ms].
    """
    for load in account["loads"]:
        if load["out_ms"] is None:
            _by_model(account, makes, load, at_ms)


def forecast(account: "Tank", makes: "dict[str, State]", now_ms: int) -> None:
    """Say of the wheels inside how far they have come, in time and in salt.

    Args:
        account: account of the tank, with what is due when; changed in place.
        makes: {stream id: State}.
        now_ms: now, by the server's clock [ms].
    """
    for load in account["loads"]:
        due_ms = load["due_ms"]
        if load["out_ms"] is not None or due_ms is None or due_ms <= load["in_ms"]:
            continue
        load["time"] = grown(now_ms, load["in_ms"], due_ms)
        given = _given(account, makes, load, due_ms)
        if given is not None and given["salt_out_kg"] > 0.0:
            load["salt_due_kg"] = given["salt_out_kg"]
            load["uptake"] = grown(load["salt_kg"], 0.0, given["salt_out_kg"])


def _by_model(
    account: "Tank", makes: "dict[str, State]", load: "TankLoad", at_ms: int
) -> None:
    given = _given(account, makes, load, at_ms)
    if given is None:
        load["basis"] = "tank.not_known"
        return
    _book_load(account, load, "tank.model", given["salt_out_kg"], given["water_in_kg"])


def _given(
    account: "Tank", makes: "dict[str, State]", load: "TankLoad", at_ms: int
) -> "dict[str, float] | None":
    """Return what a load has taken and given by an instant; None by no model."""
    size = mould_of(recipe_of(makes.get(load["make"])), load["size"])
    if size is None or not 0.0 < account["salt_frac"] <= 0.27:
        return None
    after = salting.wheel_salting(
        (at_ms - load["in_ms"]) / 1000.0,
        size["diameter_m"]["value"],
        size["height_m"]["value"],
        PRESSED_MOISTURE_FRAC,
        account["salt_frac"],
        salting.DIFFUSION_START_M2_S,
        account["water_salt_ratio"]["value"],
    )
    return salting.brine_exchange(load["mass_kg"], after)


def _book_load(
    account: "Tank", load: "TankLoad", basis: str, salt_kg: float, water_kg: float
) -> None:
    """Book what a load has taken and given in all, less what is booked already."""
    change(account, load["salt_kg"] - salt_kg, water_kg - load["water_kg"])
    load["basis"] = basis
    load["salt_kg"] = salt_kg
    load["water_kg"] = water_kg
