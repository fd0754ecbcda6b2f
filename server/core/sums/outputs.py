"""What a sum gives: its outputs, each declared once, and the values of an answer.

A value in a topic is a name, an amount and its ends; what unit it is in, what its
ends mean and whether it is the headline stands in the output of that name alone.

The ends of a value mean one of three things, by its role:
`estimate`: low to high is how uncertain the value is;
`limit`: not to be passed: at least low, at most high;
`band`: low to high is what is wanted.
A verdict is a word: its ends bound what was read, which stands beside them.
"""

from ..numbers.share import banded, grown
from ..units.notes import with_units

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Sequence
    from typing import Any

    from server.shapes.core.sums import RestsOn, SumValue
    from server.shapes.core.words import Bar, Keyed
    from server.shapes.core.worked import Inputs, Worked, WorkedValue


ROLES = ("estimate", "limit", "band")
# Of what the ends are: how unsure a value is, nine makes in ten, what usual doses come
# to, a rule's limit, the recipe's band. Each has its own words.
RANGES = ("estimate", "nine_in_ten", "usual", "rule", "recipe")
RANGE_OF_ROLE = {"estimate": "estimate", "limit": "rule", "band": "recipe"}


def output(
    name: str,
    unit: "str | dict[str, Any]",
    role: str = "estimate",
    headline: "bool | str" = False,
    ends: "str | dict[str, Any] | None" = None,
    sense: "str | None" = None,
    told_by: "str | None" = None,
    called: str = "both",
    range_of: "str | None" = None,
) -> "dict[str, Any]":
    """Return one output of a sum.

    Args:
        name: its name.
        unit: its unit; "" for none, "key" for a word of the message catalogue;
            see `as_read` for one that depends on an input.
        role: one of ROLES.
        headline: whether it stands first and large; "first" where only the first
            of several does.
        ends: unit of its ends and of what was read, where that is another: a
            unit, {what it is of: unit} or `as_read`.
        sense: "later" or "earlier": what more of it means, of a time against
            another.
        told_by: the output that tells the same, where an answer has both.
        called: what its values are called by: "name", what they are "of", or
            "both".
        range_of: one of RANGES; None for what its role says.
    """
    return {
        "name": name,
        "unit": unit,
        "role": role,
        "headline": headline,
        "ends": unit if ends is None else ends,
        "sense": sense,
        "told_by": told_by,
        "called": called,
        "range_of": range_of or RANGE_OF_ROLE[role],
    }


def as_read(name: str) -> "dict[str, Any]":
    """Return the unit that an input was read in: a rule judges in no other.

    Args:
        name: the input: a choice of units, or a number as it was typed.
    """
    return {"as_read": name}


def value(
    name: str,
    amount: "object",
    low: "object" = None,
    high: "object" = None,
    of: "str | None" = None,
    read: "object" = None,
    nth: "int | None" = None,
    across_m: "float | None" = None,
) -> "WorkedValue":
    """Return one value of an answer, before its output is known.

    Args:
        name: name of the output.
        amount: number or word; None when it is not known.
        low: low end, see the module's rules, or None.
        high: high end, or None.
        of: what it is of where there are several: a step, a size, a rule.
        read: of a verdict, what was read and is held against the ends, or None.
        nth: which of those, counted from 1, where they have no names; else None.
        across_m: diameter of the mould that it is for [m], or None.
    """
    return {
        "name": name,
        "value": amount,
        "low": low,
        "high": high,
        "of": of,
        "read": read,
        "nth": nth,
        "across_m": across_m,
    }


def declared(
    values: "list[Any]",
    outputs: "list[dict[str, Any]]",
    taken: "Inputs",
) -> "list[SumValue]":
    """Return values with what their outputs say of them.

    Args:
        values: list of `value`.
        outputs: list of `output`.
        taken: what the sum was worked out from, see `answer.answer`.

    Returns:
        Each value with "unit", "ends_unit", "role", "headline", "sense",
        "called", "range_of"; "as_read" where its figures are never shown in another
        unit; "repeats", the name of the value that tells the same, or None; "bar",
        where it lies between its ends, or None where none is drawn.

    Raises:
        KeyError: a value that no output declares, or that is of something that
            its output has no unit for.
    """
    of_name = {output["name"]: output for output in outputs}
    names = [told["name"] for told in values]
    for index in range(len(values)):
        told = values[index]
        said = of_name[told["name"]]
        is_again = said["headline"] == "first" and told["name"] in names[:index]
        told["unit"] = _unit(said["unit"], told["of"], taken)
        told["ends_unit"] = _unit(said["ends"], told["of"], taken)
        told["as_read"] = isinstance(said["ends"], dict) and "as_read" in said["ends"]
        told["headline"] = bool(said["headline"]) and not is_again
        told["repeats"] = said["told_by"] if said["told_by"] in names else None
        for name in ("role", "sense", "called", "range_of"):
            told[name] = said[name]
        told["bar"] = _bar(told)
    return values


def _bar(told: "dict[str, Any]") -> "Bar | None":
    """Return the bar of a number in its band, or on its way to what a rule asks."""
    amount, low, high = told["value"], told["low"], told["high"]
    if told["unit"] != told["ends_unit"] or not (
        _is_number(amount) and _is_number(low)
    ):
        return None
    if told["role"] == "band" and _is_number(high) and high > low:
        return banded(amount, low, high)
    if told["role"] == "limit" and high is None and low > 0:
        return grown(amount, 0.0, low)
    return None


def _is_number(amount: "object") -> bool:
    return isinstance(amount, (int, float)) and not isinstance(amount, bool)


def _unit(unit: "str | dict[str, str]", of: "str | None", taken: "Inputs") -> str:
    if not isinstance(unit, dict):
        return unit
    name = unit.get("as_read")
    if name is None:
        return unit[of or ""]
    typed = taken["typed"].get(name)
    if typed:
        return typed[1]
    # A temperature that nobody typed is in the core's own unit.
    return taken[name] if isinstance(taken[name], str) else "C"


def note(name: str, **numbers: "object") -> "dict[str, Any]":
    """Return a remark for the maker: a message key and its numbers.

    Args:
        name: message key, without "note.".
        numbers: what the words speak of.
    """
    told: "dict[str, object]" = {"key": "note." + name}
    told.update(numbers)
    return with_units(told)


def rests(
    name: str, amount: "object", unit: str, status: str, source: str
) -> "RestsOn":
    """Return one figure that a sum rests on beyond what was handed in.

    Args:
        name: what it is.
        amount: number or word.
        unit: its unit.
        status: "read", "secondary", "abstract", "practice", "memory", ...
        source: where it comes from: `source.<id>` of the catalogues, or a reference.
    """
    return {
        "name": name,
        "value": amount,
        "unit": unit,
        "from": "default",
        "status": status,
        "source": source,
    }


def result(
    values: "list[WorkedValue]",
    notes: "Sequence[Keyed]" = (),
    rests_on: "Sequence[RestsOn]" = (),
    missing: "Sequence[str]" = (),
    unused: "Sequence[str]" = (),
) -> "Worked":
    """Return what the work of a sum comes to.

    Args:
        values: list of `value`.
        notes: list of `note`.
        rests_on: list of `rests`.
        missing: names of optional inputs without which nothing comes of it.
        unused: names of inputs that the chosen way does without.
    """
    return {
        "values": values,
        "notes": list(notes),
        "rests": list(rests_on),
        "missing": list(missing),
        "unused": list(unused),
    }


def no_rules() -> "Worked":
    """Return what a sum that judges comes to where its rule is not at hand."""
    return result([], [note("rules_not_here")], [], ["rules"])
