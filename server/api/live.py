"""The live view's stream."""

from typing import Any

from flask import Response, request, stream_with_context

from server import live, store
from server.api.body import Blueprint
from server.api.errors import error_answer
from server.api.people import server_now
from server.auth import RefusedError
from server.live.log import read_after
from server.shapes import recipes as shapes

RETRY_S = 5  # a viewer without a place asks for news this often instead

blp = Blueprint("live", __name__, description="What happens, as it happens")


@blp.get("/live")
@blp.arguments(shapes.LiveQuery, location="query")
@blp.response(200, content_type="text/event-stream")
@blp.alt_response(503, description="No place is free; pull every few seconds")
def follow(wanted: dict[str, Any]) -> Response:
    """Stream the log from a number on (Server-Sent Events).

    The first message, "head", tells where the log stands, the server's clock
    and the epoch. Each further one is an entry as in a pull; its id is its
    number, so a browser that comes back goes on where it was. A comment is sent
    every 15 s, and the stream ends after five minutes: come back. 503 when all
    places are taken: pull every few seconds instead.
    """
    after = _last_seen(wanted["after"])
    follower = live.follower()
    if not follower.enter():
        answer = error_answer(503, "no_place")
        answer.headers["Retry-After"] = str(RETRY_S)
        return answer
    hello = {"head": store.head_n(), **server_now()}
    answer = Response(
        stream_with_context(live.stream(follower, read_after, after, hello)),
        content_type="text/event-stream",
    )
    # The place is given back however the stream ends, also when it never began.
    answer.call_on_close(follower.leave)
    # Else a proxy would keep the news until it has a bufferful.
    answer.headers["X-Accel-Buffering"] = "no"
    return answer


def _last_seen(after: int) -> int:
    text = request.headers.get("Last-Event-ID", "")
    if not text:
        return after
    if not text.isdecimal() or len(text) > 15:
        raise RefusedError("not_whole", "Last-Event-ID")
    return int(text)
