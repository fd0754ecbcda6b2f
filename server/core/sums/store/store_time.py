"""How long a step in the store lasts: by the recipe, or by the law where that is later.

Milk that is not shown to be pasteurised makes cheese that is kept for the days of
the curing rule, which count from the moulds and only while it is warm enough.
"""

from ..outputs import no_rules, note, output, rests, result, value
from ..rows import choice, number, sum_row

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.state import Rules
    from server.shapes.core.worked import Inputs, Worked


MILK_IS = ("pasteurised", "heat_treated", "raw", "undecided")
DAY_S = 86400.0


def curing_row(rules: "Rules", milk_is: "str | None") -> "dict[str, Any] | None":
    """Return the row of the curing rule that holds for a milk, or None for none.

    Args:
        rules: {rule id: the rule}.
        milk_is: one of MILK_IS, or None where nobody has said.
    """
    table = rules.get("milk_classes")
    if table is None:
        return None
    rule = rules.get(table["curing_rule"]["value"])
    for row in table["rows"]:
        if rule is None or row["key"] != milk_is:
            continue
        for days in rule["rows"]:
            if days["key"] == row["curing"]["value"]:
                told: "dict[str, Any]" = days
                return told
    return None


def is_cured(rules: "Rules", milk_is: "str | None") -> bool:
    """Tell whether days of curing are asked for; they are where nobody has said.

    Args:
        rules: {rule id: the rule}.
        milk_is: one of MILK_IS, or None.
    """
    if milk_is is None or rules.get("milk_classes") is None:
        return True
    return curing_row(rules, milk_is) is not None


def _store_time(x: "Inputs") -> "Worked":
    if x["rules"].get("milk_classes") is None:
        return no_rules()
    own = x["store_own_days"] * DAY_S
    low, high = [
        days * DAY_S for days in x["ranges"].get("store_own_days") or [own / DAY_S] * 2
    ]
    row = curing_row(x["rules"], x["milk_is"])
    if row is None:
        return result([value("store_s", own, low, high)], [note("store_by_recipe")])
    days = row["days"]
    law_s = _law_s(x, days["value"])
    told = note("store_by_curing" if law_s > low else "store_by_recipe")
    return result(
        [value("store_s", max(own, law_s), max(low, law_s), max(high, law_s))],
        [told],
        [rests("days", days["value"], "d", days["status"], days["source"])],
    )


def _law_s(x: "Inputs", days: float) -> float:
    """Return how long after its begin the step may be over by the law [s]."""
    met_ms, begun_ms = x["curing_met_ms"], x["store_begun_ms"]
    if met_ms is None or begun_ms is None:
        # Not moulded or not in the store yet: all days are still to come.
        return days * DAY_S
    return max(0.0, (met_ms - begun_ms) / 1000.0)


ROW = sum_row(
    "store_time",
    "store",
    [
        number("store_own_days", "d", 0.0, 3650.0, [7.0, 730.0]),
        choice("milk_is", list(MILK_IS)),
        number("curing_met_ms", "ms", 0.0, 4102444800000.0, hidden=True),
        number("store_begun_ms", "ms", 0.0, 4102444800000.0, hidden=True),
    ],
    [output("store_s", "s", "band", headline=True)],
    _store_time,
    judges=True,
)
