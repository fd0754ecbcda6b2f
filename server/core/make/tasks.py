"""Who has a step in hand: taken, let go, taken over, by two at once.

Whoever takes over names what was taken (`ref` of the event), so that it is told
to the one it was taken from. Two who take the same step without knowing of each
other name nothing: both have it, and both are shown.
"""

from ..log import run
from ..log.order import sort_key

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.state import Entry, State
    from server.shapes.core.step import Holder, Task


# Our own judgement, no source: nobody works on for longer than a shift, and who
# has not begun within an hour is doing something else.
SHIFT_MS = 28800000
IDLE_MS = 3600000


def task_view(
    state: "State", key: str, status: str, since_ms: "int | None", now_ms: int
) -> "Task | None":
    """Return who has a step in hand, or None.

    Args:
        state: State of the make.
        key: key of the step.
        status: its status; what is over is in nobody's hand.
        since_ms: when it began, or None [ms].
        now_ms: now [ms].

    Returns:
        Task of who took it first: {"id", "by", "at_ms", "from", "stale",
        "stale_ms", "others" [the same of each other]}; from is {"by", "at_ms"}
        of who had it before, stale None, "idle" (not begun) or "shift" (longer
        than one), stale_ms when it becomes so.
    """
    if status in ("ended", "skipped"):
        return None
    holders = _holders(state, key)
    if not holders:
        return None
    for holder in holders:
        _judge_age(holder, since_ms, now_ms)
    first = holders[0]
    return {
        "id": first["id"],
        "by": first["by"],
        "at_ms": first["at_ms"],
        "from": first["from"],
        "stale": first["stale"],
        "stale_ms": first["stale_ms"],
        "others": holders[1:],
    }


def _holders(state: "State", key: str) -> "list[Holder]":
    acts = [
        (kind, entry)
        for kind in ("task_released", "task_taken")
        for entry in run.entries(state, kind, key)
    ]
    holders: "list[Holder]" = []
    for kind, entry in sorted(acts, key=lambda act: sort_key(act[1])):
        gone = [holder for holder in holders if _lets_go(entry, holder)]
        holders = [holder for holder in holders if holder not in gone]
        if kind == "task_taken":
            holders.append(_holder(entry, gone))
    return holders


def _lets_go(entry: "Entry", holder: "Holder") -> bool:
    return bool(entry["ref"] == holder["id"] or entry["by"] == holder["by"])


def _holder(entry: "Entry", gone: "list[Holder]") -> "Holder":
    others = [holder for holder in gone if holder["by"] != entry["by"]]
    was = others[0] if others else None
    return {
        "id": entry["id"],
        "by": entry["by"],
        "at_ms": entry["t_ms"],
        "from": None if was is None else {"by": was["by"], "at_ms": was["at_ms"]},
        "stale": None,
        "stale_ms": entry["t_ms"],
    }


def _judge_age(holder: "Holder", since_ms: "int | None", now_ms: int) -> None:
    stale_ms = holder["at_ms"] + (IDLE_MS if since_ms is None else SHIFT_MS)
    holder["stale_ms"] = stale_ms
    if now_ms >= stale_ms:
        holder["stale"] = "idle" if since_ms is None else "shift"
