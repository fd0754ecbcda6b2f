"""What a wash asks for first: how much water, how hot, in which part, until when.

The curd's temperature is where it stops; what a person at the vat does is pour. So a
step whose water is worked out leads by it: most of it first, then the curd is read, and
the rest follows from what it really reached.
"""

from ...figures.ask import asked
from ...figures.ends import ends_of
from ...figures.figure import figure
from ...make.facts import readings_in

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Entry, Fact, ViewContext
    from server.shapes.core.step import WashWater
    from server.shapes.core.sums import Answer

LITRES, WARMTH = "target/water_added_l", "target/water_temp_c"
BY, REST = "wash_water", "wash_rest"


def is_led(step: "RecipeStep") -> bool:
    """Tell whether a step leads by water that is worked out.

    Args:
        step: step of the recipe.
    """
    for target in step.get("targets", []):
        by = target["figure"].get("by")
        if target["quantity"] == "water_added_l" and by is not None:
            return by["sum"] == BY
    return False


def water_view(
    context: "ViewContext", step: "RecipeStep", fact: "Fact"
) -> "WashWater | None":
    """Return the water of a wash.

    Args:
        context: as for `steps.step_view`.
        step: step of the recipe, see `is_led`.
        fact: its Fact.

    Returns:
        WashWater; None while what it follows from is not known.
    """
    litres, warmth = figure(context, step, LITRES), figure(context, step, WARMTH)
    answer = asked(context, step, BY, None)
    if litres is None or answer is None or answer["missing"]:
        return None
    added = readings_in(context["state"], fact, "water_added_l")
    read = readings_in(context["state"], fact, "water_temp_c")
    wanted_c = None if warmth is None else warmth["value"]
    return {
        "water_l": litres["value"],
        "low_l": litres["low"],
        "high_l": litres["high"],
        "first_l": _value(answer, "first_l"),
        "after_first_c": _value(answer, "after_first_c"),
        "added_l": sum(entry["data"]["value"] for entry in added),
        "rest_l": _rest_l(context, step, fact, added),
        "water_temp_c": read[-1]["data"]["value"] if read else wanted_c,
        "is_read": bool(read),
        "stop_c": ends_of(context, step)[0],
        "loss_k": _learnt(answer),
        "refused": answer["problems"][0]["key"] if answer["problems"] else None,
    }


def main_water(water: "WashWater | None") -> "dict[str, object] | None":
    """Return the water as the one number of a step, or None where it tells none.

    Args:
        water: answer of `water_view`.
    """
    if water is None or water["refused"]:
        return None
    part, litres = "first", water["first_l"]
    if water["added_l"]:
        part, litres = "rest", water["rest_l"]
    if litres is None:
        return None
    return {
        "kind": "water",
        "part": part,
        "value": litres,
        "temp_c": water["water_temp_c"],
    }


def _rest_l(
    context: "ViewContext", step: "RecipeStep", fact: "Fact", added: "list[Entry]"
) -> "float | None":
    """Return what is still to go in [L]; None until the curd was read after a part."""
    read = readings_in(context["state"], fact, "curd_temp_c")
    if not added or not read or read[-1]["t_ms"] < added[-1]["t_ms"]:
        return None
    stop_c = ends_of(context, step)[0]
    if stop_c is not None and read[-1]["data"]["value"] >= stop_c:
        return 0.0
    answer = asked(context, step, REST, None)
    return None if answer is None else _value(answer, "rest_l")


def _value(answer: "Answer", name: str) -> "float | None":
    for value in answer["values"]:
        if value["name"] == name:
            return float(value["value"])
    return None


def _learnt(answer: "Answer") -> "float | None":
    """Return what an earlier wash was seen to lose [K], or None where none told."""
    for told in answer["rests_on"]:
        if told["name"] == "loss_k" and told["from"] == "make":
            return float(told["value"])
    return None
