"""When a View changes although nothing is entered: the instants that lie ahead.

Every rule of the View that looks at the clock has its instant here: a deadline,
the ends of its band, a reading that falls due, the level of an alert. Figures
that move with the clock itself (how late, how long overdue, when the day ends)
are asked for again every MOVING_MS while they move.
"""

from .alerts.overdue import act_after_s
from .alerts.timely import ACT_SHARE

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.step import Step
    from server.shapes.core.view import View


MOVING_MS = 30000


def next_change_ms(view: "View", now_ms: int, others: "list[int]") -> "int | None":
    """Return the next instant at which the View changes by itself, or None.

    Args:
        view: View without its next_change_ms.
        now_ms: now [ms].
        others: instants at which its matters do.
    """
    timers = [
        timer["due_ms"] for timer in view["timers"] if timer["stopped_ms"] is None
    ]
    moving = any(due_ms <= now_ms for due_ms in timers)
    instants: "list[int | None]" = list(timers)
    instants.extend(others)
    for step in view["steps"]:
        if step["status"] == "running":
            instants.extend(_instants(step))
            moving = moving or _is_moving(step, now_ms)
        elif step["status"] == "ready":
            moving = True
    ahead = [ms for ms in instants if ms is not None and ms > now_ms]
    if moving:
        ahead.append(now_ms + MOVING_MS)
    return min(ahead) if ahead else None


def _is_moving(step: "Step", now_ms: int) -> bool:
    if step["due_ms"] is None or step["due_ms"] <= now_ms:
        return True
    if step["turn"] and step["turn"]["overdue_s"] > 0:
        return True
    return any(reading["overdue_s"] > 0 for reading in step["readings"])


def _instants(step: "Step") -> "list[int | None]":
    instants = _of_band(step)
    instants.append(step["due_ms"])
    if step["judge"]:
        instants.append(step["judge"]["from_ms"])
        if step["judge"]["last"]:
            instants.append(step["judge"]["last"]["at_ms"])
    if step["task"]:
        instants.extend(
            task["stale_ms"] for task in [step["task"]] + step["task"]["others"]
        )
    if step["turn"]:
        turn_ms, every_s = step["turn"]["due_ms"], step["turn"]["every_s"]
        instants.extend([turn_ms, _past_ms(turn_ms, every_s)])
    for reading in step["readings"]:
        if reading["last"]:
            instants.append(reading["last"]["at_ms"])
        if reading["due_ms"] is not None:
            instants.append(reading["due_ms"])
            instants.append(_past_ms(reading["due_ms"], reading["grace_s"]))
            instants.append(_past_ms(reading["due_ms"], act_after_s(reading)))
    return instants


def _of_band(step: "Step") -> "list[int | None]":
    low_ms, high_ms = step["end_low_ms"], step["end_high_ms"]
    if low_ms is None or high_ms is None:
        return []
    lasts_s = step["lasts"]["value_s"] if step["lasts"] else 0.0
    return [low_ms, _past_ms(high_ms, 0.0), _past_ms(high_ms, ACT_SHARE * lasts_s)]


def _past_ms(since_ms: int, by_s: float) -> int:
    """Return the first instant that lies more than a span after another."""
    return since_ms + int(by_s * 1000) + 1
