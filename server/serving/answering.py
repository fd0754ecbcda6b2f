"""What a thread of the pool does with a request that has come whole."""

from datetime import datetime
from typing import Any

from gunicorn.http import wsgi

from server.serving.connection import Connection
from server.serving.hook import HAND_OVER


def answer(worker: Any, one: Connection) -> None:
    """Put the app's answer into the channel, and send what the client takes.

    Args:
        worker: the gunicorn worker.
        one: the connection whose request it is.
    """
    assert one.incoming is not None
    request = one.incoming.hand_on()
    try:
        one.goes_on = _respond(worker, one, request)
    except Exception as problem:
        # Nothing was sent yet, so that an answer begun can be taken back.
        one.channel.forget()
        one.goes_on = False
        worker.handle_error(request, one, one.client, problem)
    if one.is_handed_over:
        return
    try:
        one.channel.flush()
    except OSError:
        one.is_gone = True


def _respond(worker: Any, one: Connection, request: Any) -> bool:
    started = datetime.now()  # noqa: DTZ005 - gunicorn's log wants the difference
    response, environ = wsgi.create(request, one, one.client, one.server, worker.cfg)
    environ["wsgi.multithread"] = True
    if request.method != "HEAD":
        environ[HAND_OVER] = one.hand_over
    if not worker.alive:
        response.force_close()
    parts = worker.wsgi(environ, response.start_response)
    try:
        if one.taker is not None:
            response.force_close()
        for part in parts:
            response.write(part)
        if one.taker is None:
            response.close()
        else:
            response.send_headers()
            one.give_away(response.chunked)
    finally:
        if hasattr(parts, "close"):
            parts.close()
        worker.log.access(response, request, environ, datetime.now() - started)  # noqa: DTZ005
    return not response.should_close()
