"""What rings, and what is heard of it.

Loaded when it is first asked, once the screen shows the work at hand.
"""

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.alarms import Alarms, Ring, RingMemory
    from server.shapes.core.state import Desk


def alarms(desk: "Desk", now_ms: int, escalate_s: float) -> "Alarms":
    """Return every alarm that stands, the one to answer first on top.

    Args:
        desk: Desk.
        now_ms: now, by the server's clock [ms].
        escalate_s: how long an alarm may wait for an answer before the owner
            is told [s].

    Returns:
        See `alarms.alarms`.
    """
    from ..alarm.alarms import alarms as all_alarms

    return all_alarms(desk, now_ms, escalate_s)


def sounding(
    alarms: "list[dict[str, Any]]", memory: "RingMemory", real_ms: int
) -> "Ring":
    """Return what one listener is to hear now.

    Args:
        alarms: list of Alarm.
        memory: what this listener heard, see `sound.sounding`.
        real_ms: now, by a real clock: people hear in real time [ms].

    Returns:
        See `sound.sounding`.
    """
    from ..alarm.sound import sounding as heard_now

    return heard_now(alarms, memory, real_ms)
