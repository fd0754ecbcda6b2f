"""What belongs to a step: targets, readings wanted, doses, wheels."""

from ...figures.figure import figure
from ...figures.grace import grace_s
from ...heat.hold.steps import hold_steps
from ...known.bottle import bottle
from ...log import run
from ...make.duplicates import verdict_on_duplicate
from ...make.facts import readings_in
from ...make.instruments import is_wanted
from ...recipe.own import ingredient
from .origin import origin

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.heat import HoldLead
    from server.shapes.core.recipe import RecipeReading, RecipeStep
    from server.shapes.core.state import Entry, Fact, ViewContext
    from server.shapes.core.step import Dose, InBand, ReadingWanted


END_SLACK_MS = 120000  # a reading this long before the end counts; practice


def verdict(value: float, low: "float | None", high: "float | None") -> "InBand":
    """Return "below", "above" or "in_band" of a value against inclusive limits.

    Args:
        value: the measured value.
        low: lower limit, or None.
        high: upper limit, or None.
    """
    if low is not None and value < low:
        return "below"
    if high is not None and value > high:
        return "above"
    return "in_band"


def readings_view(
    context: "ViewContext",
    step: "RecipeStep",
    fact: "Fact",
    met_ms: "int | None",
    sizes: "dict[str, list[str]]",
    lead: "HoldLead | None" = None,
) -> "list[ReadingWanted]":
    """Return the readings that a step wants, when each is due and how late it is.

    One quantity may be wanted at the begin, during and at the end. A reading at
    the end counts from shortly before what ends the step has come, so that one
    taken at the begin does not pass for it. What there is no instrument for is not
    wanted, see `instruments`.

    Args:
        context: as for `steps.step_view`.
        step: step of the recipe.
        fact: its Fact.
        met_ms: since when what ends the step has come, or None [ms].
        sizes: {quantity: sizes of wheel that each want a value of their own}; while
            the step runs, one that lacks leaves the reading wanted.
        lead: what leads it, of a hold; its rounds go before the recipe's interval.

    Returns:
        List of {"quantity", "when", "every_s", "required", "due_ms",
        "overdue_s", "grace_s", "count", "last", "lost_ms", "goes_with"}; due_ms None
        while nothing is wanted [ms].
    """
    views: "list[ReadingWanted]" = []
    if lead is not None:
        from .hold_rounds import rounds_view

        views.extend(rounds_view(context, step, fact, lead))
    of_rounds = [view["quantity"] for view in views]
    wanted_all = list(step.get("readings", []))
    # Of a hold that is over the verdict says what it lacked.
    if fact["ended_ms"] is None and hold_steps(context["recipe"]):
        from .hold_rounds import fat_wanted

        wanted_all.extend(fat_wanted(context, step))
    for wanted in wanted_all:
        if wanted["quantity"] in of_rounds:
            continue
        taken = readings_in(context["state"], fact, wanted["quantity"])
        if not taken and not is_wanted(context["state"], wanted):
            continue
        counted = taken
        if wanted["when"] == "end":
            counted = _at_the_end(step, wanted, taken, met_ms)
        due_ms = None
        if fact["status"] == "running":
            counted = _of_each(counted, sizes.get(wanted["quantity"], []))
            read = counted if wanted["quantity"] in sizes else taken
            due_ms = _reading_due_ms(wanted, fact, step, read, counted, met_ms)
        overdue_ms = 0 if due_ms is None else context["now_ms"] - due_ms
        views.append(
            {
                "quantity": wanted["quantity"],
                "when": wanted["when"],
                "every_s": wanted.get("every_s"),
                "required": bool(wanted.get("required")),
                "due_ms": due_ms,
                "overdue_s": max(0, overdue_ms) / 1000.0,
                "grace_s": grace_s(context, wanted, due_ms),
                "count": len(counted),
                "last": None
                if not taken
                else {
                    "id": taken[-1]["id"],
                    "value": taken[-1]["data"]["value"],
                    "at_ms": taken[-1]["t_ms"],
                },
                "lost_ms": None,
                "goes_with": None,
            }
        )
    return views


def quantities_of(readings: "list[ReadingWanted]") -> "list[str]":
    """Return the quantities of what a step reads, each once, in their order."""
    names: "list[str]" = []
    for reading in readings:
        if reading["quantity"] not in names:
            names.append(reading["quantity"])
    return names


def _of_each(taken: "list[Entry]", sizes: "list[str]") -> "list[Entry]":
    """Return readings, or none of them while a size has none of its own."""
    read = [entry["data"].get("place") for entry in taken]
    return taken if all(size in read for size in sizes) else []


def _at_the_end(
    step: "RecipeStep",
    wanted: "RecipeReading",
    taken: "list[Entry]",
    met_ms: "int | None",
) -> "list[Entry]":
    if met_ms is None:
        return []
    if step["end"]["by"] != "person":
        return [entry for entry in taken if entry["t_ms"] >= met_ms - END_SLACK_MS]
    # A person ends it at any time: the reading that met the begin is not the end.
    for other in step["readings"]:
        if other["when"] == "begin" and other["quantity"] == wanted["quantity"]:
            return taken[1:]
    return taken


def _reading_due_ms(
    wanted: "RecipeReading",
    fact: "Fact",
    step: "RecipeStep",
    taken: "list[Entry]",
    counted: "list[Entry]",
    met_ms: "int | None",
) -> "int | None":
    if wanted["when"] == "begin":
        return None if taken else fact["begun_ms"]
    if wanted["when"] == "during":
        every_s = wanted.get("every_s")
        since_ms = taken[-1]["t_ms"] if taken else fact["begun_ms"]
        if not every_s or since_ms is None:
            return None
        return since_ms + int(every_s * 1000)
    if counted:
        return None
    # Only a clock says beforehand when the end will come. A step that may end at
    # 25 minutes and should at 30 wants its last reading at 30.
    if step["end"]["by"] in ("reading", "judged"):
        return met_ms
    return fact["due_ms"]


def add_view(
    context: "ViewContext", step: "RecipeStep", name: str, fact: "Fact"
) -> "dict[str, Any]":
    """Return what a step adds: the dose asked for and what was really added.

    Args:
        context: as for `steps.step_view`.
        step: step of the recipe.
        name: key of the ingredient.
        fact: Fact of the step.

    Returns:
        {"ingredient", "title", "planned", "added", "total", "optional", "done"}.
    """
    state = context["state"]
    dose = _dose(context, step, name)
    goes_in = ingredient(context["recipe"], name)
    title = {"en": name} if goes_in is None else goes_in["title"]
    optional = goes_in is not None and bool(goes_in.get("optional"))
    added = run.entries(state, "ingredient_added", name)
    additions: "list[Any]" = []
    counted = []
    for entry in added:
        same = verdict_on_duplicate(state, entry["id"]) is True
        if not same and entry["data"]["unit"] == (dose or entry["data"])["unit"]:
            counted.append(entry["data"]["amount"])
        additions.append(
            {
                "id": entry["id"],
                "amount": entry["data"]["amount"],
                "unit": entry["data"]["unit"],
                "lot": entry["data"].get("lot"),
                "at_ms": entry["t_ms"],
                "by": entry["by"],
            }
        )
    total = sum(counted)
    word = "no_plan"
    # An amount in another unit than the plan's cannot be judged against it.
    if dose is not None and dose["low"] is not None and counted:
        word = verdict(total, dose["low"], dose["high"])
    for addition in additions:
        addition["verdict"] = word
    return {
        "ingredient": name,
        "title": title,
        "planned": dose,
        "added": additions,
        "total": total,
        "optional": optional,
        "done": bool(additions) or (optional and fact["ended"] is not None),
    }


def _dose(context: "ViewContext", step: "RecipeStep", name: str) -> "Dose | None":
    """Return what is asked of an ingredient, and the recipe's rule behind it."""
    wanted = figure(context, step, "dose/" + name)
    goes_in = ingredient(context["recipe"], name)
    if wanted is None or goes_in is None:
        return None
    rule = goes_in["dose"]
    milk = context["milk"]
    return {
        "value": wanted["value"],
        "low": wanted["low"],
        "high": wanted["high"],
        "range_of": wanted["range_of"],
        "unit": wanted["unit"],
        "origin": origin(wanted),
        "bottle": bottle(context["desk"], context["state"], name),
        "basis": {
            "per": rule["per"],
            "amount": rule["amount"]["value"],
            "amount_unit": rule["amount"]["unit"],
            "milk_kg": milk["milk_kg"],
            "milk_l": milk["milk_l"],
            "milk_from": milk["milk_from"],
            "status": rule["amount"]["status"],
        },
    }
