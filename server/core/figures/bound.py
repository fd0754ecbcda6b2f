"""The check that each sum which a recipe names can answer its figure.

It is for a recipe that is written now, not for one that a make was opened with: sums
change over the years, and such a make must be read all the same. There the recipe's
own figure stands, and says why.
"""

from ..recipe.own import figure_at, ingredient, names
from ..recipe.route import route
from ..recipe.treatments import allowed
from ..sums.catalogue import find
from ..units.table import OF_ALL_MILK
from .figure import units_for

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Iterator
    from typing import Any

    from server.shapes.core.recipe import Binding, Recipe, RecipeStep
    from server.shapes.core.words import ValueProblem


def check_bound(recipe: "Recipe") -> "list[ValueProblem]":
    """Return what is wrong with the sums that are to answer figures of a recipe.

    Args:
        recipe: a sound recipe, see `recipe.check_recipe`.

    Returns:
        List of {"field", "key", "value", "limit"}; limit is what is allowed.
    """
    sizes = [mould["size"] for mould in recipe.get("moulds", [])]
    problems: "list[ValueProblem]" = []
    for field, by, units in _bindings(recipe):
        problems.extend(_check_outputs(field + ".value", by, units))
        size = by.get("size")
        if size is not None and size not in sizes:
            problems.append(_problem(field + ".size", "unknown_size", size, sizes))
    return problems


def _bindings(recipe: "Recipe") -> "Iterator[tuple[str, Binding, list[str]]]":
    """Give path, binding and units that fit of each figure that names a sum."""
    told: "list[tuple[str, Binding]]" = []
    for step in _steps(recipe):
        for name in names(step):
            figure = figure_at(recipe, step, name)
            field = _field(step, name)
            by = None if figure is None else figure.get("by")
            if figure is None or by is None or (field, by) in told:
                continue
            told.append((field, by))
            unit = OF_ALL_MILK.get(figure["unit"], figure["unit"])
            dosed = _dosed(recipe, name)
            yield field, by, units_for(name, unit if dosed is None else dosed)


def _steps(recipe: "Recipe") -> "Iterator[RecipeStep]":
    """Give the steps of each route: a figure of one may name a sum of its own."""
    for treatment in allowed(recipe):
        yield from route(recipe, treatment)["steps"]


def _dosed(recipe: "Recipe", name: str) -> "str | None":
    """Return the unit of the ingredient that a figure is the dose of, or None."""
    if not name.startswith("dose/"):
        return None
    dosed = ingredient(recipe, name[len("dose/") :])
    return None if dosed is None else dosed["unit"]


def _field(step: "RecipeStep", name: str) -> str:
    """Return where the binding of a figure stands, as `check_recipe` would say it."""
    kind, _, rest = name.partition("/")
    if kind == "dose":
        return "ingredients." + rest + ".dose.amount.by"
    within = {
        "lasts": "lasts",
        "end": "end." + rest,
        "turn": "turns." + rest + ".every",
        "target": "targets." + rest.replace("/", ".") + ".figure",
    }
    return "steps." + step["key"] + "." + within[kind] + ".by"


def _check_outputs(
    field: str, by: "Binding", units: "list[str]"
) -> "list[ValueProblem]":
    sum_row = find(by["sum"])
    outputs = {} if sum_row is None else _units_of(sum_row)
    wanted = by["value"] if isinstance(by["value"], list) else [by["value"]]
    problems: "list[ValueProblem]" = []
    for name in wanted:
        if name not in outputs:
            problems.append(_problem(field, "no_output", name, list(outputs)))
        elif outputs[name] not in units:
            problems.append(_problem(field, "output_unit", outputs[name], units))
    return problems


def _units_of(sum_row: "dict[str, Any]") -> "dict[str, str]":
    # One that is given in the unit that an input was typed in fits no figure.
    return {
        output["name"]: output["unit"]
        for output in sum_row["outputs"]
        if isinstance(output["unit"], str)
    }


def _problem(field: str, key: str, value: str, limit: "list[str]") -> "ValueProblem":
    return {"field": field, "key": key, "value": value, "limit": limit}
