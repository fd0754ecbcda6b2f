"""Coat or wax: chosen at the opening or the step; the other's are not in the way."""

import copy

import pytest

from tests.core.known.making import RECIPE, Make

COAT, WAX = ("coat_1", "coat_2"), ("wax",)


def dried(**body):
    """Return a make whose wheels are dry; all before is skipped."""
    make = Make("dry", **body)
    for step in RECIPE["steps"]:
        if step["key"] in (*COAT, *WAX, "store"):
            break
        make.add("step_skipped", 1, step=step["key"], why="Test.")
    return make


def statuses(ask, make, at_min):
    steps = ask.view(make.events, at_min)["steps"]
    return {row["key"]: row["status"] for row in steps}


def test_until_one_has_begun_both_stand_ready(ask):
    told = statuses(ask, dried(), 2)
    assert (told["coat_1"], told["wax"], told["store"]) == ("ready", "ready", "waiting")


@pytest.mark.parametrize(("one", "others"), [(COAT, WAX), (WAX, COAT)])
def test_the_one_that_begins_leaves_the_other_out(ask, one, others):
    make = dried()
    for index, key in enumerate(one):
        make.run(key, 10 + 10 * index, 15 + 10 * index)
        told = statuses(ask, make, 16 + 10 * index)
        assert not set(others) & set(told)
    assert told["store"] == "ready"


def test_a_begin_that_is_struck_gives_both_back(ask):
    make = dried().run("wax", 10)
    begun = make.events[-1]["id"]
    assert "coat_1" not in statuses(ask, make, 11)
    strike = make.phone.event("entry_struck", 12, ref=begun, why="Typed wrong.")
    make.events.append(strike)
    told = statuses(ask, make, 13)
    assert (told["coat_1"], told["wax"]) == ("ready", "ready")


def test_two_phones_that_choose_otherwise_keep_the_earlier(ask):
    make = dried().run("wax", 10, 20).run("coat_1", 12)
    told = statuses(ask, make, 21)
    assert "coat_1" not in told
    assert (told["wax"], told["store"]) == ("ended", "ready")


@pytest.mark.parametrize(
    ("option", "one", "others"), [("coat", COAT, WAX), ("wax", WAX, COAT)]
)
def test_what_is_chosen_at_the_opening_leaves_the_other_out(ask, option, one, others):
    make = dried(options={"rind": option})
    told = statuses(ask, make, 2)
    assert not set(others) & set(told)
    assert told[one[0]] == "ready"
    for index, key in enumerate(one):
        make.run(key, 10 + 10 * index, 15 + 10 * index)
    assert statuses(ask, make, 40)["store"] == "ready"


def test_a_step_that_has_begun_outweighs_what_was_meant(ask):
    # As from a phone that did not know of the opening yet.
    make = dried(options={"rind": "coat"}).run("wax", 10, 20)
    told = statuses(ask, make, 21)
    assert "coat_1" not in told
    assert (told["wax"], told["store"]) == ("ended", "ready")


def test_an_opening_that_leaves_it_open_is_as_before(ask):
    told = statuses(ask, dried(options={}), 2)
    assert (told["coat_1"], told["wax"]) == ("ready", "ready")


@pytest.mark.parametrize(
    ("options", "field", "key", "limit"),
    [
        ({"rind": "paint"}, "options.rind", "not_a_choice", ["coat", "wax"]),
        ({"colour": "wax"}, "options.colour", "not_a_choice", []),
        ("wax", "options", "not_a_mapping", None),
        ({str(n): "wax" for n in range(21)}, "options", "too_many", 20),
    ],
)
def test_an_option_that_the_recipe_does_not_have_is_refused(
    ask, options, field, key, limit
):
    events = Make("dry", options=options).events
    (problem,) = ask.desk(("take", events))[0]["problems"]
    assert problem["why"] == [{"field": field, "key": key, "limit": limit}]


def test_the_opening_offers_each_choice_with_the_usual_option_first(core):
    for treatment in ("raw", "pasteurised"):
        (choice,) = core("desk.openings", "options", RECIPE, treatment)
        assert choice["choice"] == "rind"
        assert [one["option"] for one in choice["options"]] == ["coat", "wax"]
        assert choice["options"][1]["title"]["en"] == "Wax the wheels"
    plain = copy.deepcopy(RECIPE)
    for row in plain["steps"]:
        row.pop("choice", None)
        row.pop("option", None)
    assert core("desk.openings", "options", plain, "raw") == []


@pytest.mark.parametrize(("lacks", "has"), [("option", "choice"), ("choice", "option")])
def test_half_a_choice_is_a_problem_of_the_recipe(core, lacks, has):
    recipe = copy.deepcopy(RECIPE)
    (wax,) = [row for row in recipe["steps"] if row["key"] == "wax"]
    assert wax.pop(lacks)
    assert wax[has]
    (problem,) = core("recipe.recipe", "check_recipe", recipe)
    assert problem == {"field": "steps.wax." + lacks, "key": "missing", "limit": None}
