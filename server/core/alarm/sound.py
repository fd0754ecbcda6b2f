"""How often it may ring: a budget for each listener, so that alarms stay heard.

Rules. A sounding is a ring that begins. It goes on until everything in it is
answered, and what comes meanwhile joins it: one ring, however many alarms.
1. At most MOST_A_MINUTE soundings begin in any minute, whatever they are about;
   more are merged into the next.
2. At most MOST_AN_HOUR soundings begin in any hour for what nobody set. The last
   of them are kept for the urgent: priority 3 may use three, priority 2 five.
3. A timer, and a step that ends by time or flocculation, was set to its minute by
   a person: it rings then, bound by rule 1 alone. A timer that stays silent
   because six others rang would be worse than none.
What waits for its turn is shown, and flashes, all the same.

Source of the figures: EEMUA 191 and ISA-18.2 as commonly quoted (at most 2 alarms
a minute, about 6 an hour for one person), from secondary sources.
"""

from .alarms import INSTANT_KINDS

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.alarms import Ring, RingMemory, Sounding


MINUTE_MS = 60000
HOUR_MS = 3600000
MOST_A_MINUTE = 2
MOST_AN_HOUR = 6
BY_PRIORITY = {1: MOST_AN_HOUR, 2: 5, 3: 3}


def quiet() -> "RingMemory":
    """Return the memory of a listener who has heard nothing yet."""
    return {"soundings": [], "ids": []}


def sounding(
    alarms: "list[dict[str, Any]]", memory: "RingMemory", real_ms: int
) -> "Ring":
    """Return what one listener is to hear now.

    Args:
        alarms: list of Alarm.
        memory: {"soundings": [{"at_ms", "asked"}], "ids"}: what began to ring
            within the hour, and the alarms in the ring that goes on; see `quiet`.
        real_ms: now, by a real clock: people hear in real time [ms].

    Returns:
        {"ids": alarms in the ring, the most urgent first, "priority": of that
        one or None, "begins": a ring begins now, "waits_ms": instant at which
        what waits may ring, or None, "memory": for the next question}.
    """
    waiting = [alarm for alarm in alarms if alarm["state"] == "unacknowledged"]
    waiting = sorted(waiting, key=_rank)
    past = [
        begun
        for begun in memory["soundings"]
        if real_ms - HOUR_MS < begun["at_ms"] <= real_ms
    ]
    going_on = any(alarm["id"] in memory["ids"] for alarm in waiting)
    begins = False
    waits_ms = None
    if waiting and not going_on:
        waits_ms = _free_ms(waiting, past, real_ms)
        begins = waits_ms <= real_ms
        if begins:
            asked = any(alarm["kind"] in INSTANT_KINDS for alarm in waiting)
            past = past + [{"at_ms": real_ms, "asked": asked}]
            waits_ms = None
    ringing = waiting if going_on or begins else []
    ids = [alarm["id"] for alarm in ringing]
    return {
        "ids": ids,
        "priority": ringing[0]["priority"] if ringing else None,
        "begins": begins,
        "waits_ms": waits_ms,
        "memory": {"soundings": past, "ids": ids},
    }


def _rank(alarm: "dict[str, Any]") -> "tuple[int, int, str]":
    return (alarm["priority"], alarm["rings_ms"], alarm["id"])


def _free_ms(
    waiting: "list[dict[str, Any]]", past: "list[Sounding]", real_ms: int
) -> int:
    """Return the instant from which a ring for these may begin."""
    free_ms = _nth_ms([begun["at_ms"] for begun in past], MOST_A_MINUTE, MINUTE_MS)
    if not any(alarm["kind"] in INSTANT_KINDS for alarm in waiting):
        unasked = [begun["at_ms"] for begun in past if not begun["asked"]]
        most = BY_PRIORITY[waiting[0]["priority"]]
        free_ms = max(free_ms, _nth_ms(unasked, most, HOUR_MS))
    return max(free_ms, real_ms)


def _nth_ms(instants: "list[int]", most: int, span_ms: int) -> int:
    """Return when fewer than `most` of these instants lie within a span [ms]."""
    if len(instants) < most:
        return 0
    return sorted(instants)[-most] + span_ms
