"""A small make with a gate of each kind, and the rules that a house has."""

import json
from pathlib import Path

from tests.core.builders import MAKE, Phone, at, figure, recipe, step
from tests.core.heat.holding import RULES as HEAT_RULES

ROOT = Path(__file__).resolve().parents[3]
ALL = [{"what": "close"}, {"what": "release"}]
DAY = 24 * 60
MOULDS = [{"size": "small", "count": 30}]
MAKER, HELPER, OWNER = ["maker"], ["helper"], ["owner"]


def rule(name):
    return json.loads((ROOT / "server" / "rules" / f"{name}.json").read_text("utf-8"))


RULES = {
    **HEAT_RULES,
    **{
        name: rule(name)
        for name in ("matters", "milk_classes", "us_curing", "slow_make", "staph")
    },
}


def begin(key, **rest):
    return {"what": "begin", "step": key, **rest}


def gate(key, watch, at_step, *stops, **rest):
    return {"key": key, "watch": watch, "step": at_step, "stops": [*stops], **rest}


GATES = [
    gate("drug", "test", "receive", begin("heat"), *ALL, quantity="drug_test"),
    gate("heat_hold", "hold", "hold", begin("fans"), *ALL),
    gate(
        "chart",
        "recorder",
        "fans",
        {"what": "end", "step": "fans", "when": ["above"]},
        {"what": "close", "when": ["above"]},
        {"what": "release"},
    ),
    gate("thermometer", "thermometer", "fans", {"what": "end", "step": "fans"}, *ALL),
    gate(
        "acid",
        "acid",
        "cut",
        begin("salt", when=["too_slow", "missed"]),
        {"what": "close", "when": ["too_slow", "missed"]},
        {"what": "release"},
        from_step="rennet",
        quantity="ph",
        rule="slow_make",
        row="ph_at_6_h_washed",
    ),
    gate("days", "curing", "store", {"what": "end", "step": "store"}, *ALL),
    gate(
        "lab",
        "laboratory",
        "store",
        {"what": "close", "when": ["failed"]},
        {"what": "release"},
    ),
]


def gated_recipe(gates=None):
    found = recipe()
    for one in found["steps"]:
        if one["key"] == "hold":
            one["heat_treatment"] = True
        if one["key"] == "store":
            one["after"] = ["salt"]
            one["lasts"] = figure(86400 * 28, "s", 86400 * 21, 86400 * 90)
    salt = step("salt", ["fill"], place="brine", size="small")
    found["steps"].insert(-1, salt)
    found["milk"]["treatments"] = ["pasteurised", "raw"]
    found["milk"]["usual_treatment"] = "pasteurised"
    found["gates"] = GATES if gates is None else gates
    for one in found["steps"]:
        if one["key"] == "hold":
            one["treatments"] = ["pasteurised"]
    return found


class Make:
    """Events of a make with gates; minutes count from its opening."""

    def __init__(self, *gates, **body):
        self.phone = Phone()
        chosen = [one for one in GATES if not gates or one["key"] in gates]
        body.setdefault("recipe", gated_recipe(chosen))
        self.events = [self.phone.opened(equipment={"plant_name": "Quernbeck"}, **body)]

    def add(self, kind, minute, **data):
        event = self.phone.event(kind, minute, **data)
        self.events.append(event)
        return event

    def read(self, quantity, value, minute, key=None, typed=None, unit=None):
        data = {"quantity": quantity, "value": value}
        if key:
            data["step"] = key
        if typed is not None:
            data.update(typed=str(typed), typed_unit=unit)
        return self.add("reading_taken", minute, **data)

    def hot(self, minute, milk_f=145.0, air_f=150.0):
        for quantity, typed in (("milk_temp_c", milk_f), ("air_space_temp_c", air_f)):
            self.read(quantity, (typed - 32) / 1.8, minute, "hold", typed, "F")

    def done(self, key, minute, ended=None):
        self.add("step_begun", minute, step=key)
        self.add("step_ended", minute if ended is None else ended, step=key)

    def received(self):
        """Take in milk that tested negative, and heat it: an hour."""
        self.add("step_begun", 1, step="receive")
        self.read("milk_volume_l", 500.0, 2, "receive")
        self.read("fat_frac", 0.04, 2)
        self.read("drug_test", "negative", 3, "receive")
        self.add("step_ended", 4, step="receive")
        self.done("heat", 5, 60)
        return self

    def held(self, dip_at=None, last=92, every=2):
        """Hold from minute 60; dip to 144.8 °F at a minute of the hold."""
        self.add("step_begun", 60, step="hold")
        for minute in range(60, last + 1, every):
            self.hot(minute)
        if dip_at is not None:
            self.hot(60 + dip_at, milk_f=144.8)
        self.add("step_ended", last, step="hold")
        return self

    def decided(self, matter, way, minute, why="Said by the site procedure."):
        return self.add("matter_decided", minute, matter=matter, way=way, why=why)

    def calls(self):
        return (("set_rules", RULES), ("take", self.events))

    def view(self, ask, minute):
        answers = ask.desk(*self.calls(), ("view", MAKE, at(minute)))
        assert answers[1]["problems"] == []
        return answers[2]

    def matters(self, ask, minute):
        """Return the matters that are told, by their gate."""
        found = self.view(ask, minute)["matters"]
        return {one["id"]: one for one in found if one["level"] != "wait"}

    def tap(self, ask, kind, minute, roles=None, ref=None, phone=None, **data):
        """Return what speaks against a tap; what is refused changes nothing."""
        event = (phone or self.phone).event(kind, minute, ref=ref, **data)
        call = ("tap", event, HELPER if roles is None else roles, MAKE, at(minute))
        told = ask.desk(*self.calls(), call)[2]
        assert (told["view"] is None) == bool(told["problems"])
        return told["problems"]
