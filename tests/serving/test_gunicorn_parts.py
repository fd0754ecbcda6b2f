"""What our worker uses of gunicorn beyond its settings is still there.

A newer gunicorn that changes one of these fails here first, with its name.
"""

import inspect

from gunicorn.config import Config
from gunicorn.http import wsgi
from gunicorn.http.parser import RequestParser
from gunicorn.sock import ssl_context
from gunicorn.workers.base import Worker

from server.serving.incoming import Incoming

POST = b"POST /a HTTP/1.1\r\nContent-Length: 4\r\n\r\nbodynext"
CHUNKS = b"POST /a HTTP/1.1\r\nTransfer-Encoding: chunked\r\n\r\n"


def names(function):
    return list(inspect.signature(function).parameters)


def test_the_frame_of_a_worker_is_as_it_was():
    assert names(Worker.__init__)[1:] == [
        *("age", "ppid", "sockets", "app", "timeout", "cfg", "log")
    ]
    assert names(Worker.handle_error) == ["self", "req", "client", "addr", "exc"]
    assert names(Worker.handle_exit) == ["self", "sig", "frame"]
    for name in ("init_process", "notify", "run"):
        assert names(getattr(Worker, name)) == ["self"]


def test_an_answer_is_made_from_a_request_and_anything_that_takes_bytes():
    assert names(wsgi.create)[:5] == ["req", "sock", "client", "server", "cfg"]
    assert names(ssl_context) == ["conf"]
    taken = []

    class Sink:
        sendall = staticmethod(taken.append)

    request = next(RequestParser(Config(), iter([POST]), ("127.0.0.1", 1)))
    here = ("127.0.0.1", 2)
    response, environ = wsgi.create(request, Sink(), ("127.0.0.1", 1), here, Config())
    assert environ["PATH_INFO"] == "/a"
    response.start_response("200 OK", [])
    response.write(b"part")
    response.close()
    assert response.chunked
    assert not response.should_close()
    response.force_close()
    assert response.should_close()
    assert b"".join(taken).endswith(b"4\r\npart\r\n0\r\n\r\n")


def test_the_parser_reads_pieces_and_gives_back_what_came_behind():
    parser = RequestParser(Config(), iter([POST[:40], POST[40:]]), ("127.0.0.1", 1))
    request = next(parser)
    assert request.method == "POST"
    assert dict(request.headers)["CONTENT-LENGTH"] == "4"
    assert request.body.read() == b"body"
    assert parser.finish_body()
    assert parser.unreader.take_buffered() == b"next"


def whole_after(*pieces):
    """Tell after how many pieces a request was thought whole."""
    incoming = Incoming(Config(), ("127.0.0.1", 1), 1 << 20)
    for count, piece in enumerate(pieces, 1):
        incoming.add(piece)
        if incoming.is_whole():
            return count, incoming
    return None, incoming


def test_a_request_is_whole_with_its_last_byte_and_not_before():
    for cut in range(1, 40):
        count, incoming = whole_after(POST[:cut], POST[cut:-5], POST[-5:])
        assert count == 3
        assert incoming.hand_on().body.read() == b"body"
        assert incoming.rest() == b"next"


def test_chunks_are_whole_with_their_last_line_and_not_before():
    body = b"5;a=b\r\nhello\r\nB\r\n0\r\n\r\n world\r\n0\r\nX-Trailer: 1\r\n\r\n"
    for cut in range(len(body)):
        count, incoming = whole_after(CHUNKS, body[:cut], body[cut:] + b"next")
        assert count == 3, cut
        assert incoming.hand_on().body.read() == b"hello0\r\n\r\n world"
        assert incoming.rest() == b"next"


def test_chunks_that_cannot_be_are_left_to_the_parser():
    for wrong in (b"-5\r\n", b"x\r\n", b"\r\n", b"7ffffffffffffffff\r\n"):
        assert whole_after(CHUNKS + wrong)[0] == 1
