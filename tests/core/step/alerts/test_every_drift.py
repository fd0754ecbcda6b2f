"""Each word of each recipe on what to do about a drift is told by some make.

For every recipe, route, step and form of drift one make is driven until the words
are told: by an alert, or by what stands against ending the step. Words that no make
could reach would be read by nobody.
"""

import json

import pytest

from server.core.recipe.route import route
from tests.conftest import ROOT
from tests.core.builders import Phone

RECIPES = {
    path.stem: json.loads(path.read_text(encoding="utf-8"))
    for path in sorted((ROOT / "server" / "recipes").glob("*.json"))
}
ROUTES = [
    (name, treatment)
    for name, recipe in RECIPES.items()
    for treatment in recipe["milk"].get("treatments") or [None]
]
# Invented: a press, a bed and a tank, so that every sum can answer.
EQUIPMENT = {
    "bore_m": 0.08,
    "cylinder_count": 1,
    "lever_ratio": 1.0,
    "efficiency_frac": 1.0,
    "dead_weight_kg": 5.0,
    "length_m": 1.2,
    "width_m": 0.8,
}
BEGIN_MIN = 240
TEMPERATURE, PH = "C", "pH"
BY_VALUE = {
    "temperature_low": "low",
    "temperature_high": "high",
    "acid_fast": "low",
    "acid_slow": "high",
    "quantity_low": "low",
    "quantity_high": "high",
}


def around(recipe, key):
    """Return a recipe with one step and what it counts from, so that it is quick."""
    start = recipe["curve"]["start_step"]
    near = [
        step
        for step in recipe["steps"]
        if step["key"] in (start, "rennet", key) or key in step["after"]
    ]
    keys = [step["key"] for step in near]
    added = [name for step in near for name in step["adds"]]
    milk = {name: recipe["milk"][name] for name in ("unit", "low_l", "high_l")}
    steps = [
        {**step, "after": [one for one in step["after"] if one in keys]}
        for step in near
    ]
    for step in steps:
        step.pop("treatments", None)
    ingredients = [row for row in recipe["ingredients"] if row["key"] in added]
    # Gates name steps that are left out here.
    cut = {"milk": milk, "ingredients": ingredients, "steps": steps, "gates": []}
    return {**recipe, **cut}


class Walk:
    """A make at one step, and the ways to make it drift."""

    def __init__(self, recipe, step):
        self.recipe, self.step = recipe, step
        self.phone = Phone()
        moulds = [{"size": row["size"], "count": 4} for row in recipe["moulds"]]
        opened = {"recipe": recipe, "moulds": moulds, "milk_l": 900.0}
        self.events = [self.phone.opened(equipment=EQUIPMENT, **opened)]

    def add(self, kind, minute, **data):
        self.events.append(self.phone.event(kind, minute, **data))
        return self

    def begin(self, minute=BEGIN_MIN):
        return self.add("step_begun", minute, step=self.step, why="Walked to.")

    def end(self, minute):
        return self.add("step_ended", minute, step=self.step, why="Walked past.")

    def read(self, quantity, value, minute, size=None):
        data = {"quantity": quantity, "value": value, "step": self.step}
        if size:
            data["place"] = size
        return self.add("reading_taken", minute, **data)

    def shown(self, ask, minute):
        seen = ask.view(self.events, minute)
        (step,) = [row for row in seen["steps"] if row["key"] == self.step]
        return seen, step

    def tells(self, ask, minute, words):
        seen, step = self.shown(ask, minute)
        told = [row["do"] for row in seen["alerts"] if row["step"] == self.step]
        told += [row.get("do") for row in step.get("end_blockers", [])]
        return words in told


def form_of(target):
    if target["unit"] == TEMPERATURE:
        return "temperature"
    return "acid" if target["unit"] == PH else "quantity"


def off(target, side):
    """Return a value a little beyond one end of a target's band."""
    if target["unit"] in (TEMPERATURE, PH):
        return target[side] + (0.3 if side == "high" else -0.3)
    return target[side] * (1.02 if side == "high" else 0.98)


def too_late(walk, ask, words):
    _, step = walk.begin().shown(ask, BEGIN_MIN + 1)
    late_min = (step["end_high_ms"] - step["begun"]["at_ms"]) / 60_000
    return walk.tells(ask, BEGIN_MIN + late_min + 1, words)


def too_early(walk, ask, words):
    _, step = walk.begin().shown(ask, BEGIN_MIN + 0.5)
    end = step["end"]
    if end["by"] == "reading":
        value = end["at_least"] if end["at_least"] is not None else end["at_most"]
        walk.read(end["quantity"], value, BEGIN_MIN + 0.5)
    if end["by"] == "floc":
        walk.add("step_begun", BEGIN_MIN - 2, step="rennet", why="Walked to.")
        data = {"amount": 170.0, "unit": "mL", "lot": "R1", "ingredient": "rennet"}
        walk.add("ingredient_added", BEGIN_MIN - 1, step="rennet", **data)
        data = {"step": walk.step, "judgement": "flocculated"}
        walk.add("curd_judged", BEGIN_MIN + 0.5, **data)
    return walk.tells(ask, BEGIN_MIN + 1, words)


def stands(walk, ask, words):
    walk.add("step_begun", 0, step=walk.recipe["curve"]["start_step"]).begin()
    walk.read("ph", 6.2, BEGIN_MIN).read("ph", 6.2, BEGIN_MIN + 60)
    return walk.tells(ask, BEGIN_MIN + 61, words)


def drifts(walk, ask, words, target, side, reached):
    """Read a value beyond a target's band, and end the step there if need be."""
    _, step = walk.begin().shown(ask, BEGIN_MIN + 1)
    end = step["end"]
    if reached and end["by"] == "reading" and end["quantity"] != target["quantity"]:
        value = end["at_least"] if end["at_least"] is not None else end["at_most"]
        walk.read(end["quantity"], value, BEGIN_MIN + 1)
    walk.read(target["quantity"], off(target, side), BEGIN_MIN + 2, target["size"])
    if walk.tells(ask, BEGIN_MIN + 3, words):
        return True
    # What is on its way to its figure drifts when the step is ended there.
    return walk.end(BEGIN_MIN + 4).tells(ask, BEGIN_MIN + 5, words)


def off_target(walk, ask, words, form):
    side, kind = BY_VALUE[form], form.split("_")[0]
    _, step = walk.begin().shown(ask, BEGIN_MIN + 1)
    for target in step["targets"]:
        if target[side] is None or form_of(target) != kind:
            continue
        for reached in (False, True):
            if drifts(Walk(walk.recipe, walk.step), ask, words, target, side, reached):
                return True
    return False


def off_dose(walk, ask, words, form):
    _, step = walk.begin().shown(ask, BEGIN_MIN + 1)
    for add in step["adds"]:
        dose = add["planned"]
        amount = dose["low"] * 0.9 if form == "quantity_low" else dose["high"] * 1.1
        data = {"amount": amount, "unit": dose["unit"], "lot": "L1"}
        data["ingredient"] = add["ingredient"]
        walk.add("ingredient_added", BEGIN_MIN + 1, step=walk.step, **data)
        if walk.tells(ask, BEGIN_MIN + 2, words):
            return True
    return False


def off_moulds(walk, ask, words, form):
    _, step = walk.begin().shown(ask, BEGIN_MIN + 1)
    for mould in step["moulds"] or []:
        count = mould["planned"] + (-1 if form == "quantity_low" else 1)
        data = {"size": mould["size"], "count": count}
        walk.add("wheels_moulded", BEGIN_MIN + 1, step=walk.step, **data)
    return walk.end(BEGIN_MIN + 2).tells(ask, BEGIN_MIN + 3, words)


def missing(walk, ask, words):
    if walk.begin().tells(ask, BEGIN_MIN + 100_000, words):
        return True
    follower = [row for row in walk.recipe["steps"] if walk.step in row["after"]]
    walk.end(BEGIN_MIN + 1)
    for row in follower:
        walk.add("step_begun", BEGIN_MIN + 2, step=row["key"])
    seen = ask.view(walk.events, BEGIN_MIN + 3)
    return words in [row["do"] for row in seen["alerts"]]


WAYS = {
    "time_late": (too_late,),
    "time_early": (too_early,),
    "acid_stalled": (stands,),
    "record_missing": (missing,),
}


def is_reached(ask, recipe, step, remedy):
    form, words = remedy["form"], remedy["do"]
    for way in WAYS.get(form, ()):
        if way(Walk(recipe, step), ask, words):
            return True
    for way in (off_target, off_dose, off_moulds) if form in BY_VALUE else ():
        if way(Walk(recipe, step), ask, words, form):
            return True
    return False


@pytest.mark.parametrize(("name", "treatment"), ROUTES)
def test_every_word_on_a_drift_is_told_by_some_make(ask, name, treatment):
    recipe = RECIPES[name]
    routed = route(recipe, treatment) if treatment else recipe
    untold = [
        (step["key"], remedy["form"])
        for step in routed["steps"]
        for remedy in step.get("drift", [])
        if not is_reached(ask, around(routed, step["key"]), step["key"], remedy)
    ]
    assert untold == []
