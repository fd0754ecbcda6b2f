"""Recipes: read them, and add a version."""

from typing import Any

from flask import Response, jsonify

from server.api.body import Blueprint, read_body, text_problems
from server.api.errors import error_answer
from server.api.guard import paired, require
from server.auth import RefusedError
from server.config import now_ms
from server.core.desk.recipes import check_recipe
from server.core.log.rights.roles import ACTS
from server.shapes import recipes as shapes
from server.store.recipes import find_recipe, newest_recipes, store_recipe

ID = "<string(maxlength=60):recipe_id>"

blp = Blueprint("recipes", __name__, description="Recipes, each version for ever")


@blp.get("/recipes")
@blp.response(200, shapes.RecipeTitle(many=True))
def list_recipes() -> list[dict[str, Any]]:
    """List the recipes, each in its newest version."""
    names = ("id", "version", "title", "about")
    return [{name: recipe[name] for name in names} for recipe in newest_recipes()]


@blp.get(f"/recipes/{ID}")
@blp.response(200)
def show_newest(recipe_id: str) -> Response:
    """Give a recipe in its newest version. 404 when there is none."""
    return _show(recipe_id, None)


@blp.get(f"/recipes/{ID}/<int(max=1000000):version>")
@blp.response(200)
def show_version(recipe_id: str, version: int) -> Response:
    """Give a recipe in one version. 404 when there is none."""
    return _show(recipe_id, version)


def _show(recipe_id: str, version: int | None) -> Response:
    recipe = find_recipe(recipe_id, version)
    if recipe is None:
        raise RefusedError("unknown_recipe", "id")
    return jsonify(recipe)


@blp.post("/recipes")
@require(ACTS["recipes"])
@blp.doc(
    requestBody={
        "required": True,
        "content": {"application/json": {"schema": {"type": "object"}}},
    }
)
@blp.response(201)
@blp.alt_response(422, schema=shapes.UnsoundAnswer)
def add_recipe() -> Any:
    """Keep a recipe as a new version, the number of which the server gives.

    Older versions stay, and running makes keep the one they were opened with.
    422 with all that is wrong when a make could not follow it; 403 unless a
    maker or the owner asks. A recipe that is already the newest is not kept
    twice.
    """
    recipe = read_body()
    # The number is the server's to give, so the one that was sent is not read.
    if isinstance(recipe, dict):
        recipe = {**recipe, "version": 1}
    problems = text_problems(recipe) or check_recipe(recipe)
    if problems:
        first = problems[0]
        return error_answer(
            422, "unsound_recipe", first["field"], first["limit"], problems=problems
        )
    return jsonify(store_recipe(recipe, now_ms(), paired().person.id)), 201
