"""What a make knows of its brine, and what the creamery's own wheels teach."""

from ..log import run
from ..log.apart import ask
from ..log.opening import recipe_of, tank_opening
from ..log.readings import every, last, last_value
from ..make.practice import is_practice
from ..recipe.figures import scaled_figure
from .found import from_make, of_figure

MOST_WHEELS = 40


def _own_reading(quantity):
    """Look up a reading of this make, else the recipe's target for it."""

    def look_up(place):
        value = last_value(place["state"], quantity)
        if value is not None:
            return from_make(value)
        milk_l = place["context"]["milk"]["milk_l"]
        for target in place["step"].get("targets", []):
            if target["quantity"] == quantity:
                return of_figure(scaled_figure(target["figure"], milk_l))
        return None

    return look_up


def _time_s(place):
    lasts = place["step"].get("lasts")
    if place["topic"] != "brine" or not lasts:
        return None
    return of_figure(lasts)


def analysed_wheels(desk: dict) -> "list[dict]":
    """Return the wheels of all real makes whose salt was measured, newest last.

    Args:
        desk: Desk.

    Returns:
        List of {"salt_frac", "brined_s", "diameter_m", "height_m",
        "moisture_frac", "brine_frac"} as `brining.calibrated_diffusion` takes it.
    """
    found: "list[dict]" = []
    for stream in sorted(desk["makes"]):
        state = desk["makes"][stream]
        recipe = recipe_of(state)
        if recipe is None or is_practice(state):
            continue
        told = ask(desk, stream, "learnt", None, _wheels_of, state, recipe)
        found.extend(told or [])
    return found[-MOST_WHEELS:]


def _wheels_of(state, recipe):
    found = []
    for entry in every(state, "cheese_salt_frac"):
        wheel = _analysed(state, recipe, entry)
        if wheel is not None:
            found.append(wheel)
    return found


def _analysed(state, recipe, entry):
    size = entry["data"].get("place")
    mould = None
    for row in recipe.get("moulds", []):
        if row["size"] == size:
            mould = row
    brined = _brined(state, recipe, size)
    if mould is None or brined is None or entry["data"]["value"] <= 0.0:
        return None
    return {
        "salt_frac": entry["data"]["value"],
        "brined_s": brined["s"],
        "diameter_m": mould["diameter_m"]["value"],
        "height_m": mould["height_m"]["value"],
        "moisture_frac": 0.44,  # out of the press; practice, as the sum's default
        "brine_frac": brined["brine_frac"],
    }


def _brined(state, recipe, size):
    """Return how long and how strongly a size was brined in a make, or None."""
    for step in recipe["steps"]:
        if step.get("place") != "brine" or step.get("size") not in (None, size):
            continue
        begun = run.entries(state, "step_begun", step["key"])
        ended = run.entries(state, "step_ended", step["key"])
        brine_frac = last_value(state, "brine_salt_frac")
        if begun and ended and brine_frac and ended[0]["t_ms"] > begun[0]["t_ms"]:
            span_ms = ended[0]["t_ms"] - begun[0]["t_ms"]
            return {"s": span_ms / 1000.0, "brine_frac": brine_frac}
    return None


def _water_salt_ratio(place):
    """Return how much water the room's own wheels give for salt, where it was typed.

    A make's own figure goes first, then that of the tank its wheels went into, then
    the newest of any tank: one room, one milk.
    """
    own = last(place["state"], "water_salt_ratio")
    best = None if own is None else [2, own["t_ms"], own["data"]["value"]]
    for state in place["desk"]["makes"].values():
        entry = None
        if tank_opening(state) is not None:
            entry = last(state, "water_salt_ratio")
        if entry is not None:
            rank = 1 if _holds(state, place["state"]["make"]) else 0
            found = [rank, entry["t_ms"], entry["data"]["value"]]
            best = found if best is None else max(best, found)
    return None if best is None else from_make(best[2])


def _holds(tank, make):
    for entry in run.entries(tank, "tank_loaded"):
        if entry["data"]["load_make"] == make:
            return True
    return False


def _diffusion_m2_s(place):
    """Return what the creamery's own wheels show, else the recipe's start."""
    wheels = analysed_wheels(place["desk"])
    if wheels:
        # Loaded when there is something to learn from.
        from ..formulas.salt import brining, salting

        own = _water_salt_ratio(place)
        ratio = salting.WATER_SALT_RATIO if own is None else own["value"]
        try:
            told: "dict | None" = brining.calibrated_diffusion(wheels, ratio)
        except ValueError:
            told = None  # a wheel saltier than its brine: entered wrong
        if told is not None:
            # One wheel shows no spread: a third either way stays open.
            low = min(told["low"], told["value"] / 1.33)
            high = max(told["high"], told["value"] * 1.33)
            return from_make(told["value"], low, high)
    figure = (place["recipe"].get("figures") or {}).get("salt_diffusion_m2_s")
    return None if figure is None else of_figure(figure)


def _brine_kg(place):
    """Return the brine of the tank that holds wheels of this make, if one does."""
    from ..brine.tanks import tanks

    def of_one(stream, question, *args):
        now_ms = place["now_ms"]
        return ask(place["desk"], stream, "tank", now_ms, question, *args)

    for tank in tanks(place["desk"]["makes"], place["now_ms"], {}, of_one):
        for load in tank["loads"]:
            if load["make"] == place["state"]["make"] and load["out_ms"] is None:
                return from_make(tank["mass_kg"])
    return None


KNOWN = {
    "brine_salt_frac": _own_reading("brine_salt_frac"),
    "brine_temp_c": _own_reading("brine_temp_c"),
    "brine_kg": _brine_kg,
    "time_s": _time_s,
    "diffusion_m2_s": _diffusion_m2_s,
    "water_salt_ratio": _water_salt_ratio,
}
