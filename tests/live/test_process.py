"""The server as it really runs: two processes that share only the log."""

import http.client
import json
import os
import re
import signal
import socket
import subprocess
import sys
import threading
import time
from pathlib import Path

import pytest

from tests.sync.phones import a_uuid, note

ROOT = Path(__file__).resolve().parent.parent.parent
LONG_S = 30
VIEWERS = 6  # a phone's places; one worker alone gets all of them once in 32 runs
HEADERS = {"X-Vatside": "1", "Content-Type": "application/json"}


class Server:
    """A running server and the owner's phone."""

    def __init__(self, data):
        with socket.socket() as probe:
            probe.bind(("127.0.0.1", 0))
            self.port = probe.getsockname()[1]
        command = [sys.executable, "-m", "server.cli", "serve", "--data", str(data)]
        command += ["--host", "127.0.0.1", "--port", str(self.port)]
        # Fewer threads than viewers: these hold none.
        few = {**os.environ, "VATSIDE_THREADS": "2"}
        self.process = subprocess.Popen(
            command, cwd=ROOT, env=few, stdout=subprocess.PIPE, text=True
        )
        text = ""
        while "Stop with" not in text:
            line = self.process.stdout.readline()
            assert line, text
            text += line
        code = re.search(r"code (\S+) or", text)[1]
        self.device = a_uuid()
        body = {"code": code, "device": self.device, "device_name": "Pocket"}
        answer, paired = self.ask("POST", "/pair", {**body, "person_name": "Ada"})
        HEADERS["Cookie"] = answer.headers["Set-Cookie"].split(";")[0]
        self.person = paired["person"]["id"]

    def ask(self, method, path, body=None):
        end_s = time.monotonic() + LONG_S
        while True:
            connection = http.client.HTTPConnection(
                "127.0.0.1", self.port, timeout=LONG_S
            )
            try:
                connection.request(
                    method, f"/api/v1{path}", body and json.dumps(body), HEADERS
                )
                answer = connection.getresponse()
                return answer, json.loads(answer.read())
            except ConnectionRefusedError:
                assert time.monotonic() < end_s
                time.sleep(0.05)
            finally:
                connection.close()


@pytest.fixture
def server(tmp_path):
    server = Server(tmp_path)
    yield server
    server.process.kill()
    server.process.communicate()
    HEADERS.pop("Cookie")


def watch(server, seen, opened):
    connection = http.client.HTTPConnection("127.0.0.1", server.port, timeout=LONG_S)
    connection.request("GET", "/api/v1/live", headers=HEADERS)
    answer = connection.getresponse()
    for line in answer:
        if line.startswith(b"event: head"):
            opened.release()
        if line.startswith(b"id: "):
            seen.append((int(line[4:]), time.monotonic()))
    connection.close()
    seen.append(("ended", time.monotonic()))


def test_every_viewer_of_every_worker_sees_an_event_and_none_holds_up_the_stop(server):
    opened = threading.Semaphore(0)
    views = [[] for _ in range(VIEWERS)]
    threads = [
        threading.Thread(target=watch, args=(server, seen, opened)) for seen in views
    ]
    for thread in threads:
        thread.start()
    for _ in threads:
        assert opened.acquire(timeout=LONG_S)
    events = [note(server.device, seq, server.person) for seq in (1, 2, 3)]
    pushed_s = time.monotonic()
    _, answer = server.ask("POST", "/sync/push", {"events": events})
    assert [row["st"] for row in answer["results"]] == ["stored"] * 3
    end_s = time.monotonic() + LONG_S
    while any(len(seen) < 3 for seen in views) and time.monotonic() < end_s:
        time.sleep(0.05)
    for seen in views:
        assert [n for n, _ in seen] == [1, 2, 3]
        assert seen[-1][1] - pushed_s < 5  # it looks twice a second; the rest is slack
    stopped_s = time.monotonic()
    os.kill(server.process.pid, signal.SIGTERM)
    for thread in threads:
        thread.join(LONG_S)
    assert [seen[-1][0] for seen in views] == ["ended"] * VIEWERS
    assert server.process.wait(LONG_S) == 0
    assert time.monotonic() - stopped_s < 15  # a stream alone would last 300 s
