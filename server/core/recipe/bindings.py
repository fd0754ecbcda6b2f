"""The check of what a figure is answered by: a value of a sum, named as data.

`{"sum", "value", "of", "size", "band"}`: the sum's key; the name of its value, or
several of which the first that it has counts; what the value is of, where there are
several; the size of wheel that the sum is asked for, where that is not the step's own;
"band" is BY_ESTIMATE where the band is how sure the value is, not the recipe's own.
"""

from .sum_keys import SUM_KEYS
from .words import is_text

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.words import Problem

BY_ESTIMATE = "estimate"


def check_by(field: str, by: object) -> "list[Problem]":
    """Return what is wrong with the sum that answers a figure, if one does.

    Args:
        field: readable path to report, such as "steps.heat.lasts.by".
        by: the binding as received; None for none.

    Returns:
        List of {"field", "key", "limit"}.
    """
    if by is None:
        return []
    if not isinstance(by, dict):
        return [{"field": field, "key": "not_a_mapping", "limit": None}]
    problems: "list[Problem]" = []
    key = by.get("sum")
    if not is_text(key):
        problems.append({"field": field + ".sum", "key": "missing", "limit": None})
    elif key not in SUM_KEYS:
        problems.append({"field": field + ".sum", "key": "unknown_sum", "limit": key})
    values = by.get("value")
    names = values if isinstance(values, list) and values else [values]
    if not all(is_text(name) for name in names):
        problems.append({"field": field + ".value", "key": "missing", "limit": None})
    for name in ("of", "size"):
        if by.get(name) is not None and not is_text(by[name]):
            path = field + "." + name
            problems.append({"field": path, "key": "not_text", "limit": None})
    if by.get("band") not in (None, BY_ESTIMATE):
        path = field + ".band"
        problems.append({"field": path, "key": "not_a_choice", "limit": [BY_ESTIMATE]})
    return problems
