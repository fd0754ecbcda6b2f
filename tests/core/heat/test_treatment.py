"""How a make's milk is treated: chosen at its opening, changed by a maker with why."""

import pytest

from tests.core.builders import MAKE, Phone, at, recipe, three_ways
from tests.core.heat.holding import hold_recipe
from tests.core.heat.ways import OPENED, RULES, Way


def keys(view):
    return [step["key"] for step in view["steps"]]


def test_a_make_has_the_steps_of_its_own_way_only(ask):
    assert "mark" in keys(Way("pasteurised").view(ask))
    assert "mark" not in keys(Way("heat_treated").view(ask))
    assert keys(Way("raw").view(ask))[1:3] == ["warm", "rennet"]


def test_who_says_nothing_means_the_usual_way_of_the_recipe(ask):
    milk = Way(None).milk(ask)
    assert milk["treatment"]["treatment"] == milk["treatment"]["usual"]
    assert milk["treatment"]["treatment"] == "heat_treated"


@pytest.mark.parametrize("heat_class", [None, "pasteurised"])
def test_an_old_make_shows_and_closes_as_before(ask, heat_class):
    found = hold_recipe()
    if heat_class:
        found["milk"]["heat_class"] = heat_class
    phone = Phone()
    events = [phone.opened(recipe=found), phone.event("step_begun", 1, step="hold")]
    events.append(phone.event("make_closed", 9, why="Over."))
    told = ask.desk(("set_rules", RULES), ("take", events), ("view", MAKE, at(10)))
    assert told[1]["problems"] == []
    assert keys(told[2]) == [step["key"] for step in recipe()["steps"]]
    assert told[2]["make"]["state"] == "closed"
    treatment = told[2]["make"]["milk"]["treatment"]
    assert (treatment["treatment"], treatment["others"]) == ("pasteurised", [])


def test_an_opening_for_what_the_recipe_has_no_way_is_refused(core):
    phone = Phone()
    body = {**OPENED, "recipe": hold_recipe(), "treatment": "raw"}
    problems = core("desk", "check_new", phone.event("make_opened", 0, **body))
    assert problems == [
        {"field": "treatment", "key": "treatment_not_allowed", "limit": ["pasteurised"]}
    ]
    body = {**body, "recipe": three_ways(), "treatment": "boiled"}
    (problem,) = core("desk", "check_new", phone.event("make_opened", 0, **body))
    assert (problem["field"], problem["key"]) == ("treatment", "not_a_choice")


def test_a_change_is_a_makers_with_why(core):
    event = Phone().event("treatment_changed", 5, treatment="raw", why="No steam.")
    assert core("desk", "check", event, "maker") == []
    (problem,) = core("desk", "check", event, "helper")
    assert (problem["key"], problem["limit"]) == ("not_allowed", "maker")
    del event["data"]["why"]
    (problem,) = core("desk", "check", event, "maker")
    assert (problem["field"], problem["key"]) == ("why", "missing")


def test_a_change_leads_on_by_the_other_way_and_loses_nothing(ask):
    way = Way("pasteurised").held(20)
    mark = way.add("step_begun", 40, step="mark", why="Early.")
    way.change(60, "heat_treated")
    view = way.view(ask)
    assert "mark" not in keys(view)
    said = view["make"]["milk"]["treatment"]
    assert said["was_changed"]
    assert (said["said"]["by"], said["said"]["why"]) == ("ida", "The chart is broken.")
    # What was done of it is done: the hold is over on this way too.
    assert view["steps"][keys(view).index("hold")]["status"] == "ended"
    lines = {row["id"]: row for row in way.asked(ask, ("record", MAKE))}
    assert lines[mark["id"]]["leads_nowhere"] == {
        "key": "other_route",
        "title": {"en": "mark"},
    }
    others = [row for row in lines.values() if row["id"] != mark["id"]]
    assert {row["leads_nowhere"] is None for row in others} == {True}


def test_the_newest_word_holds_and_one_struck_out_does_not(ask):
    way = Way("pasteurised")
    way.change(5, "heat_treated")
    last = way.change(6, "raw")
    assert way.milk(ask)["treatment"]["treatment"] == "raw"
    way.add("entry_struck", 7, last["id"], why="A slip.")
    assert way.milk(ask)["treatment"]["treatment"] == "heat_treated"


def test_an_opening_put_right_is_another_way(ask):
    way = Way("pasteurised")
    first = way.events[0]["id"]
    change = {"treatment": "raw"}
    way.add("entry_corrected", 5, first, set=change, why="A slip.")
    assert "warm" in keys(way.view(ask))


def test_a_word_that_the_recipe_has_no_way_for_stays_in_the_record(ask):
    found = three_ways()
    found["milk"]["treatments"] = ["pasteurised", "heat_treated"]
    found["steps"] = [row for row in found["steps"] if row["key"] != "warm"]
    next(row for row in found["steps"] if row["key"] == "rennet")["after"] = ["fans"]
    way = Way("pasteurised", found)
    change = way.change(5, "raw")
    assert way.milk(ask)["treatment"]["treatment"] == "pasteurised"
    lines = {row["id"]: row for row in way.asked(ask, ("record", MAKE))}
    assert lines[change["id"]]["leads_nowhere"]["key"] == "no_route"


def tapped(ask, way, treatment, minute=600):
    event = way.phone.event("treatment_changed", minute, treatment=treatment, why="So.")
    question = ("tap", event, ["maker"], MAKE, at(minute))
    return way.asked(ask, question)["problems"]


def test_a_tap_for_raw_is_refused_once_the_milk_was_held_hot(ask):
    way = Way()
    assert tapped(ask, way, "raw", 9) == []
    way.held(16)
    (problem,) = tapped(ask, way, "raw")
    assert problem == {"field": "treatment", "key": "milk_was_heated", "limit": at(10)}
    assert tapped(ask, way, "pasteurised") == []
    (other,) = [
        row for row in way.milk(ask)["treatment"]["others"] if row["treatment"] == "raw"
    ]
    assert other["problem"] == problem


def test_a_tap_for_what_it_is_already_is_refused(ask):
    (problem,) = tapped(ask, Way(), "heat_treated", 9)
    assert problem["key"] == "treatment_is_the_same"


def test_the_choice_begins_with_the_usual_way(core):
    assert core("desk", "treatments", three_ways()) == [
        "heat_treated",
        "pasteurised",
        "raw",
    ]
    assert core("desk", "treatments", recipe()) == ["pasteurised"]
