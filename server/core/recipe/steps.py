"""The check of a recipe's steps: what each asks for, and how it ends."""

from ..units.quantities import QUANTITIES, check_number
from ..units.table import OF_ALL_MILK
from .checks import check_choice, check_count, check_keys, check_text, mappings, problem
from .figures import check_figure, is_text
from .sum_keys import SUM_KEYS
from .turns import LONGEST_S, check_turns
from .waits import circular_waits

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import Problem


MOST_ROUNDS = 1000
PLACES = ("tank", "vat", "table", "press", "brine", "store")
CAUTIONS = (
    "scald",
    "steam",
    "hot_water",
    "moving_parts",
    "chemical",
    "lifting",
    "pinch",
    "wet_floor",
)
ENDS = ("person", "time", "reading", "judged", "floc")
READING_TIMES = ("begin", "during", "end")
DRIFT_FORMS = (
    "time_late",
    "time_early",
    "temperature_low",
    "temperature_high",
    "acid_slow",
    "acid_fast",
    "quantity_low",
    "quantity_high",
    "record_missing",
)
# The words of an event's judgement, too: the table of events reads them here.
JUDGEMENTS = (
    "not_flocculated",
    "flocculated",
    "soft",
    "clean_break",
    "past_it",
    "uneven",
    "even",
    "not_knitted",
    "knitted",
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
        problems.extend(_check_waits(path, step, keys))
        problems.extend(_check_lasts(path, step, sources))
        problems.extend(_check_end(path, step, recipe, keys))
        problems.extend(_check_targets(path, step, sources))
        problems.extend(_check_readings(path, step))
        problems.extend(_check_adds(path, step, ingredients))
        problems.extend(_check_judge(path, step))
        problems.extend(_check_sums(path, step))
        problems.extend(_check_size(path, step, recipe))
        problems.extend(check_turns(path, step, sources))
        if step.get("mould") is True and not recipe.get("moulds"):
            problems.append(problem("moulds", "missing", None))
    problems.extend(_check_closing(paths, steps))
    return problems + _check_circles(steps, keys)


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
    cautions = step.get("cautions")
    for caution in cautions if isinstance(cautions, list) else []:
        field = path + ".cautions"
        problems.extend(check_choice(field, caution, CAUTIONS, "unknown_caution"))
    drift, drift_problems = mappings(path + ".drift", step.get("drift"))
    problems.extend(drift_problems)
    for index, row in enumerate(drift):
        field = path + ".drift." + str(index)
        form = row.get("form")
        problems.extend(check_choice(field + ".form", form, DRIFT_FORMS, "unknown"))
        problems.extend(check_text(field + ".do", row.get("do")))
    for name in ("round", "rounds"):
        if step.get(name) is not None:
            problems.extend(check_count(path + "." + name, step[name], MOST_ROUNDS))
    return problems


def _before(step: "dict[str, Any]") -> "list[str]":
    after = step.get("after")
    return [key for key in after if is_text(key)] if isinstance(after, list) else []


def _check_waits(
    path: str, step: "dict[str, Any]", keys: "list[str]"
) -> "list[Problem]":
    if not isinstance(step.get("after"), list):
        return [problem(path + ".after", "not_a_list", None)]
    return [
        problem(path + ".after", "unknown_step", key)
        for key in step["after"]
        if key not in keys
    ]


def _check_circles(steps: "list[dict[str, Any]]", keys: "list[str]") -> "list[Problem]":
    # Of two steps with one key the first counts; the second is reported already.
    waits = {}
    order = []
    for key, step in zip(keys, steps):
        if key not in waits:
            waits[key] = _before(step)
            order.append(key)
    return [
        problem("steps", "circular_wait", circle)
        for circle in circular_waits(waits, order)
    ]


def _check_lasts(
    path: str, step: "dict[str, Any]", sources: "dict[str, Any]"
) -> "list[Problem]":
    field = path + ".lasts"
    lasts = step.get("lasts")
    if lasts is None:
        return []
    problems = check_figure(field, lasts, sources, ["s"], 0, LONGEST_S)
    if step.get("heat_treatment") and isinstance(lasts, dict) and lasts.get("by"):
        # How long a hold lasts is the rule's and the recipe's word, no sum's.
        problems.append(problem(field + ".by", "unknown_field", None))
    return problems


def _check_end(
    path: str, step: "dict[str, Any]", recipe: "dict[str, Any]", keys: "list[str]"
) -> "list[Problem]":
    end = step.get("end")
    field = path + ".end"
    if not isinstance(end, dict):
        return [problem(field, "missing", None)]
    problems = check_choice(field + ".by", end.get("by"), ENDS, "unknown_end")
    if problems:
        return problems
    if end["by"] == "time" and step.get("lasts") is None:
        return [problem(path + ".lasts", "missing", None)]
    if end["by"] == "reading":
        return _check_end_reading(field, end, recipe["sources"])
    if end["by"] == "judged":
        return _check_judgements(field + ".judgement", end.get("judgement"))
    if end["by"] == "floc":
        return _check_end_floc(field, end, recipe, keys)
    return []


def _check_end_reading(
    field: str, end: "dict[str, Any]", sources: "dict[str, dict[str, Any]]"
) -> "list[Problem]":
    problems = _check_quantity(field + ".quantity", end.get("quantity"))
    units = None if problems else _target_units(end["quantity"])
    given = [name for name in ("at_least", "at_most") if end.get(name) is not None]
    if not given:
        return problems + [problem(field + ".at_least", "missing", None)]
    for name in given:
        problems.extend(check_figure(field + "." + name, end[name], sources, units))
    return problems


def _check_end_floc(
    field: str, end: "dict[str, Any]", recipe: "dict[str, Any]", keys: "list[str]"
) -> "list[Problem]":
    problems = check_choice(
        field + ".from_step", end.get("from_step"), keys, "unknown_step"
    )
    figures = recipe.get("figures")
    if not isinstance(figures, dict) or figures.get("floc_factor") is None:
        problems.append(problem("figures.floc_factor", "missing", None))
    return problems


def _check_judgements(field: str, judgements: "Any") -> "list[Problem]":
    if not isinstance(judgements, list) or not judgements:
        return [problem(field, "missing", None)]
    problems = []
    for word in judgements:
        problems.extend(check_choice(field, word, JUDGEMENTS, "unknown_judgement"))
    return problems


def _check_quantity(field: str, quantity: "Any") -> "list[Problem]":
    return check_choice(field, quantity, QUANTITIES, "unknown_quantity")


def _target_units(quantity: "Any") -> "list[str]":
    unit = QUANTITIES[quantity].get("unit") or ""
    # A target per litre of milk is scaled to the make: see `scaled_figure`.
    return [unit] + [dose for dose in OF_ALL_MILK if OF_ALL_MILK[dose] == unit]


def _check_targets(
    path: str, step: "dict[str, Any]", sources: "dict[str, Any]"
) -> "list[Problem]":
    targets, problems = mappings(path + ".targets", step.get("targets"))
    for index, target in enumerate(targets):
        quantity: "Any" = target.get("quantity")
        label = quantity if is_text(quantity) else str(index)
        field = path + ".targets." + label
        found = _check_quantity(field + ".quantity", quantity)
        units = None if found else _target_units(quantity)
        problems.extend(found)
        problems.extend(
            check_figure(
                field + ".figure",
                target.get("figure"),
                sources,
                units,
                may_be_open=True,
            )
        )
    return problems


def _check_readings(path: str, step: "dict[str, Any]") -> "list[Problem]":
    readings, problems = mappings(path + ".readings", step.get("readings"))
    for index, reading in enumerate(readings):
        quantity: "Any" = reading.get("quantity")
        label = quantity if is_text(quantity) else str(index)
        field = path + ".readings." + label
        problems.extend(_check_quantity(field + ".quantity", quantity))
        when = reading.get("when")
        problems.extend(
            check_choice(field + ".when", when, READING_TIMES, "not_a_choice")
        )
        if reading.get("every_s") is not None:
            problems.extend(
                check_number(field + ".every_s", reading["every_s"], 1, LONGEST_S)
            )
    return problems


def _check_adds(
    path: str, step: "dict[str, Any]", ingredients: "list[str]"
) -> "list[Problem]":
    adds = step.get("adds")
    problems = []
    for key in adds if isinstance(adds, list) else []:
        field = path + ".adds"
        problems.extend(check_choice(field, key, ingredients, "unknown_ingredient"))
    return problems


def _check_judge(path: str, step: "dict[str, Any]") -> "list[Problem]":
    judge = step.get("judge")
    if judge is None:
        return []
    if not isinstance(judge, dict):
        return [problem(path + ".judge", "not_a_mapping", None)]
    field = path + ".judge"
    problems = _check_judgements(field + ".choices", judge.get("choices"))
    if judge.get("from_frac") is not None:
        problems.extend(check_number(field + ".from_frac", judge["from_frac"], 0, 1))
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


def _check_closing(
    paths: "list[str]", steps: "list[dict[str, Any]]"
) -> "list[Problem]":
    closing = [path for path, step in zip(paths, steps) if step.get("closes_day")]
    return [problem(path + ".closes_day", "more_than_one", 1) for path in closing[1:]]
