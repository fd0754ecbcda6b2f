"""Small checks shared by the parts of a recipe: each returns problems as data."""

from ..units.quantities import check_number
from .words import is_text

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.words import Problem


DEEPEST = 20  # of a recipe, and of an entry
MAX_KEY = 60  # as long as a key in an event may be


def problem(field: str, key: str, limit: object) -> "Problem":
    """Return one problem.

    Args:
        field: readable path, such as "steps.heat.lasts.unit".
        key: message key of what is wrong.
        limit: what would have been allowed, or the value that is unknown.

    Returns:
        {"field", "key", "limit"}.
    """
    return {"field": field, "key": key, "limit": limit}


def check_text(field: str, value: object) -> "list[Problem]":
    """Return a problem when a text for people has no English wording.

    Args:
        field: readable path of the text.
        value: mapping from language to wording, as received.

    Returns:
        List of {"field", "key", "limit"}.
    """
    if not isinstance(value, dict) or not is_text(value.get("en")):
        return [problem(field + ".en", "missing", None)]
    return []


def check_choice(
    field: str,
    value: object,
    choices: "list[Any] | tuple[Any, ...] | dict[str, Any]",
    key: str,
) -> "list[Problem]":
    """Return a problem when a word is missing or not one of those known.

    Args:
        field: readable path of the word.
        value: the word as received.
        choices: the words allowed; a mapping stands for its keys.
        key: message key to use for an unknown word.

    Returns:
        List of {"field", "key", "limit"}; the limit is the unknown word.
    """
    if not is_text(value):
        return [problem(field, "missing", None)]
    if value not in choices:
        return [problem(field, key, value)]
    return []


def check_key(field: str, value: object) -> "list[Problem]":
    """Return what is wrong with the key of a recipe, step or ingredient.

    Args:
        field: readable path of the key.
        value: the key as received.

    Returns:
        List of {"field", "key", "limit"}.
    """
    if not is_text(value):
        return [problem(field, "missing", None)]
    if len(str(value)) > MAX_KEY:
        return [problem(field, "too_long", MAX_KEY)]
    return []


def check_count(
    field: str, value: "Any", most: "float | None" = None
) -> "list[Problem]":
    """Return a problem when a value is not a whole number of at least one.

    Args:
        field: readable path of the number.
        value: the number as received.
        most: largest count, or None.

    Returns:
        List of {"field", "key", "limit"}.
    """
    problems = check_number(field, value, 1, most)
    if not problems and value != int(value):
        return [problem(field, "not_whole", None)]
    return problems


def mappings(field: str, value: object) -> "tuple[list[dict[str, Any]], list[Any]]":
    """Return the mappings of a list, and the problems of all that is not one.

    Args:
        field: readable path of the list.
        value: the list as received; None stands for an empty one.

    Returns:
        The mappings in order, and a list of {"field", "key", "limit"}.
    """
    if value is None:
        return [], []
    if not isinstance(value, list):
        return [], [problem(field, "not_a_list", None)]
    sound = []
    problems = []
    for index, item in enumerate(value):
        if isinstance(item, dict):
            sound.append(item)
        else:
            problems.append(problem(field + "." + str(index), "not_a_mapping", None))
    return sound, problems


def check_keys(
    field: str, parts: "list[dict[str, Any]]", name: str
) -> "tuple[list[Any], list[Any], list[Any]]":
    """Return the path and key of each part, and the problems of the keys.

    Args:
        field: readable path of the list.
        parts: its mappings.
        name: where each part has its key: "key" or "size".

    Returns:
        Paths and keys in order (the part's number where it has no key), and a
        list of {"field", "key", "limit"}.
    """
    paths = []
    keys = []
    problems = []
    for index, part in enumerate(parts):
        key = part.get(name)
        label = str(key) if is_text(key) else str(index)
        path = field + "." + label
        problems.extend(check_key(path + "." + name, key))
        if label in keys:
            problems.append(problem(path + "." + name, "duplicate", label))
        paths.append(path)
        keys.append(label)
    return paths, keys, problems


def too_much(value: object, most_bytes: int, deepest: int) -> "str | None":
    """Return "too_large" or "too_deep" for a value that goes beyond, else None.

    Args:
        value: JSON types only.
        most_bytes: limit of its compact text, about.
        deepest: how often a value may hold values.
    """
    # Counted without a JSON writer, which the core does not have, level by level and
    # without nesting calls: a phone reads each opening at its start.
    size = 0
    level = [value]
    for _ in range(deepest + 1):
        inner: "list[object]" = []
        for item in level:
            if isinstance(item, str):
                size += 2 + len(bytes(item, "utf-8"))
            elif isinstance(item, dict):
                size += 2 + 2 * len(item)
                inner.extend(item)
                inner.extend(item.values())
            elif isinstance(item, (list, tuple)):
                size += 2 + len(item)
                inner.extend(item)
            else:
                size += len(str(item))
        if size > most_bytes:
            return "too_large"
        if not inner:
            return None
        level = inner
    return "too_deep"
