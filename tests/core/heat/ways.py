"""A make of the short recipe with a way for each treatment, and its hold."""

import json

from tests.conftest import ROOT
from tests.core.builders import MAKE, Phone, at, three_ways

RULES = {
    path.stem: json.loads(path.read_text("utf-8"))
    for path in (ROOT / "server" / "rules").glob("*.json")
}


class Way:
    """Events of a make opened for a treatment; a hold begins at minute 10."""

    def __init__(self, treatment="heat_treated", recipe=None, **body):
        self.phone = Phone()
        body = {"recipe": recipe or three_ways(), "treatment": treatment, **body}
        if treatment is None:
            del body["treatment"]
        body.setdefault("equipment", {"plant_name": "Quernbeck"})
        self.events = [self.phone.event("make_opened", 0, **OPENED, **body)]
        self.add("reading_taken", 1, quantity="milk_volume_l", value=500.0)
        self.add("reading_taken", 2, quantity="fat_frac", value=0.04)

    def add(self, kind, minute, ref=None, **data):
        event = self.phone.event(kind, minute, ref, **data)
        self.events.append(event)
        return event

    def read(self, minute, milk_f, air_f=None, unit="F"):
        for quantity, typed in (("milk_temp_c", milk_f), ("air_space_temp_c", air_f)):
            if typed is not None:
                value = (typed - 32) / 1.8 if unit == "F" else typed
                told = {"typed": str(typed), "typed_unit": unit, "step": "hold"}
                self.add(
                    "reading_taken", minute, quantity=quantity, value=value, **told
                )

    def held(self, minutes, milk_f=147.0, air_f=152.0, every=2):
        """Begin the hold, read it so long and end it."""
        self.add("step_begun", 10, step="hold")
        for minute in range(0, minutes + 1, every):
            self.read(10 + minute, milk_f, air_f)
        self.add("step_ended", 11 + minutes, step="hold", why="Over.")
        return self

    def change(self, minute, treatment, why="The chart is broken."):
        return self.add("treatment_changed", minute, treatment=treatment, why=why)

    def view(self, ask, minute=600):
        return self.asked(ask, ("view", MAKE, at(minute)))

    def step(self, ask, key, minute=600):
        return self.asked(ask, ("step", MAKE, key, at(minute)))

    def asked(self, ask, question):
        told = ask.desk(("set_rules", RULES), ("take", self.events), question)
        assert told[1]["problems"] == []
        return told[2]

    def milk(self, ask, minute=600):
        return self.view(ask, minute)["make"]["milk"]


OPENED = {"name": "Make", "batch": "A1", "milk_l": 500.0}
