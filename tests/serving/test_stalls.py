"""More stalled clients than threads; whatever they do, others are answered."""

import contextlib

import pytest

from tests.serving.conftest import read_all, until
from tests.serving.program import THREADS

MANY = 3 * THREADS
HALF_HEADER = b"POST / HTTP/1.1\r\nHost: here\r\nContent-"
HALF_BODY = b"POST / HTTP/1.1\r\nHost: here\r\nContent-Length: 9\r\n\r\nhalf"
HALF_CHUNK = (
    b"POST / HTTP/1.1\r\nHost: here\r\nTransfer-Encoding: chunked\r\n\r\n9\r\nhalf"
)
CLOSING = b"GET / HTTP/1.1\r\nHost: here\r\nConnection: close\r\n\r\n"
BIG = b"GET /big HTTP/1.1\r\nHost: here\r\n\r\n"
# The first bytes of a handshake, as a client says them.
HALF_HELLO = bytes.fromhex("16030100c8010000c40303")


def stalls(server):
    return {
        "silent": server.bare,
        "half a header": lambda: server.send(HALF_HEADER),
        "half a body": lambda: server.send(HALF_BODY),
        "half a chunk": lambda: server.send(HALF_CHUNK),
        "takes nothing": lambda: server.send(BIG),
        "stays after its close": lambda: server.send(CLOSING),
        "half a handshake": lambda: server.bare().sendall(HALF_HELLO),
    }


@pytest.mark.parametrize(
    "kind",
    [
        "silent",
        "half a header",
        "half a body",
        "half a chunk",
        "takes nothing",
        "stays after its close",
        "half a handshake",
    ],
)
def test_clients_that_stall_hold_nobody_up(server, kind):
    for _ in range(MANY):
        stalls(server)[kind]()
    assert server.ask()[0] == 200
    assert server.ask("POST", "/", b"hello") == (200, b"hello")


def test_all_kinds_of_stalls_at_once_hold_nobody_up(server):
    for begin in stalls(server).values():
        for _ in range(THREADS):
            begin()
    assert server.ask("POST", "/", b"hello") == (200, b"hello")


def test_what_came_late_is_answered_all_the_same(server):
    slow = server.send(HALF_BODY)
    assert server.ask()[0] == 200
    slow.sendall(b"whole")
    assert slow.recv(1 << 16).endswith(b"halfwhole")


def test_a_client_that_takes_its_answer_late_gets_all_of_it(server):
    slow = server.send(BIG.replace(b"\r\n\r\n", b"\r\nConnection: close\r\n\r\n"))
    assert server.ask()[0] == 200
    assert read_all(slow).endswith(b"x" * (16 << 20))


def closes(sock):
    try:
        return read_all(sock) in (b"", b"never")
    except ConnectionError:
        return True


@pytest.mark.parametrize("is_tls", [False, True])
def test_a_client_that_never_goes_on_is_let_go(begin, is_tls):
    short = dict.fromkeys(("handshake_s", "header_s", "body_s", "idle_s"), 0.1)
    short["look_s"] = 0.05
    server = begin(is_tls, **short)
    assert closes(server.bare())
    assert closes(server.send(HALF_HEADER))
    assert closes(server.send(HALF_BODY))
    with contextlib.closing(server.line()) as idle:
        idle.request("GET", "/")
        assert idle.getresponse().read()
        assert closes(idle.sock)
    assert server.ask()[0] == 200


def test_a_body_that_trickles_is_let_go_in_the_end(begin):
    server = begin(request_s=0.2, look_s=0.05)
    slow = server.send(HALF_BODY.replace(b"9", b"999999"))

    def is_refused():
        try:
            slow.sendall(b"a")
        except ConnectionError:
            return True
        return False

    until(is_refused)
    assert server.ask()[0] == 200


def test_a_client_that_takes_nothing_is_let_go(begin):
    server = begin(take_s=0.1, look_s=0.05)
    assert server.ask()[0] == 200
    before = server.open_files()
    greedy = server.send(BIG)
    assert greedy.recv(1)
    until(lambda: server.open_files() <= before)
    assert server.ask()[0] == 200


def test_at_the_limit_of_connections_the_oldest_silent_one_makes_room(begin):
    server = begin(connections=5)
    silent = [server.bare() for _ in range(12)]
    assert server.ask()[0] == 200
    assert closes(silent[0])
    silent[-1].sendall(CLOSING)
    assert b"200 OK" in read_all(silent[-1])


def test_unfinished_requests_keep_no_more_bytes_than_they_may(begin):
    server = begin(kept_bytes=1 << 20, look_s=0.05)
    begun = HALF_BODY.replace(b"9", b"1000000") + b"a" * 900_000
    large = [server.send(begun) for _ in range(4)]
    assert server.ask()[0] == 200
    assert closes(large[0])
    large[-1].sendall(b"b" * 99_996)
    assert b"200 OK" in large[-1].recv(1 << 16)


def test_more_connections_are_held_than_the_usual_limit_of_files(begin):
    server = begin(open_files="ulimit -Sn 64")
    silent = [server.bare() for _ in range(100)]
    assert server.ask()[0] == 200
    silent[0].sendall(CLOSING)
    assert b"200 OK" in read_all(silent[0])


def test_where_no_more_files_may_be_opened_the_silent_make_room(begin):
    server = begin(open_files="ulimit -n 64")
    silent = [server.bare() for _ in range(100)]
    assert server.ask()[0] == 200
    assert closes(silent[0])
