"""One cause, one alert: what stays wrong, or is wrong in two ways, is told once.

Rules first. A reading out of its band takes the name of an alert that stands already
1. where its quantity is off on the same side as there, and the band is the same, or
   the step is of the same family: the second wash, the other size, the next pressing;
2. where the step before left its quantity where it is off here, too;
3. where it is an acid on the same side, whatever the band, which falls with the make;
4. where it is a temperature on the same side in the same step: one heat is behind
   milk and air space;
5. where both are of one wash: its water, how much and how hot, makes its curd.
A word about the first is a word about it.
"""

from ..parts.water import is_led

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.view import Alert


# Which side of what is wanted an alert is on.
SIDES = {
    "alert.reading_above": "above",
    "alert.reading_below": "below",
    "alert.acid_slow": "above",
    "alert.acid_stalled": "above",
    "alert.acid_fast": "below",
}


def joined(raised: "list[Alert]", steps: "list[RecipeStep]") -> "list[Alert]":
    """Return alerts with one name and instant for each cause, the first one's.

    Args:
        raised: list of Alert, in any order; not changed, since some are kept.
        steps: steps of the recipe.
    """
    by_key = {step["key"]: step for step in steps}
    causes: "list[list[Alert]]" = []
    told = []
    for alert in sorted(raised, key=_age):
        cause = _cause_of(alert, causes, by_key)
        if cause is None:
            causes.append([alert])
        else:
            cause.append(alert)
            alert = alert.copy()
            alert["id"], alert["since_ms"] = cause[0]["id"], cause[0]["since_ms"]
        told.append(alert)
    return told


def side_of(alert: "Alert") -> "str | None":
    """Return the side of what is wanted that an alert is on, or None."""
    return SIDES.get(alert["key"])


def _age(alert: "Alert") -> "tuple[int, str, str]":
    return (alert["since_ms"], alert["id"], alert["key"])


def _family(step: "RecipeStep") -> "list[Any]":
    """Return what steps have in common that are rounds or sizes of one work."""
    wanted = sorted({row["quantity"] for row in step.get("targets", [])})
    return [step.get("place"), step["end"]["by"], step["end"].get("quantity"), wanted]


def _cause_of(
    alert: "Alert",
    causes: "list[list[Alert]]",
    steps: "dict[str, RecipeStep]",
) -> "list[Alert] | None":
    for cause in causes:
        if any(_is_one(known, alert, steps) for known in cause):
            return cause
    return None


def _is_one(known: "Alert", alert: "Alert", steps: "dict[str, RecipeStep]") -> bool:
    here, there = steps.get(alert["step"] or ""), steps.get(known["step"] or "")
    sides = [side_of(known), side_of(alert)]
    if None in sides or here is None or there is None:
        return False
    is_acid = [known["form"] == "acid", alert["form"] == "acid"]
    if here is there and not any(is_acid) and is_led(here):
        return True
    if sides[0] != sides[1]:
        return False
    if known["quantity"] != alert["quantity"]:
        return here is there and known["form"] == alert["form"] == "temperature"
    if here is there or all(is_acid) or _family(here) == _family(there):
        return True
    if (known["low"], known["high"]) == (alert["low"], alert["high"]):
        return True
    return there["key"] in here.get("after", []) and _is_off(known, alert, sides[1])


def _is_off(known: "Alert", alert: "Alert", side: "str | None") -> bool:
    """Tell whether what was read before lies out of the band of now, on that side."""
    value, low, high = known["value"], alert["low"], alert["high"]
    if value is None:
        return False
    if side == "below":
        return low is not None and value < low
    return high is not None and value > high
