"""Makes as the server sees them, for viewers that fold nothing themselves."""

from flask import Response, jsonify
from flask_smorest import Blueprint

from server import live
from server.auth import RefusedError
from server.config import now_ms
from server.core import desk

ID = "<string(maxlength=36):make_id>"

blp = Blueprint("makes", __name__, description="Makes, folded on the server")


@blp.get("/makes")
@blp.response(200)
def board() -> Response:
    """Give the board: every make, and what is due across them."""
    return jsonify(live.ask(desk.board, now_ms()))


@blp.get(f"/makes/{ID}/view")
@blp.response(200)
def view(make_id: str) -> Response:
    """Give one make as a screen sees it now. 404 when its opening is not known."""
    found = live.ask(desk.view, make_id, now_ms())
    if found is None:
        raise RefusedError("unknown_make", "id")
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
