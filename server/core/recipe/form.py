"""Which kind of thing each field of a recipe holds, and how much of it.

One table. What a field means is checked elsewhere; here is only asked whether those
who read it find what they read: a list where they walk along one, yes or no where
they decide. A field may be left out, and where it is one thing it may be null, which
says the same; a list is left out or it is a list. Fields that are not named here are
of newer apps or somebody's own, are read by nobody, and stay as they are.
"""

from ..units.quantities import check_number
from .checks import MAX_KEY, problem
from .figures import MOST, is_text

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import Problem


MOST_LETTERS = 4000  # of one text, in one language
MOST_LANGUAGES = 40
MOST_NAMED = 200
MOST_STEPS = 120  # a View works through all of them
MOST_ROWS = 60


def _form(
    kind: str,
    most: "int | None" = None,
    of: "dict[str, Any] | None" = None,
    label: "str | None" = None,
) -> "dict[str, Any]":
    return {"kind": kind, "most": most, "of": of, "label": label}


_TEXT = _form("text", MOST_LETTERS)
_KEY = _form("text", MAX_KEY)
_WORDS = _form("words", MOST_LETTERS)
_NUMBER = _form("number")
_YES_NO = _form("yes_no")
_TEXTS = _form("texts", MOST_ROWS)

BY = {"sum": _KEY, "of": _KEY, "size": _KEY}  # "value" is a name or a list of them
# Its other fields are looked at by `figures.check_figure`, wherever one stands.
_FIGURE = _form("mapping", of={"by": _form("mapping", of=BY)})

SOURCE = {"title": _TEXT, "where": _TEXT, "status": _KEY}

END = {
    "by": _KEY,
    "quantity": _KEY,
    "at_least": _FIGURE,
    "at_most": _FIGURE,
    "judgement": _TEXTS,
    "from_step": _KEY,
}

STEP = {
    "key": _KEY,
    "title": _WORDS,
    "do": _form("many_words", MOST_ROWS),
    "place": _KEY,
    "round": _NUMBER,
    "rounds": _NUMBER,
    "after": _form("texts", MOST_STEPS),
    "lasts": _FIGURE,
    "end": _form("mapping", of=END),
    "targets": _form(
        "rows",
        MOST_ROWS,
        {"quantity": _KEY, "size": _KEY, "figure": _FIGURE},
        "quantity",
    ),
    "readings": _form(
        "rows",
        MOST_ROWS,
        {"quantity": _KEY, "when": _KEY, "every_s": _NUMBER, "required": _YES_NO},
        "quantity",
    ),
    "adds": _TEXTS,
    "cautions": _TEXTS,
    "drift": _form("rows", MOST_ROWS, {"form": _KEY, "do": _WORDS}),
    "judge": _form("mapping", of={"choices": _TEXTS, "from_frac": _NUMBER}),
    "sums": _TEXTS,
    "size": _KEY,
    "turns": _form("rows", MOST_ROWS, {"every": _FIGURE, "until": _FIGURE}),
    "mould": _YES_NO,
    "closes_day": _YES_NO,
    "heat_treatment": _YES_NO,
    "rule": _KEY,
}

MOULD = {
    "size": _KEY,
    "title": _WORDS,
    "wheel_kg": _FIGURE,
    "diameter_m": _FIGURE,
    "height_m": _FIGURE,
    "share_frac": _FIGURE,
}

INGREDIENT = {
    "key": _KEY,
    "title": _WORDS,
    "unit": _KEY,
    "dose": _form("mapping", of={"per": _KEY, "amount": _FIGURE}),
    "tolerance_frac": _NUMBER,
    "optional": _YES_NO,
}

CURVE = {
    "start_step": _KEY,
    "times_s": _form("numbers", MOST_ROWS),
    "phs": _form("numbers", MOST_ROWS),
    "source": _KEY,
    "status": _KEY,
    "note": _TEXT,
}

RECIPE = {
    "schema": _NUMBER,
    "id": _KEY,
    "version": _NUMBER,
    "title": _WORDS,
    "about": _WORDS,
    "family": _KEY,
    "sources": _form("named", MOST_NAMED, SOURCE),
    "milk": _form(
        "mapping",
        of={
            "unit": _KEY,
            "low_l": _NUMBER,
            "high_l": _NUMBER,
            "fat_frac": _FIGURE,
            "heat_class": _KEY,
        },
    ),
    "yield_frac": _FIGURE,
    "moulds": _form("rows", MOST_ROWS, MOULD, "size"),
    "ingredients": _form("rows", MOST_ROWS, INGREDIENT, "key"),
    "figures": _form("named", MOST_NAMED, {}),
    "steps": _form("rows", MOST_STEPS, STEP, "key"),
    "curve": _form("mapping", of=CURVE),
}


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
