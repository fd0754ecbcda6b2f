"""The check of a recipe's steps: what each asks for, and how it ends."""

from ..checks import (
    check_choice,
    check_count,
    check_keys,
    check_text,
    mappings,
    problem,
)
from ..figures import is_text
from ..hazards import HAZARDS
from ..sum_keys import SUM_KEYS
from .ends import check_end, check_lasts
from .judgements import check_judge
from .own_hold import check_own_hold
from .stages import STAGES
from .turns import check_turns
from .waits import check_circles, check_waits
from .wanted import check_readings, check_targets

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import Problem


MOST_ROUNDS = 1000
PLACES = ("tank", "vat", "table", "press", "brine", "store")
DRIFT_FORMS = (
    "time_late",
    "time_early",
    "temperature_low",
    "temperature_high",
    "acid_slow",
    "acid_stalled",
    "acid_fast",
    "quantity_low",
    "quantity_high",
    "record_missing",
)


def check_steps(recipe: "dict[str, Any]", ingredients: "list[str]") -> "list[Problem]":
    """Return everything that is wrong with the steps of a recipe.

    Args:
        recipe: the recipe; its sources are a mapping.
        ingredients: keys of the ingredients it defines.

    Returns:
        List of {"field", "key", "limit"}.
    """
    steps, problems = mappings("steps", recipe.get("steps"))
    if not steps:
        return problems + [problem("steps", "missing", None)]
    paths, keys, key_problems = check_keys("steps", steps, "key")
    problems.extend(key_problems)
    sources = recipe["sources"]
    for path, step in zip(paths, steps):
        problems.extend(_check_words(path, step))
        problems.extend(check_waits(path, step, keys))
        problems.extend(check_lasts(path, step, sources))
        problems.extend(check_end(path, step, recipe, keys))
        problems.extend(check_targets(path, step, sources))
        problems.extend(check_readings(path, step))
        problems.extend(_check_adds(path, step, ingredients))
        problems.extend(_check_choice(path, step))
        problems.extend(check_judge(path, step))
        problems.extend(_check_sums(path, step))
        problems.extend(_check_size(path, step, recipe))
        problems.extend(check_turns(path, step, sources))
        problems.extend(check_own_hold(path, step, sources))
        if step.get("mould") is True and not recipe.get("moulds"):
            problems.append(problem("moulds", "missing", None))
    problems.extend(_check_stages(paths, keys, steps))
    problems.extend(_check_closing(paths, steps))
    return problems + check_circles(steps, keys)


def _check_words(path: str, step: "dict[str, Any]") -> "list[Problem]":
    problems = check_text(path + ".title", step.get("title"))
    lines = step.get("do")
    if not isinstance(lines, list) or not lines:
        problems.append(problem(path + ".do", "missing", None))
    else:
        for index, line in enumerate(lines):
            problems.extend(check_text(path + ".do." + str(index), line))
    problems.extend(
        check_choice(path + ".place", step.get("place"), PLACES, "unknown_place")
    )
    problems.extend(_check_cautions(path, step))
    drift, drift_problems = mappings(path + ".drift", step.get("drift"))
    problems.extend(drift_problems)
    for index, remedy in enumerate(drift):
        field = path + ".drift." + str(index)
        form = remedy.get("form")
        problems.extend(check_choice(field + ".form", form, DRIFT_FORMS, "unknown"))
        problems.extend(check_text(field + ".do", remedy.get("do")))
        problems.extend(_check_matter(field + ".quantity", remedy, step))
    for name in ("round", "rounds"):
        if step.get(name) is not None:
            problems.extend(check_count(path + "." + name, step[name], MOST_ROUNDS))
    return problems


def _check_matter(
    field: str, remedy: "dict[str, Any]", step: "dict[str, Any]"
) -> "list[Problem]":
    """Return what is wrong with what a remedy is for: its step reads or adds it."""
    if remedy.get("quantity") is None:
        return []
    adds = step.get("adds")
    known: "list[Any]" = list(adds) if isinstance(adds, list) else []
    for name in ("targets", "readings"):
        known.extend(row.get("quantity") for row in mappings("", step.get(name))[0])
    return check_choice(field, remedy["quantity"], known, "unknown")


def _check_cautions(path: str, step: "dict[str, Any]") -> "list[Problem]":
    problems: "list[Problem]" = []
    cautions = step.get("cautions")
    for hazard in cautions if isinstance(cautions, list) else []:
        field = path + ".cautions"
        problems.extend(check_choice(field, hazard, HAZARDS, "unknown_caution"))
    own, own_problems = mappings(path + ".own_cautions", step.get("own_cautions"))
    problems.extend(own_problems)
    for index, row in enumerate(own):
        hazard, field = row.get("hazard"), path + ".own_cautions." + str(index)
        problems.extend(
            check_choice(field + ".hazard", hazard, HAZARDS, "unknown_caution")
        )
        problems.extend(check_text(field + ".do", row.get("do")))
    return problems


def _check_choice(path: str, step: "dict[str, Any]") -> "list[Problem]":
    """Check that an option names its choice, and a choice its option."""
    for one, other in (("choice", "option"), ("option", "choice")):
        if step.get(one) is not None and not is_text(step.get(other)):
            return [problem(path + "." + other, "missing", None)]
    return []


def _check_adds(
    path: str, step: "dict[str, Any]", ingredients: "list[str]"
) -> "list[Problem]":
    adds = step.get("adds")
    problems = []
    for key in adds if isinstance(adds, list) else []:
        field = path + ".adds"
        problems.extend(check_choice(field, key, ingredients, "unknown_ingredient"))
    return problems


def _check_sums(path: str, step: "dict[str, Any]") -> "list[Problem]":
    names = step.get("sums")
    if names is None:
        return []
    field = path + ".sums"
    if not isinstance(names, list):
        return [problem(field, "not_a_list", None)]
    problems = []
    for name in names:
        problems.extend(check_choice(field, name, SUM_KEYS, "unknown_sum"))
    return problems


def _check_size(
    path: str, step: "dict[str, Any]", recipe: "dict[str, Any]"
) -> "list[Problem]":
    """Check which size of wheel a step is about, where it is about one only."""
    if step.get("size") is None:
        return []
    moulds = mappings("moulds", recipe.get("moulds"))[0]
    sizes = [mould["size"] for mould in moulds if is_text(mould.get("size"))]
    return check_choice(path + ".size", step["size"], sizes, "unknown_size")


def _check_stages(
    paths: "list[str]", keys: "list[str]", steps: "list[dict[str, Any]]"
) -> "list[Problem]":
    """Check that all steps name their stage or none, and that none goes back."""
    if all(step.get("stage") is None for step in steps):
        return []
    problems = []
    for path, step in zip(paths, steps):
        field = path + ".stage"
        problems.extend(check_choice(field, step.get("stage"), STAGES, "unknown_stage"))
    if problems:
        return problems
    # Steps may stand in any order; a day runs by what waits on what.
    at = {key: STAGES.index(step["stage"]) for key, step in zip(keys, steps)}
    for path, of_step, step in zip(paths, keys, steps):
        after = step.get("after")
        for key in after if isinstance(after, list) else []:
            if is_text(key) and at.get(key, 0) > at[of_step]:
                problems.append(problem(path + ".stage", "stage_before", key))
    return problems


def _check_closing(
    paths: "list[str]", steps: "list[dict[str, Any]]"
) -> "list[Problem]":
    closing = [path for path, step in zip(paths, steps) if step.get("closes_day")]
    return [problem(path + ".closes_day", "more_than_one", 1) for path in closing[1:]]
