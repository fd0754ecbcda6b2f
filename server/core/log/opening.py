"""How a make or a tank begins and ends: its opening, and the word that it is over.

The earliest standing opening holds; what it says, its recipe before all, is frozen
for as long as the make lasts. Only how the milk is treated may be changed later, by
the newest word that the recipe allows: then the steps are those of the other route.
Whoever asks for any of it asks here.
"""

from ..recipe.route import choices, route, taken
from ..recipe.treatments import allowed, usual
from . import run
from .order import sort_key
from .touches import keep, kept

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.recipe import Recipe, Treatment
    from server.shapes.core.state import Entry, State


DISCARD = "discard"  # the way of a matter that ends a make


def opening(state: "State | None") -> "Entry | None":
    """Return the entry that opened a make, or None while it is not known.

    Args:
        state: State of the make, or None when it is not known here.
    """
    return _first(state, "make_opened")


def tank_opening(state: "State | None") -> "Entry | None":
    """Return the entry that opened a brine tank, or None of a make.

    Args:
        state: State of the tank, or None when it is not known here.
    """
    return _first(state, "tank_opened")


def whole_recipe_of(state: "State | None") -> "Recipe | None":
    """Return the recipe frozen into a make with all its routes, or None before.

    Args:
        state: State of the make, or None when it is not known here.
    """
    opened = opening(state)
    return None if opened is None else opened["data"]["recipe"]


def recipe_of(state: "State | None") -> "Recipe | None":
    """Return the recipe of a make as its milk is treated, or None before its opening.

    Args:
        state: State of the make, or None when it is not known here.

    Returns:
        The frozen recipe with only the steps of the make's route, see `route`.
    """
    whole = whole_recipe_of(state)
    if state is None or whole is None:
        return None
    routed: "Recipe | None" = kept(state, "route", "recipe")
    if routed is None:
        routed = route(whole, _treatment(state, whole))
        keep(state, "route", "recipe", routed, [])
    return _chosen(state, routed)


def options_of(state: "State", recipe: "Recipe") -> "dict[str, str]":
    """Return {choice: option} of what was chosen: whichever began first, else meant.

    What was meant at the opening stands until a step of another option has begun.

    Args:
        state: State of the make.
        recipe: its recipe.
    """
    begun = [
        (run.entries(state, "step_begun", step["key"])[0]["t_ms"], step["key"], step)
        for step in choices(recipe)
        if run.entries(state, "step_begun", step["key"])
    ]
    options: "dict[str, str]" = {}
    for _, _, step in sorted(begun, key=lambda one: one[:2]):
        options.setdefault(step["choice"], step["option"])
    opened = opening(state)
    meant = (opened["data"].get("options") if opened else None) or {}
    for step in choices(recipe) if meant else []:
        if meant.get(step["choice"]) == step["option"]:
            options.setdefault(step["choice"], step["option"])
    return options


def _chosen(state: "State", routed: "Recipe") -> "Recipe":
    options = options_of(state, routed)
    if not options:
        return routed
    key = "/".join(name + "=" + options[name] for name in sorted(options))
    told: "Recipe | None" = kept(state, "route", key)
    if told is None:
        told = taken(routed, options)
        keep(state, "route", key, told, [])
    return told


def treatment_of(state: "State | None") -> "Treatment | None":
    """Return how a make's milk is treated, or None before its opening.

    Args:
        state: State of the make, or None when it is not known here.
    """
    whole = whole_recipe_of(state)
    return None if state is None or whole is None else _treatment(state, whole)


def treatment_entry(state: "State") -> "Entry | None":
    """Return the entry by which a make's milk is treated so; None where none says.

    Args:
        state: State of the make.
    """
    whole = whole_recipe_of(state)
    if whole is None:
        return None
    said = run.entries(state, "make_opened")[:1] + run.entries(
        state, "treatment_changed"
    )
    # What the recipe has no route for is kept in the record and leads nowhere.
    sound = [
        entry for entry in said if entry["data"].get("treatment") in allowed(whole)
    ]
    return sound[-1] if sound else None


def _treatment(state: "State", whole: "Recipe") -> "Treatment":
    entry = treatment_entry(state)
    told: "Treatment" = usual(whole) if entry is None else entry["data"]["treatment"]
    return told


def is_opened(state: "State") -> bool:
    """Tell whether the opening of a make or tank is known and can be read.

    Args:
        state: State.
    """
    return opening(state) is not None or tank_opening(state) is not None


def discarding(state: "State") -> "Entry | None":
    """Return the decision by which what is in a make was discarded, or None.

    It stands though the fact that it was about changes: what is poured away does
    not come back. Only who strikes it out says that it was not.

    Args:
        state: State.
    """
    told: "list[Entry] | None" = kept(state, "opening", "discarded")
    if told is None:
        lists = state["lists"]
        decided = [name for name in lists if name.startswith("matter_decided/")]
        told = [
            entry
            for name in decided
            for entry in lists[name]
            if entry["data"]["way"] == DISCARD
        ]
        told = sorted(told, key=sort_key)
        keep(state, "opening", "discarded", told, [])
    return told[0] if told else None


def ending(state: "State") -> "Entry | None":
    """Return the entry by which a make is over, or None while it is open.

    What was discarded is over by that, whatever else was said of it. A make that one
    phone closed and another abandoned was abandoned.

    Args:
        state: State.
    """
    return (
        discarding(state)
        or _first(state, "make_abandoned")
        or _first(state, "make_closed")
    )


def is_over(state: "State") -> bool:
    """Tell whether a make was closed, abandoned or discarded.

    Args:
        state: State.
    """
    return ending(state) is not None


def _first(state: "State | None", kind: str) -> "Entry | None":
    standing = run.entries(state, kind) if state else []
    return standing[0] if standing else None
