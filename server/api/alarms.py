"""What rings now, for the room's display; and calendar files."""

from typing import Any

from flask import Response, jsonify

from server import live
from server.alarm.calendar import calendar
from server.api.body import Blueprint
from server.api.guard import paired, require
from server.api.makes import ID
from server.api.people import server_now
from server.auth import RefusedError
from server.config import now_ms, real_now_ms
from server.core import desk
from server.core.alarm import alarms
from server.core.alarm import calendar as alarm_calendar
from server.core.log.rights.roles import ACTS
from server.shapes import alarms as shapes
from server.store import alarms as kept

WALL_LIVES_MS = 60_000  # a display says something each 20 s
SHOWN = ("id", "name", "batch", "vat", "state", "matters", "band")

blp = Blueprint("alarms", __name__, description="What rings, and where")


@blp.get("/alarms")
@blp.response(200)
def ringing() -> Response:
    """Tell what rings now and what will, worked out here with no phone awake.

    Also which makes run, which room displays live (`walls`, by real time), and
    after how long an alarm that nobody answers is told to the owner.
    """
    shown_ms = now_ms()
    seconds = kept.escalate_s()
    found = live.ask(alarms.alarms, shown_ms, seconds)
    makes = live.ask(desk.board, shown_ms)["makes"]
    real_ms = real_now_ms()
    return jsonify(
        **server_now(),
        **{
            name: found[name]
            for name in ("alarms", "deadlines", "wall", "next_change_ms")
        },
        makes=[
            {name: make[name] for name in SHOWN} for make in makes if make["is_open"]
        ],
        escalate_min=seconds // 60,
        walls=[
            {
                "device": wall.device,
                "name": wall.name,
                "age_s": max(0, real_ms - wall.seen_ms) // 1000,
                "sound": wall.sound,
                "lives": real_ms - wall.seen_ms < WALL_LIVES_MS,
            }
            for wall in kept.walls()
        ],
    )


@blp.post("/alarms/settings")
@require(ACTS["escalation"])
@blp.arguments(shapes.AlarmSettings)
@blp.response(200, shapes.AlarmSettings)
def change_settings(wanted: dict[str, Any]) -> dict[str, Any]:
    """Set after how many minutes an unanswered alarm is told to the owner."""
    kept.set_escalate_s(wanted["escalate_min"] * 60)
    return wanted


@blp.post("/alarms/wall")
@blp.arguments(shapes.WallWord)
@blp.response(200, shapes.Written)
def wall(said: dict[str, Any]) -> dict[str, bool]:
    """Note that this paired display shows the room's wall, and whether it can ring."""
    kept.note_wall(paired().device.id, said["sound"], real_now_ms())
    return {"ok": True}


@blp.get(f"/makes/{ID}/calendar.ics")
@blp.arguments(shapes.CalendarQuery, location="query")
@blp.response(200, content_type="text/calendar")
def calendar_file(wanted: dict[str, Any], make_id: str) -> Response:
    """Give a make's long deadlines, or one step's, as a calendar file with alarms.

    To be opened once into the phone's own calendar, which rings on a locked
    phone. 404 for an unknown make, 422 when no such deadline lies ahead.
    """
    view = live.ask(desk.view, make_id, now_ms())
    if view is None:
        raise RefusedError("unknown_make", "id")
    entries = alarm_calendar.calendar(view, wanted.get("step"))
    if not entries:
        raise RefusedError("no_deadline", "step")
    language = wanted.get("language") or paired().person.language
    answer = Response(calendar(view, entries, language), content_type="text/calendar")
    answer.headers["Content-Disposition"] = 'attachment; filename="make.ics"'
    return answer
