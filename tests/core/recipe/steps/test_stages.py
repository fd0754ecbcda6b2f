"""Which stage of the make a step belongs to: as the recipe says, or by its work."""

import json

import pytest

from tests.conftest import ROOT
from tests.core.builders import recipe, step

SHIPPED = sorted((ROOT / "server" / "recipes").glob("*.json"))


def stages(core, steps):
    return core("recipe.steps.stages", "stages_of", steps)


def check(core, given):
    return core("recipe.recipe", "check_recipe", given)


def without(steps):
    return [{name: row[name] for name in row if name != "stage"} for row in steps]


def staged(**changed):
    """Return the short recipe with a stage for every step."""
    found = recipe()
    told = dict.fromkeys(["heat", "hold", "fans"], "heat")
    told |= {"receive": "milk", "rennet": "set", "set": "set", "cut": "cut"}
    told |= {"fill": "press", "store": "store", **changed}
    for row in found["steps"]:
        row["stage"] = told[row["key"]]
    return found


def test_a_recipe_says_which_stage_each_step_is_of(core):
    given = staged()
    assert check(core, given) == []
    told = stages(core, given["steps"])
    assert told == {row["key"]: row["stage"] for row in given["steps"]}


@pytest.mark.parametrize("path", SHIPPED, ids=lambda path: path.stem)
def test_our_recipes_name_every_stage_as_the_work_of_their_steps_would(core, path):
    given = json.loads(path.read_text("utf-8"))
    assert check(core, given) == []
    # A make that froze it before it named them shows the same band.
    assert stages(core, without(given["steps"])) == {
        row["key"]: row["stage"] for row in given["steps"]
    }


def test_without_stages_a_step_is_told_by_what_it_does(core):
    assert check(core, recipe()) == []
    assert stages(core, recipe()["steps"]) == {
        "receive": "milk",
        "heat": "heat",  # ends by the temperature of the milk
        "hold": "heat",
        "fans": "heat",  # says nothing: it goes on where the one before was
        "rennet": "set",  # the first that adds something
        "set": "set",
        "cut": "cut",  # in the vat, after flocculation
        "fill": "press",
        "store": "store",
    }


def test_what_does_nothing_known_is_of_the_milk(core):
    assert stages(core, [step("a"), step("b", ["a"])]) == {"a": "milk", "b": "milk"}


def test_a_stage_of_a_newer_app_is_told_by_the_work(core):
    given = [step("a", stage="milk"), step("b", ["a"], stage="smoke", place="store")]
    assert stages(core, given) == {"a": "milk", "b": "store"}


def problem(field, key, limit):
    return {"field": field, "key": key, "limit": limit}


def test_a_stage_that_is_not_known_is_refused(core):
    found = check(core, staged(cut="curdle"))
    assert found == [problem("steps.cut.stage", "unknown_stage", "curdle")]


def test_a_recipe_that_names_one_stage_names_them_all(core):
    given = recipe()
    for row in given["steps"][1:]:
        row["stage"] = "press"
    assert check(core, given) == [problem("steps.receive.stage", "missing", None)]


def test_no_step_is_of_an_earlier_stage_than_what_it_waits_on(core):
    found = check(core, staged(rennet="milk"))
    # It waits on the hold and on the fans, both of the heat.
    assert found == [
        problem("steps.rennet.stage", "stage_before", "hold"),
        problem("steps.rennet.stage", "stage_before", "fans"),
    ]


def test_steps_of_a_recipe_may_stand_in_any_order(core):
    given = staged()
    given["steps"] = given["steps"][::-1]
    assert check(core, given) == []


@pytest.mark.parametrize("after", [[["heat"]], "heat", [{"a": 1}], None])
def test_what_is_no_list_of_steps_is_told_once_and_breaks_nothing(core, after):
    given = staged()
    given["steps"][4]["after"] = after
    found = check(core, given)
    assert found
    assert {row["field"] for row in found} == {"steps.rennet.after"}
