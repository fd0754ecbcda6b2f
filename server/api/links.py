"""Read-only links: the owner makes them, a guest looks through them."""

from collections.abc import Callable
from typing import Any

from flask import Response, jsonify

from server import live
from server.api import security
from server.api.body import Blueprint
from server.api.guard import guest, paired, require, send_guest_token
from server.api.hosts import page_url
from server.api.pairing import qr_svg
from server.auth import RefusedError
from server.auth import links as auth
from server.config import now_ms
from server.core import desk
from server.core.log.rights.roles import ACTS
from server.shapes import live as shapes
from server.store.links import StoredLink

ID = "<string(maxlength=36):make_id>"

# Of a make that cannot be shown: that it is there, and since when.
SHOWN_OF_BROKEN = ("make", "name", "batch", "practice", "what", "since_ms")

blp = Blueprint("links", __name__, description="Read-only links for guests")


@blp.get("/links")
@require(ACTS["links"])
@blp.response(200, shapes.LinkShape(many=True))
def list_links() -> list[Any]:
    """List every link, the newest first, also those ended or taken back."""
    return auth.links()


@blp.post("/links")
@require(ACTS["links"])
@blp.arguments(shapes.NewLink)
@blp.response(201, shapes.MadeLink)
def make_link(wanted: dict[str, Any]) -> dict[str, Any]:
    """Make a link to some makes, for 90 days at most.

    The address is told only in this answer. 404 for a make that is not known.
    """
    for make_id in wanted["makes"]:
        _found(live.ask(desk.view, make_id, now_ms()))
    made = auth.make_link(
        wanted["name"],
        wanted["makes"],
        wanted["until_ms"],
        paired().person.id,
        now_ms(),
    )
    security.note("link_made", about=made.link.id)
    url = f"{page_url()}/#/guest/{made.token}"
    return {**made.link._asdict(), "url": url, "qr_svg": qr_svg(url)}


@blp.delete("/links/<string(maxlength=36):link_id>")
@require(ACTS["links"])
@blp.response(204)
def revoke_link(link_id: str) -> None:
    """Take a link back, at once, from every browser that opened it."""
    auth.revoke_link(link_id, now_ms())
    security.note("link_taken_back", about=link_id)


@blp.post("/guest")
@blp.arguments(shapes.LinkToken)
@blp.response(200)
def open_link(wanted: dict[str, Any]) -> Response:
    """Let a browser in by a link, and give it its cookie.

    403 for a link that is not known, was taken back, or has ended.
    """
    opened = auth.open_link(wanted["token"], now_ms())
    security.note("link_opened", about=opened.link.id)
    answer = jsonify(_shown(opened.link))
    left_s = max(1, (opened.link.until_ms - now_ms()) // 1000)
    send_guest_token(answer, opened.token, left_s)
    return answer


@blp.get("/guest")
@blp.response(200)
def shown() -> Response:
    """Give the makes of the link, as the board has them, roles in place of names."""
    return jsonify(_shown(guest()))


@blp.get(f"/guest/makes/{ID}/view")
@blp.response(200)
def guest_view(make_id: str) -> Response:
    """Give one make as it stands now. 404 for one that the link does not show."""
    return _answer(make_id, desk.view)


@blp.get(f"/guest/makes/{ID}/curve")
@blp.response(200)
def guest_curve(make_id: str) -> Response:
    """Give the course of temperature and pH. 404 as for the view."""
    return _answer(make_id, desk.curve)


@blp.get(f"/guest/makes/{ID}/record")
@blp.response(200)
def guest_record(make_id: str) -> Response:
    """Give the whole batch record, oldest line first. 404 as for the view."""
    return _answer(make_id, lambda of, make, _now: desk.record(of, make))


def _shown(link: StoredLink) -> dict[str, Any]:
    board = live.ask(desk.board, now_ms())
    makes = [make for make in board["makes"] if make["id"] in link.makes]
    told = {"name": link.name, "until_ms": link.until_ms, "now_ms": board["now_ms"]}
    broken = [
        {name: row[name] for name in SHOWN_OF_BROKEN}
        for row in board["broken"]
        if row["make"] in link.makes
    ]
    return {
        **told,
        "makes": auth.without_people(makes),
        "broken": auth.without_people(broken),
    }


def _answer(make_id: str, question: Callable[..., Any]) -> Response:
    # One answer for what is not shown and what is not there: a guest cannot
    # find out which makes there are.
    if make_id not in guest().makes:
        raise RefusedError("unknown_make", "id")
    found = _found(live.ask(question, make_id, now_ms()))
    return jsonify(auth.without_people(found))


def _found(answer: Any) -> Any:
    if not answer:
        raise RefusedError("unknown_make", "id")
    return answer
