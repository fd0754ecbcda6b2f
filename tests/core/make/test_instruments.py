"""Without its instrument no reading is asked for; another may stand in its place."""

import pytest

from tests.core.known.making import RECIPE, Make

STEPS = {step["key"]: step for step in RECIPE["steps"]}


def make(step="drain_1", **equipment):
    started = Make(step, equipment=equipment)
    if step != "starter":
        started.run("starter", 0, 5)
    return started.run(step, 100)


def shown(ask, made, at_min=101):
    seen = ask.view(made.events, at_min)
    (step,) = [row for row in seen["steps"] if row["key"] == made.step]
    return seen, step


def quantities(rows):
    return {row["quantity"] for row in rows}


def test_with_a_ph_meter_the_ph_is_asked_for_and_no_acidity(ask):
    for equipment in ({}, {"ph_meter": "yes"}):
        _, step = shown(ask, make(**equipment))
        assert "ph" in quantities(step["readings"])
        assert "titratable_acidity_frac" not in quantities(step["readings"])
        assert quantities(step["targets"]) == {"ph", "whey_drained_l"}


def test_without_a_ph_meter_the_acidity_is_asked_for_with_its_own_figure(ask):
    _, step = shown(ask, make(ph_meter="no"))
    assert step["button"] == {"act": "reading", "arg": "titratable_acidity_frac"}
    assert "ph" not in quantities(step["readings"])
    (target,) = [
        row for row in step["targets"] if row["quantity"] == "titratable_acidity_frac"
    ]
    # 11 to 15 degrees Dornic; a degree is 0.01 % (two dairy laboratory pages).
    assert (target["low"], target["high"]) == (0.0011, 0.0015)


@pytest.mark.parametrize(
    ("acidity", "key"), [(0.0010, "below"), (0.0013, None), (0.0016, "above")]
)
def test_the_acidity_is_judged_by_its_own_figure_and_never_by_a_ph(ask, acidity, key):
    made = make(ph_meter="no")
    made.read("titratable_acidity_frac", acidity, 101, step="drain_1")
    seen, step = shown(ask, made, 102)
    told = [row for row in seen["alerts"] if row["form"] == "acid"]
    assert [row["key"] for row in told] == (["alert.reading_" + key] if key else [])
    if key == "below":
        assert "separate lot" in told[0]["do"]["en"]
        assert told[0]["quantity"] == "titratable_acidity_frac"
    assert step["end_blockers"] == [{"key": "reading_missing", "arg": "whey_drained_l"}]


@pytest.mark.parametrize(
    "key", [key for key in STEPS if "ph" in quantities(STEPS[key].get("readings", []))]
)
def test_with_neither_no_step_demands_a_ph_or_an_acidity(ask, key):
    made = make(key, ph_meter="no", titration="no")
    _, step = shown(ask, made)
    asked = quantities(step["readings"]) | quantities(step["targets"])
    assert not asked & {"ph", "titratable_acidity_frac", "brine_ph"}
    assert {blocker["arg"] for blocker in step["end_blockers"]}.isdisjoint(
        {"ph", "titratable_acidity_frac"}
    )
    made.add("step_ended", 110, step=key)
    alerts = ask.view(made.events, 111)["alerts"]
    assert {row["quantity"] for row in alerts}.isdisjoint({"ph"})


def test_with_neither_it_is_said_once_that_the_make_goes_by_time(ask):
    made = make(ph_meter="no", titration="no")
    (told,) = [row for row in shown(ask, made)[0]["alerts"] if row["form"] == "acid"]
    assert (told["key"], told["level"]) == ("alert.acid_by_time", "check")
    made.add("alert_acknowledged", 102, alert=told["id"])
    made.add("step_ended", 103, step="drain_1").run("turn_2", 300)
    later = ask.view(made.events, 301)["alerts"]
    assert [row for row in later if row["form"] == "acid"] == []


def test_with_a_titration_alone_nothing_is_said(ask):
    seen, _ = shown(ask, make(ph_meter="no", titration="yes"))
    assert [row for row in seen["alerts"] if row["form"] == "acid"] == []


def test_a_meter_that_breaks_in_the_make_is_not_asked_for_from_then_on(ask):
    made = make()
    made.read("ph", 6.9, 101, step="drain_1").add("step_ended", 102, step="drain_1")
    made.run("turn_2", 300)
    made.add("equipment_set", 301, key="ph_meter", value="no")
    seen = ask.view(made.events, 302)
    (turn,) = [row for row in seen["steps"] if row["key"] == "turn_2"]
    assert "ph" not in quantities(turn["readings"])
    # What was read before stands, and so does what it says.
    told = [row["step"] for row in seen["alerts"] if row["form"] == "acid"]
    assert "drain_1" in told


def test_another_word_than_yes_or_no_is_refused(core):
    (problem,) = core("sums.equipment", "check_value", "ph_meter", "broken")
    assert problem == {
        "field": "ph_meter",
        "key": "not_a_choice",
        "limit": ["yes", "no"],
    }
    assert core("sums.equipment", "check_value", "titration", "no") == []


def test_a_reading_in_place_of_no_quantity_is_a_problem_of_the_recipe(core):
    recipe = {**RECIPE, "steps": [dict(step) for step in RECIPE["steps"]]}
    recipe["steps"][0]["readings"] = [
        {"quantity": "ph", "when": "begin", "instead_of": "taste"}
    ]
    recipe["steps"][0]["drift"] = []
    (problem,) = core("recipe.recipe", "check_recipe", recipe)
    assert problem["field"] == "steps.receive.readings.ph.instead_of"
    assert problem["key"] == "unknown_quantity"
