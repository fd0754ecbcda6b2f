"""What is read in a step, in its order: what is due together, and what may be shown.

Rules first.
1. What is due now is one round of entry. What falls due within a tenth of its own
   interval, ten minutes at most, goes with it: the hands are there now.
2. What a step wants at its end is a round by itself: it is not read yet while hands
   read what the begin asked for.
3. A value may be shown to be tapped by whoever has just read it: what the step wants,
   and what was read last. It is shown only, never entered.
4. Nobody taps a limit: of what a rule asks for, and of the readings that a hold's
   verdict rests on, only what was read last is shown. Of what is poured or run off in
   parts, and of what a step moves until it is over, the last is none.

The figures of 1 are our own judgement, no source.
"""

from ...log.readings import last_of
from ...units.quantities import ADDS_UP, QUANTITIES
from .step_parts import quantities_of

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import State
    from server.shapes.core.step import Offer, Pad, Target

RULE = "rule"  # whose limit a figure is
SOON_SHARE = 0.1
SOON_MOST_S = 600.0


def pads_view(
    state: "State", step: "RecipeStep", shown: "dict[str, Any]", now_ms: int
) -> "list[Pad]":
    """Return what a step reads, each once, and of each wheel that wants its own.

    Args:
        state: State of the make.
        step: step of the recipe.
        shown: the Step of the View with its button.
        now_ms: now [ms].

    Returns:
        List of Pad: {"quantity", "size", "is_due", "last", "offers"}; size None where
        no size has a figure that judges it; value in the quantity's own unit.
    """
    due = _due(shown, now_ms)
    by_size = {
        of["quantity"]: of["sizes"] for of in shown["by_size"] if of["is_judged"]
    }
    pads: "list[Pad]" = []
    for name in quantities_of(shown["readings"]):
        for size in [one["size"] for one in by_size.get(name, [])] or [None]:
            pads.append(_pad(state, step, shown, name, size, name in due))
    return pads


def _due(shown: "dict[str, Any]", now_ms: int) -> "list[str]":
    asked = shown["button"]
    now: "list[str]" = []
    at_end: "list[str]" = []
    for reading in shown["readings"]:
        due_ms = reading["due_ms"]
        if due_ms is None or not (reading["required"] or reading["every_s"]):
            continue
        soon_s = min(SOON_MOST_S, SOON_SHARE * (reading["every_s"] or 0.0))
        if due_ms - int(soon_s * 1000) <= now_ms:
            (at_end if reading["when"] == "end" else now).append(reading["quantity"])
    told = now or at_end
    if asked["act"] != "reading" or asked["arg"] in told:
        return told
    # What a step is over by comes first, and what is due is read with it.
    return [asked["arg"]] + now


def _pad(
    state: "State",
    step: "RecipeStep",
    shown: "dict[str, Any]",
    name: str,
    size: "str | None",
    is_due: bool,
) -> "Pad":
    entry = last_of(state, name, size)
    last: "Any" = None
    if entry is not None:
        last = {"value": entry["data"]["value"], "at_ms": entry["t_ms"]}
    if size is not None and is_due:
        begun = shown["begun"]
        is_due = last is None or begun is None or last["at_ms"] < begun["at_ms"]
    return {
        "quantity": name,
        "size": size,
        "is_due": is_due,
        "last": last,
        "offers": _offers(step, shown, name, size, last),
    }


def _offers(
    step: "RecipeStep",
    shown: "dict[str, Any]",
    name: str,
    size: "str | None",
    last: "Any",
) -> "list[Offer]":
    if QUANTITIES[name]["type"] == "choice":
        return []
    offers: "list[Offer]" = []
    wanted = None if step.get("heat_treatment") else _wanted(shown, name, size)
    is_moved = shown["end"].get("quantity") == name
    if last is not None and name not in ADDS_UP and not is_moved:
        offers.append({"value": last["value"], "why": "last"})
    if wanted is not None and wanted not in [offer["value"] for offer in offers]:
        offers.append({"value": wanted, "why": "wanted"})
    return offers


def _wanted(shown: "dict[str, Any]", name: str, size: "str | None") -> "float | None":
    for target in shown["targets"]:
        if target["quantity"] == name and target["size"] in (None, size):
            return _of_target(target)
    return None


def _of_target(target: "Target") -> "float | None":
    return None if target["range_of"] == RULE else target["value"]
