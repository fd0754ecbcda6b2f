"""The laboratory: results that the milk's class asks for, awaited or failed.

Which tests a class wants is data of the milk's classes; by which readings each is
answered, of the rules of matters. A test known from memory alone is not asked for.

Each reading is one sample. Where a rule has a plan of samples, so many together are
one answer: none may be above the upper figure, and only so many above the lower. Until
all are in they are awaited, but what fails already fails at once.
"""

from ...heat.hold.rule import RULE
from ...heat.milk import phosphatase
from ...heat.milk_class import follows, milk_class
from ...log.readings import every
from .near import near_since_ms
from .seen import WAIT, seen

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import Any

    from server.shapes.core.matters import Seen
    from server.shapes.core.recipe import RecipeGate
    from server.shapes.core.state import Context, Entry
    from server.shapes.core.words import Keyed


def look(context: "Context", gate: "RecipeGate") -> "Seen | None":
    """Return how the laboratory's results stand, or None where all are in and meet.

    Args:
        context: Context of the make.
        gate: gate with the "step" before whose end results are wanted.

    Returns:
        Seen that says "failed", "awaited" or, as long as the wheels could not leave
        anyway, WAIT.
    """
    failed: "list[Entry]" = []
    reasons: "list[Keyed]" = []
    awaited: "list[Keyed]" = []
    for test in _wanted(context):
        entries = _results(context, test)
        bad = FAILS[test["judged"]](context, test, entries)
        failed.extend(bad)
        if bad:
            reasons.append({"key": "lab_failed", "test": test["key"]})
            reasons.extend(_of_plan(context, test, entries))
        elif not entries:
            awaited.append({"key": "lab_awaited", "test": test["key"]})
        elif len(entries) < _samples(context, test):
            awaited.append(
                {
                    "key": "lab_samples",
                    "test": test["key"],
                    "value": len(entries),
                    "limit": _samples(context, test),
                }
            )
    if failed:
        since_ms = max(entry["t_ms"] for entry in failed)
        ids = [entry["id"] for entry in failed]
        return seen("failed", since_ms, reasons, ids)
    if not awaited:
        return None
    near_ms = near_since_ms(context, gate["step"])
    if near_ms is None:
        return seen(WAIT, None, awaited)
    return seen("awaited", near_ms, awaited)


def _wanted(context: "Context") -> "list[dict[str, Any]]":
    """Return the tests that the milk's class wants, as the rules list them."""
    rules = context["rules"]
    told = follows(milk_class(context["state"], rules), rules)
    known = {test["key"]: test for test in rules["matters"]["tests"]}
    return [
        known[test["key"]]
        for test in (told["tests"] if told else [])
        if test["wanted"]["status"] != "memory" and test["key"] in known
    ]


def _results(context: "Context", test: "dict[str, Any]") -> "list[Entry]":
    found: "list[Entry]" = []
    for quantity in test["quantities"]:
        found.extend(every(context["state"], quantity))
    return found


def _positive(
    context: "Context", test: "dict[str, Any]", entries: "list[Entry]"
) -> "list[Entry]":
    return [entry for entry in entries if entry["data"]["value"] == "positive"]


def _by_phosphatase(
    context: "Context", test: "dict[str, Any]", entries: "list[Entry]"
) -> "list[Entry]":
    rule = context["rules"].get(RULE)
    if rule is None or phosphatase(context["state"], rule) != "positive":
        return []
    return entries[-1:]


def _rule(context: "Context", test: "dict[str, Any]") -> "Any":
    return context["rules"].get(test.get("rule") or "")


def _samples(context: "Context", test: "dict[str, Any]") -> int:
    """Return how many samples answer a test together; 1 where no rule has a plan."""
    rule = _rule(context, test)
    return 1 if rule is None else int(rule["samples"]["value"])


def _row(context: "Context", test: "dict[str, Any]") -> "dict[str, Any] | None":
    """Return the row of a test's plan for cheese of such milk, or None."""
    rule = _rule(context, test)
    told = follows(milk_class(context["state"], context["rules"]), context["rules"])
    key = told["staph"]["ripened"]["value"] if told else None
    for row in rule["rows"] if rule else []:
        if row["key"] == key:
            found: "dict[str, Any]" = row
            return found
    return None


def _by_counts(
    context: "Context", test: "dict[str, Any]", entries: "list[Entry]"
) -> "list[Entry]":
    """Return the counts by which a set of samples does not meet the plan."""
    bad: "list[Entry]" = []
    for _, above, between in _failed_sets(context, test, entries):
        bad.extend(above + between)
    return bad


def _failed_sets(
    context: "Context", test: "dict[str, Any]", entries: "list[Entry]"
) -> "list[tuple[list[Entry], list[Entry], list[Entry]]]":
    """Return each set that fails: all of it, those above, those too many between.

    A later set does not make an earlier one good: samples are taken when counts are
    highest.
    """
    row = _row(context, test)
    if row is None:
        return []
    rule, count = _rule(context, test), _samples(context, test)
    failed = []
    for start in range(0, len(entries), count):
        of_set = entries[start : start + count]
        above, between = _above(of_set, row["upper_g"]["value"]), _between(of_set, row)
        if len(between) <= rule["between_most"]["value"]:
            between = []
        if above or between:
            failed.append((of_set, above, between))
    return failed


def _above(entries: "list[Entry]", most: float) -> "list[Entry]":
    return [entry for entry in entries if entry["data"]["value"] > most]


def _between(entries: "list[Entry]", row: "dict[str, Any]") -> "list[Entry]":
    lower, upper = row["lower_g"]["value"], row["upper_g"]["value"]
    return [entry for entry in entries if lower < entry["data"]["value"] <= upper]


def _of_plan(
    context: "Context", test: "dict[str, Any]", entries: "list[Entry]"
) -> "list[Keyed]":
    """Return in numbers by what each set that decided does not meet its plan."""
    row = _row(context, test) if test["judged"] == "counts" else None
    if row is None:
        return []
    low, high = row["lower_g"]["value"], row["upper_g"]["value"]
    most = _rule(context, test)["between_most"]["value"]
    told: "list[Keyed]" = []
    for of_set, above, between in _failed_sets(context, test, entries):
        of = {"at_ms": of_set[-1]["t_ms"], "samples": len(of_set)}
        if above:
            told.append(dict(of, key="lab_above", value=len(above), limit=high))
        if between:
            of_plan = {"low": low, "high": high, "limit": most}
            told.append(dict(of, key="lab_between", value=len(between), **of_plan))
    return told


FAILS: "dict[str, Callable[..., list[Entry]]]" = {
    "positive": _positive,
    "phosphatase": _by_phosphatase,
    "counts": _by_counts,
}
