"""Fill a folder with an invented creamery: people, phones, three makes, a tank.

One make is in the middle of its day, one lies in brine, one is closed and in
store; the brine tank has held the wheels of the last two. All of it is
invented, and all of it went through the same door as a phone's entries do.

Use: python demo/seed.py --data DIR
"""

import argparse
import hashlib
import json
import random
import secrets
import sys
from dataclasses import dataclass, replace
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from demo import brine  # noqa: E402
from demo.recorded import (  # noqa: E402
    HOUR_MS,
    MIN_MS,
    Crew,
    Phone,
    Recorder,
    new_id,
    weighing,
    wheels,
)
from server import seal, store, sync  # noqa: E402
from server.app import create_app  # noqa: E402
from server.config import RECIPES_DIR, from_environment, real_now_ms  # noqa: E402
from server.core.log.kinds.columns import PERSON  # noqa: E402
from server.core.log.rights.proof import proof_for  # noqa: E402
from server.store.people import (  # noqa: E402
    StoredDevice,
    StoredPerson,
    save_device,
    save_person,
)
from server.store.pins import save_pin  # noqa: E402

RECIPE = RECIPES_DIR / "washed-wheel.json"
# Signs what this maker signed; told in demo/README.md, so that it can be tried.
MAKER_PIN = "40718263"
SEED = 2026  # the same makes on every run, so that a fault can be seen again
DAY_MS = 24 * HOUR_MS
BATCH = 200

OWNER = StoredPerson("quernbeck-owner", "Asta Quern", "owner", True)
MAKER = StoredPerson("quernbeck-maker", "Maren Okello", "maker", True)
HELPER = StoredPerson("quernbeck-helper-1", "Tobi Farrant", "helper", True)
SECOND_HELPER = StoredPerson("quernbeck-helper-2", "Iris Vance", "helper", True)
VIEWER = StoredPerson("quernbeck-viewer", "Buyer in town", "viewer", True)
PEOPLE = (OWNER, MAKER, HELPER, SECOND_HELPER, VIEWER)


# Clocks of phones in a creamery are seldom all right.
OFFSETS_MS = {MAKER.id: 400, HELPER.id: -1800, SECOND_HELPER.id: 210_000}
TRIAL_MS = 1_700_000_000_000

# What the invented creamery has: value in the row's own unit, and as it was typed.
HAS = {
    "heating": ("jacket", None),
    "plant_name": ("Quernbeck Creamery", None),
    "recorder_number": ("R-2", None),
    "gap_max_s": (360.0, ["6", "min"]),
    "strength_kind": ("imcu", None),
    "strength_imcu_per_ml": (200.0, ["200", "IMCU/mL"]),
    "form": ("solution", None),
    "solution_frac": (0.33, ["33", "%"]),
    "solution_density_kg_l": (1.31, ["1.31", "kg/L"]),
    "bore_m": (0.08, ["80", "mm"]),
    "lever_ratio": (2.0, ["2", ""]),
    "side_by_side": (1, ["1", ""]),
    "length_m": (1.2, ["120", "cm"]),
    "width_m": (0.8, ["80", "cm"]),
    "volume_l": (900.0, ["900", "L"]),
    "method": ("density", None),
}
EQUIPMENT = {
    **{key: value for key, (value, _) in HAS.items()},
    "gap_agreed_with": "L. Brandt, district inspector",
    "typed": {key: typed for key, (_, typed) in HAS.items() if typed},
}
# What this crew reads although no button asks for it: step, quantity, figure.
READ_BESIDE = (
    ("receive", "fat_frac", 0.0412, "4.12", "%"),
    ("heat", "jacket_temp_c", 78.0, "78.0", "C"),
    ("cool", "jacket_temp_c", 9.0, "9.0", "C"),
)
# Of its mass a wheel in store gives off about this much a day; invented.
LOSS_A_DAY_FRAC = 0.0012
WEIGHED_DAYS = (1, 8, 15, 22)


# Closed before the days of curing are over, so its milk was pasteurised.
BY_RULE = "pasteurised"


@dataclass(frozen=True)
class Plan:
    """One make of the creamery, and how far it has come.

    Args:
        name: its name.
        batch: its batch number.
        milk_l: milk in the vat [L].
        vat: name of the vat.
        step: step that it has reached.
        past_ms: how long ago that step began [ms].
        treatment: how its milk is treated; what is usual here unless it says.
    """

    name: str
    batch: str
    milk_l: float
    vat: str
    step: str
    past_ms: int
    treatment: str = "heat_treated"


PLANS = (
    Plan("Harvest make", "QB-240", 1150.0, "Long vat", "store", 32 * DAY_MS, BY_RULE),
    Plan("Frost make", "QB-259", 860.0, "Round vat", "brine_large", 28 * HOUR_MS),
    Plan("Evening make", "QB-261", 1150.0, "Long vat", "wash_1", 6 * MIN_MS),
)


def phones(chance=None):
    """Return the creamery's phones by the person who carries them.

    Args:
        chance: where their ids come from; None for the same ones each time.
    """
    chance = chance or random.Random(SEED)
    return {
        person: Phone(new_id(chance, TRIAL_MS), person, chance, off_ms)
        for person, off_ms in OFFSETS_MS.items()
    }


def begin(recipe, plan, by_person, start_ms):
    """Return a make just opened, the same one each time but for its instant.

    Args:
        recipe: the recipe that it follows.
        plan: the make.
        by_person: answer of `phones`.
        start_ms: when it is opened [ms].
    """
    chance = random.Random(f"{SEED} {plan.batch}")
    for phone in by_person.values():
        phone.chance = chance
    helper, second = by_person[HELPER.id], by_person[SECOND_HELPER.id]
    places = {"table": helper, "press": helper}
    places.update(tank=second, brine=second, store=second)
    return Recorder(
        recipe,
        Crew(by_person[MAKER.id], places),
        chance,
        start_ms,
        plan.name,
        plan.batch,
        plan.milk_l,
        wheels(recipe, plan.milk_l),
        plan.vat,
        plan.treatment,
        EQUIPMENT,
    )


def reached(recipe, plan, by_person, now_ms):
    """Return a make that has come as far as its plan says.

    Args:
        recipe: the recipe that it follows.
        plan: the make.
        by_person: answer of `phones`.
        now_ms: now [ms].
    """
    # How long it takes until then shows once it was made.
    make = begin(recipe, plan, by_person, TRIAL_MS)
    run(make, TRIAL_MS + 400 * DAY_MS, plan.step)
    come_ms = make.now_ms + plan.past_ms
    run(make, come_ms)
    make.move(now_ms - come_ms)
    return make


def run(make, until_ms, stop_at=None):
    """Let a make go on, its milk's fat read before it is heated.

    Args:
        make: the make.
        until_ms: nothing is written from then on [ms].
        stop_at: also stop once this step has begun; None for none.
    """
    make.run(until_ms, stop_at="to_vat")
    read_beside(make)  # the fat decides what the hold must reach
    make.run(until_ms, stop_at=stop_at)


def write_between(make, phone, kind, at_ms, data, ref=None):
    """Write an entry at an earlier instant, as a person who comes back to it.

    Args:
        make: the make.
        phone: who writes it.
        kind: its kind.
        at_ms: when [ms].
        data: its body.
        ref: id of the entry that it is about.
    """
    now_ms, make.now_ms = make.now_ms, at_ms
    make.record(phone, kind, data, ref)
    make.now_ms = now_ms


def add_slips(make):
    """Add what the one large button never asks for: a note and a correction.

    Args:
        make: the make.
    """
    maker = make.crew.maker
    ph = next(row for row in make.events if row["data"].get("quantity") == "ph")
    at_ms = ph["at_ms"] + ph["off_ms"] + 3 * MIN_MS
    value = round(ph["data"]["value"] - 0.02, 2)
    data = {"set": {"value": value}, "why": "Probe rinsed and read again."}
    write_between(make, maker, "entry_corrected", at_ms, data, ph["id"])
    note = {"text": "Evening and morning milk, filter clean.", "step": "to_vat"}
    begun = next(row for row in make.events if row["data"].get("step") == "to_vat")
    write_between(make, maker, "note_added", begun["at_ms"] + 5 * MIN_MS, note)


def read_beside(make):
    """Add the readings that a careful crew takes unasked, two minutes into a step.

    Args:
        make: the make.
    """
    for step, quantity, value, typed, unit in READ_BESIDE:
        for row in list(make.events):
            if row["kind"] == "step_begun" and row["data"]["step"] == step:
                if has_read(make, step, quantity):
                    continue
                data = {"quantity": quantity, "value": value, "step": step}
                data.update(typed=typed, typed_unit=unit)
                at_ms = row["at_ms"] + row["off_ms"] + 2 * MIN_MS
                if at_ms < make.now_ms:
                    phone = make.crew.maker
                    write_between(make, phone, "reading_taken", at_ms, data)


def has_read(make, step, quantity):
    """Tell whether a quantity was read in a step.

    Args:
        make: the make.
        step: key of the step.
        quantity: the quantity.
    """
    return any(
        row["data"].get("quantity") == quantity and row["data"].get("step") == step
        for row in make.events
    )


def weigh_in_store(make):
    """Weigh a marked wheel of each size week by week, as far as the store has come.

    Args:
        make: the make.
    """
    begun = [
        row
        for row in make.events
        if row["kind"] == "step_begun" and row["data"]["step"] == "store"
    ]
    if not begun:
        return
    begun_ms, now_ms = begun[0]["at_ms"] + begun[0]["off_ms"], make.now_ms
    phone = make.crew.at("store")
    for mould in make.recipe["moulds"]:
        first_kg = next(
            row["data"]["value"]
            for row in make.events
            if row["data"].get("quantity") == "wheel_mass_kg"
            and row["data"]["place"] == mould["size"]
        )
        for days in WEIGHED_DAYS:
            at_ms = begun_ms + days * DAY_MS
            if at_ms < now_ms:
                value = first_kg * (1 - LOSS_A_DAY_FRAC * days)
                data = weighing(mould, value, "store")
                write_between(make, phone, "reading_taken", at_ms, data)


def begin_twice(make, step):
    """Let a second phone begin a step that was begun, as happens without network.

    Args:
        make: the make.
        step: key of the step.
    """
    first = next(
        row
        for row in make.events
        if row["kind"] == "step_begun" and row["data"]["step"] == step
    )
    phone = make.crew.at("store")
    at_ms = first["at_ms"] + first["off_ms"] + 40_000
    write_between(make, phone, "step_begun", at_ms, {"step": step})


def close(make):
    """Sign a finished make off and close it.

    Args:
        make: the make.
    """
    maker = make.crew.maker
    statement = "Record read through; the wheels are in store."
    make.record(maker, "signed_off", {"statement": statement})
    make.record(maker, "make_closed", {})


def all_makes(recipe, now_ms):
    """Return the phones and the three makes that they hold.

    Args:
        recipe: the recipe that the makes follow.
        now_ms: now [ms].

    Returns:
        ({person id: Phone}, list of Recorder).
    """
    by_person = phones()
    found = [reached(recipe, plan, by_person, now_ms) for plan in PLANS]
    for make in found:
        add_slips(make)
        read_beside(make)
        weigh_in_store(make)
    close(found[0])
    begin_twice(found[-1], "drain_1")
    return by_person, found


def brine_tank(by_person, makes, now_ms):
    """Return the entries of the creamery's brine tank.

    Args:
        by_person: answer of `phones`.
        makes: Recorders, the oldest first.
        now_ms: now [ms].
    """
    maker, helper = by_person[MAKER.id], by_person[SECOND_HELPER.id]
    return brine.tank(makes, maker, helper, SEED, now_ms)


def pair(by_person, now_ms, words="Phone of"):
    """Write down the people and their phones, whose tokens nobody knows.

    Args:
        by_person: answer of `phones`.
        now_ms: now [ms].
        words: what the phones are called, before the person's name.
    """
    for person in PEOPLE:
        save_person(person, now_ms)
    for person, phone in by_person.items():
        token = hashlib.sha256(secrets.token_bytes(32)).hexdigest()
        name = f"{words} {next(row.name for row in PEOPLE if row.id == person)}"
        device = StoredDevice(phone.device, name, person, now_ms, now_ms, None)
        save_device(device, token)


def proved(events, sealed):
    """Return events, those that ask for it signed with the key of the maker's PIN.

    Args:
        events: the events.
        sealed: the key.
    """
    return [
        event | {"proof": _proof(event, sealed)}
        if proof_for(event["kind"]) == PERSON
        else event
        for event in events
    ]


def _proof(event, sealed):
    sig = seal.sign(sealed, MAKER_PIN, seal.act_text(event))
    return {"by": "pin", "key": sealed.key, "sig": sig}


def send(events, by_person):
    """Push events as their phones would have, when they would have.

    Args:
        events: the events, in any order.
        by_person: answer of `phones`.

    Raises:
        ValueError: one was not stored.
    """
    events = sorted(events, key=lambda row: row["at_ms"] + row["off_ms"])
    while events:
        person = events[0]["person"]
        count = next(
            (i for i, row in enumerate(events) if row["person"] != person), len(events)
        )
        batch, events = events[: min(count, BATCH)], events[min(count, BATCH) :]
        sender = sync.Sender(by_person[person].device, person, False)
        at_ms = batch[-1]["at_ms"] + batch[-1]["off_ms"]
        for result in sync.push(batch, None, sender, at_ms).results:
            if result["st"] != "stored":
                raise ValueError(f"not stored: {result}")


def seed(data_dir, now_ms=None):
    """Fill a folder with the creamery.

    Args:
        data_dir: the folder; its database must hold no events yet.
        now_ms: the instant that its day has come to [ms]; None for now.

    Raises:
        ValueError: it already holds some.
    """
    app = create_app(replace(from_environment(), data_dir=data_dir))
    with app.app_context():
        require_empty(data_dir)
        now_ms = real_now_ms() if now_ms is None else now_ms
        recipe = json.loads(RECIPE.read_text("utf-8"))
        by_person, found = all_makes(recipe, now_ms)
        fill(by_person, found, brine_tank(by_person, found, now_ms), now_ms)


def require_empty(data_dir):
    """Refuse a folder that holds makes.

    Args:
        data_dir: the folder whose app is asked.

    Raises:
        ValueError: it holds some.
    """
    if store.count_events():
        raise ValueError(f"{data_dir} already holds makes; seed an empty folder")


def fill(by_person, found, tank, now_ms):
    """Write people, phones and makes into the store of the app that is asked.

    Args:
        by_person: first answer of `all_makes`.
        found: second answer of `all_makes`.
        tank: answer of `brine_tank`.
        now_ms: now [ms].
    """
    write([event for make in found for event in make.events] + tank, by_person, now_ms)
    print(f"Quernbeck Creamery: {len(found)} makes, {store.head_n()} entries.")


def write(entries, by_person, now_ms):
    """Write people, phones, the maker's PIN and all entries, each signed that must be.

    Args:
        entries: the events.
        by_person: answer of `phones`.
        now_ms: now [ms].
    """
    with store.writing():
        pair(by_person, now_ms)
        sealed = seal.new_sealed(MAKER.id, MAKER_PIN)
        save_pin(sealed, by_person[MAKER.id].device, now_ms)
        send(proved(entries, sealed), by_person)


def main():
    """Read the command line and fill the folder."""
    parser = argparse.ArgumentParser(description=__doc__.split("\n\n")[0])
    parser.add_argument("--data", type=Path, required=True, metavar="DIR")
    try:
        seed(parser.parse_args().data)
    except ValueError as problem:
        sys.exit(str(problem))


if __name__ == "__main__":
    main()
