"""The check that every recipe passes before a make may follow it.

A recipe is data. The check finds what would leave a maker stranded at the vat:
a step that can never begin, an end that can never come, a figure without its
source, a text nobody can read. It reports all it finds at once, each with a
readable path such as "steps.heat.lasts.unit".
"""

from ..units.quantities import check_number
from .check.curve import check_curve
from .check.fields import check_form
from .check.gates import check_gates
from .check.routes import check_routes
from .check.sentences import check_sentences
from .checks import (
    DEEPEST,
    check_choice,
    check_count,
    check_key,
    check_keys,
    check_text,
    mappings,
    problem,
    too_much,
)
from .figures import check_figure, check_status, is_text
from .steps.steps import check_steps
from .treatments import check_treatments

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import Problem


SCHEMA = 1
MAX_BYTES = 262144  # in three languages; the recipe is frozen whole into each make

DOSE_UNITS = ("mL", "g", "kg", "pack")
DOSE_PER = {"kg_milk": "/kg", "l_milk": "/L", "make": ""}
# A wheel of nothing has no place in any sum.
MOULD_FIGURES = (
    ("wheel_kg", "kg", 0.001, 10000.0),
    ("diameter_m", "m", 0.001, 10.0),
    ("height_m", "m", 0.001, 10.0),
    ("share_frac", "fraction", 0.0, 1.0),
)
MOST_MILK_L = 1000000.0
MOST_DOSE = 1000000.0
# Named figures that a sum divides by, or that make a time.
FIGURE_RANGES = {"floc_factor": (0.1, 100.0)}


def check_recipe(recipe: "dict[str, Any]") -> "list[Problem]":
    """Return everything that is wrong with a recipe.

    Args:
        recipe: the recipe as received; JSON types only.

    Returns:
        List of {"field", "key", "limit"}; empty for a sound recipe. The key
        "circular_wait" has the steps of the circle as its limit.
    """
    if not isinstance(recipe, dict):
        return [problem("recipe", "not_a_mapping", None)]
    beyond = too_much(recipe, MAX_BYTES, DEEPEST)
    if beyond is not None:
        limit = MAX_BYTES if beyond == "too_large" else DEEPEST
        return [problem("recipe", beyond, limit)]
    problems = _check_head(recipe)
    sources = recipe.get("sources")
    if not isinstance(sources, dict):
        return problems + [problem("sources", "missing", None)]
    problems.extend(_check_sources(sources))
    milk = _check_milk(recipe.get("milk"), sources)
    problems.extend(milk)
    share = recipe.get("yield_frac")
    problems.extend(check_figure("yield_frac", share, sources, ["fraction"], 0.001, 1))
    problems.extend(_check_moulds(recipe, sources))
    ingredients, keys, wrong = _ingredients(recipe, sources)
    problems.extend(wrong)
    problems.extend(_check_figures(recipe.get("figures"), sources))
    steps = check_steps(recipe, keys)
    problems.extend(steps)
    if not milk:  # else no route can be told
        routes = check_routes(recipe, keys)
        problems.extend(each for each in routes if each not in steps)
    problems.extend(check_curve(recipe, sources))
    problems.extend(check_gates(recipe, _step_keys(recipe)))
    problems.extend(_never_added(recipe, ingredients))
    # Of a field that is wrong in its meaning, its kind need not be told too.
    told = [each["field"] for each in problems]
    problems.extend(each for each in check_form(recipe) if each["field"] not in told)
    sound: "Any" = recipe
    return problems or check_sentences(sound)


def _step_keys(recipe: "dict[str, Any]") -> "list[str]":
    steps = mappings("steps", recipe.get("steps"))[0]
    return [step["key"] for step in steps if is_text(step.get("key"))]


def _check_head(recipe: "dict[str, Any]") -> "list[Problem]":
    problems = []
    schema = recipe.get("schema")
    if schema is True or schema != SCHEMA:
        problems.append(problem("schema", "wrong_schema", SCHEMA))
    problems.extend(check_key("id", recipe.get("id")))
    problems.extend(check_count("version", recipe.get("version")))
    problems.extend(check_text("title", recipe.get("title")))
    if recipe.get("about") is not None:
        problems.extend(check_text("about", recipe["about"]))
    return problems


def _check_sources(sources: "dict[str, dict[str, Any]]") -> "list[Problem]":
    problems = []
    for key in sorted(sources):
        path = "sources." + key
        source = sources[key]
        if not isinstance(source, dict):
            problems.append(problem(path, "not_a_mapping", None))
            continue
        if not is_text(source.get("title")):
            problems.append(problem(path + ".title", "missing", None))
        problems.extend(check_status(path + ".status", source.get("status")))
    return problems


def _check_milk(milk: "Any", sources: "dict[str, dict[str, Any]]") -> "list[Problem]":
    if not isinstance(milk, dict):
        return [problem("milk", "missing", None)]
    problems = check_number("milk.low_l", milk.get("low_l"), 0, MOST_MILK_L)
    if not problems:
        low_l = milk["low_l"]
        problems = check_number("milk.high_l", milk.get("high_l"), low_l, MOST_MILK_L)
    if milk.get("fat_frac") is not None:
        field = "milk.fat_frac"
        fat = milk["fat_frac"]
        problems.extend(check_figure(field, fat, sources, ["fraction"], 0.0, 0.6))
    return problems + check_treatments(milk)


def _check_figures(
    figures: "Any", sources: "dict[str, dict[str, Any]]"
) -> "list[Problem]":
    if figures is None:
        return []
    if not isinstance(figures, dict):
        return [problem("figures", "not_a_mapping", None)]
    problems = []
    for name in sorted(figures):
        low, high = FIGURE_RANGES.get(name, (None, None))
        field = "figures." + name
        problems.extend(check_figure(field, figures[name], sources, None, low, high))
    return problems


def _check_moulds(
    recipe: "dict[str, Any]", sources: "dict[str, dict[str, Any]]"
) -> "list[Problem]":
    moulds, problems = mappings("moulds", recipe.get("moulds"))
    paths, _, key_problems = check_keys("moulds", moulds, "size")
    problems.extend(key_problems)
    total_frac = 0.0
    for path, mould in zip(paths, moulds):
        problems.extend(check_text(path + ".title", mould.get("title")))
        for name, unit, low, high in MOULD_FIGURES:
            field = path + "." + name
            figure = mould.get(name)
            problems.extend(check_figure(field, figure, sources, [unit], low, high))
        total_frac += _share_frac(mould)
    # Thirds are written 0.33, so the sum may miss one by a little.
    if moulds and not problems and abs(total_frac - 1.0) > 0.011:
        problems.append(problem("moulds", "shares_not_one", 1))
    return problems


def _share_frac(mould: "dict[str, Any]") -> float:
    share = mould.get("share_frac")
    value: "Any" = share.get("value") if isinstance(share, dict) else None
    return 0.0 if check_number("share_frac", value, None, None) else value


def _ingredients(
    recipe: "dict[str, Any]", sources: "dict[str, dict[str, Any]]"
) -> "tuple[list[dict[str, Any]], list[str], list[Problem]]":
    ingredients, problems = mappings("ingredients", recipe.get("ingredients"))
    paths, keys, key_problems = check_keys("ingredients", ingredients, "key")
    problems.extend(key_problems)
    for path, ingredient in zip(paths, ingredients):
        problems.extend(check_text(path + ".title", ingredient.get("title")))
        problems.extend(_check_dose(path, ingredient, sources))
    return ingredients, keys, problems


def _check_dose(
    path: str, ingredient: "dict[str, Any]", sources: "dict[str, dict[str, Any]]"
) -> "list[Problem]":
    unit = ingredient.get("unit")
    dose = ingredient.get("dose")
    problems = check_choice(path + ".unit", unit, DOSE_UNITS, "unknown_unit")
    if not isinstance(dose, dict):
        return problems + [problem(path + ".dose", "missing", None)]
    per = dose.get("per")
    problems.extend(check_choice(path + ".dose.per", per, DOSE_PER, "unknown"))
    units = None if problems else [str(unit) + DOSE_PER[str(per)]]
    field = path + ".dose.amount"
    amount = dose.get("amount")
    problems.extend(check_figure(field, amount, sources, units, 0.0, MOST_DOSE))
    if ingredient.get("tolerance_frac") is not None:
        field = path + ".tolerance_frac"
        problems.extend(check_number(field, ingredient["tolerance_frac"], 0, 1))
    return problems


def _never_added(
    recipe: "dict[str, Any]", ingredients: "list[dict[str, Any]]"
) -> "list[Problem]":
    added = []
    for step in mappings("steps", recipe.get("steps"))[0]:
        adds = step.get("adds")
        added.extend(adds if isinstance(adds, list) else [])
    return [
        problem("ingredients." + ingredient["key"], "never_added", None)
        for ingredient in ingredients
        if is_text(ingredient.get("key")) and ingredient["key"] not in added
    ]
