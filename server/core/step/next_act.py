"""What a step wants next: the one act, what speaks against its end, the number."""

from ..make.facts import is_hands_on
from .alerts.alert import what_to_do
from .parts.water import main_water

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.state import Fact, Judging
    from server.shapes.core.step import EndBlocker, StepButton


def end_blockers(
    step: "RecipeStep",
    fact: "Fact",
    shown: "dict[str, Any]",
    judge: "Judging | None",
    met: bool,
) -> "list[EndBlocker]":
    """Return what speaks against ending a running step now.

    Args:
        step: step of the recipe.
        fact: Fact of the step.
        shown: the Step of the View so far.
        judge: what is judged in it, or None.
        met: whether what ends it has come.
    """
    if fact["status"] != "running":
        return []
    blockers: "list[EndBlocker]" = []
    for reading in shown["readings"]:
        blocker: "EndBlocker" = {"key": "reading_missing", "arg": reading["quantity"]}
        if reading["required"] and not reading["count"] and blocker not in blockers:
            blockers.append(blocker)
    for add in shown["adds"]:
        if not add["done"] and not add["optional"]:
            blockers.append({"key": "add_missing", "arg": add["ingredient"]})
    lead = shown.get("hold")
    if met and lead is not None and lead["rounds"] and not lead["is_whole"]:
        blockers.append({"key": "hold_not_whole", "arg": lead["end_ms"]})
    if not met:
        by = step["end"]["by"]
        if by in ("time", "person"):
            blockers.append(_too_early(step, fact))
        elif by == "reading":
            blockers.append({"key": "target_not_met", "arg": step["end"]["quantity"]})
        elif judge is not None:
            blockers.append({"key": "judgement_missing", "arg": step["key"]})
    return blockers


def _too_early(step: "RecipeStep", fact: "Fact") -> "EndBlocker":
    blocker: "EndBlocker" = {"key": "too_early", "arg": fact["due"]["low_ms"]}
    said = what_to_do(step, "time_early")
    if said is not None:
        blocker["do"] = said
    return blocker


def button(
    step: "RecipeStep",
    shown: "dict[str, Any]",
    judge: "Judging | None",
    met: bool,
    now_ms: int,
) -> "StepButton":
    """Return the one thing to do next in this step.

    Args:
        step: step of the recipe.
        shown: the Step of the View so far.
        judge: what is judged in it, or None.
        met: whether what ends it has come.
        now_ms: now [ms].
    """
    if shown["status"] in ("ready", "waiting"):
        return _unless_stopped(shown, "begin")
    if shown["status"] != "running":
        return {"act": "none", "arg": None}
    for reading in shown["readings"]:
        if reading["when"] == "begin" and reading["required"] and not reading["count"]:
            return {"act": "reading", "arg": reading["quantity"]}
    for add in shown["adds"]:
        if not add["done"] and not add["optional"]:
            return {"act": "add", "arg": add["ingredient"]}
    if shown["moulds"] is not None:
        for mould in shown["moulds"]:
            if mould["moulded"] < (mould["suggested"] or 0):
                return {"act": "mould", "arg": mould["size"]}
    if (
        judge is not None
        and not judge["met"]
        and now_ms >= (judge["from_ms"] or now_ms)
    ):
        return {"act": "judge", "arg": None}
    is_over = met and step["end"]["by"] != "person"
    for reading in shown["readings"]:
        if not (reading["required"] or reading["every_s"]):
            continue
        if is_over and reading["when"] == "during":
            continue  # who is slower than the interval would never be let go
        if reading["due_ms"] is not None and reading["due_ms"] <= now_ms:
            return {"act": "reading", "arg": reading["quantity"]}
    if met:
        missing = _missing_at_end(step, shown)
        if missing is not None:
            return {"act": "reading", "arg": missing}
        return _unless_stopped(shown, "end")
    if step["end"]["by"] == "reading":
        return {"act": "reading", "arg": step["end"]["quantity"]}
    return {"act": "none", "arg": None}


def _unless_stopped(shown: "dict[str, Any]", act: str) -> "Any":
    """Return the button of an act; of one that is stopped, what stands first."""
    if shown["stopped_by"]:
        return {"act": "stopped", "arg": shown["stopped_by"][0]}
    return {"act": act, "arg": None}


def _missing_at_end(step: "RecipeStep", shown: "dict[str, Any]") -> "str | None":
    """Return a reading that the end wants first, where the end is near for sure.

    A long step that a person ends (a rest overnight) may have met its end for
    hours: its last reading belongs to the moment the person ends it.
    """
    if step["end"]["by"] == "person" and not is_hands_on(step):
        return None
    for reading in shown["readings"]:
        if reading["when"] == "end" and reading["required"] and not reading["count"]:
            return reading["quantity"]
    return None


def main_number(step: "RecipeStep", shown: "dict[str, Any]") -> "dict[str, Any]":
    """Return the one number that matters now.

    Args:
        step: step of the recipe.
        shown: the Step of the View with its button.
    """
    if shown["button"]["act"] == "add":
        name = shown["button"]["arg"]
        dose = next(
            add["planned"] for add in shown["adds"] if add["ingredient"] == name
        )
        return {
            "kind": "dose",
            "ingredient": name,
            "value": dose["value"],
            "unit": dose["unit"],
        }
    water = main_water(shown["water"])
    if water is not None:
        return water
    if step["end"]["by"] == "reading":
        quantity = step["end"]["quantity"]
        side = "at_least" if step["end"].get("at_least") else "at_most"
        last = None
        for reading in shown["readings"]:
            if reading["quantity"] == quantity:
                last = reading["last"]
        return {
            "kind": "target",
            "quantity": quantity,
            "value": shown["end"][side],
            "last": last,
        }
    if shown["status"] == "running" and shown["due_ms"] is not None:
        return {"kind": "countdown", "due_ms": shown["due_ms"]}
    return {"kind": "instruction"}
