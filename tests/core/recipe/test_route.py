"""Each treatment has its own way through a recipe; nobody waits on what is left out."""

import json

import pytest

from tests.conftest import ROOT
from tests.core.builders import figure, recipe, three_ways

HOUSE = json.loads(
    (ROOT / "server" / "recipes" / "washed-wheel.json").read_text("utf-8")
)
TREATMENTS = ("pasteurised", "heat_treated", "raw")


def waits(core, recipe, treatment):
    told = core("recipe.route", "route", recipe, treatment)
    return {row["key"]: row["after"] for row in told["steps"]}


def problems(core, recipe):
    return core("recipe.recipe", "check_recipe", recipe)


def test_a_recipe_without_treatments_is_its_own_route(core):
    assert core("recipe.route", "route", recipe(), "raw") == recipe()


@pytest.mark.parametrize(
    ("treatment", "on", "waited"),
    [
        ("pasteurised", ["heat", "hold", "mark", "fans"], ["fans"]),
        ("heat_treated", ["heat", "hold", "fans"], ["fans"]),
        ("raw", ["warm"], ["warm"]),
    ],
)
def test_a_route_has_its_steps_and_nobody_waits_on_another(core, treatment, on, waited):
    told = waits(core, three_ways(), treatment)
    late = ["rennet", "set", "cut", "fill", "store"]
    assert list(told) == ["receive", *on, *late]
    assert told["rennet"] == waited
    assert all(key in told for after in told.values() for key in after)


def test_who_waited_on_a_step_left_out_waits_on_what_that_one_waited_on(core):
    assert waits(core, three_ways(), "heat_treated")["fans"] == ["hold"]


def test_a_step_has_the_figures_of_its_route(core):
    told = core("recipe.route", "route", three_ways(), "heat_treated")
    (hold,) = [row for row in told["steps"] if row["key"] == "hold"]
    assert (hold["lasts"]["value"], hold["heat_treatment"]["by"]) == (900, "own")
    assert "by_treatment" not in hold
    told = core("recipe.route", "route", three_ways(), "pasteurised")
    (hold,) = [row for row in told["steps"] if row["key"] == "hold"]
    assert (hold["lasts"]["value"], hold["heat_treatment"]) == (1800, True)


def test_the_house_recipe_goes_all_three_ways(core):
    assert problems(core, HOUSE) == []
    assert HOUSE["milk"]["usual_treatment"] == "heat_treated"
    ways = {name: waits(core, HOUSE, name) for name in TREATMENTS}
    only = {name: set(ways[name]) for name in TREATMENTS}
    assert only["pasteurised"] - only["heat_treated"] == {"mark_chart"}
    assert only["heat_treated"] < only["pasteurised"]
    # Raw milk is warmed from cold straight to the set: no hold, no chart.
    hot = {"heat", "hold", "drain_jacket", "cool"}
    assert only["heat_treated"] - only["raw"] == hot
    assert only["raw"] - only["heat_treated"] == {"warm"}
    assert ways["raw"]["warm"] == ["rest"]
    assert ways["raw"]["starter"] == ["warm", "fit_out"]
    assert ways["heat_treated"]["drain_jacket"] == ["hold"]


def test_three_ways_are_sound(core):
    assert problems(core, three_ways()) == []


def change(path, value):
    def changed(found):
        part = found
        for name in path[:-1]:
            part = part[name]
        part[path[-1]] = value

    return changed


HOLD, MARK = 2, 3
UNITS = ("heat_treatment", "temp")
OF_HOLD = ("steps", HOLD, "by_treatment", "heat_treated")


@pytest.mark.parametrize(
    ("edit", "field", "key"),
    [
        (change(("milk", "treatments"), []), "milk.treatments", "missing"),
        (
            change(("milk", "treatments"), ["raw", "boiled"]),
            "milk.treatments",
            "unknown_treatment",
        ),
        (
            change(("milk", "usual_treatment"), "boiled"),
            "milk.usual_treatment",
            "treatment_not_allowed",
        ),
        (
            change(("steps", MARK, "treatments"), ["boiled"]),
            "steps.mark.treatments",
            "unknown_treatment",
        ),
        (
            change((*OF_HOLD, "after"), []),
            "steps.hold.by_treatment.heat_treated.after",
            "unknown_field",
        ),
        # Milk that a rule's hold is asked of is no heat-treated milk, and the other
        # way round: what the steps say and what the make says must be one thing.
        (
            change((*OF_HOLD, "heat_treatment"), True),
            "steps.hold.heat_treatment",
            "hold_of_other_treatment",
        ),
        (
            change(("steps", HOLD, "treatments"), list(TREATMENTS)),
            "steps.hold.heat_treatment",
            "hold_of_other_treatment",
        ),
        (
            change(("steps", HOLD, "heat_treatment"), None),
            "milk.treatments",
            "treatment_without_hold",
        ),
        (
            change((*OF_HOLD, "heat_treatment", "temp"), {"C": figure(64, "C")}),
            "steps.hold.heat_treatment.temp.F",
            "missing",
        ),
        (
            change((*OF_HOLD, "heat_treatment", "temp", "F"), figure(147, "C")),
            "steps.hold.heat_treatment.temp.F.unit",
            "wrong_unit",
        ),
        (
            change((*OF_HOLD, "heat_treatment", "why"), {}),
            "steps.hold.heat_treatment.why.en",
            "missing",
        ),
        (
            change((*OF_HOLD, "heat_treatment", "by"), "rule"),
            "steps.hold.heat_treatment.by",
            "not_a_choice",
        ),
        (
            change((*OF_HOLD, "rule"), "us_heat_treatment"),
            "steps.hold.rule",
            "unknown_field",
        ),
        (
            change((*OF_HOLD, "lasts"), None),
            "steps.hold.lasts",
            "missing",
        ),
    ],
)
def test_a_route_that_cannot_be_walked_is_told_of(core, edit, field, key):
    found = three_ways()
    edit(found)
    told = {(row["field"], row["key"]) for row in problems(core, found)}
    assert (field, key) in told


def test_steps_in_a_circle_are_told_of_and_no_route_hangs(core):
    found = three_ways()
    steps = {row["key"]: row for row in found["steps"]}
    steps["heat"]["after"] = ["mark"]
    assert "circular_wait" in [row["key"] for row in problems(core, found)]
