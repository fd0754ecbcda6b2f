"""The live view's stream."""

from itertools import chain
from typing import Any

from flask import Response, request

from server import live, store
from server.api.body import Blueprint
from server.api.errors import error_answer
from server.api.guard import paired, sent_token
from server.api.people import server_now
from server.auth import RefusedError
from server.auth.codes import hash_of
from server.serving.hook import HAND_OVER
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
    every 15 s, and the stream ends after five minutes: come back. It ends within
    seconds once the phone or its person may no longer look. A phone holds six
    streams of a server process and a person twelve: a further one ends their
    oldest. 503 when all places are taken: pull every few seconds instead.
    """
    after = _last_seen(wanted["after"])
    hello = live.greeting({"head": store.head_n(), **server_now()})
    place = _place()
    if not live.hub().enter(place):
        answer = error_answer(503, "no_place")
        answer.headers["Retry-After"] = str(RETRY_S)
        return answer
    answer = _answer(place, after, hello)
    # Else a proxy would keep the news until it has a bufferful.
    answer.headers["X-Accel-Buffering"] = "no"
    return answer


def _place() -> live.Place:
    session = paired()
    return live.Place(session.person.id, session.device.id, hash_of(sent_token() or ""))


def _answer(place: live.Place, after: int, hello: bytes) -> Response:
    hub = live.hub()
    hand_over = request.environ.get(HAND_OVER)
    if hand_over is None:
        # This server keeps a thread for each answer, so let it carry the stream.
        mailbox = live.Mailbox()
        hub.watch(place, after, mailbox)
        answer = Response(chain([hello], mailbox.parts()))
        answer.call_on_close(lambda: hub.leave(place))
    else:
        hand_over(lambda channel: hub.watch(place, after, channel))
        answer = Response(iter([hello]))
        # It may fail before it is handed over.
        answer.call_on_close(lambda: hub.leave_unwatched(place))
    answer.content_type = "text/event-stream"
    return answer


def _last_seen(after: int) -> int:
    text = request.headers.get("Last-Event-ID", "")
    if not text:
        return after
    if not text.isdecimal() or len(text) > 15:
        raise RefusedError("not_whole", "Last-Event-ID")
    return int(text)
