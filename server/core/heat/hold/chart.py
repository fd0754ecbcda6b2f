"""The chart of a hold: what of it is known here, to be copied on it, and what is not.

The plant's own chart is the record. Its fields are the rule's, see the rules' chart
fields; those that only the authority or the day itself can fill are not asked here.
"""

from ...log.equipment import in_effect
from ...log.opening import opening, recipe_of
from ...log.readings import last, together
from .readings import hold_readings
from .rule import AIR, MILK

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.heat import ChartField
    from server.shapes.core.state import Fact, State


AMOUNTS = ("milk_volume_l", "milk_mass_kg")
# What a chart must hold, by the required keys of the rules' chart fields.
CHART = (
    "date",
    "plant_name",
    "product_name",
    "product_amount",
    "hold_extent",
    "indicating_reading",
    "airspace_reading",
    "operator_initials",
)


def chart_fields(
    state: "State", fact: "Fact", rule: "dict[str, Any]", until_ms: "int | None"
) -> "list[ChartField]":
    """Return the fields of a vat's chart with what is known of each.

    Args:
        state: State of the make.
        fact: Fact of its hold, begun.
        rule: the rule that it goes by.
        until_ms: see `clock.hold_until_ms` [ms].

    Returns:
        List of {"field", "required", "value"} in the rule's order; value None where
        nothing is known, else what `_VALUES` says of it. Empty without chart fields.
    """
    rows = rule.get("chart_fields", {}).get("vat", [])
    known = known_fields(state, fact, until_ms) if rows else {}
    return [
        {
            "field": row["key"],
            "required": row["required"],
            "value": known[row["key"]],
        }
        for row in rows
        if row["key"] in known
    ]


def known_fields(
    state: "State", fact: "Fact", until_ms: "int | None"
) -> "dict[str, Any]":
    """Return what is known of each field that a chart of a vat may have.

    Args:
        state: State of the make.
        fact: Fact of its hold, begun.
        until_ms: see `clock.hold_until_ms` [ms].

    Returns:
        {field: what `_VALUES` says of it, or None}.
    """
    begun_ms: "Any" = fact["begun_ms"]
    hold = hold_readings(state, begun_ms, until_ms)
    return {name: _VALUES[name](state, fact, hold) for name in _VALUES}


def _date(state: "State", fact: "Fact", hold: "dict[str, Any]") -> "Any":
    return {"at_ms": fact["begun_ms"]}


def _equipment(key: str) -> "Any":
    def look_up(state: "State", fact: "Fact", hold: "dict[str, Any]") -> "Any":
        text = in_effect(state).get(key)
        return {"text": text} if text else None

    return look_up


def _product(state: "State", fact: "Fact", hold: "dict[str, Any]") -> "Any":
    opened, recipe = opening(state), recipe_of(state)
    if opened is None or recipe is None:
        return None
    return {"title": recipe["title"], "batch": opened["data"].get("batch")}


def _amount(state: "State", fact: "Fact", hold: "dict[str, Any]") -> "Any":
    for quantity in AMOUNTS:
        entry = last(state, quantity)
        if entry is not None:
            return {"quantity": quantity, "value": entry["data"]["value"]}
    return None


def _extent(state: "State", fact: "Fact", hold: "dict[str, Any]") -> "Any":
    rows = hold["rows"]
    if len(rows) < 2:
        return None
    return {"from_ms": rows[0]["at_ms"], "until_ms": rows[-1]["at_ms"]}


def _last_of(name: str) -> "Any":
    def look_up(state: "State", fact: "Fact", hold: "dict[str, Any]") -> "Any":
        for row in reversed(hold["rows"]):
            if row[name] is not None:
                return {
                    "at_ms": row["at_ms"],
                    "reading": row[name],
                    "unit": hold["unit"],
                }
        return None

    return look_up


def _operator(state: "State", fact: "Fact", hold: "dict[str, Any]") -> "Any":
    read = together(state, (MILK, AIR), fact["begun_ms"], fact["ended_ms"])
    return {"by": read[-1]["by"]} if read else None


_VALUES: "dict[str, Any]" = {
    "date": _date,
    "plant_name": _equipment("plant_name"),
    "product_name": _product,
    "product_amount": _amount,
    "hold_extent": _extent,
    "indicating_reading": _last_of("temp"),
    "airspace_reading": _last_of("air_temp"),
    "operator_initials": _operator,
    "recorder_number": _equipment("recorder_number"),
}
