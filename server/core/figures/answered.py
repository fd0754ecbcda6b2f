"""A figure as answered by recipe, sum or person: its number, its band, its origin.

A Figure is {"name", "step", "value", "low", "high", "unit", "role", "from",
"range_of", "status", "source", "sum", "of", "estimate", "needs", "fell_back",
"own"}. `range_of` says what its ends are, see `sums.outputs`.
`low` to `high` is always the band that is wanted, what a reading is judged by;
how uncertain a sum's value is stands apart, in `estimate`. The recipe's band goes with
the sum's value, but where the binding says that the estimate is the band.
`own` is the recipe's own value; `from` is "person", "sum" or "recipe". Where a sum
should have answered and did not, the recipe's own figure stands and `fell_back`
says why: "missing" (then `needs` names the inputs), "refused", "not_told" (it has
no such value), "unit", "out_of_range", "circle" (the sum itself asks for this
figure) or "unknown_sum".
"""

from ..recipe.bindings import BY_ESTIMATE

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence
    from typing import Any

    from server.shapes.core.figures import OwnFigure, StepFigure
    from server.shapes.core.step import Uncertain
    from server.shapes.core.sums import Answer, SumValue


# Of these a band is a distance; of all others a share of the value.
BY_DISTANCE = ("C", "pH")


def of_recipe(
    step: str,
    name: str,
    own: "OwnFigure",
    fell_back: "str | None" = None,
    needs: "Sequence[str]" = (),
) -> "StepFigure":
    """Return the recipe's own figure.

    Args:
        step: key of the step.
        name: name of the figure, see `recipe.own`.
        own: answer of `own.own_figure`.
        fell_back: why no sum answers though one is named, or None.
        needs: inputs that its sum lacks.
    """
    by: "Mapping[str, Any]" = own["by"] or {}
    return {
        "name": name,
        "step": step,
        "value": own["value"],
        "low": own["low"],
        "high": own["high"],
        "unit": own["unit"],
        "role": "band",
        "range_of": own["range_of"],
        "from": "recipe",
        "status": own["status"],
        "source": own["source"],
        "sum": by.get("sum"),
        "of": by.get("size"),
        "estimate": None,
        "needs": list(needs),
        "fell_back": fell_back,
        "own": own["value"],
    }


def of_sum(
    step: str, name: str, own: "OwnFigure", answer: "Answer", value: "SumValue"
) -> "StepFigure":
    """Return a figure that a sum has answered.

    Args:
        step: key of the step.
        name: name of the figure.
        own: the recipe's own figure, whose band goes with the sum's value.
        answer: the sum's Answer.
        value: the value of it that is the figure.
    """
    told = of_recipe(step, name, own)
    role = value.get("role") or "estimate"
    told.update(
        {
            "value": value["value"],
            "unit": value["unit"] or own["unit"],
            "role": role,
            "from": "sum",
            "status": answer["status"] or own["status"],
            "source": None,
            "sum": answer["key"],
        }
    )
    if role == "band":
        told["low"], told["high"] = value["low"], value["high"]
        told["range_of"] = value["range_of"]
        return told
    told["estimate"] = _ends(value)
    by: "Mapping[str, Any]" = own["by"] or {}
    if by.get("band") == BY_ESTIMATE and told["estimate"] is not None:
        told["low"], told["high"] = value["low"], value["high"]
        told["range_of"] = value["range_of"]
    else:
        told["low"], told["high"] = moved_band(own, value["value"])
    return told


def of_person(step: str, name: str, own: "OwnFigure", value: float) -> "StepFigure":
    """Return a figure that a person has said, with the recipe's band round it.

    Args:
        step: key of the step.
        name: name of the figure.
        own: the recipe's own figure.
        value: what was said, in the figure's unit.
    """
    told = of_recipe(step, name, own)
    told["value"] = value
    told["low"], told["high"] = moved_band(own, value)
    told.update({"from": "person", "status": "measured", "source": None})
    return told


def moved_band(own: "OwnFigure", value: float) -> "tuple[float | None, float | None]":
    """Return the recipe's band round another value than the recipe's own.

    What the recipe tolerates stays: of a temperature or a pH as far either way, of
    an amount or a time as large a share.

    Args:
        own: the recipe's own figure.
        value: the other value.

    Returns:
        (low, high); None each where the recipe leaves that side open.
    """
    return _moved_end(own, own["low"], value), _moved_end(own, own["high"], value)


def _moved_end(own: "OwnFigure", end: "float | None", value: float) -> "float | None":
    if end is None or own["value"] is None:
        return None
    if own["unit"] in BY_DISTANCE or not own["value"]:
        return value + (end - own["value"])
    return value * (end / own["value"])


def _ends(value: "SumValue") -> "Uncertain | None":
    if value["low"] is None and value["high"] is None:
        return None
    return {"low": value["low"], "high": value["high"]}
