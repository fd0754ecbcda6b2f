"""A recipe that changes gets its next version; a make keeps the one it began with."""

import copy
import json

from tests.conftest import ROOT
from tests.core.builders import MAKE, Phone, at

RECIPE = json.loads(
    (ROOT / "server" / "recipes" / "washed-wheel.json").read_text("utf-8")
)
OTHER = "0193a5b0-0000-7000-8000-00000000000b"


def version_1():
    """Return the recipe as of before its mark could be titrated."""
    older = copy.deepcopy(RECIPE)
    older["version"] = 1
    for gate in older["gates"]:
        gate.pop("instead", None)
    for step in older["steps"]:
        if step["key"] == "turn_2":
            step["title"] = {"en": "Turn them"}
    return older


def test_a_make_keeps_the_version_that_it_was_opened_with():
    from server.core import desk as core_desk

    assert RECIPE["version"] == 5
    older = version_1()
    moulds = [{"size": mould["size"], "count": 9} for mould in RECIPE["moulds"]]
    events = [
        Phone().opened(recipe=older, moulds=moulds),
        Phone(make=OTHER).opened(recipe=RECIPE, moulds=moulds),
    ]
    told = {}
    for order in (events, events[::-1]):
        desk = core_desk.new()
        taken = core_desk.take(desk, copy.deepcopy(order))
        assert taken["problems"] == []
        for make in (MAKE, OTHER):
            view = core_desk.view(desk, make, at(5))
            titles = {step["key"]: step["title"] for step in view["steps"]}
            told[make] = (view["make"]["recipe_version"], titles["turn_2"]["en"])
        assert told == {
            MAKE: (1, "Turn them"),
            OTHER: (5, "Turn the wheels again"),
        }
