"""What a make of the twin rings and shows, folded as phones and server fold it.

Each entry is taken when it was really written down, and what stands is asked for the
instant before the next: whatever began to ring meanwhile, by an entry or by the
clock alone, stands there still, with the instant at which it began.
"""

from demo.twin_day import Screen
from server.config import read_rules
from server.core import desk as core
from server.core.twin import days, plant, play

MILK_L = 1000.0
START_MS = 1_800_000_000_000
ESCALATE_S = 600.0
# What people set themselves: a timer, and the end of a step by time or flocculation.
SET = ("timer", "step_due")
# What this creamery has entered of its equipment, so that its press has a figure.
ENTERED = ("bore_m", "lever_ratio")
AFTER_MS = 3_600_000
NUMBERS = ("quantity", "value", "low", "high", "by_s")


def played(recipe, seed, faults=(), treatment=None):
    """Play a make by an ordinary day of its own; a maker is late by 30 to 120 s."""
    plan = {"name": "Twin", "batch": f"T-{seed}", "milk_l": MILK_L}
    plan["equipment"] = {name: plant.EQUIPMENT[name][0] for name in ENTERED}
    plan["equipment"]["plant_name"] = "Quernbeck"
    if treatment is not None:
        plan["treatment"] = treatment
    setting, told = days.ordinary(seed), Screen(MILK_L)
    return play.play(recipe, setting, plan, seed, START_MS, list(faults), told)


def told(made):
    """Return all that was told in a make: rows of what began to stand, in order.

    What is shown first and rings later is one row, which rings; the end of a step
    that nobody answers is a second row once it is late.

    Args:
        made: answer of `played`.

    Returns:
        List of {"what", "id", "kind", "key", "step", "rings", "at_ms", "do",
        numbers}; "rings" is False for what is only shown. What goes and comes
        again is told again.
    """
    desk = core.new()
    core.set_rules(desk, read_rules())
    found, stood = [], {}
    instants = [row["at_ms"] for row in made["course"]]
    instants.append(instants[-1] + AFTER_MS)
    for index, event in enumerate(made["events"]):
        assert core.take(desk, [event])["problems"] == []
        later_ms = max(instants[index + 1] - 1, instants[index])
        stands = _standing(desk, event["make"], later_ms)
        stood = {row["id"]: _grown(stood.get(row["id"]), row, found) for row in stands}
    return found


def _grown(before, row, found):
    """Return the row under which a matter is told, the first one's if it was."""
    if before is None or (before["kind"] in SET and row["kind"] not in SET):
        found.append(row)
        return row
    before["rings"] = before["rings"] or row["rings"]
    return before


def unasked(rows):
    """Return what rang that nobody had set."""
    return [row for row in rows if row["rings"] and row["kind"] not in SET]


def twice(rows):
    """Return what was told a second time although it is the same matter."""
    seen, again = set(), []
    for row in rows:
        matter = (row["what"], row["step"], row["quantity"])
        if row["kind"] == "reading_overdue":
            matter += (row["due_ms"],)  # the next day's reading is another one
        if matter in seen:
            again.append(row)
        seen.add(matter)
    return again


def _standing(desk, make, now_ms):
    alarms = core.alarms(desk, now_ms, ESCALATE_S)["alarms"]
    rows = [_rung(alarm) for alarm in alarms if alarm["state"] != "returned"]
    rung = {alarm["matter"] for alarm in alarms}
    view = core.view(desk, make, now_ms)
    rows += [
        _shown(alert)
        for alert in view["alerts"]
        if alert["id"] not in rung and alert["key"] != "alert.timer_due"
    ]
    return rows


def _rung(alarm):
    row = {name: alarm["numbers"].get(name) for name in NUMBERS}
    names = ("kind", "key", "step", "due_ms", "do")
    row.update({name: alarm[name] for name in names}, id=alarm["matter"], rings=True)
    return {**row, "at_ms": alarm["rings_ms"], "what": _what(alarm["key"])}


def _shown(alert):
    row = {name: alert[name] for name in (*NUMBERS, "key", "step", "due_ms", "do")}
    row.update(kind="shown", id=alert["id"], rings=False, at_ms=alert["since_ms"])
    return {**row, "what": _what(alert["key"])}


def _what(key):
    return key.split(".", 1)[1]
