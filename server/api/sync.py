"""Push and pull of events."""

from typing import Any

from flask import Response, jsonify

from server import auth, sync
from server.api.body import Blueprint, read_body
from server.api.errors import error_answer
from server.api.guard import paired
from server.config import settings
from server.shapes import sync as shapes
from server.store import disk

blp = Blueprint("sync", __name__, description="Events from phones and to phones")


def _clock() -> dict[str, Any]:
    clock = settings().clock
    return {"now": clock.now_ms(), "rate": clock.rate}


@blp.post("/sync/push")
@blp.doc(
    requestBody={
        "required": True,
        "content": {"application/json": {"schema": shapes.PushRequest}},
    }
)
@blp.response(200, shapes.PushAnswerShape)
def push() -> Response:
    """Keep a batch of events; sending again is harmless.

    200 with one verdict an item in the order sent: stored, duplicate, or
    needs_look (kept as it came, with the reasons). All that got a verdict is
    on disk. Under "kept" a phone gives back what it had pulled of others and a
    log set back to a backup lacks, each with its receipt. A wrong epoch and a
    wrong clock refuse nothing. 401 keep the queue and pair anew; 413 send half;
    429 and 503 wait as Retry-After says.
    """
    session = paired()
    body = read_body()
    if not isinstance(body, dict):
        raise auth.RefusedError("not_a_mapping", "body")
    items = body.get("events")
    if not isinstance(items, list):
        raise auth.RefusedError("not_a_list", "events")
    kept = body.get("kept") or []
    if not isinstance(kept, list):
        raise auth.RefusedError("not_a_list", "kept")
    if len(items) + len(kept) > sync.MAX_EVENTS:
        raise auth.RefusedError("too_many_events", "events", sync.MAX_EVENTS)
    clock = settings().clock
    sender = sync.Sender(session.device.id, session.person.id, session.is_removed)
    quota = sync.Quota(settings().phone_events, settings().phone_mb * 1_000_000)
    taken = []
    try:
        # First, so that what is said of the entries below finds them.
        if kept:
            taken = sync.take_back(kept, sender, clock.now_ms(), quota)
        done = sync.push(items, body.get("t0"), sender, clock.now_ms(), quota)
    except sync.OverQuotaError as over:
        wait_s = int(over.wait_ms / (1000 * clock.rate)) + 1
        raise auth.RefusedError("over_quota", None, quota.events, wait_s) from over
    auth.note_seen(session, clock.now_ms(), clock.rate)
    return jsonify(
        epoch=done.epoch,
        **_clock(),
        head=done.head,
        results=done.results,
        have=done.have._asdict(),
        kept=taken,
        notes=done.notes,
    )


@blp.get("/sync/pull")
@blp.arguments(shapes.PullQuery, location="query")
@blp.response(200, shapes.PullAnswer)
@blp.alt_response(409, schema=shapes.EpochAnswer)
def pull(wanted: dict[str, Any]) -> Response:
    """Give the events after a number, oldest first.

    409 with the new epoch when the database was set back or copied: offer all
    events again that are still held, and read from 0.
    """
    try:
        page = sync.pull(wanted["epoch"], wanted["after"], wanted["limit"])
    except sync.WrongEpoch as wrong:
        return error_answer(409, "epoch", "epoch", epoch=wrong.epoch)
    return jsonify(**page._asdict(), **_clock(), disk=disk.look().state)


@blp.get("/sync/have")
@blp.arguments(shapes.HaveQuery, location="query")
@blp.response(200, shapes.HaveShape)
def have(wanted: dict[str, Any]) -> dict[str, Any]:
    """Say which of a phone's own numbers are here: a cheap check at start."""
    return sync.have(wanted["device"])._asdict()


@blp.get("/time")
@blp.response(200, shapes.TimeAnswer)
def time() -> dict[str, Any]:
    """Tell the server's clock."""
    return _clock()
