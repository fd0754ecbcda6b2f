"""A real server is killed over and over while phones push.

kill -9 shows that nothing is answered before COMMIT and that a retry doubles
nothing. It cannot show that the disk has what was committed: that is asserted
by the pragmas, tests/store/test_database.py.
"""

import http.client
import json
import os
import random
import signal
import socket
import subprocess
import sys
import threading
import time

import pytest

from server import auth, store
from tests.sync.phones import a_uuid, close_app, make_app, note

PHONES = 3
SEED = 20260925
ENTRIES_A_LIFE = 10
LONGEST_S = 60


def a_free_port():
    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        return one.getsockname()[1]


class Server:
    """gunicorn with two workers, in a process group of its own."""

    def __init__(self, folder):
        self.folder = folder
        self.port = a_free_port()
        self.process = None

    def start(self):
        command = [sys.executable, "-m", "gunicorn", "server.app:create_app()"]
        command += ["--bind", f"127.0.0.1:{self.port}", "--no-control-socket"]
        command += ["--workers", "2", "--threads", "4", "--log-level", "error"]
        self.process = subprocess.Popen(
            command,
            env=os.environ | {"VATSIDE_DATA": str(self.folder), "DATABASE_URL": ""},
            start_new_session=True,
            stderr=subprocess.DEVNULL,
        )

    def kill(self):
        os.killpg(self.process.pid, signal.SIGKILL)
        self.process.wait()


class Phone(threading.Thread):
    """Taps, pushes, and lets go of an event only when it got a verdict."""

    def __init__(self, port, device, person, token, seed):
        super().__init__()
        self.port, self.device, self.person, self.token = port, device, person, token
        self.rng = random.Random(seed)
        self.unsent, self.tapped = {}, {}
        self.failed = 0
        self.closing = threading.Event()

    def run(self):
        while not self.closing.is_set() or self.unsent:
            if not self.closing.is_set():
                self.tap()
            batch = list(self.unsent.values())[: self.rng.randint(1, 20)]
            try:
                results = self.push(batch)
            except (OSError, http.client.HTTPException):
                self.failed += 1
                time.sleep(0.02)
                continue
            for result in results:
                assert result["st"] in ("stored", "duplicate"), result
                del self.unsent[result["id"]]

    def tap(self):
        seq = len(self.tapped) + 1
        event = note(self.device, seq, self.person) | {"id": a_uuid(self.rng)}
        self.unsent[event["id"]] = self.tapped[event["id"]] = event

    def push(self, batch):
        wire = http.client.HTTPConnection("127.0.0.1", self.port, timeout=5)
        try:
            wire.request(
                "POST",
                "/api/v1/sync/push",
                json.dumps({"events": batch}),
                {
                    "Content-Type": "application/json",
                    "X-Vatside": "1",
                    "Cookie": f"vatside={self.token}",
                },
            )
            answer = wire.getresponse()
            body = answer.read()
            if answer.status != 200:
                raise OSError(answer.status, body)
            return json.loads(body)["results"]
        finally:
            wire.close()


def paired_phones(folder, port):
    app = make_app(folder)
    with app.app_context():
        now_ms = int(time.time() * 1000)
        for seed in range(PHONES):
            person = auth.add_person(f"Maker {seed}", "maker", now_ms).id
            code = auth.start_pairing(person, person, now_ms, 1).long
            asking = auth.Asking(a_uuid(), "Pocket", None, "here", None)
            token = auth.pair(code, asking, now_ms, 1).token
            yield Phone(port, asking.device, person, token, SEED + seed)
    close_app(app)


def stored_events(folder):
    app = make_app(folder)
    with app.app_context():
        rows = store.every_event()
    close_app(app)
    return rows


def pushed(phones):
    """Return how many entries each phone knows to be on the server."""
    return [len(phone.tapped) - len(phone.unsent) for phone in phones]


def has_worked(before, now):
    """Tell whether a server's life was worth killing: some entries, of each phone."""
    return min(now) > min(before) and sum(now) - sum(before) > ENTRIES_A_LIFE


# Each start takes seconds of a busy machine: ten of them go with the long profile.
@pytest.mark.parametrize("kills", [3, pytest.param(10, marks=pytest.mark.long)])
def test_a_server_killed_again_and_again_loses_and_doubles_nothing(tmp_path, kills):
    rng = random.Random(SEED)
    server = Server(tmp_path)
    phones = list(paired_phones(tmp_path, server.port))
    server.start()
    for phone in phones:
        phone.start()
    try:
        for kill in range(kills):
            before = pushed(phones)
            until = time.monotonic() + LONGEST_S
            # Each life must do some work before it is killed, for each phone.
            while not has_worked(before, pushed(phones)):
                assert time.monotonic() < until, f"the server is not back ({kill})"
                time.sleep(0.01)
            time.sleep(rng.uniform(0, 0.3))
            server.kill()
            server.start()
        for phone in phones:
            phone.closing.set()
        for phone in phones:
            phone.join(LONGEST_S)
            assert not phone.is_alive()
    finally:
        for phone in phones:
            phone.closing.set()
            phone.unsent = {}
        server.kill()
    rows = stored_events(tmp_path)
    assert [row.n for row in rows] == list(range(1, len(rows) + 1))
    tapped = {}
    for phone in phones:
        tapped |= phone.tapped
        assert phone.failed >= kills  # it did meet a dead server
    assert {row.event["id"]: row.event for row in rows} == tapped
    assert len(rows) == len(tapped) > ENTRIES_A_LIFE * kills
