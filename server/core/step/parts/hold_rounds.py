"""The rounds of a hold, and the fat, among the readings that its steps want."""

from ...figures.grace import of_round_s
from ...heat.hold.fat import FAT, asks_fat

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.heat import HoldLead, HoldRound
    from server.shapes.core.recipe import RecipeReading, RecipeStep
    from server.shapes.core.state import Fact, ViewContext
    from server.shapes.core.step import ReadingWanted


def rounds_view(
    context: "ViewContext", step: "RecipeStep", fact: "Fact", lead: "HoldLead"
) -> "list[ReadingWanted]":
    """Return the readings of a hold's rounds, as its step wants them.

    Args:
        context: as for `steps.step_view`.
        step: step of the recipe.
        fact: its Fact with its deadline.
        lead: what leads it, see `heat.hold.lead`.

    Returns:
        List of ReadingWanted, milk first; they take the place of what the recipe
        wants of these quantities at the begin, during and at the end.
    """
    first = lead["together"][0]
    return [
        _wanted(each, fact, context["now_ms"], None if n == 0 else first)
        for n, each in enumerate(lead["rounds"])
    ]


def _wanted(
    each: "HoldRound", fact: "Fact", now_ms: int, goes_with: "str | None"
) -> "ReadingWanted":
    due_ms, end_ms = each["due_ms"], fact["due_ms"]
    last = each["last"]
    lost_ms = None if due_ms is None else each["lost_ms"]
    return {
        "quantity": each["quantity"],
        # The last round is what the end waits for, however late it is.
        "when": "end" if end_ms is not None and now_ms >= end_ms else "during",
        "every_s": each["every_s"],
        "required": True,
        "due_ms": due_ms,
        "overdue_s": 0.0 if due_ms is None else max(0, now_ms - due_ms) / 1000.0,
        "count": 0 if last is None else 1,
        "last": last,
        "grace_s": of_round_s(due_ms, lost_ms),
        "lost_ms": lost_ms,
        "goes_with": goes_with,
    }


def fat_wanted(context: "ViewContext", step: "RecipeStep") -> "list[RecipeReading]":
    """Return the reading of the fat where a hold's row hangs on it, else nothing.

    Args:
        context: as for `steps.step_view`.
        step: step of the recipe.
    """
    if asks_fat(context["state"], context["recipe"], step, context["rules"]):
        return [{"quantity": FAT, "when": "end", "required": True}]
    return []
