"""One make whose step asks the sums, for what it knows."""

import copy
import json
from pathlib import Path

from tests.core.builders import MAKE, Phone, at
from tests.core.sums.asking import RULES, of_words

ROOT = Path(__file__).resolve().parents[3]
RECIPE = json.loads(
    (ROOT / "server" / "recipes" / "washed-wheel.json").read_text("utf-8")
)


class Make:
    """One make of 1000 L whose step lists the sums asked for."""

    def __init__(self, step, *sums, make=MAKE, **body):
        recipe = copy.deepcopy(RECIPE)
        for row in recipe["steps"]:
            if row["key"] == step:
                row["sums"] = list(sums)
        self.step = step
        self.phone = Phone(make=make)
        self.recipe = recipe
        opened = {"name": "Make", "batch": "A1", "milk_l": 1000.0, "vat": "Big vat"}
        opened["treatment"] = "pasteurised"
        self.events = []
        self.add("make_opened", 0, recipe=recipe, **{**opened, **body})

    def add(self, kind, minute, **data):
        self.events.append(self.phone.event(kind, minute, **data))
        return self

    def run(self, step, begin, end=None):
        self.add("step_begun", begin, step=step)
        return self if end is None else self.add("step_ended", end, step=step)

    def read(self, quantity, value, minute, **rest):
        data = {"quantity": quantity, "value": value, **rest}
        return self.add("reading_taken", minute, **data)

    def answers(self, ask, minute, given=None, others=()):
        events = [event for other in others for event in other.events]
        found = ask.desk(
            ("set_rules", RULES),
            ("take", [*events, *self.events]),
            ("step_sums", MAKE, self.step, at(minute), given),
        )
        assert found[1]["problems"] == []
        return found[2]

    def known(self, ask, minute, **rest):
        """Return {input: value} of the one sum that the step lists."""
        (row,) = self.answers(ask, minute, **rest)
        return {item["name"]: item["value"] for item in row["known"]}

    def value(self, ask, minute, name, of=None, **rest):
        (row,) = self.answers(ask, minute, **rest)
        assert row["missing"] == []
        assert row["problems"] == []
        (found,) = [v for v in row["values"] if (v["name"], of_words(v)) == (name, of)]
        return found["value"]
