"""Deadlines: absolute instants, worked out from facts, never counted in ticks.

A timer is the fact that it was started and how long it lasts. Every phone
works out the same due instant from the same fact, so a timer survives reload,
lock, flight mode and a change of phone. Pausing the work does not pause the
milk: nothing here can be paused.
"""

from ..log import run


def timers(state: dict) -> "list[dict]":
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
    found = []
    for entry in run.entries(state, "timer_started"):
        found.append(
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
    return sorted(found, key=lambda timer: (timer["due_ms"], timer["id"]))


def step_due(step: dict, begun_ms: "int | None", curd: "dict | None") -> dict:
    """Return when a step should end, and the band round that instant.

    Args:
        step: a step of the recipe.
        begun_ms: when it began [ms], or None.
        curd: Floc of the step, see `curd.floc`, or None.

    Returns:
        {"due_ms", "low_ms", "high_ms", "basis"}; all None before it has begun
        or without a duration. basis is "floc" or "lasts".
    """
    if curd is not None and curd["cut_ms"] is not None:
        return {
            "due_ms": curd["cut_ms"],
            "low_ms": curd["low_ms"],
            "high_ms": curd["high_ms"],
            "basis": "floc",
        }
    lasts = step.get("lasts")
    if begun_ms is None or not lasts:
        return {"due_ms": None, "low_ms": None, "high_ms": None, "basis": None}
    return {
        "due_ms": begun_ms + int(lasts["value"] * 1000),
        "low_ms": begun_ms + int(low_s(lasts) * 1000),
        "high_ms": begun_ms + int(high_s(lasts) * 1000),
        "basis": "lasts",
    }


def low_s(lasts: dict) -> float:
    """Return the shortest accepted duration of a Figure [s]; its value if unset."""
    return lasts["value"] if lasts.get("low") is None else lasts["low"]


def high_s(lasts: dict) -> float:
    """Return the longest accepted duration of a Figure [s]; its value if unset."""
    return lasts["value"] if lasts.get("high") is None else lasts["high"]
