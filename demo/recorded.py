"""Play a make of the demo creamery by pressing the one large button in time.

Nothing here knows a recipe. The core says what each step wants next, and an
invented crew does it a little later, with invented figures near the recipe's
own. So a changed recipe changes the demo, and a make that nobody could finish
by following the screen would be seen here first.
"""

import math
import random
import uuid
from dataclasses import dataclass, field

from server.config import read_rules
from server.core import desk as core
from server.core.units.quantities import QUANTITIES

MIN_MS = 60_000
HOUR_MS = 60 * MIN_MS
TAP_MS = 20_000  # between two taps of one crew member; invented

# Invented figures for what the recipe sets no target for.
USUAL = {
    "milk_age_h": 14.0,
    "fat_frac": 0.0412,
    "snf_frac": 0.0886,
    "ph": 6.6,
    "titratable_acidity_frac": 0.0015,
    "room_temp_c": 19.5,
    "milk_temp_c": 4.2,
    "air_space_temp_c": 66.4,
    "jacket_temp_c": 78.0,
    "indicator_temp_c": 64.1,
    "recorder_temp_c": 63.9,
    "curd_temp_c": 32.0,
    "water_temp_c": 18.0,
    "whey_drained_l": 380.0,
    "water_added_l": 290.0,
    "bed_load_kg": 60.0,
    "press_gauge_kpa": 120.0,
    "brine_temp_c": 12.8,
    "brine_salt_frac": 0.205,
    "brine_ph": 5.15,
    "store_temp_c": 12.5,
    "store_humidity_frac": 0.86,
    "drug_test": "negative",
}


@dataclass
class Phone:
    """One paired phone, which numbers its own entries.

    Args:
        device: its id.
        person: id of who carries it.
        chance: where its ids come from, so that a recording can be made again.
        off_ms: server time minus this phone's time [ms].
    """

    device: str
    person: str
    chance: random.Random
    off_ms: int = 0
    seq: int = 0
    boot: str = ""

    def record(self, make, kind, at_ms, data, ref=None):
        """Return an event as this phone would write it.

        Args:
            make: id of the make.
            kind: a key of the core's KINDS.
            at_ms: the server's time [ms].
            data: body of the kind.
            ref: id of the event that it is about.
        """
        self.boot = self.boot or new_id(self.chance, at_ms)
        self.seq += 1
        own_ms = at_ms - self.off_ms
        return {
            "id": new_id(self.chance, own_ms),
            "make": make,
            "device": self.device,
            "seq": self.seq,
            "person": self.person,
            "at_ms": own_ms,
            "entered_ms": own_ms,
            "tz_min": 0,
            "mono_ms": float(self.seq * 1000),
            "boot": self.boot,
            "off_ms": self.off_ms,
            "off_q_ms": 40.0,
            "kind": kind,
            "v": 1,
            "ref": ref,
            "data": data,
        }


def new_id(chance, at_ms):
    """Return a UUID of version 7 (RFC 9562).

    Args:
        chance: source of its random bits.
        at_ms: instant in its first 48 bits [ms].
    """
    value = (at_ms << 80) | chance.getrandbits(80)
    value = value & ~(0xF << 76) | (0x7 << 76)
    value = value & ~(0x3 << 62) | (0x2 << 62)
    return str(uuid.UUID(int=value))


def new_desk():
    """Return a desk of the core that holds the rules and nothing else."""
    desk = core.new()
    core.set_rules(desk, read_rules())
    return desk


@dataclass
class Crew:
    """Who does what: one at the vat, the others elsewhere.

    Args:
        maker: phone of the maker.
        helpers: phones of the helpers, by the places they look after.
    """

    maker: Phone
    helpers: dict = field(default_factory=dict)

    def at(self, place):
        """Return the phone of whoever looks after a place.

        Args:
            place: a place of the recipe.
        """
        return self.helpers.get(place, self.maker)


class Recorder:
    """One make, from its opening on.

    Args:
        recipe: the recipe that it follows.
        crew: who makes it.
        chance: where the invented differences come from.
        start_ms: when it is opened [ms].
        name: its name.
        batch: its batch number.
        milk_l: milk in the vat [L].
        moulds: list of {"size", "count"}.
        vat: name of the vat.
        treatment: how the milk is treated.
        equipment: what the creamery has, as the core's table names it, or None.
    """

    def __init__(
        self,
        recipe,
        crew,
        chance,
        start_ms,
        name,
        batch,
        milk_l,
        moulds,
        vat,
        treatment,
        equipment=None,
    ):
        self.recipe = recipe
        self.crew = crew
        self.chance = chance
        self.milk_l = milk_l
        self.make = new_id(chance, start_ms)
        self.desk = new_desk()
        self.events = []
        self.now_ms = start_ms
        self.last_tap_ms = {}
        # How much longer or shorter than the recipe each step takes.
        self.pace = {row["key"]: chance.uniform(0.97, 1.06) for row in recipe["steps"]}
        opened = {"name": name, "batch": batch, "recipe": recipe, "milk_l": milk_l}
        opened.update(moulds=moulds, vat=vat, treatment=treatment)
        if equipment:
            opened["equipment"] = equipment
        self.record(self.crew.maker, "make_opened", opened)

    def record(self, phone, kind, data, ref=None):
        """Write one event and let the core take it.

        Args:
            phone: who writes it.
            kind: its kind.
            data: its body.
            ref: id of the event that it is about.
        """
        event = phone.record(self.make, kind, self.now_ms, data, ref)
        problems = core.take(self.desk, [event])["problems"]
        if problems:
            raise ValueError(f"{kind} {data}: {problems}")
        self.events.append(event)
        self.last_tap_ms[phone.device] = self.now_ms
        return event

    def run(self, until_ms, stop_at=None, longest_ms=400 * 24 * HOUR_MS):
        """Go on until an instant, or until nothing is left to do.

        Args:
            until_ms: nothing is written from then on [ms].
            stop_at: also stop once this step has begun; None for none.
            longest_ms: give up when nothing moved for so long [ms].
        """
        moved_ms = self.now_ms
        while True:
            view = core.view(self.desk, self.make, self.now_ms)
            open_steps = [
                row for row in view["steps"] if row["status"] in ("ready", "running")
            ]
            if not open_steps or stop_at in self._begun():
                return
            if any(self.act(step) for step in open_steps):
                moved_ms = self.now_ms
                continue
            # Wheels in the store are not looked at each minute of two months.
            pause_ms = max(TAP_MS, self._patience_ms(open_steps) // 25)
            if view["next_change_ms"] is not None:
                pause_ms = max(pause_ms, view["next_change_ms"] - self.now_ms)
            # A step may change when a figure moves, which no deadline tells.
            self.now_ms += min(pause_ms, self._patience_ms(open_steps))
            if self.now_ms >= until_ms:
                return
            if self.now_ms - moved_ms > longest_ms:
                keys = [row["key"] for row in open_steps]
                raise ValueError(f"nothing moves any more in {keys}")

    def move(self, by_ms):
        """Let the whole make have happened at another time.

        Args:
            by_ms: how much later [ms].
        """

        def moved_id(one):
            # The instant is in its first 48 bits.
            return str(uuid.UUID(int=uuid.UUID(one).int + (by_ms << 80)))

        for event in self.events:
            event["at_ms"] += by_ms
            event["entered_ms"] += by_ms
            for name in ("id", "make", "ref"):
                event[name] = event[name] and moved_id(event[name])
        self.make = moved_id(self.make)
        self.now_ms += by_ms
        self.last_tap_ms = {
            device: at_ms + by_ms for device, at_ms in self.last_tap_ms.items()
        }
        self.desk = new_desk()
        problems = core.take(self.desk, self.events)["problems"]
        if problems:
            raise ValueError(f"moved by {by_ms} ms: {problems}")

    def _begun(self):
        rows = (row for row in self.events[-2:] if row["kind"] == "step_begun")
        return [row["data"]["step"] for row in rows]

    def _patience_ms(self, steps):
        shortest = min(
            (row["lasts"]["value_s"] for row in steps if row["lasts"]), default=60.0
        )
        return max(TAP_MS, int(shortest * 1000 / 40))

    def act(self, step):
        """Press the step's button if its time has come; tell whether it was.

        Args:
            step: Step of the View.
        """
        phone = self.crew.at(step["place"])
        if self.now_ms - self.last_tap_ms.get(phone.device, 0) < TAP_MS:
            return False
        act, arg = step["button"]["act"], step["button"]["arg"]
        if act == "none":
            return self._act_unasked(phone, step)
        return getattr(self, "_" + act)(phone, step, arg)

    def _begin(self, phone, step, arg):
        self.record(phone, "step_begun", {"step": step["key"]})
        return True

    def _stopped(self, phone, step, arg):
        # This crew's matters go by themselves, such as days that have to pass.
        return False

    def _end(self, phone, step, arg):
        lasts = step["lasts"]
        begun_ms = step["begun"]["at_ms"]
        if lasts and step["end"]["by"] in ("person", "time"):
            slow = max(1.0, self.pace[step["key"]])
            if self.now_ms < begun_ms + lasts["value_s"] * slow * 1000:
                return False
        # A hold's clock runs from its first reading that is hot enough.
        if step["end"]["by"] == "time" and self.now_ms < (step["due_ms"] or 0):
            return False
        if step["floc"] and step["judge"]["last"]["judgement"] != "clean_break":
            return self._judge(phone, step, None)
        data = {"step": step["key"]}
        # A recipe may want a reading at the end that the button did not ask for.
        for blocker in step["end_blockers"]:
            if blocker["key"] == "reading_missing":
                return self._reading(phone, step, blocker["arg"])
        if step["end_blockers"]:
            data["why"] = "The crew agreed that it is ready."
        self.record(phone, "step_ended", data)
        return True

    def _add(self, phone, step, ingredient):
        row = next(row for row in step["adds"] if row["ingredient"] == ingredient)
        planned = row["planned"]
        amount = planned["value"] * self.chance.uniform(0.995, 1.005)
        data = {
            "ingredient": ingredient,
            "amount": float(f"{amount:.4g}"),
            "unit": planned["unit"],
            "planned": planned["value"],
            "lot": f"QB-{self.chance.randrange(100, 999)}",
            "step": step["key"],
        }
        self.record(phone, "ingredient_added", data)
        return True

    def _mould(self, phone, step, size):
        row = next(row for row in step["moulds"] if row["size"] == size)
        left = row["planned"] - row["moulded"]
        count = min(left, max(1, math.ceil(row["planned"] / 3)))
        data = {"size": size, "count": count, "step": step["key"]}
        self.record(phone, "wheels_moulded", data)
        return True

    def _judge(self, phone, step, arg):
        choices = step["judge"]["choices"]
        share = self._share(step)
        if step["floc"] and step["floc"]["floc_ms"] is None:
            word = "flocculated" if share * step["floc"]["factor"] > 1 else choices[0]
        elif step["floc"]:
            due = self.now_ms >= step["floc"]["cut_ms"]
            word = "clean_break" if due else choices[0]
        else:
            wanted = step["end"].get("judgement") or choices[-1:]
            word = wanted[0] if share > 1 else choices[0]
        last = step["judge"]["last"]
        same = last and last["judgement"] == word == choices[0]
        # Looked again and saw the same: noted at most every four minutes.
        if same and self.now_ms - last["at_ms"] < 4 * MIN_MS:
            return False
        self.record(phone, "curd_judged", {"judgement": word, "step": step["key"]})
        return True

    def _share(self, step):
        """Return how much of its time a step has used, by this crew's pace."""
        if not step["lasts"]:
            return 2.0
        begun_ms = step["begun"]["at_ms"]
        if step["floc"] and step["floc"]["added_ms"] is not None:
            begun_ms = step["floc"]["added_ms"]
        lasts_ms = step["lasts"]["value_s"] * self.pace[step["key"]] * 1000
        return (self.now_ms - begun_ms) / max(1.0, lasts_ms)

    def _reading(self, phone, step, quantity):
        last = next(
            (row["last"] for row in step["readings"] if row["quantity"] == quantity),
            None,
        )
        share = self._share(step)
        if last is not None and step["end"].get("quantity") == quantity:
            # It ends when the figure is there: looked at eight times on the way.
            lasts_ms = step["lasts"]["value_s"] * 1000 if step["lasts"] else 0
            if share < 1 and self.now_ms - last["at_ms"] < lasts_ms / 8:
                return False
        if quantity == "wheel_mass_kg":
            return self._weigh(phone, step)
        for size in self._sizes(step, quantity):
            value = self._value(step, quantity, share, size)
            data = {"quantity": quantity, "value": value, "step": step["key"]}
            if size is not None:
                data["place"] = size
            if not isinstance(value, str):
                data["typed"] = f"{value:.{QUANTITIES[quantity]['decimals']}f}"
            self.record(phone, "reading_taken", data)
        return True

    def _sizes(self, step, quantity):
        """Return the sizes that a reading is taken of, each by itself."""
        for of in step["by_size"]:
            if of["quantity"] == quantity:
                return [row["size"] for row in of["sizes"]]
        return [None]

    def _weigh(self, phone, step):
        """Weigh a wheel of each size; the reading's place names the size."""
        for mould in self.recipe["moulds"]:
            value = mould["wheel_kg"]["value"] * self.chance.uniform(0.98, 1.02)
            self.record(phone, "reading_taken", weighing(mould, value, step["key"]))
        return True

    def _value(self, step, quantity, share, size):
        row = QUANTITIES[quantity]
        if row["type"] == "choice":
            return USUAL.get(quantity, row["choices"][0])
        if quantity == "milk_volume_l":
            return self.milk_l - 2.0
        if quantity == "recorder_temp_c":
            # This crew has set its recorder to the indicator.
            return self._values("indicator_temp_c", step["key"])[-1]
        goal = self._goal(step, quantity, size)
        if step["end"].get("quantity") == quantity:
            goal = self._on_the_way(step, quantity, share)
        value = round(goal, row["decimals"])
        return min(max(value, row["low"]), row["high"])

    def _goal(self, step, quantity, size):
        for target in step["targets"]:
            of = (target["quantity"], size if size is None else target["size"])
            if of != (quantity, size) or target["value"] is None:
                continue  # what its sum cannot tell yet is as usual
            low, high = target["low"], target["high"]
            spread = 0.0 if low is None or high is None else (high - low) / 8
            value = target["value"] + self.chance.uniform(-spread, spread)
            # Some targets are per litre of milk.
            return value * self.milk_l if target["unit"].endswith("/L") else value
        return USUAL[quantity]

    def _on_the_way(self, step, quantity, share):
        end = step["end"]
        rising = end["at_least"] is not None
        goal = end["at_least"] if rising else end["at_most"]
        if share >= 1:
            beyond = 2 * 10 ** -QUANTITIES[quantity]["decimals"]
            return goal + beyond if rising else goal - beyond
        here = self._values(quantity, step["key"])
        before = self._values(quantity) or [USUAL[quantity]]
        start = here[0] if here else before[-1]
        return start + (goal - start) * min(share, 0.97)

    def _values(self, quantity, step_key=None):
        return [
            event["data"]["value"]
            for event in self.events
            if event["kind"] == "reading_taken"
            and event["data"]["quantity"] == quantity
            and step_key in (None, event["data"]["step"])
        ]

    def _act_unasked(self, phone, step):
        if step["status"] != "running" or step["end"]["by"] not in ("person", "time"):
            return False
        due_ms = step["due_ms"]
        if due_ms is not None and self.now_ms < due_ms:
            return False
        return self._end(phone, step, None)


def weighing(mould, value_kg, step):
    """Return the body of the weighing of one wheel, as the app writes it.

    Args:
        mould: mould of the recipe.
        value_kg: its mass [kg].
        step: key of the step.
    """
    value = round(value_kg, QUANTITIES["wheel_mass_kg"]["decimals"])
    data = {"quantity": "wheel_mass_kg", "value": value, "typed": f"{value:.2f}"}
    data.update(step=step, place=mould["size"])
    return data


def wheels(recipe, milk_l):
    """Return how many wheels of each size the milk should give.

    Args:
        recipe: the recipe.
        milk_l: milk in the vat [L].

    Returns:
        List of {"size", "count"} for a make's opening.
    """
    curd_kg = milk_l * 1.03 * recipe["yield_frac"]["value"]
    rows = []
    for mould in recipe["moulds"]:
        share_kg = curd_kg * mould["share_frac"]["value"]
        count = max(1, int(share_kg / mould["wheel_kg"]["value"]))
        rows.append({"size": mould["size"], "count": count})
    return rows
