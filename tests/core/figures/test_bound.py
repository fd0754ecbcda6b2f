"""A recipe names only sums that can answer, in the unit of the figure."""

import copy
import json

import pytest

from server.config import RECIPES_DIR
from tests.core.builders import MAKE, Phone, at

HOUSE = json.loads((RECIPES_DIR / "washed-wheel.json").read_text("utf-8"))


def step_of(recipe, key):
    return next(step for step in recipe["steps"] if step["key"] == key)


def problems(core, change):
    recipe = copy.deepcopy(HOUSE)
    change(recipe)
    return core("desk.recipes", "check_recipe", recipe)


def test_the_house_recipe_names_sums_that_can_answer(core):
    assert problems(core, lambda recipe: None) == []


@pytest.mark.parametrize("value", ["time_min", ["time_min", "time_s"]])
def test_a_value_that_the_sum_does_not_give_is_told_with_those_it_gives(core, value):
    def misspell(recipe):
        step_of(recipe, "heat")["lasts"]["by"]["value"] = value

    (problem,) = problems(core, misspell)
    assert problem["field"] == "steps.heat.lasts.by.value"
    assert (problem["key"], problem["value"]) == ("no_output", "time_min")
    assert "time_s" in problem["limit"]


def test_a_value_in_another_unit_is_told_with_the_unit_of_the_figure(core):
    def ask_for_salt(recipe):
        lasts = step_of(recipe, "brine_small")["lasts"]
        lasts["by"]["value"] = "salt_after_frac"

    assert problems(core, ask_for_salt) == [
        {
            "field": "steps.brine_small.lasts.by.value",
            "key": "output_unit",
            "value": "fraction",
            "limit": ["s"],
        }
    ]


def test_a_dose_may_be_weighed_or_measured_but_is_no_time(core):
    def ask_for_a_time(recipe):
        (rennet,) = [row for row in recipe["ingredients"] if row["key"] == "rennet"]
        rennet["dose"]["amount"]["by"] = {"sum": "cut_time", "value": "cut_s"}

    (problem,) = problems(core, ask_for_a_time)
    assert problem["field"] == "ingredients.rennet.dose.amount.by.value"
    assert (problem["value"], problem["limit"]) == (
        "s",
        ["g", "kg", "mL", "tablet"],
    )


def test_a_target_a_litre_of_milk_is_answered_for_the_whole_vat(core):
    (water,) = [
        row
        for row in step_of(HOUSE, "wash_1")["targets"]
        if row["quantity"] == "water_added_l"
    ]
    assert water["figure"]["unit"] == "L/L"
    assert water["figure"]["by"]["value"] == "water_l"  # [L]


def test_a_size_that_the_recipe_does_not_make_is_told_with_its_sizes(core):
    def ask_for_huge(recipe):
        targets = step_of(recipe, "press_1")["targets"]
        gauge = next(row for row in targets if row.get("size") == "small")
        gauge["figure"]["by"]["size"] = "huge"

    (problem,) = problems(core, ask_for_huge)
    assert (problem["key"], problem["value"]) == ("unknown_size", "huge")
    assert problem["limit"] == [mould["size"] for mould in HOUSE["moulds"]]


def test_a_make_that_was_opened_with_such_a_recipe_is_read_all_the_same(ask):
    recipe = copy.deepcopy(HOUSE)
    step_of(recipe, "heat")["lasts"]["by"]["value"] = "time_min"
    opened = Phone().opened(recipe=recipe)
    answers = ask.desk(("take", [opened]), ("step", MAKE, "heat", at(1)))
    assert answers[0]["problems"] == []
    assert answers[1]["lasts"]["origin"]["fell_back"] in ("missing", "not_told")


def test_a_figure_of_one_route_alone_is_looked_at_too(core):
    def misspell(recipe):
        own = step_of(recipe, "heat")["by_treatment"]["heat_treated"]
        own["lasts"] = copy.deepcopy(step_of(recipe, "heat")["lasts"])
        own["lasts"]["by"]["value"] = "time_min"

    (problem,) = problems(core, misspell)
    assert (problem["field"], problem["key"]) == (
        "steps.heat.lasts.by.value",
        "no_output",
    )
