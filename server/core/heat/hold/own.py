"""The maker's own figures for a hold, laid out as a rule is.

So the clock, the readings and the verdict work the same for both. What it never
has is a way to be pasteurised by it: see `milk_class`.
"""

from ...recipe.treatments import OWN

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import OwnHold, RecipeStep


OWN_HOLD = OWN + "_hold"


def own_rule(step: "RecipeStep", told: "OwnHold") -> "dict[str, Any]":
    """Return a step's own figures as a heat treatment rule.

    Args:
        step: step of the recipe with a hold of its own.
        told: its figures.

    Returns:
        As the files of server/rules, with one row; the air space is asked for
        where the figures say how much hotter it has to be.
    """
    rises = told.get("air_rise")
    return {
        "id": OWN_HOLD,
        "rows": [
            {
                "key": OWN_HOLD,
                "kind": "milk",
                "vessels": _figure(["vat"]),
                "min_temp": {
                    unit: _figure(_least(told["temp"][unit])) for unit in ("F", "C")
                },
                "hold_s": _figure(step["lasts"]["value"]),
                "supplement": "none",
            }
        ],
        "airspace": None
        if rises is None
        else {
            "vessels": ["vat"],
            "rise": {unit: _figure(_least(rises[unit])) for unit in ("F", "C")},
        },
        "gap_max_s": _figure(told["gap_max_s"]["value"]),
        "chart_fields": {},
        "if_not_met": None,
    }


def _least(figure: "Any") -> float:
    """Return the least that still counts: the low end of the band, if it has one."""
    low: "float | None" = figure.get("low")
    return figure["value"] if low is None else low


def _figure(value: "Any") -> "dict[str, Any]":
    # Whatever it rests on: it is the maker's own word, no law that must be read.
    return {"value": value, "status": "setting"}
