import contextlib
import http.client
import json
import os
import signal
import socket
import ssl
import subprocess
import sys
import time
from pathlib import Path

import pytest

from tests.serving.throw_away import make_certificate

ROOT = Path(__file__).resolve().parent.parent.parent
LONG_S = 10  # far more than any answer here takes, far less than any stall
WORKER = os.environ.get("VATSIDE_TEST_WORKER", "ours")


@pytest.fixture(scope="session")
def certificate(tmp_path_factory):
    return make_certificate(tmp_path_factory.mktemp("certificate"))


class Running:
    """A running server with one process and two threads."""

    def __init__(self, files=(), open_files="", **limits):
        self.files = files
        self.held = []
        with socket.socket() as probe:
            probe.bind(("127.0.0.1", 0))
            self.port = probe.getsockname()[1]
        words = [str(self.port), WORKER, json.dumps(limits), *map(str, files)]
        command = [sys.executable, "-m", "tests.serving.program", *words]
        if open_files:
            command = ["sh", "-c", f'{open_files}; exec "$@"', "sh", *command]
        self.process = subprocess.Popen(
            command,
            cwd=ROOT,
            stdout=subprocess.PIPE,
            text=True,
        )
        assert self.process.stdout.readline() == "ready\n"

    @property
    def context(self):
        return ssl.create_default_context(cafile=self.files[0]) if self.files else None

    def bare(self):
        """Open a connection and say nothing on it."""
        sock = socket.create_connection(("127.0.0.1", self.port), timeout=LONG_S)
        self.held.append(sock)
        return sock

    def open(self):
        """Open a connection that is ready for a request."""
        sock = self.bare()
        if not self.files:
            return sock
        wrapped = self.context.wrap_socket(sock, server_hostname="127.0.0.1")
        self.held.append(wrapped)
        return wrapped

    def send(self, data):
        sock = self.open()
        sock.sendall(data)
        return sock

    def line(self):
        """Give a client of the standard library, for whole requests."""
        if self.files:
            return http.client.HTTPSConnection(
                "127.0.0.1", self.port, timeout=LONG_S, context=self.context
            )
        return http.client.HTTPConnection("127.0.0.1", self.port, timeout=LONG_S)

    def ask(self, method="GET", path="/", body=None, headers=None):
        with contextlib.closing(self.line()) as line:
            line.request(method, path, body, headers or {})
            answer = line.getresponse()
            return answer.status, answer.read()

    def open_files(self):
        """Count the files and sockets that the one process which answers has."""
        main = self.process.pid
        child = Path(f"/proc/{main}/task/{main}/children").read_text().split()[0]
        return len(list(Path(f"/proc/{child}/fd").iterdir()))

    def let_go(self):
        for sock in self.held:
            sock.close()
        self.held.clear()

    def stop(self):
        self.let_go()
        self.process.send_signal(signal.SIGTERM)
        try:
            return self.process.wait(LONG_S)
        finally:
            self.process.kill()
            self.process.communicate()


def read_all(sock):
    """Read until the server closes."""
    found = b""
    while part := sock.recv(1 << 16):
        found += part
    return found


def until(condition):
    end_s = time.monotonic() + LONG_S
    while not condition():
        assert time.monotonic() < end_s
        time.sleep(0.01)


@pytest.fixture(scope="module", params=["http", "https"])
def server(request, certificate):
    """Give a server with the limits as they are, over both kinds of sockets."""
    running = Running(certificate if request.param == "https" else ())
    yield running
    running.stop()


@pytest.fixture(autouse=True)
def nothing_held(request):
    yield
    if "server" in request.fixturenames:
        request.getfixturevalue("server").let_go()


@pytest.fixture
def begin(request, certificate):
    """Give a function that starts a server with limits of its own."""
    begun = []

    def begin_one(is_tls=False, **limits):
        begun.append(Running(certificate if is_tls else (), **limits))
        return begun[-1]

    yield begin_one
    for one in begun:
        one.stop()
