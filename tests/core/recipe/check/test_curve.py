import copy
import json
from pathlib import Path

import pytest

FILE = Path(__file__).resolve().parents[4] / "server" / "recipes" / "washed-wheel.json"
RECIPE = json.loads(FILE.read_text("utf-8"))

# Hill and Ferrer, Cheese Making Technology e-Book, chapter 15, table of process
# control, Gouda: minutes from the starter, pH.
PRINTED = [(0, 6.60), (60, 6.55), (90, 6.45), (180, 6.35), (480, 5.40), (10080, 5.20)]
# Between the printed 8 h and week: ours, of wheels that stay in the press overnight.
AFTER_A_NIGHT = (18 * 60, 5.25)


def problems(core, **change):
    recipe = copy.deepcopy(RECIPE)
    recipe["curve"].update(change)
    return [
        (row["field"], row["key"])
        for row in core("recipe.recipe", "check_recipe", recipe)
    ]


def test_the_curve_is_the_printed_one():
    curve = RECIPE["curve"]
    times_min = [time_s / 60 for time_s in curve["times_s"]]
    points = list(zip(times_min, curve["phs"], strict=True))
    assert [point for point in points if point[0] != AFTER_A_NIGHT[0]] == PRINTED
    assert AFTER_A_NIGHT in points
    assert RECIPE["sources"][curve["source"]]["title"] == "hill_ferrer_process_table"


def test_a_recipe_needs_no_curve(core):
    recipe = {name: RECIPE[name] for name in RECIPE if name != "curve"}
    assert core("recipe.recipe", "check_recipe", recipe) == []


@pytest.mark.parametrize(
    ("change", "found"),
    [
        ({"start_step": "nowhere"}, ("curve.start_step", "unknown_step")),
        ({"source": "NONE"}, ("curve.source", "unknown_source")),
        ({"status": "sure"}, ("curve.status", "unknown_status")),
        ({"times_s": [0, 60]}, ("curve.phs", "wrong_count")),
        ({"times_s": [0]}, ("curve.times_s", "wrong_count")),
        ({"times_s": "none"}, ("curve.times_s", "not_a_list")),
        (
            {"times_s": [0, 60, 60], "phs": [6.6, 6.5, 6.4]},
            ("curve.times_s.2", "not_rising"),
        ),
        ({"times_s": [0, 60], "phs": [6.5, 6.6]}, ("curve.phs.1", "rises")),
        ({"times_s": [0, 60], "phs": [6.6, 15]}, ("curve.phs.1", "above")),
        ({"times_s": [0, 60], "phs": [6.6, True]}, ("curve.phs.1", "not_a_number")),
        ({"times_s": [0, 60], "phs": [6.6, 6.6]}, ("curve.phs", "never_falls")),
    ],
)
def test_a_curve_that_cannot_be_is_refused(core, change, found):
    assert problems(core, **change) == [found]


def test_a_curve_that_is_no_mapping_is_refused(core):
    recipe = dict(RECIPE, curve=[6.6, 6.5])
    found = core("recipe.recipe", "check_recipe", recipe)
    assert found == [{"field": "curve", "key": "not_a_mapping", "limit": None}]


def test_a_step_may_only_name_sums_that_there_are(core):
    recipe = copy.deepcopy(RECIPE)
    recipe["steps"][0]["sums"] = ["milk_mass", "tea_strength"]
    assert core("recipe.recipe", "check_recipe", recipe) == [
        {"field": "steps.receive.sums", "key": "unknown_sum", "limit": "tea_strength"}
    ]


def test_a_step_may_only_be_about_a_size_that_there_is(core):
    recipe = copy.deepcopy(RECIPE)
    recipe["steps"][0]["size"] = "huge"
    assert core("recipe.recipe", "check_recipe", recipe) == [
        {"field": "steps.receive.size", "key": "unknown_size", "limit": "huge"}
    ]


def test_the_keys_of_the_sums_are_those_of_the_catalogue(core):
    from server.core.recipe.sum_keys import SUM_KEYS

    layout = core("sums.catalogue", "layout")
    assert [row["key"] for row in layout] == list(SUM_KEYS)


def test_each_step_of_the_recipe_asks_for_sums_in_its_place(core):
    asked = {key for step in RECIPE["steps"] for key in step.get("sums", [])}
    assert {"heat_treatment", "acid_forecast", "wash_water", "brine_time"} <= asked
