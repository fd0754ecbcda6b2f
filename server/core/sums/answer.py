"""Answer one sum: gather its values, do its work, say what the answer rests on.

What was typed goes before what the make knows, and that before the recipe's
figure and the default. What a formula refuses becomes a problem of the sum, so that
nothing ever crashes.
"""

from ..numbers.refused import Refused
from .outputs import declared
from .reply import reply_of
from .standing import standing

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping
    from typing import Any

    from server.shapes.core.state import KnownValue, Rules
    from server.shapes.core.sums import Answer, RestsOn
    from server.shapes.core.worked import Inputs


# Strongest first. "secondary" is read in a source that quotes the first one,
# "setting" is this tool's own and to be agreed.
STATUSES = (
    "measured",
    "read",
    "secondary",
    "abstract",
    "derived",
    "setting",
    "practice",
    "memory",
)


def answer(
    sum_row: "dict[str, Any]",
    given: "dict[str, dict[str, Any]]",
    known: "dict[str, KnownValue]",
    rules: "Rules",
) -> "Answer":
    """Return the Answer to one sum.

    Args:
        sum_row: the sum, see `rows.sum_row`.
        given: {input name: as `reading.read_given` takes it}.
        known: {input name: {"value", "low", "high", "typed", "from", "status",
            "source"}} that a make knows; only what is not given is taken.
        rules: {rule id: the rule}.

    Returns:
        {"key", "values", "rests_on", "status", "standing", "notes", "problems",
        "ask", "missing"}; values empty with problems or where something is missing.
    """
    reply = reply_of(sum_row["key"])
    taken = _gather(sum_row, given, known, reply)
    if reply["missing"] or reply["problems"]:
        return reply
    if sum_row["judges"]:
        taken["rules"] = rules
    _work(sum_row, taken, reply)
    if reply["values"]:
        reply["status"] = weakest(reply["rests_on"])
        reply["standing"] = standing(sum_row, reply["rests_on"])
    return reply


def weakest(rests_on: "list[RestsOn]") -> str:
    """Return the weakest status among what an answer rests on.

    Args:
        rests_on: list of {"status"}.

    >>> weakest([{"status": "measured"}, {"status": "practice"}])
    'practice'
    """
    worst = 0
    for figure in rests_on:
        worst = max(worst, STATUSES.index(figure["status"]))
    return STATUSES[worst] if rests_on else "derived"


def _gather(
    sum_row: "dict[str, Any]",
    given: "dict[str, dict[str, Any]]",
    known: "dict[str, KnownValue]",
    reply: "Answer",
) -> "dict[str, Any]":
    taken: "Inputs" = {"ranges": {}, "typed": {}, "from": {}}
    for item in sum_row["inputs"]:
        name = item["name"]
        taken[name] = None
        if given.get(name) is not None and not item["hidden"]:
            # A make asks with nothing typed, and refuses seldom.
            from .reading import read_given

            read = read_given(item, given[name])
            reply["problems"].extend(read["problems"])
            reply["ask"].extend(read["ask"])
            source = {"from": "typed", "status": "measured", "source": None}
            _take(taken, reply, item, read["value"], source)
            taken["typed"][name] = read["typed"]
        elif known.get(name) is not None:
            _take(taken, reply, item, known[name]["value"], known[name])
        elif item["default"] is not None:
            source = {"from": "default"}
            source.update(item["default"])
            _take(taken, reply, item, source["value"], source)
        elif not item["optional"]:
            reply["missing"].append(name)
    return taken


def _take(
    taken: "Inputs",
    reply: "Answer",
    item: "dict[str, Any]",
    value: "Any",
    source: "Mapping[str, Any]",
) -> None:
    name = item["name"]
    if value is None:
        return
    taken[name] = value
    taken["from"][name] = source["from"]
    if source.get("typed") is not None:
        taken["typed"][name] = source["typed"]
    if source.get("low") is not None and source.get("high") is not None:
        taken["ranges"][name] = [source["low"], source["high"]]
    if not item["hidden"]:
        reply["rests_on"].append(
            {
                "name": name,
                "value": value,
                "unit": item["unit"],
                "from": source["from"],
                "status": source["status"],
                "source": source["source"],
            }
        )


def _work(sum_row: "dict[str, Any]", taken: "Inputs", reply: "Answer") -> None:
    try:
        done = sum_row["work"](taken)
    except Refused as refusal:
        from .problems import problem_of

        reply["problems"].append(problem_of(sum_row, refusal))
        return
    except ArithmeticError:
        from ..numbers.problems import problem

        # A divisor of nothing, or a number past all measure: say it plainly.
        reply["problems"].append(problem(sum_row["key"], "not_computable"))
        return
    reply["values"] = declared(done["values"], sum_row["outputs"], taken)
    reply["notes"] = done["notes"]
    reply["missing"] = done["missing"]
    # What nobody typed and the chosen way does without is nothing to rest on.
    kept = []
    for told in reply["rests_on"]:
        if told["from"] == "typed" or told["name"] not in done["unused"]:
            kept.append(told)
    reply["rests_on"] = kept + done["rests"]
