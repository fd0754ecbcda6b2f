"""The acts a make will ask for: instants at which a wait ends and hands are wanted.

The vat has reached its heat, the press is to be opened, the wheels come out of the
brine. Work that a person ends at will is no act: it takes its time where there is
some.
"""

from ..figures.due import span_ms
from ..make.facts import is_hands_on

TYPE_CHECKING = False
if TYPE_CHECKING:
    from collections.abc import Mapping
    from typing import Any

    from server.shapes.core.board import Act
    from server.shapes.core.recipe import RecipeStep
    from server.shapes.core.view import Timer

BY_ITSELF = ("time", "floc", "reading")


def acts(view: "Mapping[str, Any]", steps: "list[RecipeStep]") -> "list[Act]":
    """Return the acts that a make will ask for, as far as its plan reaches.

    Args:
        view: View of the make.
        steps: steps of its recipe, in the order of the View.

    Returns:
        List of Act: {"make", "make_name", "vat", "what", "step", "title",
        "round", "rounds", "place", "label", "at_ms", "early_ms", "late_ms",
        "by", "wait", "since_ms", "next"}. what is "begin" of the step that
        follows, "end" where none begins then, or "timer"; early_ms and late_ms
        are the ends of the recipe's band, None for a timer; by has it in hand.
    """
    followers = _followers(view)
    waits = [
        shown
        for shown, step in zip(view["steps"], steps)
        if shown["status"] not in ("ended", "skipped") and _is_wait(step)
    ]
    told = [_of_wait(view, shown, followers.get(shown["key"])) for shown in waits]
    running = [timer for timer in view["timers"] if timer["stopped_ms"] is None]
    return told + [_of_timer(view, timer) for timer in running]


def _is_wait(step: "RecipeStep") -> bool:
    if not step.get("lasts"):
        return False
    by = step["end"]["by"]
    return by in BY_ITSELF or (by == "person" and not is_hands_on(step))


def _followers(view: "Mapping[str, Any]") -> "dict[str, Any]":
    """Return for each step the first one that waits on it."""
    followers: "dict[str, Any]" = {}
    for shown in view["steps"]:
        for key in shown["waits_on"]:
            if key not in followers:
                followers[key] = shown
    return followers


def _of_wait(
    view: "Mapping[str, Any]",
    shown: "Mapping[str, Any]",
    follower: "Mapping[str, Any] | None",
) -> "Act":
    at_ms = shown["expected_end_ms"]
    named = shown
    if follower is not None and follower["expected_begin_ms"] == at_ms:
        named = follower
    return {
        "make": view["make"]["id"],
        "make_name": view["make"]["name"],
        "vat": view["make"]["vat"],
        "what": "end" if named is shown else "begin",
        "step": named["key"],
        "title": named["title"],
        "round": named["round"],
        "rounds": named["rounds"],
        "place": named["place"],
        "label": None,
        "at_ms": at_ms,
        "early_ms": shown["end_low_ms"],
        "late_ms": shown["end_high_ms"],
        "by": _in_hand_of(shown),
        "wait": shown["key"],
        "since_ms": _since_ms(shown),
        "next": None if follower is None else follower["key"],
    }


def _in_hand_of(shown: "Mapping[str, Any]") -> "str | None":
    task = shown["task"] if shown["status"] == "running" else None
    return None if task is None else task["by"]


def _since_ms(shown: "Mapping[str, Any]") -> int:
    """Return when a wait began; a hold that began again runs from later [ms]."""
    if shown["status"] == "running":
        return int(shown["due_ms"] - span_ms(shown["lasts"]["value_s"]))
    return int(shown["expected_begin_ms"])


def _of_timer(view: "Mapping[str, Any]", timer: "Timer") -> "Act":
    return {
        "make": view["make"]["id"],
        "make_name": view["make"]["name"],
        "vat": view["make"]["vat"],
        "what": "timer",
        "step": timer["step"],
        "title": {"en": ""},
        "round": None,
        "rounds": None,
        "place": None,
        "label": timer["label"],
        "at_ms": timer["due_ms"],
        "early_ms": None,
        "late_ms": None,
        "by": None,
        "wait": timer["id"],
        "since_ms": timer["start_ms"],
        "next": None,
    }
