"""A whole make on a twin: its entries are the product's own, its people are late."""

import copy

import pytest

from server.core import desk
from server.core.log.kinds.table import KINDS
from server.core.numbers.refused import Refused
from server.core.recipe.route import route, taken, usual_options
from server.core.twin import play
from tests.core.twin.plays import (
    PLAN,
    SEED,
    SHORT,
    Screen,
    at_min,
    desk_of,
    entries,
    played,
    t_ms,
    truth,
    values,
    whole,
)
from tests.core.twin.twins import RECIPE, START_MS

HELPER = "0193a5b0-0000-7000-8000-00000000f002"


def steps_of(treatment):
    """Return the steps of a make: of its route, and of the options that are usual."""
    way = route(RECIPE, treatment)
    return taken(way, usual_options(way))["steps"]


@pytest.mark.parametrize("treatment", ["pasteurised", "heat_treated", "raw"])
def test_a_whole_make_is_taken_without_a_problem_and_every_step_ends(treatment):
    plan = {**PLAN, "treatment": treatment}
    made = play.play(RECIPE, {}, plan, SEED, START_MS, [])
    kept, problems = desk_of(made["events"])
    assert problems == []
    view = desk.view(kept, made["events"][0]["make"], t_ms(made["events"][-1]))
    assert {row["status"] for row in view["steps"]} == {"ended"}
    way = steps_of(treatment)
    assert [row["key"] for row in view["steps"]] == [step["key"] for step in way]


def test_a_maker_goes_the_recipes_usual_way_unless_told_another():
    plan = {**PLAN, "until": "rest"}
    del plan["treatment"]
    made = play.play(RECIPE, {}, plan, SEED, START_MS, [])
    assert entries(made, "make_opened")[0]["treatment"] == "heat_treated"


def test_the_phone_plays_the_same_make(core):
    plan = {**PLAN, "until": "drain_jacket"}
    made = core("twin.play", "play", SHORT, {}, plan, SEED, START_MS, [])
    here = played(until="drain_jacket")
    # To the last digit: no law of the twin may hang on an interpreter.
    assert made["events"] == here["events"]
    assert made["course"] == here["course"]
    assert entries(made, "step_ended")[-1] == {"step": "drain_jacket"}


def test_the_same_seed_is_the_same_make_and_another_is_not():
    first, again = played(until="rest"), played(until="rest")
    assert first["events"] == again["events"]
    other = played(until="rest", seed=4)
    assert [t_ms(row) for row in other["events"]] != [
        t_ms(row) for row in first["events"]
    ]


def test_entries_run_forwards_and_each_phone_counts_its_own():
    people = [{}, {"device": HELPER, "person": "help", "places": ["press", "brine"]}]
    made = played(setting={"people": people}, until="press_1")
    times = [t_ms(row) for row in made["events"]]
    assert times == sorted(times)
    for device in (HELPER, made["events"][0]["device"]):
        seqs = [row["seq"] for row in made["events"] if row["device"] == device]
        assert seqs == list(range(1, len(seqs) + 1))
    by_helper = {
        row["data"]["step"] for row in made["events"] if row["person"] == "help"
    }
    assert by_helper == {"press_1"}
    assert len({row["id"] for row in made["events"]}) == len(made["events"])


def test_a_make_without_faults_stays_near_its_recipe():
    made = whole()
    assert truth(made, "hold")["milk_c"] == pytest.approx(64.3, abs=1.0)
    assert min(values(made, "milk_temp_c", step="hold")) >= 63.0
    assert min(values(made, "air_space_temp_c", step="hold")) >= 65.8
    assert 30.0 <= truth(made, "ripen")["milk_c"] <= 33.0
    assert 33.5 <= truth(made, "wash_1")["milk_c"] <= 35.5
    assert 36.0 <= truth(made, "wash_2")["milk_c"] <= 38.0
    assert 5.2 <= truth(made, "unmould")["ph"] <= 5.5
    masses = truth(made, "unmould")["wheel_kg"]
    assert masses["large"] == pytest.approx(8.0, rel=0.05)
    assert masses["small"] == pytest.approx(1.4, rel=0.05)
    assert entries(made, "step_ended", why=play.ends.NOT_UP) == []
    for salt in made["course"][-1]["salt_frac"].values():
        assert 0.015 <= salt <= 0.022


def test_a_person_is_late_by_30_to_120_seconds():
    made = whole()
    waits = []
    for step in steps_of("pasteurised"):
        if len(step.get("after") or []) == 1:
            (before,) = step["after"]
            ended = at_min(made, "step_ended", before)
            waits.append(60 * (at_min(made, "step_begun", step["key"]) - ended))
    assert len(waits) > 25
    # Two steps at once are one pair of hands: the second comes when they are free.
    assert min(waits) >= 30.0
    assert sorted(waits)[len(waits) // 2] <= 120.0


def test_readings_come_at_the_recipe_s_intervals_a_little_late():
    rows = [
        row
        for row in whole()["events"]
        if row["kind"] == "reading_taken"
        and row["data"]["quantity"] == "milk_temp_c"
        and row["data"]["step"] == "hold"
    ]
    times = [t_ms(row) / 1000 for row in rows]
    gaps = [times[i + 1] - times[i] for i in range(len(times) - 2)]
    assert len(gaps) >= 4
    # Every two minutes, as the rule's own gap asks.
    assert all(120.0 <= gap <= 120.0 + 60.0 + 60.0 for gap in gaps)


def test_a_hold_lasts_from_its_first_hot_round():
    made = whole()
    held = at_min(made, "step_ended", "hold") - at_min(made, "step_begun", "hold")
    assert 30.0 <= held <= 34.0


def test_the_curd_is_cut_at_the_recipe_s_multiple():
    made = whole()
    rows = [row for row in made["events"] if row["kind"] == "curd_judged"]
    words = {}
    for row in rows:
        words.setdefault(row["data"]["judgement"], t_ms(row))
    (dose,) = [
        t_ms(row) for row in made["events"] if row["data"].get("ingredient") == "rennet"
    ]
    factor = (words["clean_break"] - dose) / (words["flocculated"] - dose)
    assert factor == pytest.approx(3.0, abs=0.3)


def test_wheels_that_the_recipe_coats_are_coated():
    wheels = whole()["twin"]["wheels"]
    assert [row["coated"] for row in wheels] == [True] * len(wheels) != []


def test_a_maker_does_what_the_screen_says():
    screen = Screen()
    made = played(told=screen, until="press_1")
    told = {(step, name): row for step, name, _, row in screen.asked if row}
    for step, name in (("rennet", "rennet"), ("starter", "starter")):
        (row,) = entries(made, "ingredient_added", ingredient=name)
        assert row["amount"] == told[step, name]["value"]
    assert ("hold", "lasts") in told
    (drained,) = values(made, "whey_drained_l", step="drain_1")
    assert drained == pytest.approx(told["drain_1", "whey_drained_l"]["value"], abs=10)


def test_a_delay_below_nothing_is_refused():
    with pytest.raises(Refused) as refused:
        played(setting={"people": [{"low_s": -5.0}]})
    assert str(refused.value) == "low_s -5.0 below 0.0"


@pytest.mark.parametrize(
    ("people", "words"),
    [
        ({"low_s": 90.0}, "usual_s 60.0 below 90.0"),
        ({"high_s": 50.0}, "high_s 50.0 below 60.0"),
        ({"clock_off_ms": 1.5}, "clock_off_ms 1.5 not_whole"),
        ({"mood": 1}, "mood 1 unknown_input"),
    ],
)
def test_people_who_cannot_be_are_refused(people, words):
    with pytest.raises(Refused) as refused:
        played(setting={"people": [people]})
    assert str(refused.value) == words


@pytest.mark.parametrize(
    ("setting", "plan", "faults", "words"),
    [
        ({"equipment": {"vat_l": 800.0}}, {}, [], "volume_l 1000.0 above 800.0"),
        ({}, {"milk_l": -3.0}, [], "milk_l -3.0 not_above 0.0"),
        ({}, {"milk_l": None}, [], "milk_l None missing"),
        ({}, {}, ["rain"], "faults 'rain' not_a_choice"),
    ],
)
def test_a_play_that_cannot_be_is_refused(setting, plan, faults, words):
    with pytest.raises(Refused) as refused:
        played(*faults, setting=setting, **plan)
    assert str(refused.value).startswith(words)


def test_only_kinds_that_the_log_knows_are_written():
    kinds = {row["kind"] for row in whole()["events"]}
    assert kinds <= set(KINDS)
    assert {"wheels_moulded", "wheel_turned", "curd_judged"} <= kinds


def test_the_recipe_is_not_changed_by_playing_it():
    before = copy.deepcopy(SHORT)
    played("hold_dips", until="drain_jacket")
    assert before == SHORT


def test_moulds_that_are_planned_are_filled():
    moulds = [{"size": "small", "count": 40}, {"size": "large", "count": 6}]
    made = played(moulds=moulds, until="fill_moulds")
    filled = entries(made, "wheels_moulded")
    assert [(row["size"], row["count"]) for row in filled] == [
        ("small", 40),
        ("large", 6),
    ]


def test_small_recipes_without_pressing_are_played_too():
    from tests.core.builders import recipe

    made = play.play(recipe(), {}, {"milk_l": 500.0}, 1, START_MS, [])
    assert len(entries(made, "step_ended")) == len(recipe()["steps"])
    assert made["twin"]["where"] == "wheels"
    assert desk_of(made["events"])[1] == []


def test_milk_that_never_sets_is_given_up_with_why():
    equipment = {"rennet_imcu_per_ml": 5.0}
    made = played(setting={"equipment": equipment}, until="set")
    assert entries(made, "step_ended", step="set") == [
        {"step": "set", "why": "It did not set."}
    ]


def test_practice_is_passed_on():
    made = played(practice=True, until="receive")
    assert made["events"][0]["data"]["practice"] is True
