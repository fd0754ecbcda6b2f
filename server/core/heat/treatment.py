"""How the milk of a make is treated: who said so, and what it may be changed to.

A word changes the route, never the milk: what it is told to be by then is the
matter of `milk_class`.
"""

from ..log import run
from ..log.opening import (
    opening,
    recipe_of,
    treatment_entry,
    treatment_of,
    whole_recipe_of,
)
from ..recipe.parts import step_of
from ..recipe.treatments import TREATMENTS, allowed, usual
from .hold.steps import hold_steps

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.heat import TreatmentChoice, TreatmentView
    from server.shapes.core.recipe import Treatment
    from server.shapes.core.record import LeadsNowhere
    from server.shapes.core.state import State
    from server.shapes.core.words import Problem


RAW = TREATMENTS[-1]


def treatment(state: "State | None") -> "Treatment | None":
    """Return how a make's milk is treated, or None before its opening.

    Args:
        state: State of the make, or None when it is not known here.
    """
    return treatment_of(state)


def treatment_view(state: "State") -> "TreatmentView | None":
    """Return how a make's milk is treated and may be, or None before its opening.

    Args:
        state: State of the make.
    """
    whole, entry = whole_recipe_of(state), treatment_entry(state)
    chosen, opened = treatment_of(state), opening(state)
    if whole is None or chosen is None or opened is None:
        return None
    said = opened if entry is None else entry
    return {
        "treatment": chosen,
        "usual": usual(whole),
        "said": {
            "id": said["id"],
            "at_ms": said["t_ms"],
            "by": said["by"],
            "why": said["data"].get("why"),
        },
        "was_changed": entry is not None and entry["id"] != opened["id"],
        "others": [
            _choice(state, other) for other in allowed(whole) if other != chosen
        ],
    }


def _choice(state: "State", other: "Treatment") -> "TreatmentChoice":
    return {
        "treatment": other,
        "problem": _refused(state, other),
        "hold_ended_ms": hold_ended_ms(state),
    }


def _refused(state: "State", wanted: "Treatment") -> "Problem | None":
    heated_ms = heated_since_ms(state)
    if wanted == RAW and heated_ms is not None:
        return {"field": "treatment", "key": "milk_was_heated", "limit": heated_ms}
    return None


def check_change(state: "State | None", data: "dict[str, Any]") -> "list[Problem]":
    """Return what speaks against a change of treatment before it is recorded.

    Args:
        state: State of the make, or None when it is not known here.
        data: body of the treatment_changed event, sound in itself.

    Returns:
        List of {"field", "key", "limit"}.
    """
    whole = whole_recipe_of(state)
    if state is None or whole is None:
        return []
    wanted = data["treatment"]
    if wanted not in allowed(whole):
        key, limit = "treatment_not_allowed", allowed(whole)
        return [{"field": "treatment", "key": key, "limit": limit}]
    if wanted == treatment_of(state):
        key = "treatment_is_the_same"
        return [{"field": "treatment", "key": key, "limit": wanted}]
    refused = _refused(state, wanted)
    return [] if refused is None else [refused]


def leads_nowhere(
    state: "State", kind: str, data: "dict[str, Any]"
) -> "LeadsNowhere | None":
    """Return why an entry stands in the record and leads the make nowhere, or None.

    Args:
        state: State of the make.
        kind: its kind.
        data: its body as it stands.

    Returns:
        {"key", "title"}: "other_route" where its step, of that title, is on another
        route than the make's; "no_route" where the recipe has no route for the
        treatment that it names.
    """
    whole, routed = whole_recipe_of(state), recipe_of(state)
    if whole is None or routed is None:
        return None
    if kind == "treatment_changed":
        is_sound = data["treatment"] in allowed(whole)
        return None if is_sound else {"key": "no_route", "title": None}
    if routed is whole or step_of(routed, data.get("step")) is not None:
        return None
    step = step_of(whole, data.get("step"))
    return None if step is None else {"key": "other_route", "title": step["title"]}


def heated_since_ms(state: "State") -> "int | None":
    """Return since when a make's milk was held hot, on any route; None if it was not.

    Args:
        state: State of the make.

    Returns:
        Instant at which the first hold began, or ended where no begin is known [ms].
    """
    return _first_ms(state, ("step_begun", "step_ended"))


def hold_ended_ms(state: "State") -> "int | None":
    """Return when a make's first hold ended, on any route; None before [ms].

    Args:
        state: State of the make.
    """
    return _first_ms(state, ("step_ended",))


def _first_ms(state: "State", kinds: "tuple[str, ...]") -> "int | None":
    whole = whole_recipe_of(state)
    times: "list[int]" = []
    for step in hold_steps(whole) if whole else []:
        for kind in kinds:
            times.extend(
                entry["t_ms"] for entry in run.entries(state, kind, step["key"])[:1]
            )
    return min(times) if times else None
