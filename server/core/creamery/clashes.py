"""Two acts that want the same hands at the same time, while one can still move.

Two acts clash when they fall this near together and nobody has said that they
are in different hands. Waits that follow each other in one make cannot clash,
nor those that one and the same step waits for: that is how the recipe runs.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.board import Act, Clash, Move

WITHIN_MS = 300000  # this near, two acts want two pairs of hands; our own judgement
AHEAD_MS = 86400000
SOON_MS = 3600000  # before, it is no news to a busy hand; our own judgement
MOST = 3  # more than a few are read by nobody


def clashes(acts: "list[Act]", now_ms: int, until_ms: int) -> "list[Clash]":
    """Return the acts that fall together, each once, in the order of time.

    Args:
        acts: list of Act of any makes, see `acts.acts`.
        now_ms: now; what is due already is no longer ahead [ms].
        until_ms: how far to look [ms].

    Returns:
        List of {"at_ms", "acts" [Act], "move", "is_soon"}; is_soon within the hour;
        move is {"act": its place in the
        list, "to_ms", "way": "later" or "earlier", "clears"} for the act with
        the widest band, None when no band leaves room.
    """
    ahead = [act for act in acts if now_ms < act["at_ms"] <= until_ms]
    ahead.sort(key=_by_time)
    return [
        {
            "at_ms": group[0]["at_ms"],
            "acts": group,
            "move": _move(group, now_ms),
            "is_soon": group[0]["at_ms"] - now_ms <= SOON_MS,
        }
        for group in _groups(ahead)
    ]


def _by_time(act: "Act") -> "tuple[int, str, str]":
    return (act["at_ms"], act["make"], act["wait"])


def _groups(acts: "list[Act]") -> "list[list[Act]]":
    groups = []
    left = list(acts)
    while left:
        first = left.pop(0)
        mates = _mates(first, left)
        if mates:
            groups.append(sorted([first] + mates, key=_by_time))
            left = [act for act in left if all(act is not mate for mate in mates)]
    return groups


def _mates(first: "Act", others: "list[Act]") -> "list[Act]":
    """Return what clashes with an act, or with what clashes with it.

    Two that do not clash with each other may both clash with a third.
    """
    near = [act for act in others if act["at_ms"] - first["at_ms"] <= WITHIN_MS]
    mates: "list[Act]" = []
    newest = [first]
    while newest:
        newest = [act for act in near if any(_is_clash(act, mate) for mate in newest)]
        near = [act for act in near if all(act is not mate for mate in newest)]
        mates.extend(newest)
    return mates


def _is_clash(act: "Act", other: "Act") -> bool:
    if act["by"] and other["by"] and act["by"] != other["by"]:
        return False
    if act["make"] != other["make"]:
        return True
    # A timer beside a step of its own make is set for that very step.
    if act["what"] == "timer" or other["what"] == "timer":
        return False
    if act["next"] is not None and act["next"] == other["next"]:
        return False
    return act["since_ms"] < other["at_ms"] and other["since_ms"] < act["at_ms"]


def _move(group: "list[Act]", now_ms: int) -> "Move | None":
    ranked = []
    for index in range(len(group)):
        for move in _moves(group, index, now_ms):
            room_ms = abs(move["to_ms"] - group[index]["at_ms"])
            is_later = move["way"] == "later"
            ranked.append(((move["clears"], is_later, room_ms, -index), move))
    # No two ranks are equal, so that no move is ever compared with another.
    return max(ranked, key=lambda option: option[0])[1] if ranked else None


def _moves(group: "list[Act]", index: int, now_ms: int) -> "list[Move]":
    """Return the ways that an act of a clash can move within its band."""
    act = group[index]
    early_ms, late_ms = act["early_ms"], act["late_ms"]
    others = [other["at_ms"] for other in group if other is not act]
    moves: "list[Move]" = []
    if late_ms is not None and late_ms > max(act["at_ms"], now_ms):
        clears = late_ms - max(others) > WITHIN_MS
        moves.append({"act": index, "to_ms": late_ms, "way": "later", "clears": clears})
    if early_ms is not None and now_ms < early_ms < act["at_ms"]:
        clears = min(others) - early_ms > WITHIN_MS
        moves.append(
            {"act": index, "to_ms": early_ms, "way": "earlier", "clears": clears}
        )
    return moves
