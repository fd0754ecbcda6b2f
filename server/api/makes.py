"""Makes as the server sees them, for viewers that fold nothing themselves."""

from typing import Any

from flask import Response, jsonify

from server import auth, live
from server.api.body import Blueprint
from server.api.guard import paired
from server.api.people import server_now
from server.auth import RefusedError
from server.config import now_ms
from server.core import desk
from server.core.log import apart
from server.live.picture import HEARD_MS, glance
from server.shapes.live import BoardQuery

ID = "<string(maxlength=36):make_id>"

blp = Blueprint("makes", __name__, description="Makes, folded on the server")


@blp.get("/makes")
@blp.arguments(BoardQuery, location="query")
@blp.response(200)
def board(wanted: dict[str, Any]) -> Response:
    """Give the board: every make, and what is due across them.

    With open=true only the makes that run, and when each phone was last heard:
    the first picture of a viewer whose own log is still on its way.
    """
    found = live.ask(desk.board, now_ms())
    if not wanted["open"]:
        return jsonify(found)
    return jsonify(server=server_now(), phones=_phones(), **glance(found))


def _phones() -> list[dict[str, Any]]:
    since_ms = now_ms() - HEARD_MS
    own = paired().device.id  # who looks need not be told of their own phone
    return [
        {
            "device": device.id,
            "name": device.name,
            "person": device.person,
            "heard_ms": device.seen_ms,
        }
        for device in auth.devices()
        if device.id != own and device.removed_ms is None and device.seen_ms >= since_ms
    ]


@blp.get(f"/makes/{ID}/view")
@blp.response(200)
def view(make_id: str) -> Response:
    """Give one make as a screen sees it now. 404 when its opening is not known.

    422 for one that cannot be shown: the board names it, and why.
    """
    found = live.ask(desk.view, make_id, now_ms())
    if found is None:
        broken = [row["make"] for row in live.ask(apart.broken)]
        raise RefusedError("not_shown" if make_id in broken else "unknown_make", "id")
    return jsonify(found)


@blp.get(f"/makes/{ID}/curve")
@blp.response(200)
def curve(make_id: str) -> Response:
    """Give the course of temperature and pH. 404 when its opening is not known."""
    found = live.ask(desk.curve, make_id, now_ms())
    if found is None:
        raise RefusedError("unknown_make", "id")
    return jsonify(found)


@blp.get(f"/makes/{ID}/record")
@blp.response(200)
def record(make_id: str) -> Response:
    """Give the whole batch record, oldest line first. 404 for an unknown make."""
    lines = live.ask(desk.record, make_id)
    if not lines:
        raise RefusedError("unknown_make", "id")
    return jsonify(lines)
