"""All makes of a creamery together: the board, what clashes, how makes compare."""

from ..creamery.acts import acts as acts_of
from ..creamery.board import board as board_of
from ..creamery.kept import view as view_of
from ..log.apart import ask
from ..log.opening import recipe_of
from ..recipe.route import route

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

    from server.shapes.core.board import Act, Board, ClashesIf
    from server.shapes.core.recipe import Recipe, Treatment
    from server.shapes.core.state import Desk
    from server.shapes.core.trends import Chart
    from server.shapes.core.view import View


def board(desk: "Desk", now_ms: int, tz_min: int = 0) -> "Board":
    """Return the Board over all makes whose opening is known.

    Args:
        desk: Desk.
        now_ms: now, by the server's clock [ms].
        tz_min: the reader's time zone east of UTC [min].
    """
    views = _views(desk, now_ms)
    return board_of(desk, views, now_ms, _acts_ahead(desk, views, now_ms), tz_min)


def _views(desk: "Desk", now_ms: int) -> "list[View]":
    views = []
    for make_id in sorted(desk["makes"]):
        view = view_of(desk, make_id, now_ms)
        if view is not None:
            views.append(view)
    return views


def _acts_ahead(desk: "Desk", views: "list[View]", now_ms: int) -> "list[Act]":
    ahead: "list[Act]" = []
    for view in views:
        make_id = view["make"]["id"]
        ahead.extend(ask(desk, make_id, "acts", now_ms, _acts, desk, view) or [])
    return ahead


def _acts(desk: "Desk", view: "View") -> "list[Act] | None":
    """Return the acts of a View that its desk keeps; worked out once for each."""
    # Practice waits where there is real work.
    if not view["make"]["is_open"] or view["make"]["practice"]:
        return []
    make_id = view["make"]["id"]
    kept = desk.setdefault("acts", {})
    if make_id not in kept:
        recipe = recipe_of(desk["makes"][make_id])
        kept[make_id] = acts_of(view, recipe["steps"] if recipe else [])
    return kept[make_id]


def clashes_if(
    desk: "Desk",
    recipe: "Recipe",
    treatment: "Treatment",
    start_ms: int,
    now_ms: int,
) -> "ClashesIf":
    """Return what a make opened at an instant would clash with, and a better start.

    Args:
        desk: Desk.
        recipe: a sound recipe.
        treatment: how its milk would be treated.
        start_ms: when the make would be opened [ms].
        now_ms: now, by the server's clock [ms].

    Returns:
        {"clashes", "count", "better"}, see `clashes.clashes_if`.
    """
    from ..creamery.starts import clashes_if as would_clash

    ahead = _acts_ahead(desk, _views(desk, now_ms), now_ms)
    return would_clash(ahead, route(recipe, treatment), start_ms, now_ms)


def trends(desk: "Desk", recipe_id: str) -> "list[Chart]":
    """Return the charts of one recipe over its makes, see `trends.trends`.

    Args:
        desk: Desk.
        recipe_id: "id" of the recipe.
    """
    from ..creamery.trends import trends as charts

    def of_one(stream: str, question: "Callable[..., Any]", *args: "Any") -> "Any":
        return ask(desk, stream, "trends", None, question, *args)

    return charts(desk["makes"], recipe_id, of_one)
