"""Deadlines: absolute instants, worked out from facts, never counted in ticks.

A timer is the fact that it was started and how long it lasts. Every phone
works out the same due instant from the same fact, so a timer survives reload,
lock, flight mode and a change of phone. Pausing the work does not pause the
milk: nothing here can be paused.
"""

from ..log import run

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.state import State
    from server.shapes.core.view import Timer


def timers(state: "State") -> "list[Timer]":
    """Return the stand-alone timers of a make, in the order they fall due.

    Args:
        state: State of the make.

    Returns:
        List of {"id", "label", "step", "start_ms", "due_ms", "by",
        "stopped_ms"}; stopped_ms None while it runs [ms].
    """
    stops = {}
    for stop in run.entries(state, "timer_stopped"):
        if stop["ref"] not in stops:
            stops[stop["ref"]] = stop["t_ms"]
    told: "list[Timer]" = []
    for entry in run.entries(state, "timer_started"):
        told.append(
            {
                "id": entry["id"],
                "label": entry["data"]["label"],
                "step": entry["data"].get("step"),
                "start_ms": entry["t_ms"],
                "due_ms": entry["t_ms"] + int(entry["data"]["lasts_s"] * 1000),
                "by": entry["by"],
                "stopped_ms": stops.get(entry["id"]),
            }
        )
    return sorted(told, key=lambda timer: (timer["due_ms"], timer["id"]))


def stopped_at(state: "State", over_ms: int) -> "list[Timer]":
    """Return the stand-alone timers of a make that is over: what ran has stopped.

    Args:
        state: State of the make.
        over_ms: when it was over [ms].

    Returns:
        As `timers`.
    """
    told = timers(state)
    for timer in told:
        if timer["stopped_ms"] is None:
            timer["stopped_ms"] = over_ms
    return told
