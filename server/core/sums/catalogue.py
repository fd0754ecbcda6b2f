"""All sums, gathered: their order, their layout as JSON, and one by its key.

A topic is loaded when one of its sums is first asked for: on a slow phone all of
them take a quarter of a second, and a step wants one or two.
"""

from ..recipe.sum_keys import SUM_TOPICS
from .answer import answer
from .reply import reply_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

    from server.shapes.core.state import KnownValue, Rules
    from server.shapes.core.sums import Answer, SumRow


def _milk() -> "list[dict[str, Any]]":
    from .milk import milk

    return milk.ROWS


def _heat() -> "list[dict[str, Any]]":
    from .heat import heat_forecast, heat_shown

    return heat_forecast.ROWS + _vat_pace() + heat_shown.ROWS


def _vat_pace() -> "list[dict[str, Any]]":
    from .heat import heat

    return heat.ROWS


def _heat_treatment() -> "list[dict[str, Any]]":
    from .heat import heat_treatment

    return heat_treatment.ROWS


def _ingredients() -> "list[dict[str, Any]]":
    from .milk import ingredients

    return ingredients.ROWS


def _rennet() -> "list[dict[str, Any]]":
    from .milk import rennet

    return rennet.ROWS


def _cut() -> "list[dict[str, Any]]":
    from .milk import cut

    return cut.ROWS


def _acid() -> "list[dict[str, Any]]":
    from .milk import acid

    return acid.ROWS


def _wash() -> "list[dict[str, Any]]":
    from .curd import wash

    return wash.ROWS


def _wash_water() -> "list[dict[str, Any]]":
    from .curd import wash_water

    return wash_water.ROWS


def _press() -> "list[dict[str, Any]]":
    from .curd import press

    return press.ROWS


def _yields() -> "list[dict[str, Any]]":
    from .curd import yields

    return yields.ROWS


def _brine() -> "list[dict[str, Any]]":
    from .salt import brine, brine_strength, brine_tank

    return brine_strength.ROWS + brine_tank.ROWS + _brine_time() + brine.ROWS


def _brine_time() -> "list[dict[str, Any]]":
    from .salt import brine_time

    return brine_time.ROWS


def _store() -> "list[dict[str, Any]]":
    from .store import store

    return store.ROWS


def _store_time() -> "list[dict[str, Any]]":
    from .store import store_time

    return [store_time.ROW]


def _composition() -> "list[dict[str, Any]]":
    from .curd import composition

    return composition.ROWS


def _trends() -> "list[dict[str, Any]]":
    from .store import trends

    return trends.ROWS


ROWS_OF: "dict[str, Callable[[], list[dict[str, Any]]]]" = {
    "milk": _milk,
    "heat": _heat,
    "heat_treatment": _heat_treatment,
    "ingredients": _ingredients,
    "acid": _acid,
    "wash": _wash,
    "press": _press,
    "yield": _yields,
    "brine": _brine,
    "store": _store,
    "composition": _composition,
    "trends": _trends,
}

# Sums that each View of a make may ask, found without the rest of their topic.
APART = {
    "heat_time": _vat_pace,
    "rennet_dose": _rennet,
    "cut_time": _cut,
    "wash_water": _wash_water,
    "brine_time": _brine_time,
    "store_time": _store_time,
}


def rows(topic: "str | None" = None) -> "list[dict[str, Any]]":
    """Return the sums of a topic with their work, in the order of a make.

    Args:
        topic: key of `sum_keys.SUM_TOPICS`; None for all, which loads them all.

    Raises:
        ValueError: there is no such topic.
    """
    if topic is not None:
        if topic not in ROWS_OF:
            raise ValueError("topic %r is none of the sums'" % (topic,))
        return ROWS_OF[topic]()
    told: "list[dict[str, Any]]" = []
    for key, _ in SUM_TOPICS:
        told.extend(ROWS_OF[key]())
    return told


def find(key: str) -> "dict[str, Any] | None":
    """Return one sum, or None.

    Args:
        key: its key.
    """
    if key in APART:
        return next(row for row in APART[key]() if row["key"] == key)
    for topic, keys in SUM_TOPICS:
        if key in keys:
            return ROWS_OF[topic]()[keys.index(key)]
    return None


def layout(topic: "str | None" = None) -> "list[SumRow]":
    """Return the sums of a topic as JSON types: what to ask for, what it gives.

    Args:
        topic: key of `sum_keys.SUM_TOPICS`; None for every sum.

    Returns:
        List of {"key", "topic", "inputs", "outputs"} in the order of a make;
        inputs that nobody is asked for are left out.

    Raises:
        ValueError: there is no such topic.
    """
    told: "list[SumRow]" = []
    for asked in rows(topic):
        told.append(
            {
                "key": asked["key"],
                "topic": asked["topic"],
                "inputs": [item for item in asked["inputs"] if not item["hidden"]],
                "outputs": asked["outputs"],
            }
        )
    return told


def work_out(
    key: str,
    given: "dict[str, dict[str, Any]]",
    known: "dict[str, KnownValue]",
    rules: "Rules",
) -> "Answer":
    """Return the Answer to one sum, see `answer.answer`.

    Args:
        key: key of the sum.
        given: what was typed.
        known: what a make knows.
        rules: {rule id: the rule}.
    """
    asked = find(key)
    if asked is None:
        return _not_answered(key, "key", "unknown_sum")
    if not isinstance(given, dict):
        return _not_answered(key, "given", "not_a_mapping")
    unknown = [name for name in given if not _has(asked, name)]
    if unknown:
        return _not_answered(key, sorted(unknown)[0], "unknown_input")
    return answer(asked, given, known, rules)


def _has(asked: "dict[str, Any]", name: str) -> bool:
    return any(item["name"] == name and not item["hidden"] for item in asked["inputs"])


def _not_answered(key: str, field: str, word: str) -> "Answer":
    from ..numbers.problems import problem

    reply = reply_of(key)
    reply["problems"] = [problem(field, word)]
    return reply
