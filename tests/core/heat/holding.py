"""A hold in a running make, as its readings come in."""

import json
from pathlib import Path

from tests.core.builders import MAKE, Phone, at, figure, recipe

ROOT = Path(__file__).resolve().parents[3]


RULES = {
    "us_heat_treatment": json.loads(
        (ROOT / "server" / "rules" / "us_heat_treatment.json").read_text("utf-8")
    )
}


def hold_recipe(**rest):
    found = recipe()
    for step in found["steps"]:
        if step["key"] == "hold":
            step["heat_treatment"] = True
            step.update(rest)
    return found


def led_recipe(**rest):
    """The same, read in rounds of milk and air space."""
    rounds = [
        {"quantity": quantity, "when": when, "required": True, **every}
        for when, every in (("begin", {}), ("during", {"every_s": 300}), ("end", {}))
        for quantity in ("milk_temp_c", "air_space_temp_c")
    ]
    targets = [
        {"quantity": "milk_temp_c", "figure": figure(63.9, "C", 63.0, 65.6)},
        {"quantity": "air_space_temp_c", "figure": figure(66.7, "C", 65.8)},
    ]
    return hold_recipe(readings=rounds, targets=targets, **rest)


class Hold:
    """Events of a make whose hold begins at minute 0, read in Fahrenheit."""

    def __init__(self, equipment=None, recipe=None):
        self.phone = Phone()
        body = {"recipe": recipe or hold_recipe(), "equipment": equipment or {}}
        self.events = [self.phone.opened(**body)]
        self.add("step_begun", 0, step="hold")

    def add(self, kind, minute, **data):
        self.events.append(self.phone.event(kind, minute, **data))

    def read(self, minute, milk_f, air_f=None, unit="F"):
        for quantity, typed in (("milk_temp_c", milk_f), ("air_space_temp_c", air_f)):
            if typed is None:
                continue
            celsius = (typed - 32) / 1.8 if unit == "F" else typed
            self.add(
                "reading_taken",
                minute,
                quantity=quantity,
                value=celsius,
                typed=str(typed),
                typed_unit=unit,
                step="hold",
            )

    def fat(self, frac):
        self.add("reading_taken", -5, quantity="fat_frac", value=frac)

    def step(self, ask, minute, rules=None):
        calls = (
            ("set_rules", RULES if rules is None else rules),
            ("take", self.events),
        )
        answers = ask.desk(*calls, ("step", MAKE, "hold", at(minute)))
        assert answers[1]["problems"] == []
        return answers[2]


def every_two_minutes(hold, first, last, milk_f=145.0, air_f=150.0):
    for minute in range(first, last + 1, 2):
        hold.read(minute, milk_f, air_f)


def led(equipment=None, **rest):
    """A hold that the countdown leads, of milk that everything is known of."""
    return whole(equipment, led_recipe(**rest))


def whole(equipment=None, recipe=None):
    hold = Hold({"plant_name": "Quernbeck", **(equipment or {})}, recipe)
    hold.add("reading_taken", -6, quantity="milk_volume_l", value=500.0)
    hold.fat(0.04)
    return hold
