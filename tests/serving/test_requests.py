"""What a client may expect of any server, kept by ours."""

import contextlib
import signal

from tests.serving.conftest import LONG_S, read_all, until

CLOSE = b"Connection: close\r\n"


def answer_to(server, data):
    return read_all(server.send(data))


def test_a_connection_carries_one_request_after_another(server):
    with contextlib.closing(server.line()) as line:
        for body in (b"one", b"two", b"three"):
            line.request("POST", "/", body)
            assert line.getresponse().read() == body


def test_requests_that_come_in_one_piece_are_answered_in_their_order(server):
    first = b"POST / HTTP/1.1\r\nHost: here\r\nContent-Length: 3\r\n\r\none"
    last = first.replace(b"one", b"two").replace(b"Host", CLOSE + b"Host")
    text = answer_to(server, first + b"\r\n" + last)
    assert text.count(b"200 OK") == 2
    assert text.index(b"one") < text.index(b"two")


def test_a_request_in_single_bytes_is_understood(server):
    sock = server.open()
    for byte in b"POST / HTTP/1.1\r\n" + CLOSE + b"Content-Length: 2\r\n\r\nhi":
        sock.sendall(bytes([byte]))
    assert read_all(sock).endswith(b"\r\n\r\nhi")


def test_a_body_in_chunks_is_put_together(server):
    with contextlib.closing(server.line()) as line:
        parts = [b"a" * 5, b"b" * 70_000, b"0\r\n\r\n"]
        line.request("POST", "/", iter(parts), encode_chunked=True)
        assert line.getresponse().read() == b"".join(parts)
        line.request("POST", "/", b"and on")
        assert line.getresponse().read() == b"and on"


def test_a_client_that_asks_first_is_told_to_send_its_body(server):
    head = b"POST / HTTP/1.1\r\nExpect: 100-continue\r\nContent-Length: 2\r\n"
    sock = server.send(head + CLOSE + b"\r\n")
    told = sock.recv(1 << 16)
    assert told == b"HTTP/1.1 100 Continue\r\n\r\n"
    sock.sendall(b"hi")
    text = read_all(sock)
    assert b"100 Continue" not in text
    assert text.endswith(b"hi")


def test_a_body_beyond_the_limit_is_answered_before_it_has_come(server):
    head = b"POST /unread HTTP/1.1\r\nContent-Length: 99999999\r\n\r\n"
    assert answer_to(server, head).endswith(b"unread")


def test_a_body_that_nobody_reads_is_not_taken_for_the_next_request(server):
    with contextlib.closing(server.line()) as line:
        line.request("POST", "/unread", b"GET /big HTTP/1.1\r\n\r\n")
        assert line.getresponse().read() == b"unread"
        line.request("POST", "/", b"next")
        assert line.getresponse().read() == b"next"


def test_what_is_no_request_is_refused_with_words(server):
    assert b"400 Bad Request" in answer_to(server, b"not a request\r\n\r\n")
    assert b"400 Bad" in answer_to(
        server, b"POST / HTTP/1.1\r\nContent-Length: -5\r\n\r\n"
    )
    chunk = b"POST / HTTP/1.1\r\nTransfer-Encoding: chunked\r\n\r\n-5\r\nhello\r\n"
    assert b"HTTP/1.1 500" in answer_to(server, chunk)
    assert server.ask()[0] == 200


def test_a_header_without_end_is_refused(server):
    head = b"GET / HTTP/1.1\r\n" + b"X-Y: abcdefgh\r\n" * 9000
    with contextlib.suppress(OSError):
        assert b" 431 Request Header" in answer_to(server, head)
    assert server.ask()[0] == 200


def test_an_old_client_without_keep_alive_is_answered(server):
    text = answer_to(server, b"GET / HTTP/1.0\r\n\r\n")
    assert b"Connection: close" in text
    assert text.endswith(b"https" if server.files else b"http")


def test_a_head_request_has_no_body(server):
    assert server.ask("HEAD", "/") == (200, b"")
    assert server.ask("HEAD", "/big") == (200, b"")


def test_a_thread_that_computes_gives_way_within_a_millisecond(server):
    assert 0 < float(server.ask("GET", "/gives-way")[1]) <= 0.001


def test_an_app_that_fails_costs_one_answer(server):
    assert server.ask("GET", "/fails")[0] == 500
    assert server.ask()[0] == 200


def test_sockets_that_are_handed_over_hold_no_thread(server):
    ask = b"GET /live HTTP/1.0\r\n\r\n"
    begun = [server.send(ask), server.send(ask.replace(b"1.0", b"1.1"))]
    texts = [read_all(sock) for sock in begun]
    assert texts[0].endswith(b"\r\n\r\nbegun;for all;")
    # HTTP/1.1: each part tells its length, and the end is told.
    assert texts[1].endswith(b"\r\n\r\n6\r\nbegun;\r\n8\r\nfor all;\r\n0\r\n\r\n")


def test_what_is_being_answered_is_answered_before_the_stop(begin, tmp_path):
    server = begin()
    file = tmp_path / "go"
    silent = server.bare()
    sock = server.send(f"GET /waits?{file} HTTP/1.1\r\nHost: here\r\n\r\n".encode())
    until(file.with_suffix(".asked").exists)
    server.process.send_signal(signal.SIGTERM)
    assert read_all(silent) == b""  # thus it is stopping
    file.touch()
    assert read_all(sock).endswith(b"waited")
    assert server.process.wait(LONG_S) == 0
