"""A real nginx with our file in front of a real server, on loopback, over https."""

import http.client
import json
import re
import shutil
import socket
import ssl
import subprocess
import sys

import pytest

from server.store.security_log import lines
from tests.conftest import ROOT
from tests.deploy.proxies import NAME, nginx_config
from tests.sync.phones import a_uuid, note

pytestmark = pytest.mark.long
LONG_S = 30
HEADERS = {"X-Vatside": "1", "Content-Type": "application/json", "Host": NAME}


def two_free_ports():
    with socket.socket() as one, socket.socket() as other:
        one.bind(("127.0.0.1", 0))
        other.bind(("127.0.0.1", 0))
        return one.getsockname()[1], other.getsockname()[1]


class Behind:
    """A server that only its proxy speaks to."""

    def __init__(self, folder):
        self.data = folder / "data"
        self.port, inner = two_free_ports()
        self.cookie = {}
        self.lines = []
        words = ["serve", "--no-tls", "--host", "127.0.0.1", "--port", str(inner)]
        settings = {"VATSIDE_URL": f"https://{NAME}", "VATSIDE_PROXY_HOPS": "1"}
        self.server = subprocess.Popen(
            [sys.executable, "-m", "server.cli", *words, "--data", str(self.data)],
            cwd=ROOT,
            env={"PATH": "/usr/bin:/bin", **settings},
            stdout=subprocess.PIPE,
            text=True,
        )
        said = ""
        while "Stop with" not in said:
            line = self.server.stdout.readline()
            assert line, said
            said += line
        self.code = re.search(r"code (\S+) or", said)[1]
        config = nginx_config(folder, self.port, inner)
        self.proxy = subprocess.Popen([shutil.which("nginx"), "-c", config])

    def connect(self):
        # The certificate is the test's own; that there is one is what is asked.
        trusting = ssl.create_default_context()
        trusting.check_hostname, trusting.verify_mode = False, ssl.CERT_NONE
        for _ in range(600):
            line = http.client.HTTPSConnection(
                "127.0.0.1", self.port, timeout=LONG_S, context=trusting
            )
            self.lines.append(line)
            try:
                line.connect()
            except ConnectionRefusedError:
                assert self.proxy.poll() is None
                continue
            return line
        raise AssertionError("nginx does not listen")

    def open(self, method, path, body=None, **headers):
        line = self.connect()
        content = None if body is None else json.dumps(body)
        told = {**HEADERS, **self.cookie, **headers}
        line.request(method, f"/api/v1{path}", content, told)
        return line.getresponse()

    def ask(self, method, path, body=None, **headers):
        with self.open(method, path, body, **headers) as answer:
            return answer, json.loads(answer.read())

    def close(self):
        for line in self.lines:
            line.close()
        for process in (self.proxy, self.server):
            process.terminate()
            process.wait(timeout=LONG_S)
        self.server.stdout.close()


@pytest.fixture
def behind(tmp_path):
    if shutil.which("nginx") is None:
        pytest.skip("nginx is not installed")
    made = Behind(tmp_path)
    yield made
    made.close()


def test_phones_are_served_through_the_proxy_as_if_it_were_not_there(behind):
    device = a_uuid()
    body = {"code": behind.code, "device": device, "device_name": "Desk"}
    wrong = {**body, "code": "AAAA-AAAA"}
    for made_up in ("203.0.113.1", "203.0.113.2, 203.0.113.3"):
        answer, _ = behind.ask("POST", "/pair", wrong, **{"X-Forwarded-For": made_up})
        assert answer.status == 403
    ours = {"Origin": f"https://{NAME}"}
    answer, paired = behind.ask("POST", "/pair", {**body, "person_name": "Ada"}, **ours)
    assert answer.status == 200, paired
    cookie = answer.headers["Set-Cookie"]
    assert cookie.startswith("__Host-vatside=")
    assert "Secure" in cookie
    assert "max-age" in answer.headers["Strict-Transport-Security"]
    behind.cookie = {"Cookie": cookie.split(";")[0]}
    # One hop: whatever a phone claims, its tries are counted as one source.
    found = [row for row in lines(behind.data) if row["what"] == "pairing_failed"]
    assert len({row["source"] for row in found}) == 1 < len(found)

    person = paired["person"]["id"]
    answer, code = behind.ask("POST", f"/people/{person}/pairing", {})
    assert code["url"].startswith(f"https://{NAME}/#/pair/")

    stream = behind.open("GET", "/live")
    assert stream.headers["Content-Type"].startswith("text/event-stream")
    while not stream.readline().startswith(b"data:"):
        pass  # the greeting came at once
    for seq in (1, 2):
        entry = note(device, seq, person, text=f"entry {seq}")
        answer, told = behind.ask("POST", "/sync/push", {"events": [entry]})
        assert told["results"][0]["st"] == "stored"
        line = b""
        # A proxy that keeps back a bufferful would let this read time out.
        while not line.startswith(b"data:"):
            line = stream.readline()
            assert line, "the stream ended"
        assert f"entry {seq}".encode() in line
    stream.close()


def test_another_name_is_not_handed_on_as_ours(behind):
    answer, told = behind.ask("GET", "/health", Host="evil.example")
    assert (answer.status, told["error"]["key"]) == (421, "unknown_host")
    odd = {"X-Forwarded-Host": "evil.example", "X-Forwarded-Port": "81"}
    answer, _ = behind.ask("GET", "/health", **odd)
    assert answer.status == 200


def test_plain_http_is_sent_on_to_https_of_our_name(behind):
    behind.connect().close()
    line = http.client.HTTPConnection("127.0.0.1", behind.port + 1, timeout=LONG_S)
    line.request("GET", "/x", headers={"Host": "evil.example"})
    answer = line.getresponse()
    assert answer.status == 308
    assert answer.headers["Location"] == f"https://{NAME}/x"
    line.close()
