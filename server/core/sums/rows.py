"""How a sum is laid out: what it asks for, what it gives, and where values rest.

A row has a key, a topic, its inputs, its outputs and the function that does the
work. Inputs are rows too: their units, their hard limits (outside them a value
cannot be true), their soft limits (outside them the maker is asked once more)
and a default with its source. Unless a source is named, hard and soft limits
are this project's own judgement of what a creamery can have.
"""

from ..units.table import typed_in

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any


def number(
    name: str,
    unit: str,
    low: float,
    high: float,
    ask: "list[float] | None" = None,
    default: "dict[str, Any] | None" = None,
    optional: bool = False,
    count: bool = False,
    hidden: bool = False,
    usual: "str | None" = None,
    by_hand: bool = True,
) -> "dict[str, Any]":
    """Return an input that is one number.

    Args:
        name: its name, ending in its unit as the style asks.
        unit: the unit it is handed over in; "" for none.
        low: smallest value that can be true.
        high: largest value that can be true.
        ask: [low, high] of what is likely, or None.
        default: see `default`, or None.
        optional: whether the sum does without it.
        count: whether only whole numbers make sense.
        hidden: whether only a make can know it, so that nobody is asked.
        usual: unit that it is typed in first; None for the usual one of its unit.
        by_hand: whether people type it; else it is learned from own wheels.
    """
    units = typed_in(unit)
    if usual is not None:
        units = [usual] + [other for other in units if other != usual]
    return {
        "name": name,
        "kind": "count" if count else "number",
        "unit": unit,
        "units": units,
        "low": low,
        "high": high,
        "ask_low": None if ask is None else ask[0],
        "ask_high": None if ask is None else ask[1],
        "choices": None,
        "columns": None,
        "default": default,
        "optional": optional or hidden,
        "hidden": hidden,
        "by_hand": by_hand,
        "rises": False,
    }


def choice(
    name: str,
    choices: "list[str]",
    default: "dict[str, Any] | None" = None,
    optional: bool = False,
) -> "dict[str, Any]":
    """Return an input that is one word of several.

    Args:
        name: its name.
        choices: the words.
        default: see `default`, or None.
        optional: whether the sum does without it.
    """
    item = number(name, "", 0.0, 0.0, None, default, optional)
    item.update({"kind": "choice", "choices": choices, "low": None, "high": None})
    return item


def series(
    name: str,
    columns: "list[dict[str, Any]]",
    least: int,
    default: "dict[str, Any] | None" = None,
    optional: bool = False,
) -> "dict[str, Any]":
    """Return an input that is a table of readings.

    Args:
        name: its name.
        columns: one input row, see `number`, a column.
        least: fewest rows that make sense.
        default: see `default`, or None.
        optional: whether the sum does without it.
    """
    item = number(name, "", 0.0, 0.0, None, default, optional)
    item.update({"kind": "series", "columns": columns, "low": least, "high": 500})
    return item


def timed(columns: "list[dict[str, Any]]") -> "list[dict[str, Any]]":
    """Return the columns of a table of readings, a time that rises [min] in front.

    Args:
        columns: the other columns.
    """
    return [dict(number("at_min", "min", 0.0, 1000000.0), rises=True)] + columns


def times_and_values(
    readings: "list[dict[str, Any]]", name: str
) -> "tuple[list[float], list[float]]":
    """Return times [s] and values of a table of readings.

    Args:
        readings: list of {"at_min", name}.
        name: the column.
    """
    times_s = [reading["at_min"] * 60.0 for reading in readings]
    return times_s, [reading[name] for reading in readings]


def default(
    value: "object",
    status: str,
    source: str,
    low: "float | None" = None,
    high: "float | None" = None,
) -> "dict[str, Any]":
    """Return what an input is taken as when nobody says otherwise.

    Args:
        value: in the input's own unit.
        status: "read", "abstract", "practice", "memory" or "derived".
        source: where it comes from: `source.<id>` of the catalogues, or a reference.
        low: least that it may really be, or None.
        high: most that it may really be, or None.
    """
    return {
        "value": value,
        "status": status,
        "source": source,
        "low": low,
        "high": high,
    }


def sum_row(
    key: str,
    topic: str,
    inputs: "list[dict[str, Any]]",
    outputs: "list[dict[str, Any]]",
    work: "object",
    judges: bool = False,
    called: "dict[str, str] | None" = None,
    follows: "dict[str, str] | None" = None,
    by_size: bool = False,
) -> "dict[str, Any]":
    """Return a sum.

    Args:
        key: its key, in all the catalogue its own.
        topic: topic it is shown under.
        inputs: list of inputs.
        outputs: list of outputs.
        work: function from {input name: value} to a result, see `result`.
        judges: whether it reads the rules, found under "rules" among its values.
        called: {what the formulas call it: the input that it is}.
        follows: {a quantity that the formulas check: the input that it follows from}.
        by_size: whether a step asks it once for each size of wheel that it is about.
    """
    return {
        "key": key,
        "topic": topic,
        "inputs": inputs,
        "outputs": outputs,
        "work": work,
        "judges": judges,
        "called": called or {},
        "follows": follows or {},
        "by_size": by_size,
    }
