"""The batch record: every entry of a make with its corrections in sight.

An entry is never overwritten. A line shows the value that stands, the value as
first entered, who changed it, when and why, and whether it was struck out.
"""

from ..heat.treatment import leads_nowhere
from ..log import amends
from ..log.order import corrected_ms
from ..log.rights.proof import proved
from ..make.duplicates import first_of, verdict_on_duplicate

TYPE_CHECKING = False
if TYPE_CHECKING:
    from typing import Any

    from server.shapes.core.record import Correction, LogLine
    from server.shapes.core.state import Effective, Event, Raw, State
    from server.shapes.core.words import Reasoned


LATE_ENTRY_S = 120.0  # entered this long after it was observed: shown as late
CLOCK_OFF_S = 120.0  # a phone clock this wrong is shown beside its entries

LONGEST_KIND = 40

# A correction and a strike are shown with what they are about. Where they are
# not to be seen there (struck out themselves, second to another's, about an
# entry not known here) they are lines of their own, so that nothing that was
# entered is lost from sight.
ABOUT_OTHERS = ("entry_corrected", "entry_struck")


def lines(state: "State", newest: "int | None" = None) -> "list[LogLine]":
    """Return the lines of the batch record, oldest first.

    Args:
        state: State of the make.
        newest: only this many of the newest lines; None for all.

    Returns:
        List of LogLine.
    """
    told = []
    for index in range(len(state["log"]) - 1, -1, -1):
        event_id = state["log"][index]["id"]
        if event_id in state["raw"]:
            told.append(_unread_line(state, state["raw"][event_id]))
        else:
            event = state["events"][event_id]
            if event["kind"] in ABOUT_OTHERS and _is_shown_elsewhere(state, event):
                continue
            told.append(line(state, event))
        if newest is not None and len(told) >= newest:
            break
    told.reverse()
    return told


def line(state: "State", event: "Event") -> "LogLine":
    """Return one LogLine.

    Args:
        state: State of the make.
        event: an event of it.

    Returns:
        {"id", "kind", "at_ms", "entered_ms", "by", "device", "step", "data",
        "original", "corrections", "struck", "late_entry_s", "clock_off_s",
        "later_of", "same", "proved", "leads_nowhere"}.
    """
    kind = event["kind"]
    now: "Effective" = {"t_ms": corrected_ms(event), "data": event["data"]}
    original = now
    corrections: "list[Correction]" = []
    for amend in amends.standing_amends(state, event["id"]):
        changes = amend["data"]["set"]
        before = _picked(now, changes)
        now = amends.corrected(kind, now, changes)
        corrections.append(
            {
                "id": amend["id"],
                "set": changes,
                "before": before,
                "why": amend["data"]["why"],
                "by": amend["person"],
                "at_ms": corrected_ms(amend),
            }
        )
    late_s = (event["entered_ms"] - event["at_ms"]) / 1000.0
    off_s = event["off_ms"] / 1000.0
    return {
        "id": event["id"],
        "kind": kind,
        "at_ms": now["t_ms"],
        "entered_ms": event["entered_ms"] + event["off_ms"],
        "by": event["person"],
        "device": event["device"],
        "step": now["data"].get("step"),
        "data": _shown(kind, now["data"]),
        "original": None
        if not corrections
        else {"at_ms": original["t_ms"], "data": _shown(kind, original["data"])},
        "corrections": corrections,
        "struck": _struck(state, event["id"]),
        "late_entry_s": late_s if late_s > LATE_ENTRY_S else None,
        "clock_off_s": off_s if abs(off_s) > CLOCK_OFF_S else None,
        "later_of": first_of(state, event),
        "same": verdict_on_duplicate(state, event["id"]),
        "proved": proved(event),
        "leads_nowhere": leads_nowhere(state, kind, now["data"]),
    }


def _unread_line(state: "State", raw: "Raw") -> "LogLine":
    """Return the line of an entry that cannot be read: that it is there, and whose.

    What it says is left out: nobody knows here which of it names a person.
    """
    event = raw["event"]
    return {
        "id": event["id"],
        "kind": "unread",
        "at_ms": corrected_ms(event),
        "entered_ms": event["entered_ms"] + event["off_ms"],
        "by": event["person"],
        "device": event["device"],
        "step": None,
        "data": {"said": _plain(event["kind"]), "why": raw["why"]},
        "original": None,
        "corrections": [],
        "struck": _struck(state, event["id"]),
        "late_entry_s": None,
        "clock_off_s": None,
        "later_of": None,
        "same": None,
        "proved": None,
        "leads_nowhere": None,
    }


def _plain(kind: str) -> str:
    """Return the name of a kind, "" for what cannot be one: it may be anything."""
    for letter in kind:
        if letter not in "abcdefghijklmnopqrstuvwxyz_":
            return ""
    return kind if len(kind) <= LONGEST_KIND else ""


def _is_shown_elsewhere(state: "State", event: "Event") -> bool:
    about = state["events"].get(event["ref"] or "")
    if about is None or amends.is_struck(state, event["id"]):
        return False
    if event["kind"] == "entry_struck":
        struck = _struck(state, about["id"])
        return struck is not None and struck["id"] == event["id"]
    return about["kind"] not in ABOUT_OTHERS


def _shown(kind: str, data: "dict[str, Any]") -> "dict[str, Any]":
    """Return the body, without the whole recipe that a make carries."""
    if kind != "make_opened":
        return data
    data = dict(data)
    recipe = data.pop("recipe")
    data["recipe_id"] = recipe["id"]
    data["recipe_version"] = recipe["version"]
    return data


def _picked(now: "Effective", changes: "dict[str, Any]") -> "dict[str, Any]":
    picked = {}
    for name in changes:
        picked[name] = now["t_ms"] if name == "at_ms" else now["data"].get(name)
    return picked


def _struck(state: "State", event_id: str) -> "Reasoned | None":
    for entry in state["strikes"].get(event_id, []):
        if not amends.is_struck(state, entry["id"]):
            strike = state["events"][entry["id"]]
            return {
                "id": strike["id"],
                "why": strike["data"]["why"],
                "by": strike["person"],
                "at_ms": corrected_ms(strike),
            }
    return None
