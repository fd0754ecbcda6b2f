"""What rings: the few matters that a person must answer, across all makes.

Rules first.
1. An alarm asks for an answer. A step that is due is a prompt, silent until its
   band is over; only what is wanted to the minute rings at its instant: a
   stand-alone timer, and a step that ends by time or by flocculation.
2. One matter, one alarm. Its name in a make is the id of the Alert it comes
   from, so that a word given on the make's own screen counts here too. It may grow:
   a step that is due is late then, a reading out of its band becomes the verdict on
   the hold. A word about a step that was due is none about its being late.
3. To acknowledge silences the sound and hides nothing. What nobody answers is
   told to the owner after a while.
4. To shelve takes the sound away for a named time, by a named person, with why;
   the matter stays listed, and comes back by itself.
5. A make that cannot be shown rings once for that: its own timers no longer do.
6. What ended without an answer stays listed for a while as returned.

How loud, and how often, is decided in `sound`.
"""

from ..creamery.kept import view as view_of
from ..log import run
from ..log.answers import acknowledged
from ..log.apart import ask, without_alarms
from ..make.practice import is_practice
from .deadlines import deadlines
from .raised import RETURNED_S, ended, mark_of, standing, unshown
from .wall import wall_rows

TYPE_CHECKING = False
if TYPE_CHECKING:
    from server.shapes.core.alarms import Alarm, Alarms, Deadline, Shelved
    from server.shapes.core.state import Desk, State
    from server.shapes.core.view import Make, View


ESCALATE_S = 600.0  # practice; the owner may set another
INSTANT_KINDS = ("timer", "step_due")  # wanted to the minute
STATES = ("unacknowledged", "acknowledged", "shelved", "returned")


def alarms(desk: "Desk", now_ms: int, escalate_s: float) -> "Alarms":
    """Return every alarm that stands, the one to answer first on top.

    Args:
        desk: Desk.
        now_ms: now, by the server's clock [ms].
        escalate_s: how long an alarm may wait for an answer before the owner
            is told [s].

    Returns:
        {"now_ms", "next_change_ms", "alarms", "deadlines", "wall"}: list of Alarm,
        what will ring next, see `raised` and `deadlines`, and `wall.wall_rows`.
    """
    listed: "list[Alarm]" = []
    ahead: "list[Deadline]" = []
    changes: "list[int | None]" = []
    makes: "list[Make]" = []
    for make_id in sorted(desk["makes"]):
        view = view_of(desk, make_id, now_ms)
        if view is None or not view["make"]["is_open"]:
            continue
        makes.append(view["make"])
        state = desk["makes"][make_id]
        told = ask(
            desk, make_id, "alarms", now_ms, _of_make, view, state, now_ms, escalate_s
        )
        if told is not None:
            listed.extend(told[0])
            ahead.extend(told[1])
            changes.extend(told[2])
    for silent in without_alarms(desk):
        state = desk["makes"][silent["make"]]
        listed.append(_with_state(unshown(silent), state, now_ms, escalate_s))
    for alarm in listed:
        alarm["is_open"] = alarm["state"] == "unacknowledged"
        alarm["mark"] = mark_of(alarm["priority"]) if alarm["is_open"] else "ok"
        changes.extend(_changes(alarm))
    changes.extend(deadline["due_ms"] for deadline in ahead)
    ahead = sorted(ahead, key=_due_rank)
    asking = [alarm for alarm in listed if alarm["state"] != "returned"]
    later = [ms for ms in changes if ms is not None and ms > now_ms]
    return {
        "now_ms": now_ms,
        "next_change_ms": min(later) if later else None,
        "alarms": sorted(listed, key=rank),
        "deadlines": ahead,
        "wall": wall_rows(makes, ahead, asking),
    }


def _of_make(
    view: "View", state: "State", now_ms: int, escalate_s: float
) -> "tuple[list[Alarm], list[Deadline], list[int | None]]":
    """Return the alarms of one make, what will ring in it, and when that changes."""
    asking = standing(view, now_ms)
    # A phone whose clock is ahead tells of what is still to come.
    changes: "list[int | None]" = [alarm["rings_ms"] for alarm in asking]
    changes.append(view["next_change_ms"])
    answered = _said(view, asking, state, now_ms, escalate_s)
    return answered, deadlines(view, now_ms), changes


def _said(
    view: "View", asking: "list[Alarm]", state: "State", now_ms: int, escalate_s: float
) -> "list[Alarm]":
    """Return the alarms of one make with what was said about each."""
    told = [
        _with_state(alarm, state, now_ms, escalate_s)
        for alarm in asking
        if alarm["rings_ms"] <= now_ms
    ]
    for alarm in ended(view, now_ms):
        if acknowledged(state, alarm["matter"], _word_ms(alarm)) is None:
            alarm["state"] = "returned"
            told.append(alarm)
    return told


def rank(alarm: "Alarm") -> "tuple[int, int, int, str]":
    """Return what alarms are sorted by: what wants an answer, then how urgent.

    Args:
        alarm: Alarm.
    """
    return (
        STATES.index(alarm["state"]),
        alarm["priority"],
        alarm["rings_ms"],
        alarm["id"],
    )


def _due_rank(deadline: "Deadline") -> "tuple[int, str]":
    return (deadline["due_ms"], deadline["id"])


def _shelf(state: "State", alarm: "Alarm", now_ms: int) -> "Shelved | None":
    entry = run.last(state, "alarm_shelved", alarm["matter"])
    if entry is None or entry["t_ms"] > now_ms:
        return None
    until_ms = entry["t_ms"] + int(entry["data"]["for_s"] * 1000)
    if until_ms <= now_ms:
        return None
    return {
        "id": entry["id"],
        "by": entry["by"],
        "at_ms": entry["t_ms"],
        "until_ms": until_ms,
        "why": entry["data"]["why"],
    }


def _with_state(
    alarm: "Alarm", state: "State", now_ms: int, escalate_s: float
) -> "Alarm":
    alarm["acknowledged"] = acknowledged(state, alarm["matter"], _word_ms(alarm))
    alarm["shelved"] = _shelf(state, alarm, now_ms)
    if alarm["shelved"] is not None:
        alarm["state"] = "shelved"
    elif alarm["acknowledged"] is not None:
        alarm["state"] = "acknowledged"
    else:
        # What comes back off the shelf has not waited meanwhile.
        since_ms = max(alarm["rings_ms"], _unshelved_ms(state, alarm))
        if not is_practice(state):  # the owner is not told of practice
            escalates_ms = since_ms + int(escalate_s * 1000)
            alarm["escalates_ms"] = escalates_ms
            alarm["escalated"] = now_ms >= escalates_ms
    return alarm


def _word_ms(alarm: "Alarm") -> int:
    """Return since when a word answers an alarm [ms]: since it asks.

    A word about the reading that told of a matter first is one about the matter, and
    an answer to a make that cannot be shown counts for as long as that lasts.
    """
    lasts = alarm["kind"] in ("matter", "unshown")
    return alarm["due_ms"] if lasts else alarm["rings_ms"]


def _unshelved_ms(state: "State", alarm: "Alarm") -> int:
    entry = run.last(state, "alarm_shelved", alarm["matter"])
    if entry is None:
        return 0
    return entry["t_ms"] + int(entry["data"]["for_s"] * 1000)


def _changes(alarm: "Alarm") -> "list[int | None]":
    instants = [alarm["escalates_ms"]]
    if alarm["shelved"] is not None:
        instants.append(alarm["shelved"]["until_ms"])
    if alarm["returned_ms"] is not None:
        instants.append(alarm["returned_ms"] + int(RETURNED_S * 1000))
    return instants
