"""Whether a recipe's fields hold what the table of `form` says, and not too much."""

from ...units.quantities import check_number
from ..checks import MAX_KEY, problem
from ..figures import MOST, is_text
from .form import MOST_LANGUAGES, MOST_LETTERS, RECIPE

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import Problem


def check_form(recipe: "dict[str, Any]") -> "list[Problem]":
    """Return every field of a recipe that holds another kind of thing, or too much.

    Args:
        recipe: the recipe, a mapping.

    Returns:
        List of {"field", "key", "limit"}; a field that is left out is no problem
        here.
    """
    return _fields("", recipe, RECIPE)


def _fields(
    path: str, value: "dict[str, Any]", table: "dict[str, Any]"
) -> "list[Problem]":
    problems = []
    # By the table's names: what is not named is not looked at.
    for name in table:
        if name in value:
            problems.extend(_field(path + name, value[name], table[name]))
    return problems


def _field(field: str, value: "Any", form: "dict[str, Any]") -> "list[Problem]":
    kind = form["kind"]
    if kind in LISTS:
        return _list(field, value, form)
    if kind == "named":
        return _named(field, value, form)
    if kind == "words":
        return _words(field, value, form["most"])
    if value is None:
        return []
    if kind == "mapping":
        if isinstance(value, dict):
            return _fields(field + ".", value, form["of"])
        return [problem(field, "not_a_mapping", None)]
    if kind == "text":
        return _text(field, value, form["most"])
    if kind == "number":
        return check_number(field, value, -MOST, MOST)
    if value is True or value is False:
        return []
    if kind == "yes_no_or_mapping" and isinstance(value, dict):
        return _fields(field + ".", value, form["of"])
    return [problem(field, "not_yes_or_no", None)]


def _text(field: str, value: object, most: int) -> "list[Problem]":
    if not isinstance(value, str):
        return [problem(field, "not_text", None)]
    if len(value) > most:
        return [problem(field, "too_long", most)]
    return []


def _words(field: str, value: object, most: int) -> "list[Problem]":
    if not isinstance(value, dict):
        return [problem(field, "not_a_mapping", None)]
    if len(value) > MOST_LANGUAGES:
        return [problem(field, "too_many", MOST_LANGUAGES)]
    problems = []
    for language in sorted(value):
        problems.extend(_text(field + "." + language, value[language], most))
    return problems


def _named(field: str, value: object, form: "dict[str, Any]") -> "list[Problem]":
    if not isinstance(value, dict):
        return [problem(field, "not_a_mapping", None)]
    if len(value) > form["most"]:
        return [problem(field, "too_many", form["most"])]
    problems = []
    for name in sorted(value):
        path = field + "." + name
        if isinstance(value[name], dict):
            problems.extend(_fields(path + ".", value[name], form["of"]))
        else:
            problems.append(problem(path, "not_a_mapping", None))
    return problems


def _list(field: str, value: object, form: "dict[str, Any]") -> "list[Problem]":
    if not isinstance(value, list):
        return [problem(field, "not_a_list", None)]
    if len(value) > form["most"]:
        return [problem(field, "too_many", form["most"])]
    problems = []
    for index, item in enumerate(value):
        path = field + "." + str(index)
        problems.extend(LISTS[form["kind"]](field, path, item, form))
    return problems


def _item_text(
    field: str, path: str, item: "Any", form: "dict[str, Any]"
) -> "list[Problem]":
    # Told of the list itself, as where one of its words is not known.
    return _text(field, item, MAX_KEY)


def _item_words(
    field: str, path: str, item: "Any", form: "dict[str, Any]"
) -> "list[Problem]":
    return _words(path, item, MOST_LETTERS)


def _item_number(
    field: str, path: str, item: "Any", form: "dict[str, Any]"
) -> "list[Problem]":
    return check_number(path, item, -MOST, MOST)


def _item_mapping(
    field: str, path: str, item: "Any", form: "dict[str, Any]"
) -> "list[Problem]":
    if not isinstance(item, dict):
        return [problem(path, "not_a_mapping", None)]
    key: "Any" = item.get(form["label"])
    if form["label"] is not None and is_text(key):
        path = field + "." + key
    return _fields(path + ".", item, form["of"])


LISTS = {
    "texts": _item_text,
    "many_words": _item_words,
    "numbers": _item_number,
    "rows": _item_mapping,
}
