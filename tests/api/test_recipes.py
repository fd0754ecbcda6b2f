import json

import pytest

from server.config import RECIPES_DIR
from server.core.recipe.recipe import check_recipe
from tests.core import builders


def own(**changed):
    return builders.recipe() | {"id": "own-wheel", "version": 1} | changed


def problems(answer):
    assert answer.status_code == 422, answer.text
    return {(row["field"], row["key"]): row["limit"] for row in answer.json["problems"]}


def test_the_recipe_of_the_builders_is_sound():
    assert check_recipe(own()) == []


def test_bundled_recipes_are_there_from_the_start(paired):
    bundled = [json.loads(file.read_text()) for file in RECIPES_DIR.glob("*.json")]
    assert bundled
    listed = {row["id"]: row for row in paired.get("/recipes").json}
    for recipe in bundled:
        assert set(listed[recipe["id"]]) == {"id", "version", "title", "about"}
        given = paired.get(f"/recipes/{recipe['id']}").json
        assert given | {"version": 0} == recipe | {"version": 0}
        assert given["version"] == listed[recipe["id"]]["version"]


def test_a_new_version_gets_its_number_here_and_leaves_the_old_one(paired):
    first = paired.post("/recipes", own(version=1))
    assert (first.status_code, first.json["version"]) == (201, 1)
    changed = own(version=1, title={"en": "Own wheel, longer"})
    assert paired.post("/recipes", changed).json["version"] == 2
    assert paired.get("/recipes/own-wheel").json["title"] == changed["title"]
    assert paired.get("/recipes/own-wheel/1").json == own()
    assert paired.get("/recipes/own-wheel/2").json == changed | {"version": 2}


def test_the_same_recipe_sent_twice_is_kept_once(paired):
    paired.post("/recipes", own())
    assert paired.post("/recipes", own()).json["version"] == 1
    assert paired.get("/recipes/own-wheel/2").status_code == 404


def test_going_back_to_an_older_recipe_is_a_version_of_its_own(paired):
    paired.post("/recipes", own())
    paired.post("/recipes", own(title={"en": "Other"}))
    assert paired.post("/recipes", own()).json["version"] == 3


@pytest.mark.parametrize("role", ["viewer", "helper"])
def test_only_makers_and_the_owner_may_add_one(pair, role):
    answer = pair(role).post("/recipes", own())
    assert (answer.status_code, answer.json["error"]["key"]) == (403, "role_too_low")
    reader = pair("viewer", "Eve")
    assert reader.get("/recipes/own-wheel").status_code == 404
    assert reader.get("/recipes").status_code == 200


def test_recipes_are_for_paired_phones_only(client):
    assert client.get("/api/v1/recipes").status_code == 401


def test_a_figure_without_its_unit_is_named_by_its_place(paired):
    recipe = own()
    step = next(row for row in recipe["steps"] if row["lasts"])
    del step["lasts"]["unit"]
    found = problems(paired.post("/recipes", recipe))
    assert any(field == f"steps.{step['key']}.lasts.unit" for field, _ in found), found
    assert paired.get("/recipes/own-wheel").status_code == 404


def test_steps_that_wait_on_each_other_are_named(paired):
    recipe = own()
    first, second = recipe["steps"][:2]
    first["after"] = [second["key"]]
    found = problems(paired.post("/recipes", recipe))
    assert found[("steps", "circular_wait")] == [first["key"], second["key"]]


def test_all_problems_are_told_at_once_and_the_first_as_the_error(paired):
    recipe = own(title={}, yield_frac=None)
    answer = paired.post("/recipes", recipe)
    assert len(problems(answer)) >= 2
    error = answer.json["error"]
    assert error["key"] == "unsound_recipe"
    assert error["field"] == answer.json["problems"][0]["field"]


@pytest.mark.parametrize("body", [[], "x", 3, None])
def test_something_else_is_no_recipe(paired, body):
    assert problems(paired.post("/recipes", body)) == {
        ("recipe", "not_a_mapping"): None
    }


@pytest.mark.parametrize("path", ["nothing", "washed-wheel/999999", "nothing/1"])
def test_an_unknown_recipe_or_version_is_not_found(paired, path):
    answer = paired.get(f"/recipes/{path}")
    assert (answer.status_code, answer.json["error"]["key"]) == (404, "unknown_recipe")


def test_a_recipe_that_asks_a_sum_for_what_it_does_not_give_is_refused(paired):
    recipe = own()
    (heat,) = [step for step in recipe["steps"] if step["key"] == "heat"]
    heat["lasts"]["by"] = {"sum": "heat_time", "value": "time_min"}
    answer = paired.post("/recipes", recipe)
    told = problems(answer)
    assert list(told) == [("steps.heat.lasts.by.value", "no_output")]
    (problem,) = answer.json["problems"]
    assert problem["value"] == "time_min"
    assert "time_s" in problem["limit"]
