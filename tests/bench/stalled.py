"""What the default server answers while many clients stall or watch.

Everything runs on this machine over the loopback, clients and server on the
same cores: compare figures of one run, not of two machines. Health is asked
over a new connection each time, as by a phone that comes back to the Wi-Fi.
Delivery counts from the push being sent to the entry reaching a viewer.

Use: python -m tests.bench.stalled [--tls] [--stalled 200] [--viewers 100 500]
         [--events 40]
"""

import argparse
import contextlib
import http.client
import json
import selectors
import shutil
import socket
import ssl
import statistics
import tempfile
import threading
import time
import uuid
from pathlib import Path

from server import auth
from server.app import create_app
from server.config import Settings
from tests.bench.table import percentile
from tests.browser.conftest import ROOT, Creamery, free_port
from tests.serving.throw_away import make_certificate

ASKED = 150
PATIENCE_S = 3.0
MOST_S = 20.0  # for the questions of one kind
EVENT_S = 0.5
PHONES = 10  # of each person
HEAD = b"POST /api/v1/pair HTTP/1.1\r\nHost: localhost\r\n"
HERE = "127.0.0.1"
BARE = ("opened and silent", "half a handshake")
WATCH = "GET /api/v1/live?after=0 HTTP/1.1\r\nHost: localhost\r\n"
STALLS = {
    "nobody": None,
    "opened and silent": b"",
    "half a handshake": bytes.fromhex("16030100c8010000c40303"),
    "half a header": HEAD + b"Content-",
    "half a body": HEAD + b"Content-Length: 900\r\n\r\n{",
    "stays after its close": (
        b"GET /api/v1/health HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"
    ),
}


class Served(Creamery):
    """The default server, over http or with a certificate of one's own.

    Args:
        folder: where its data lies.
        is_tls: over https.
    """

    def __init__(self, folder, is_tls):
        super().__init__(folder, ROOT)
        self.is_tls = is_tls
        self.context = ssl.create_default_context() if is_tls else None
        if is_tls:
            files = make_certificate(folder)
            self.context.load_verify_locations(files[0])
            plain, self.port = self.port, free_port()
            self.options = ("--port", str(plain), "--https-port", str(self.port))
            self.options += ("--tls-cert", str(files[0]), "--tls-key", str(files[1]))

    def is_up(self):
        try:
            ask_once(self)
        except OSError:
            return False
        return True

    def connect(self):
        """Open a socket, ready for a request."""
        bare = self.connect_bare()
        if not self.is_tls:
            return bare
        return self.context.wrap_socket(bare, server_hostname=HERE)

    def connect_bare(self):
        """Open a socket and say nothing."""
        return socket.create_connection((HERE, self.port), timeout=PATIENCE_S)

    def line(self, patience_s):
        """Give a client of the standard library."""
        if self.is_tls:
            return http.client.HTTPSConnection(
                HERE, self.port, timeout=patience_s, context=self.context
            )
        return http.client.HTTPConnection(HERE, self.port, timeout=patience_s)


def ask_once(creamery):
    """Ask whether the server is well, over a connection of its own."""
    with contextlib.closing(creamery.line(PATIENCE_S)) as line:
        line.request("GET", "/api/v1/health", headers={"Connection": "close"})
        line.getresponse().read()


def rss_mb(creamery):
    """Return what each worker holds in memory [MB]."""
    found = []
    for status in Path("/proc").glob("[0-9]*/status"):
        with contextlib.suppress(OSError):
            text = status.read_text()
            if f"PPid:\t{creamery.process.pid}\n" in text:
                found.append(int(text.split("VmRSS:")[1].split()[0]) / 1024)
    return found


def ask_health(creamery, times_ms, until_s):
    """Ask again and again, each time over a new connection."""
    failed = 0
    while len(times_ms) < ASKED and time.monotonic() < until_s:
        begun_s = time.monotonic()
        try:
            ask_once(creamery)
        except OSError:
            failed += 1
        times_ms.append(1000 * (time.monotonic() - begun_s))
        time.sleep(0.01)
    return failed


def row(name, times_ms, failed, memory):
    """Print one line of the table."""
    middle, late = statistics.median(times_ms), percentile(times_ms, 0.95)
    sizes = " + ".join(f"{size:.0f}" for size in memory)
    print(f"{name:<24} {middle:>9.1f} {late:>9.1f} {failed:>7}   {sizes}")


def head(title, columns):
    """Print the head of a table."""
    print(
        f"\n{title}\n{columns[0]:<24} {columns[1]:>9} {columns[2]:>9} "
        f"{columns[3]:>7}   {columns[4]}"
    )


def stall(creamery, kind, count):
    """Open connections that will not go on."""
    held = []
    for _ in range(count if STALLS[kind] is not None else 0):
        is_bare = kind in BARE
        sock = creamery.connect_bare() if is_bare else creamery.connect()
        sock.sendall(STALLS[kind])
        held.append(sock)
    return held


def bench_stalls(creamery, count):
    """Ask for health beside each kind of stalled clients."""
    columns = ("stalled", "median ms", "p95 ms", "failed", "workers MB")
    head(f"{count} stalled clients, /health", columns)
    for kind in STALLS:
        if kind == "half a handshake" and not creamery.is_tls:
            continue
        creamery.start()
        with contextlib.ExitStack() as stack:
            for sock in stall(creamery, kind, count):
                stack.callback(sock.close)
            time.sleep(0.3)
            times_ms = []
            failed = ask_health(creamery, times_ms, time.monotonic() + MOST_S)
            row(kind, times_ms, failed, rss_mb(creamery))
        creamery.kill()


class Viewers(threading.Thread):
    """All viewers, in one thread, noting when each entry reached each."""

    def __init__(self, creamery, cookies):
        super().__init__(daemon=True)
        self.selector = selectors.DefaultSelector()
        self.came_s = {}
        self.is_over = False
        self.refused = 0
        for cookie in cookies:
            sock = creamery.connect()
            sock.sendall(f"{WATCH}{cookie}\r\n\r\n".encode())
            if b" 200 " in sock.recv(13):
                sock.setblocking(False)
                self.selector.register(sock, selectors.EVENT_READ, [])
            else:
                self.refused += 1
                sock.close()

    def run(self):
        while not self.is_over:
            for key, _ in self.selector.select(0.2):
                with contextlib.suppress(BlockingIOError, ssl.SSLWantReadError):
                    data = key.fileobj.recv(1 << 16)
                    if not data:
                        self.selector.unregister(key.fileobj)
                    key.data.extend([time.monotonic()] * data.count(b"\nid: "))
                    key.data.extend([time.monotonic()] * data.startswith(b"id: "))

    def close(self):
        self.is_over = True
        self.join()
        for key in list(self.selector.get_map().values()):
            key.fileobj.close()

    def lists(self):
        return [key.data for key in self.selector.get_map().values()]


def phones(creamery, count):
    """Pair phones before the server starts; return a Cookie line of each."""
    app = create_app(Settings(data_dir=creamery.data))
    now_ms = time.time_ns() // 1_000_000
    found = []
    with app.app_context():
        for place in range(count + 1):
            if place % PHONES == 0 or place == 1:
                role = "owner" if place == 0 else "viewer"
                person = auth.add_person(f"Person {place}", role, now_ms).id
            code = auth.start_pairing(person, person, now_ms, 1).long
            names = {"device": str(uuid.uuid4()), "device_name": "Pocket"}
            client = app.test_client()
            answer = client.post(
                "/api/v1/pair",
                base_url=f"{'https' if creamery.is_tls else 'http'}://localhost",
                data=json.dumps({"code": code, **names}),
                headers={"X-Vatside": "1", "Content-Type": "application/json"},
            )
            cookie = answer.headers["Set-Cookie"].split(";")[0]
            found.append((f"Cookie: {cookie}", person, names["device"]))
    return found


def push(creamery, owner, seq):
    """Store one entry; return when it was sent."""
    cookie, person, device = owner
    now_ms = time.time_ns() // 1_000_000
    make, boot = str(uuid.UUID(int=7)), str(uuid.UUID(int=8))
    event = {
        **{"id": str(uuid.uuid4()), "make": make, "device": device, "seq": seq},
        **{"person": person, "at_ms": now_ms, "entered_ms": now_ms, "tz_min": 0},
        **{"mono_ms": 1.0, "boot": boot, "off_ms": 0, "off_q_ms": 10, "v": 1},
        **{"kind": "note_added", "ref": None, "data": {"text": "The curd is firm"}},
    }
    line = creamery.line(30)
    headers = {"X-Vatside": "1", "Content-Type": "application/json"}
    headers["Cookie"] = cookie.removeprefix("Cookie: ")
    begun_s = time.monotonic()
    line.request("POST", "/api/v1/sync/push", json.dumps({"events": [event]}), headers)
    verdict = json.loads(line.getresponse().read())["results"][0]["st"]
    line.close()
    if verdict != "stored":
        raise RuntimeError(f"the entry was not stored: {verdict}")
    return begun_s


def watch(creamery, known, viewers, events):
    """Let so many watch while entries come; print a line for them, one for health."""
    creamery.start()
    watching = Viewers(creamery, [one[0] for one in known[1 : viewers + 1]])
    watching.start()
    time.sleep(1)
    for one in watching.lists():
        one.clear()  # what was caught up
    times_ms, sent_s = [], []
    asking = threading.Thread(
        target=ask_health,
        args=(creamery, times_ms, time.monotonic() + EVENT_S * events),
    )
    asking.start()
    for seq in range(events):
        next_s = time.monotonic() + EVENT_S
        sent_s.append(push(creamery, known[0], uuid.uuid4().int % 10**9 + seq))
        time.sleep(max(0.0, next_s - time.monotonic()))
    asking.join()
    time.sleep(2)
    memory = rss_mb(creamery)
    came = watching.lists()
    watching.close()
    creamery.kill()
    late = [
        1000 * (at - sent)
        for one in came
        for at, sent in zip(one, sent_s, strict=False)
    ]
    lost = len(came) * events - len(late)
    row(f"{len(came)} viewers, delivery", late, lost, memory)
    row("  /health meanwhile", times_ms, watching.refused, [])


def bench_viewers(creamery, counts, events):
    """Measure the delivery to so many viewers."""
    known = phones(creamery, max(counts))
    columns = ("viewers", "median ms", "p95 ms", "lost", "workers MB")
    head(f"{1 / EVENT_S:g} entries a second, {events} of them", columns)
    for count in counts:
        watch(creamery, known, count, events)


def main():
    words = argparse.ArgumentParser(description=__doc__)
    words.add_argument("--tls", action="store_true", help="over https")
    words.add_argument("--stalled", type=int, default=200)
    words.add_argument("--viewers", type=int, nargs="*", default=[100, 500])
    words.add_argument("--events", type=int, default=40)
    args = words.parse_args()
    folder = Path(tempfile.mkdtemp(prefix="vatside-bench-"))
    creamery = Served(folder, args.tls)
    try:
        bench_stalls(creamery, args.stalled)
        if args.viewers:
            bench_viewers(creamery, args.viewers, args.events)
    finally:
        creamery.kill()
        shutil.rmtree(folder, ignore_errors=True)


if __name__ == "__main__":
    main()
