"""What a make knows of its brine, and what the creamery's own wheels teach."""

from ...log import run
from ...log.apart import ask
from ...log.opening import ending, tank_opening
from ...log.readings import last, last_value, within
from ..origins import from_make, of_figure
from ..vat.milk import read_last
from ..vat.set import recipe_figure
from ..wanted import wanted
from .analysed import analysed_wheels

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

    from server.shapes.core.state import KnownValue, Scene, State

# One wheel shows no spread: a third either way stays open.
LEAST_SPREAD = 1.33


def _read_or_wanted(
    quantity: str,
) -> "Callable[[Scene], KnownValue | None]":
    """Look up a reading of this make, else the recipe's target for it."""

    def look_up(scene: "Scene") -> "KnownValue | None":
        value = last_value(scene["state"], quantity)
        if value is not None:
            return from_make(value)
        figure = wanted(scene, "target/" + quantity)
        return None if figure is None else of_figure(figure)

    return look_up


def _brined_s(scene: "Scene") -> "KnownValue | None":
    """Return how long this step leaves the wheels in the brine."""
    if scene["step"].get("place") != "brine":
        return None
    lasts = wanted(scene, "lasts")
    return None if lasts is None else of_figure(lasts)


def _water_salt_ratio(scene: "Scene") -> "KnownValue | None":
    """Return how much water the room's own wheels give for salt, where it was typed.

    A make's own figure goes first, then that of the tank its wheels went into, then
    the newest of any tank: one room, one milk.
    """
    own = last(scene["state"], "water_salt_ratio")
    typed = [] if own is None else [(2, own["t_ms"], own["data"]["value"])]
    for tank in scene["desk"]["makes"].values():
        entry = None
        if tank_opening(tank) is not None:
            read = within(tank, "water_salt_ratio", None, _over_ms(scene))
            entry = read[-1] if read else None
        if entry is not None:
            rank = 1 if _took_wheels(tank, scene["state"]["make"]) else 0
            typed.append((rank, entry["t_ms"], entry["data"]["value"]))
    return from_make(max(typed)[2]) if typed else None


def _over_ms(scene: "Scene") -> "int | None":
    """Return when the make was over [ms]: what is learnt later changes it no more."""
    over = ending(scene["state"])
    return None if over is None else over["t_ms"]


def _took_wheels(tank: "State", make: str) -> bool:
    loads = run.entries(tank, "tank_loaded")
    return any(entry["data"]["load_make"] == make for entry in loads)


_diffusion_to_begin_with = recipe_figure("salt_diffusion_m2_s")


def _diffusion_m2_s(scene: "Scene") -> "KnownValue | None":
    """Return what the creamery's own wheels show, else the recipe's start."""
    taught = _taught_diffusion(scene)
    if taught is None:
        return _diffusion_to_begin_with(scene)
    low = min(taught["low"], taught["value"] / LEAST_SPREAD)
    high = max(taught["high"], taught["value"] * LEAST_SPREAD)
    return from_make(taught["value"], low, high)


def _taught_diffusion(scene: "Scene") -> "dict[str, Any] | None":
    wheels = analysed_wheels(scene["desk"], _over_ms(scene))
    if not wheels:
        return None
    # Loaded when there is something to learn from.
    from ...formulas.salt import brining, salting

    own = _water_salt_ratio(scene)
    ratio = salting.WATER_SALT_RATIO if own is None else own["value"]
    try:
        return brining.calibrated_diffusion(wheels, ratio)
    except ValueError:
        return None  # a wheel saltier than its brine: entered wrong


def _brine_kg(scene: "Scene") -> "KnownValue | None":
    """Return the brine of the tank that holds wheels of this make, if one does."""
    from ...brine.tanks import tanks

    desk = scene["desk"]
    now_ms = scene["now_ms"]

    def of_one(stream: str, question: "Callable[..., Any]", *args: "Any") -> "Any":
        return ask(desk, stream, "tank", now_ms, question, *args)

    for tank in tanks(desk["makes"], now_ms, of_one):
        for load in tank["loads"]:
            if load["make"] == scene["state"]["make"] and load["out_ms"] is None:
                return from_make(tank["mass_kg"])
    return None


KNOWN = {
    "brine_salt_frac": _read_or_wanted("brine_salt_frac"),
    "brine_temp_c": _read_or_wanted("brine_temp_c"),
    "brine_ph": read_last("brine_ph"),
    "brine_kg": _brine_kg,
    "brined_s": _brined_s,
    "diffusion_m2_s": _diffusion_m2_s,
    "wanted_salt_frac": recipe_figure("salt_wanted_frac"),
    "water_salt_ratio": _water_salt_ratio,
}
