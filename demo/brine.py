"""The brine tank of the invented creamery, filled and drawn on by its makes.

Wheels go in soon after a brining step begins and come out when it ends; once,
between two makes, as much salt is added as the core then asks for.
"""

import random

from demo.recorded import HOUR_MS, MIN_MS, new_id
from server.config import read_rules
from server.core import desk as core

NAME = "Stone tank"
FILLED_KG = 1400.0
FILLED_FRAC = 0.2
TEMP_C = 12.8
CARRY_MS = 6 * MIN_MS  # from the table into the brine, or out; invented
SETTLED_MS = HOUR_MS  # after the last wheels are out, when salt is added; invented
# Of its mass a wheel loses about this much in brine, more water than it takes
# up salt; invented.
LOST_FRAC = 0.015
DAY_S = 86400


def kg(value):
    """Return the body of a mass as the app writes it: to 0.1 kg, as typed.

    Args:
        value: the mass [kg].
    """
    return {
        "mass_kg": round(value, 1),
        "typed": f"{round(value, 1):g}",
        "typed_unit": "kg",
    }


def times_ms(make, kind):
    """Return when the steps of a make first began or ended, by step [ms].

    Args:
        make: Recorder of the make.
        kind: "step_begun" or "step_ended".
    """
    found = {}
    for row in make.events:
        if row["kind"] == kind:
            found.setdefault(row["data"]["step"], row["at_ms"] + row["off_ms"])
    return found


def moulded(make, size):
    """Return how many wheels of a size a make has, and the mass of one [kg].

    Args:
        make: Recorder of the make.
        size: key of the size.
    """
    count, weighed = 0, []
    for row in make.events:
        data = row["data"]
        if row["kind"] == "wheels_moulded" and data["size"] == size:
            count += data["count"]
        if data.get("quantity") == "wheel_mass_kg" and data["place"] == size:
            weighed.append(data["value"])
    return count, weighed[0]


def loads(tank_id, make, phone, now_ms):
    """Return the entries of one make's wheels, in and out as far as it has come.

    Args:
        tank_id: id of the tank.
        make: Recorder of the make.
        phone: phone of who carries them.
        now_ms: now [ms].
    """
    begun, ended = times_ms(make, "step_begun"), times_ms(make, "step_ended")
    found = []
    for step in make.recipe["steps"]:
        in_ms = begun.get(step["key"], now_ms) + CARRY_MS
        if step.get("place") != "brine" or in_ms >= now_ms:
            continue
        count, wheel_kg = moulded(make, step["size"])
        data = {"load_make": make.make, "size": step["size"], "wheels": count}
        data.update(kg(count * wheel_kg), days=step["lasts"]["value"] / DAY_S)
        load = phone.record(tank_id, "tank_loaded", in_ms, data)
        found.append(load)
        out_ms = ended.get(step["key"], now_ms) + CARRY_MS
        if out_ms < now_ms:
            out = {"load": load["id"], **kg(count * wheel_kg * (1 - LOST_FRAC))}
            found.append(phone.record(tank_id, "tank_unloaded", out_ms, out))
    return found


def tank(makes, maker, helper, seed, now_ms):
    """Return the entries of the tank.

    Args:
        makes: Recorders, the oldest first; it has been in brine.
        maker: phone of who fills the tank and adds salt.
        helper: phone of who carries the wheels.
        seed: what its id is drawn from.
        now_ms: now [ms].
    """
    first_ms = makes[0].events[0]["at_ms"] + makes[0].events[0]["off_ms"]
    tank_id = new_id(random.Random(f"{seed} {NAME}"), first_ms)
    opened = {"name": NAME, "salt_frac": FILLED_FRAC, **kg(FILLED_KG)}
    warm = {"quantity": "brine_temp_c", "value": TEMP_C, "typed": f"{TEMP_C}"}
    found = [
        maker.record(tank_id, "tank_opened", first_ms - 20 * HOUR_MS, opened),
        maker.record(tank_id, "reading_taken", first_ms - 19 * HOUR_MS, warm),
    ]
    oldest = loads(tank_id, makes[0], helper, now_ms)
    out_ms = max(row["at_ms"] + row["off_ms"] for row in oldest) + SETTLED_MS
    found += oldest + salted(tank_id, makes[0], found + oldest, maker, out_ms)
    for make in makes[1:]:
        found += loads(tank_id, make, helper, now_ms)
    return found


def salted(tank_id, make, events, phone, at_ms):
    """Return the entry of the salt that the core asks for; none when it asks for none.

    Args:
        tank_id: id of the tank.
        make: Recorder of the make whose wheels it held.
        events: the tank's entries so far.
        phone: phone of who adds it.
        at_ms: when [ms].
    """
    asked = core.new()
    core.set_rules(asked, read_rules())
    core.take(asked, make.events + events)
    (told,) = core.tanks(asked, at_ms)
    wanted_kg = told["salt_to_add_kg"]
    if not wanted_kg or round(wanted_kg, 1) == 0:
        return []
    return [phone.record(tank_id, "salt_added", at_ms, kg(wanted_kg))]
