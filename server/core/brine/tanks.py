"""The account of each brine tank: what is in it, how strong it should be.

A tank is a stream of its own: its id stands in the place of a make's. Its state
is folded like a make's, so corrections and strikes work alike.

The ledger runs through the standing entries in their order. Wheels take salt out
and give water back: by what they lost on the scale where both masses are known,
else by the model for the wheel's size, else not at all, and then it says so. A
measured strength is believed from then on; how far the ledger was off it is kept
beside it as drift. How much water goes with the salt is the published middle until
a room types its own; its newest figure counts for the whole account.
"""

from ..formulas.salt import brine_tank, salting
from ..formulas.usual import PRESSED_MOISTURE_FRAC
from ..log import run
from ..log.opening import recipe_of, tank_opening
from ..log.readings import every, last_value
from ..make.practice import is_practice
from ..numbers.problems import told
from ..numbers.refused import Refused

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

    from server.shapes.core.brine import Tank, TankLoad, WaterSaltRatio
    from server.shapes.core.recipe import RecipeMould
    from server.shapes.core.state import Entry, Rules, State
    from server.shapes.core.words import Keyed

RATIO = salting.WATER_SALT_RATIO
# Range of the abstract that the usual figure is from.
RATIO_LOW, RATIO_HIGH = 0.5, 2.42
# A wheel that gives up hardly more water than it takes salt loses nothing on the
# scale: what it lost divided by next to nothing is no measure. Our judgement.
RATIO_FOR_SCALE = 1.2
USUAL_TEMP_C = 12.5  # middle of the read working range, 10 to 15 °C
USUAL_SALT_FRAC = 0.20  # where the read working range begins
MOST_LOST_FRAC = 1.0 / 6.0
KINDS = (
    "salt_added",
    "water_added_to_tank",
    "tank_loaded",
    "tank_unloaded",
)


def _plainly(stream: str, question: "Callable[..., Any]", *args: "Any") -> "Any":
    return question(*args)


def tanks(
    makes: "dict[str, State]",
    now_ms: int,
    rules: "Rules",
    of_one: "Callable[..., Any]" = _plainly,
) -> "list[Tank]":
    """Return the account of every tank, by name.

    Args:
        makes: {stream id: State}, makes and tanks alike.
        now_ms: now, by the server's clock [ms].
        rules: {rule id: the rule}; "brine" has the working limits.
        of_one: asks a question of one tank, see `apart.ask`; without it the fault of
            one is the fault of all.

    Returns:
        List of {"id", "name", "opened_ms", "mass_kg", "salt_kg", "salt_frac",
        "temp_c", "measured" {"value", "at_ms", "id", "typed", "typed_unit"} as it
        was read, or None, "drift_frac" of that measurement against the ledger or
        None, "water_salt_ratio" {"value", "low", "high", "from", "status"},
        "loads" [Load], "wanted_frac", "salt_to_add_kg" or "water_to_add_kg",
        "outside" [problem], "notes" [{"key"}]}. Load is {"id", "make", "size",
        "wheels", "mass_kg", "in_ms", "out_ms", "due_ms", "out_kg", "basis",
        "salt_kg" taken up and "water_kg" given back so far}.
    """
    found = []
    for stream in sorted(makes):
        opened = tank_opening(makes[stream])
        if opened is not None:
            tank = of_one(stream, _tank, makes, stream, opened, now_ms, rules)
            found.extend([] if tank is None else [tank])
    return sorted(found, key=lambda row: (row["name"], row["id"]))


def mass_kg(
    amount: float, unit: str, salt_frac: float, temp_c: "float | None"
) -> float:
    """Return the mass of so much brine, or of water, told by mass or by volume.

    Args:
        amount: as it was read, in `unit`.
        unit: of a mass or a volume, see `units.table`.
        salt_frac: strength, mass fraction of the brine [0..1]; 0 for water.
        temp_c: its temperature [°C]; None for the usual one of a cellar.

    Returns:
        Mass [kg].

    Raises:
        ValueError: a unit of neither kind, or a strength that cannot be.

    Source: volume times density.
    """
    # Loaded when first asked: the app starts without it.
    from ..units.table import UNITS, convert

    if UNITS.get(unit, {}).get("dimension") == "mass":
        return convert(amount, unit, "kg")
    temp = USUAL_TEMP_C if temp_c is None else temp_c
    return brine_tank.tank_kg(convert(amount, unit, "L"), salt_frac, temp)


def second_look(in_kg: float, out_kg: float) -> "dict[str, Any] | None":
    """Return what makes a mass out of the tank unlikely, or None.

    Wheels lose water and take up less salt: they rarely weigh more than before, and
    a loss of a sixth is more than any salting. Our judgement.

    Args:
        in_kg: mass of the wheels when they were put in [kg].
        out_kg: mass of the same wheels taken out [kg].

    Returns:
        {"key": "unlikely_low" or "unlikely_high", "limit"} or None.
    """
    least_kg = in_kg * (1.0 - MOST_LOST_FRAC)
    if out_kg > in_kg:
        return {"key": "unlikely_high", "limit": in_kg}
    if out_kg < least_kg:
        return {"key": "unlikely_low", "limit": least_kg}
    return None


def _tank(
    makes: "dict[str, State]", stream: str, opened: "Entry", now_ms: int, rules: "Rules"
) -> "Tank":
    state = makes[stream]
    account = {
        "id": stream,
        "name": opened["data"]["name"],
        "opened_ms": opened["t_ms"],
        "mass_kg": opened["data"]["mass_kg"],
        "salt_kg": opened["data"]["mass_kg"] * opened["data"]["salt_frac"],
        "salt_frac": opened["data"]["salt_frac"],
        "temp_c": _temp_c(state),
        "measured": None,
        "drift_frac": None,
        "water_salt_ratio": _ratio(state),
        "loads": [],
        "wanted_frac": USUAL_SALT_FRAC,
        "salt_to_add_kg": None,
        "water_to_add_kg": None,
        "outside": [],
        "notes": [],
    }
    for entry in _in_order(state, makes):
        if opened["t_ms"] <= entry["t_ms"] <= now_ms:
            _book(account, makes, entry)
    _book_inside(account, makes, now_ms)
    _top_up(account, makes, rules)
    return account


def _practised(makes: "dict[str, State]", state: "State") -> "list[str]":
    """Return the ids of loads that a practice make put in: no wheel is there."""
    return [
        entry["id"]
        for entry in run.entries(state, "tank_loaded")
        if is_practice(makes.get(entry["data"]["load_make"]))
    ]


def _in_order(state: "State", makes: "dict[str, State]") -> "list[dict[str, Any]]":
    rows = []
    practised = _practised(makes, state)
    for kind in KINDS:
        for entry in run.entries(state, kind):
            if entry["id"] in practised or entry["data"].get("load") in practised:
                continue
            rows.append((entry["t_ms"], entry["device"], entry["seq"], kind, entry))
    for entry in every(state, "brine_salt_frac"):
        rows.append((entry["t_ms"], entry["device"], entry["seq"], "measured", entry))
    rows.sort(key=lambda row: row[:4])
    found = []
    for row in rows:
        told = dict(row[4])
        told["kind"] = row[3]
        found.append(told)
    return found


def _temp_c(state: "State") -> "float | None":
    return last_value(state, "brine_temp_c")


def _ratio(state: "State") -> "WaterSaltRatio":
    own = last_value(state, "water_salt_ratio")
    return {
        "value": RATIO if own is None else own,
        "low": RATIO_LOW,
        "high": RATIO_HIGH,
        "from": "default" if own is None else "typed",
        "status": "abstract" if own is None else "measured",
    }


def _book(account: "Tank", makes: "dict[str, State]", entry: "dict[str, Any]") -> None:
    data = entry["data"]
    if entry["kind"] == "salt_added":
        _change(account, data["mass_kg"], 0.0)
    elif entry["kind"] == "water_added_to_tank":
        _change(account, 0.0, data["mass_kg"])
    elif entry["kind"] == "tank_loaded":
        account["loads"].append(_load(entry))
    elif entry["kind"] == "tank_unloaded":
        _unload(account, makes, entry)
    else:
        _measure(account, makes, entry)


def _measure(account: "Tank", makes: "dict[str, Any]", entry: "dict[str, Any]") -> None:
    # What the wheels inside have taken by now is in what was measured.
    _book_inside(account, makes, entry["t_ms"])
    measured = entry["data"]["value"]
    account["drift_frac"] = measured - account["salt_frac"]
    account["measured"] = {
        "id": entry["id"],
        "at_ms": entry["t_ms"],
        "value": measured,
        "typed": entry["data"].get("typed"),
        "typed_unit": entry["data"].get("typed_unit"),
    }
    account["salt_frac"] = measured
    account["salt_kg"] = measured * account["mass_kg"]


def _load(entry: "dict[str, Any]") -> "TankLoad":
    data = entry["data"]
    days = data.get("days")
    return {
        "id": entry["id"],
        "make": data["load_make"],
        "size": data["size"],
        "wheels": data["wheels"],
        "mass_kg": data["mass_kg"],
        "in_ms": entry["t_ms"],
        "due_ms": None if days is None else entry["t_ms"] + int(days * 86400000),
        "out_ms": None,
        "out_kg": None,
        "basis": None,
        "salt_kg": 0.0,
        "water_kg": 0.0,
    }


def _unload(
    account: "Tank", makes: "dict[str, State]", entry: "dict[str, Any]"
) -> None:
    for load in account["loads"]:
        if load["id"] != entry["data"]["load"] or load["out_ms"] is not None:
            continue
        load["out_ms"] = entry["t_ms"]
        load["out_kg"] = entry["data"]["mass_kg"]
        lost_kg = load["mass_kg"] - load["out_kg"]
        ratio = account["water_salt_ratio"]["value"]
        if lost_kg > 0 and ratio >= RATIO_FOR_SCALE:
            # Salt in, so many times its mass of water out: the loss is the rest.
            salt_kg = lost_kg / (ratio - 1.0)
            _book_load(account, load, "tank.weighed", salt_kg, ratio * salt_kg)
        else:
            _by_model(account, makes, load, entry["t_ms"])
        return
    account["notes"].append({"key": "note.tank.unknown_load", "id": entry["id"]})


def _book_inside(account: "Tank", makes: "dict[str, State]", at_ms: int) -> None:
    """Count what the wheels still inside have taken up to an instant."""
    for load in account["loads"]:
        if load["out_ms"] is None:
            _by_model(account, makes, load, at_ms)


def _by_model(
    account: "Tank", makes: "dict[str, State]", load: "TankLoad", at_ms: int
) -> None:
    size = _size(makes, load)
    if size is None or not 0.0 < account["salt_frac"] <= 0.27:
        load["basis"] = "tank.not_known"
        return
    after = salting.wheel_salting(
        (at_ms - load["in_ms"]) / 1000.0,
        size["diameter_m"]["value"],
        size["height_m"]["value"],
        PRESSED_MOISTURE_FRAC,
        account["salt_frac"],
        salting.DIFFUSION_START_M2_S,
        account["water_salt_ratio"]["value"],
    )
    given = salting.brine_exchange(load["mass_kg"], after)
    _book_load(account, load, "tank.model", given["salt_out_kg"], given["water_in_kg"])


def _book_load(
    account: "Tank", load: "TankLoad", basis: str, salt_kg: float, water_kg: float
) -> None:
    """Book what a load has taken and given in all, less what is booked already."""
    _change(account, load["salt_kg"] - salt_kg, water_kg - load["water_kg"])
    load["basis"] = basis
    load["salt_kg"] = salt_kg
    load["water_kg"] = water_kg


def _size(makes: "dict[str, State]", load: "TankLoad") -> "RecipeMould | None":
    recipe = recipe_of(makes.get(load["make"]))
    for mould in recipe.get("moulds", []) if recipe else []:
        if mould["size"] == load["size"]:
            return mould
    return None


def _change(account: "Tank", salt_kg: float, water_kg: float) -> None:
    try:
        after = brine_tank.ledger_step(
            account["mass_kg"],
            account["salt_frac"],
            max(0.0, -salt_kg),
            0.0,
            max(0.0, salt_kg),
            water_kg,
        )
    except Refused as refusal:
        # A load that takes more salt than there is: entered wrong, so it is told
        # and the account goes on from before it.
        account["notes"].append(_cannot_be(refusal))
        return
    account["mass_kg"] = after["brine_kg"]
    account["salt_frac"] = after["salt_frac"]
    account["salt_kg"] = after["salt_kg"]


def _cannot_be(refusal: Refused) -> "Keyed":
    return {"key": "note.tank.cannot_be", "refused": told(refusal)}


def _wanted(account: "Tank", makes: "dict[str, State]") -> float:
    """Return the strength that the recipe of the newest load asks for."""
    for load in reversed(account["loads"]):
        recipe = recipe_of(makes.get(load["make"]))
        for step in recipe["steps"] if recipe else []:
            for target in step.get("targets", []):
                if target["quantity"] == "brine_salt_frac":
                    return target["figure"]["value"]
    return USUAL_SALT_FRAC


def _top_up(account: "Tank", makes: "dict[str, State]", rules: "Rules") -> None:
    account["wanted_frac"] = _wanted(account, makes)
    temp_c = USUAL_TEMP_C if account["temp_c"] is None else account["temp_c"]
    kg, now, wanted = account["mass_kg"], account["salt_frac"], account["wanted_frac"]
    try:
        if now <= wanted:
            account["salt_to_add_kg"] = brine_tank.top_up_kg(kg, now, wanted, temp_c)
        else:
            account["water_to_add_kg"] = brine_tank.thin_down_kg(kg, now, wanted)
        rule = rules.get("brine")
        if rule is not None:
            account["outside"] = brine_tank.check_brine(now, temp_c, rule["limits"])
    except Refused as refusal:
        account["notes"].append(_cannot_be(refusal))
