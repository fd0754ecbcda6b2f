"""Whether the body of an event holds what its kind asks for."""

from ...recipe.checks import MAX_KEY
from ...recipe.treatments import allowed
from ...recipe.words import is_text
from ...units.quantities import check_number, check_value
from ..equipment_form import check_entry, check_mapping
from .envelope import check_int
from .table import KINDS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

    from server.shapes.core.words import Problem


MOST_MOULDS = 20
MOST_NAME = 2 * MAX_KEY + 1  # of a thing, or of a thing at a step
MOST_SET = 20  # fields of one correction


def check_data(
    kind: str, data: "dict[str, Any]", only: "dict[str, Any] | None" = None
) -> "list[Problem]":
    """Return everything that is wrong with the body of one kind.

    Args:
        kind: a key of KINDS.
        data: the event's body.
        only: look at fields of these names alone; None for all. A correction
            of a name need not read a whole recipe again.

    Returns:
        List of {"field", "key", "limit"}.
    """
    problems: "list[Problem]" = []
    known = []
    for field in KINDS[kind]["fields"]:
        name = field["name"]
        known.append(name)
        if only is not None and name not in only:
            continue
        value = data.get(name)
        if value is None:
            if field["required"]:
                problems.append({"field": name, "key": "missing", "limit": None})
            continue
        problems.extend(_check_field(field, value, data))
    for name in data:
        if name not in known:
            problems.append({"field": name, "key": "unknown_field", "limit": None})
    return problems


def _check_field(
    field: "dict[str, Any]", value: "Any", data: "dict[str, Any]"
) -> "list[Problem]":
    return FORMS[field["type"]](field, value, data)


def _problem(
    field: "dict[str, Any]", key: str, limit: object = None
) -> "list[Problem]":
    return [{"field": field["name"], "key": key, "limit": limit}]


def _text(
    field: "dict[str, Any]", value: "Any", _: "dict[str, Any]"
) -> "list[Problem]":
    if not isinstance(value, str):
        return _problem(field, "not_text")
    if field["low"] and len(value.strip()) < field["low"]:
        return _problem(field, "missing", field["low"])
    if field["high"] is not None and len(value) > field["high"]:
        return _problem(field, "too_long", field["high"])
    return []


def _number(
    field: "dict[str, Any]", value: "Any", _: "dict[str, Any]"
) -> "list[Problem]":
    return check_number(field["name"], value, field["low"], field["high"])


def _int(field: "dict[str, Any]", value: "Any", _: "dict[str, Any]") -> "list[Problem]":
    return check_int(field["name"], value, field["low"], field["high"])


def _bool(
    field: "dict[str, Any]", value: "Any", _: "dict[str, Any]"
) -> "list[Problem]":
    is_bool = value is True or value is False
    return [] if is_bool else _problem(field, "not_yes_or_no")


def _choice(
    field: "dict[str, Any]", value: "Any", _: "dict[str, Any]"
) -> "list[Problem]":
    if value in field["choices"]:
        return []
    return _problem(field, "not_a_choice", list(field["choices"]))


def _quantity(
    field: "dict[str, Any]", value: "Any", data: "dict[str, Any]"
) -> "list[Problem]":
    return []  # checked together with the value, under "reading"


def _reading(
    field: "dict[str, Any]", value: "Any", data: "dict[str, Any]"
) -> "list[Problem]":
    if data.get("quantity") is None:
        return []  # told as missing already
    return check_value(data["quantity"], value)


def _equipment(
    field: "dict[str, Any]", value: "Any", data: "dict[str, Any]"
) -> "list[Problem]":
    if not isinstance(data.get("key"), str):
        return []  # told already
    return check_entry(data)


def _moulds(
    field: "dict[str, Any]", value: "Any", _: "dict[str, Any]"
) -> "list[Problem]":
    if not isinstance(value, list):
        return _problem(field, "not_a_list")
    if len(value) > MOST_MOULDS:
        return _problem(field, "too_many", MOST_MOULDS)
    problems: "list[Problem]" = []
    for mould in value:
        problems.extend(_mould(field["name"], mould))
    return problems


def _names(
    field: "dict[str, Any]", value: "Any", _: "dict[str, Any]"
) -> "list[Problem]":
    if not isinstance(value, list):
        return _problem(field, "not_a_list")
    if not value:
        return _problem(field, "missing")
    if len(value) > field["high"]:
        return _problem(field, "too_many", field["high"])
    if not all(is_text(one) for one in value):
        return _problem(field, "not_text")
    if any(len(one) > MOST_NAME for one in value):
        return _problem(field, "too_long", MOST_NAME)
    return []


def _mould(name: str, mould: "Any") -> "list[Problem]":
    if not isinstance(mould, dict) or not isinstance(mould.get("size"), str):
        return [{"field": name + ".size", "key": "missing", "limit": None}]
    problems: "list[Problem]" = []
    if len(mould["size"]) > MAX_KEY:
        problems.append({"field": name + ".size", "key": "too_long", "limit": MAX_KEY})
    return problems + check_int(name + ".count", mould.get("count"), 0, 5000)


def _recipe(
    field: "dict[str, Any]", value: "Any", _: "dict[str, Any]"
) -> "list[Problem]":
    if not isinstance(value, dict):
        return _no_mapping(field)
    # Loaded when a recipe is to be read: the app starts without, see `creamery.kept`.
    from ...recipe.recipe import check_recipe

    return check_recipe(value)


def _treatment(
    field: "dict[str, Any]", value: "Any", data: "dict[str, Any]"
) -> "list[Problem]":
    problems = _choice(field, value, data)
    recipe: "Any" = data.get("recipe")
    milk = recipe.get("milk") if isinstance(recipe, dict) else None
    if problems or not isinstance(milk, dict):
        return problems  # what is wrong with the recipe is told by itself
    told = milk.get("treatments") or allowed(recipe)
    if not isinstance(told, list) or value in told:
        return []
    return _problem(field, "treatment_not_allowed", told)


def _options(
    field: "dict[str, Any]", value: "Any", data: "dict[str, Any]"
) -> "list[Problem]":
    if not isinstance(value, dict):
        return _no_mapping(field)
    if len(value) > MOST_SET:
        return _problem(field, "too_many", MOST_SET)
    recipe: "Any" = data.get("recipe")
    steps = recipe.get("steps") if isinstance(recipe, dict) else None
    if not isinstance(steps, list):
        return []  # what is wrong with the recipe is told by itself
    problems: "list[Problem]" = []
    for name in sorted(value):
        known: "list[Any]" = []
        for step in steps:
            if not isinstance(step, dict) or step.get("choice") != name:
                continue
            if step.get("option") not in known:
                known.append(step.get("option"))
        if value[name] not in known:
            path = field["name"] + "." + name[:MAX_KEY]
            problems.append({"field": path, "key": "not_a_choice", "limit": known})
    return problems


def _equipment_of_make(
    field: "dict[str, Any]", value: "Any", _: "dict[str, Any]"
) -> "list[Problem]":
    if not isinstance(value, dict):
        return _no_mapping(field)
    return check_mapping(field["name"], value)


def _set(field: "dict[str, Any]", value: "Any", _: "dict[str, Any]") -> "list[Problem]":
    if not isinstance(value, dict):
        return _no_mapping(field)
    if len(value) > MOST_SET:
        return _problem(field, "too_many", MOST_SET)
    if any(len(name) > MAX_KEY for name in value):
        return _problem(field, "too_long", MAX_KEY)
    return []


def _no_mapping(field: "dict[str, Any]") -> "list[Problem]":
    return _problem(field, "not_a_mapping")


# What a field may be, and the function (field, value, body) that says what is wrong.
FORMS: "dict[str, Callable[..., list[Problem]]]" = {
    "text": _text,
    "key": _text,
    "number": _number,
    "int": _int,
    "bool": _bool,
    "choice": _choice,
    "quantity": _quantity,
    "reading": _reading,
    "equipment": _equipment,
    "moulds": _moulds,
    "names": _names,
    "recipe": _recipe,
    "treatment": _treatment,
    "options": _options,
    "equipment_of_make": _equipment_of_make,
    "set": _set,
}
