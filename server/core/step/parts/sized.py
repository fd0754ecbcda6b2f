"""Readings of a step that are of one size of wheel: which sizes, and what names none.

One gauge cannot meet two figures. So whoever reads it says of which size it is; what
names none is held against no figure, and is told once.
"""

from ...make.facts import readings_in
from ...make.wheels import moulds_used
from .targets import judges

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.state import Entry, Fact, ViewContext
    from server.shapes.core.step import OfSizes, Target, WheelSize
    from server.shapes.core.words import ReadingLast


def readings_by_size(
    context: "ViewContext", fact: "Fact", targets: "list[Target]"
) -> "list[OfSizes]":
    """Return the quantities that a step wants another value of for each size.

    Args:
        context: as for `steps.step_view`.
        fact: Fact of the step.
        targets: answer of `targets.target_views`.

    Returns:
        List of {"quantity", "sizes": list of {"size", "title"}, "is_judged",
        "unsized"}; is_judged tells whether a figure would judge a reading that
        names its size; unsized is the newest reading where it names none and one
        would, or None.
    """
    told: "list[OfSizes]" = []
    for quantity in _quantities(targets):
        of_it = [target for target in targets if target["quantity"] == quantity]
        entries = readings_in(context["state"], fact, quantity)
        is_judged = any(judges(target) for target in of_it)
        told.append(
            {
                "quantity": quantity,
                "sizes": _named(context, [target["size"] for target in of_it]),
                "is_judged": is_judged,
                "unsized": _unsized(entries) if is_judged else None,
            }
        )
    return told


def sizes_judged(by_size: "list[OfSizes]") -> "dict[str, list[str]]":
    """Return {quantity: sizes that each have a figure to be read against}.

    Args:
        by_size: answer of `readings_by_size`.
    """
    return {
        of["quantity"]: [size["size"] for size in of["sizes"]]
        for of in by_size
        if of["is_judged"]
    }


def _quantities(targets: "list[Target]") -> "list[str]":
    """Return what has a figure for more than one size, in the order of the recipe."""
    sized = [target["quantity"] for target in targets if target["size"] is not None]
    told: "list[str]" = []
    for quantity in sized:
        if sized.count(quantity) > 1 and quantity not in told:
            told.append(quantity)
    return told


def _named(context: "ViewContext", sizes: "list[str | None]") -> "list[WheelSize]":
    return [
        {"size": mould["size"], "title": mould["title"]}
        for mould in moulds_used(context["state"])
        if mould["size"] in sizes
    ]


def _unsized(entries: "list[Entry]") -> "ReadingLast | None":
    if not entries or entries[-1]["data"].get("place"):
        return None
    last = entries[-1]
    return {"id": last["id"], "value": last["data"]["value"], "at_ms": last["t_ms"]}
