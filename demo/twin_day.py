"""A make of the twin for the replay: its truth moves as a real vat's does.

The crew does what their screen says, and reads what the instruments show; so the
live view warms, sours and drains like a make, and no two rounds of readings agree
to the last digit.
"""

import json

from demo.seed import HELPER, MAKER, RECIPE, SECOND_HELPER, SEED, TRIAL_MS, wheels
from server.config import read_rules
from server.core import desk as core
from server.core.twin import play

DAY_FRAC = {"fat_frac": 0.0412, "protein_frac": 0.034, "snf_frac": 0.0886}
PLACES = {HELPER.id: ["table", "press"], SECOND_HELPER.id: ["tank", "brine", "store"]}


class Screen:
    """What a crew is told: a desk that takes each of their entries as it is made."""

    def __init__(self, milk_l):
        self.milk_l = milk_l
        self.desk = core.new()
        core.set_rules(self.desk, read_rules())
        self.taken = 0

    def __call__(self, events, now_ms, step_key, name, size):
        """Return the figure that a step shows, or None where it shows none.

        Args:
            events: entries so far, of one make.
            now_ms: now [ms].
            step_key: key of the step.
            name: a quantity, an ingredient, "lasts", or "round".
            size: size of wheel, or None.

        Raises:
            ValueError: the core does not take an entry.
        """
        problems = core.take(self.desk, events[self.taken :])["problems"]
        if problems:
            raise ValueError(f"not taken: {problems}")
        self.taken = len(events)
        step = core.step(self.desk, events[0]["make"], step_key, now_ms)
        if name == "lasts":
            lasts = step["lasts"]
            return lasts and {"value": lasts["value_s"], "unit": "s"}
        if name == "round":
            lead = step["hold"]
            return lead and {"value": lead["due_ms"], "unit": "ms"}
        return self._dose(step, name) or self._target(step, name, size)

    def _dose(self, step, name):
        for row in step["adds"]:
            if row["ingredient"] == name and row["planned"]:
                return {key: row["planned"][key] for key in ("value", "unit")}
        return None

    def _target(self, step, name, size):
        for row in step["targets"]:
            is_it = row["quantity"] == name and row["size"] in (None, size)
            if is_it and row["value"] is not None:
                times = self.milk_l if row["unit"] == "L/L" else 1.0
                return {"value": row["value"] * times, "unit": row["unit"]}
        return None


def people(by_person):
    """Return the crew as the twin knows it: who has which phone, and where.

    Args:
        by_person: answer of `seed.phones`.
    """
    rows = [by_person[one] for one in (MAKER.id, HELPER.id, SECOND_HELPER.id)]
    return [
        {
            "person": phone.person,
            "device": phone.device,
            "places": PLACES.get(phone.person, []),
            "clock_off_ms": phone.off_ms,
            "told_off_ms": phone.off_ms,
        }
        for phone in rows
    ]


def entries(plan, by_person, equipment, now_ms):
    """Return the entries of a make whose planned step begins now, oldest first.

    Args:
        plan: the make, and the step that it has reached.
        by_person: answer of `seed.phones`; each phone has written nothing yet.
        equipment: what the creamery has, as the core's table names it.
        now_ms: now [ms].
    """
    recipe = json.loads(RECIPE.read_text("utf-8"))
    setting = {"milk": DAY_FRAC, "people": people(by_person)}
    body = {"name": plan.name, "batch": plan.batch, "milk_l": plan.milk_l}
    body.update(vat=plan.vat, moulds=wheels(recipe, plan.milk_l), equipment=equipment)

    def played(at_ms):
        told = Screen(plan.milk_l)
        return play.play(recipe, setting, body, SEED, at_ms, [], told)["events"]

    trial_ms = _begun_ms(played(TRIAL_MS), plan.step) - TRIAL_MS
    return let_through(played(now_ms - plan.past_ms - trial_ms))


def let_through(events):
    """Return the entries that no standing matter stops: the crew's screens refuse them.

    Args:
        events: entries of one make, oldest first.
    """
    desk = core.new()
    core.set_rules(desk, read_rules())
    told = []
    for event in events:
        at_ms = event["at_ms"] + event["off_ms"]
        if not core.refused(desk, event, ["maker"], at_ms):
            core.take(desk, [event])
            told.append(event)
    return told


def _begun_ms(events, step):
    return next(
        row["at_ms"] + row["off_ms"]
        for row in events
        if row["kind"] == "step_begun" and row["data"]["step"] == step
    )
