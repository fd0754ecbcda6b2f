"""How a hold stands while it runs: what it meets so far, what is wrong, until when.

Each line is a key with its numbers, the one that matters first. The verdict of a hold
that is over is in `verdict`.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.heat import HoldRound
    from server.shapes.core.state import Fact
    from server.shapes.core.words import Keyed


def how_it_stands(
    fact: "Fact", walked: "dict[str, Any]", rounds: "list[HoldRound]", now_ms: int
) -> "list[Keyed]":
    """Return how a running hold stands, and what began it again.

    Args:
        fact: Fact of the hold with its deadline.
        walked: answer of `clock.hold_walk`.
        rounds: answer of `rounds.hold_rounds`.
        now_ms: now [ms].

    Returns:
        List of {"key", ...}: "waiting", "milk_cold", "air_cold", "lost", "last_round",
        "whole" or "meets_so_far" first; then what began it again.
    """
    end_ms = fact["due_ms"]
    first: "dict[str, Any]" = {"key": _word(fact, walked, rounds, now_ms)}
    first["end_ms"] = end_ms
    low = walked["low"]
    if low is not None:
        first.update(value=low["value"], limit=low["limit"])
    if first["key"] == "meets_so_far" and end_ms is not None:
        first["left_s"] = (end_ms - now_ms) / 1000.0
    if first["key"] == "lost":
        first["span_s"] = rounds[0]["gap_s"]
    told = [_with_unit(first, walked["unit"])]
    broke = walked["broke"]
    if broke is not None and low is None:
        told.append(_began_again(broke, walked, end_ms))
    return told


def is_whole(rounds: "list[HoldRound]") -> bool:
    """Tell whether every thermometer of a hold was read when its time was up.

    Args:
        rounds: answer of `rounds.hold_rounds`.
    """
    return bool(rounds) and all(each["due_ms"] is None for each in rounds)


def _word(
    fact: "Fact", walked: "dict[str, Any]", rounds: "list[HoldRound]", now_ms: int
) -> str:
    if walked["low"] is not None:
        word: str = walked["low"]["key"]
        return word
    if not walked["has_begun"]:
        return "waiting"
    if is_whole(rounds):
        return "whole"
    lost_ms = rounds[0]["lost_ms"] if rounds else None
    if rounds and rounds[0]["due_ms"] and lost_ms is not None and now_ms > lost_ms:
        return "lost"
    end_ms = fact["due_ms"]
    return "last_round" if end_ms is not None and now_ms >= end_ms else "meets_so_far"


def _began_again(
    broke: "dict[str, Any]", walked: "dict[str, Any]", end_ms: "int | None"
) -> "Keyed":
    told = {
        "key": "again_" + broke["key"],
        "at_ms": broke["at_ms"],
        "start_ms": walked["start_ms"],
        "end_ms": end_ms,
    }
    if broke["key"] == "gap":
        told["span_s"], told["gap_s"] = broke["value"], broke["limit"]
        return told
    told["value"], told["limit"] = broke["value"], broke["limit"]
    return _with_unit(told, walked["unit"])


def _with_unit(told: "dict[str, Any]", unit: str) -> "Keyed":
    if "value" in told:
        told["unit"] = unit
    return told
