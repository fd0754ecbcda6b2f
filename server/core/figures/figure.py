"""What is this quantity of this step, now? The one place that answers it.

Rules first.
1. A person's word goes first, then the sum that the recipe names in the figure's
   "by", then the recipe's own figure. Whoever shows, plans, rings or judges asks
   here and works nothing out again.
2. A sum that cannot answer is said to: the recipe's own figure stands with why.
3. A sum may ask for figures itself. Where that leads back to the figure that is
   being asked, the recipe's own figure goes in there: `fell_back` "circle". What
   was worked out with a figure cut short above it is not kept, and one that goes
   round is worked out anew within another ("round"), so no answer depends on which
   figure was asked for first.
"""

from ..log.touches import keep, kept
from ..recipe import own as recipes
from ..recipe.steps.turns import LONGEST_S
from ..units.quantities import QUANTITIES, check_number
from .answered import of_person, of_recipe, of_sum
from .person import word_of
from .rests import rests_on

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping
    from typing import Any

    from server.shapes.core.figures import OwnFigure, StepFigure
    from server.shapes.core.recipe import Binding, RecipeStep, RecipeTarget
    from server.shapes.core.state import Context
    from server.shapes.core.sums import Answer, SumValue


MOST_DOSE = 1000000.0
# Of a step that ends by flocculation, where the recipe names no other sum.
BY_FLOC: "Binding" = {"sum": "cut_time", "value": "cut_s"}
# A setting may have no time of its own.
NO_TIME: "OwnFigure" = {
    "value": None,
    "low": None,
    "high": None,
    "unit": "s",
    "source": None,
    "status": "derived",
    "by": None,
    "range_of": "recipe",
}


def figure(context: "Context", step: "RecipeStep", name: str) -> "StepFigure | None":
    """Return a figure of a step, or None where the recipe has none of that name.

    Args:
        context: see `context.of_make`.
        step: step of the recipe.
        name: name of the figure, see `recipe.own`.

    Returns:
        Figure, see `answered`; not to be changed.
    """
    key = step["key"] + "/" + name
    if key in context["figures"] and not (
        context["asking"] and key in context["round"]
    ):
        return context["figures"][key]
    before: "StepFigure | None" = kept(context["state"], "figures", key)
    if before is not None:
        context["figures"][key] = before
        return before
    own = recipes.own_figure(
        context["recipe"],
        step,
        name,
        context["milk"],
        context["opened"]["milk_l"],
    )
    if own is None and name == "lasts" and step["end"]["by"] == "floc":
        own = NO_TIME.copy()
    if own is None:
        return None
    own["by"] = binding(step, name, own)
    if key in context["asking"]:
        context["cut"].append(context["asking"].index(key))
        return of_recipe(step["key"], name, own, "circle")
    if own["by"] is not None and context["asking"]:
        context["nested"].append(key)
    told = _told(context, step, name, own, key)
    if not context["cut"]:
        context["figures"][key] = told
        if not context["asking"]:
            _keep(context, key, own["by"], told)
    return told


def _keep(
    context: "Context", key: str, by: "Binding | None", told: "StepFigure"
) -> None:
    """Keep a figure for the Views to come, where its own sum alone answers it."""
    words = rests_on(by)
    # What a person has said stands in another stream than the make's own.
    if words is not None and not context["nested"] and told["from"] != "person":
        keep(context["state"], "figures", key, told, words)
    context["nested"] = []


def of_target(
    context: "Context", step: "RecipeStep", target: "RecipeTarget"
) -> "StepFigure":
    """Return the figure of a target; of a hold with what its rule asks.

    Args:
        context: see `context.of_make`.
        step: step of the recipe.
        target: the target, one of its own.
    """
    told = figure(context, step, recipes.target_name(target))
    if told is None:
        raise ValueError(
            "row %r is no target of %s" % (target["quantity"], step["key"])
        )
    if not step.get("heat_treatment"):
        return told
    # Loaded when a hold is there to lead: the app starts without it.
    from ..heat.hold.asked import bound

    state, fact = context["state"], context["facts"][step["key"]]
    held: "StepFigure" = bound(
        state, step, fact, context["rules"], target["quantity"], told
    )
    return held


def binding(
    step: "RecipeStep", name: str, own: "Mapping[str, Any]"
) -> "Binding | None":
    """Return which value of which sum answers a figure, or None.

    Args:
        step: step of the recipe.
        name: name of the figure.
        own: the recipe's own figure.
    """
    if own["by"] is None and name == "lasts" and step["end"]["by"] == "floc":
        return BY_FLOC
    return own["by"]


def _told(
    context: "Context", step: "RecipeStep", name: str, own: "OwnFigure", key: str
) -> "StepFigure":
    said = word_of(context, step, name)
    if said is not None:
        return of_person(step["key"], name, own, said)
    if own["by"] is None:
        return of_recipe(step["key"], name, own)
    context["asking"].append(key)
    try:
        return _by_sum(context, step, name, own, own["by"])
    finally:
        context["asking"].pop()
        _leave(context, key)


def _leave(context: "Context", key: str) -> None:
    """Note what was cut short at this very figure: it concerns nobody above it."""
    here = len(context["asking"])
    if here in context["cut"]:
        context["round"].append(key)
    context["cut"] = [depth for depth in context["cut"] if depth < here]


def _by_sum(
    context: "Context",
    step: "RecipeStep",
    name: str,
    own: "OwnFigure",
    by: "Binding",
) -> "StepFigure":
    # Loaded with the first figure that a sum answers.
    from .ask import asked

    answer = asked(context, step, by["sum"], by.get("size") or step.get("size"))
    if answer is None:
        return of_recipe(step["key"], name, own, "unknown_sum")
    if answer["missing"]:
        return of_recipe(step["key"], name, own, "missing", answer["missing"])
    if answer["problems"]:
        return of_recipe(step["key"], name, own, "refused")
    value = _value_of(answer, by)
    why = _why_not(name, own, value)
    if why is not None or value is None:
        return of_recipe(step["key"], name, own, why)
    return of_sum(step["key"], name, own, answer, value)


def _value_of(answer: "Answer", by: "Binding") -> "SumValue | None":
    """Return the first value of the binding's names that the answer has, or None."""
    names = by["value"] if isinstance(by["value"], list) else [by["value"]]
    for name in names:
        for value in answer["values"]:
            if value["name"] == name and _is_of(value["of"], by.get("of")):
                return value
    return None


def _is_of(told: object, wanted: object) -> bool:
    return wanted is None or told == wanted


def _why_not(name: str, own: "OwnFigure", value: "SumValue | None") -> "str | None":
    if value is None or value["value"] is None:
        return "not_told"
    if value["unit"] not in units_for(name, own["unit"]):
        return "unit"
    low, high = _limits(name)
    if check_number(name, value["value"], low, high):
        return "out_of_range"
    return None


def units_for(name: str, unit: str) -> "list[str]":
    """Return the units that a sum may answer a figure in.

    Args:
        name: name of the figure, see `recipe.own`.
        unit: the figure's own unit.
    """
    if not name.startswith("dose/"):
        return [unit]
    # A dose may be weighed, measured or counted: dry, as a solution, in tablets.
    return ["g", "kg", "mL", "tablet"] + (["pack", ""] if unit == "pack" else [])


def _limits(name: str) -> "tuple[float | None, float | None]":
    if name == "lasts" or name.startswith("turn/"):
        return 1.0, LONGEST_S
    if name.startswith("dose/"):
        return 0.0, MOST_DOSE
    if name.startswith("target/"):
        quantity = QUANTITIES.get(name.split("/")[1], {})
        return quantity.get("low"), quantity.get("high")
    return None, None
