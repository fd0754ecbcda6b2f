"""What a person has said of a figure, in an entry: it goes before sum and recipe."""

from ..log import run

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Context, Entry, State


DAY_S = 86400.0


def word_of(context: "Context", step: "RecipeStep", name: str) -> "float | None":
    """Return what a person has said that a figure shall be, or None.

    Who put the wheels of a brine step into a tank may have said for how many days.

    Args:
        context: see `context.of_make`.
        step: step of the recipe.
        name: name of the figure.
    """
    if name != "lasts" or step.get("place") != "brine":
        return None
    if context["facts"][step["key"]]["begun_ms"] is None:
        return None
    days = _days_in_tank(context, step.get("size"))
    return None if days is None else days * DAY_S


def _days_in_tank(context: "Context", size: "str | None") -> "float | None":
    newest = None
    for entry in _loads(context["desk"]["makes"], context["state"]["make"]):
        data = entry["data"]
        if size not in (None, data["size"]) or data.get("days") is None:
            continue
        if newest is None or entry["t_ms"] >= newest["t_ms"]:
            newest = entry
    return None if newest is None else newest["data"]["days"]


def _loads(makes: "dict[str, State]", make: str) -> "list[Entry]":
    """Return the entries by which wheels of a make went into tanks."""
    loads = []
    for stream in sorted(makes):
        if run.entries(makes[stream], "tank_opened"):
            for entry in run.entries(makes[stream], "tank_loaded"):
                if entry["data"]["load_make"] == make:
                    loads.append(entry)
    return loads
