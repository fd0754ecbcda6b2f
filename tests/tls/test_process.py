"""The server as it really runs over https, with the set-up page beside it."""

import http.client
import json
import os
import re
import signal
import socket
import ssl
import subprocess
import sys
import time
import urllib.error
import urllib.request

import pytest

from server import cli
from server.tls.folder import Folder, read_certificate
from server.tls.made import fingerprint
from server.tls.renewal import Asked, tend
from tests.conftest import ROOT
from tests.sync.phones import a_uuid, note

LONG_S = 30
HEADERS = {"X-Vatside": "1", "Content-Type": "application/json"}
NAME = "vatside.home.arpa"


def free_ports(count):
    probes = [socket.create_server(("127.0.0.1", 0)) for _ in range(count)]
    ports = [probe.getsockname()[1] for probe in probes]
    for probe in probes:
        probe.close()
    return ports


class Server:
    """A server over https, and a client that trusts the room's root alone."""

    def __init__(self, data):
        self.data, self.room = data, Folder(data / "tls")
        self.port, self.https_port = free_ports(2)
        command = [sys.executable, "-m", "server.cli", "tls", "--data", str(data)]
        command += ["--host", "127.0.0.1", "--port", str(self.port)]
        command += ["--https-port", str(self.https_port)]
        self.process = subprocess.Popen(
            command,
            cwd=ROOT,
            text=True,
            stdout=subprocess.PIPE,
            stderr=subprocess.PIPE,
        )
        self.said = ""
        while "Stop with" not in self.said:
            line = self.process.stdout.readline()
            assert line, self.said + self.process.stderr.read()
            self.said += line
        self.trust = ssl.SSLContext(ssl.PROTOCOL_TLS_CLIENT)
        self.trust.load_verify_locations(self.room.root)
        self.headers = dict(HEADERS)

    def connect(self, name=NAME):
        """Return a connection to the server, made under a name of its."""
        end_s = time.monotonic() + LONG_S
        while True:
            try:
                here = ("127.0.0.1", self.https_port)
                plain = socket.create_connection(here, LONG_S)
                break
            except ConnectionRefusedError:
                assert time.monotonic() < end_s
                time.sleep(0.05)
        return self.trust.wrap_socket(plain, server_hostname=name)

    def serial(self):
        with self.connect() as secure:
            return int(secure.getpeercert()["serialNumber"], 16)

    def ask(self, method, path, body=None):
        connection = http.client.HTTPConnection(NAME, self.https_port)
        connection.sock = self.connect()
        try:
            path = f"/api/v1{path}"
            connection.request(method, path, body and json.dumps(body), self.headers)
            answer = connection.getresponse()
            return answer, json.loads(answer.read())
        finally:
            connection.close()

    def pair(self):
        code = re.search(r"code (\S+) or", self.said)[1]
        self.device = a_uuid()
        body = {"code": code, "device": self.device, "device_name": "Pocket"}
        answer, paired = self.ask("POST", "/pair", {**body, "person_name": "Ada"})
        self.headers["Cookie"] = answer.headers["Set-Cookie"].split(";")[0]
        self.person = paired["person"]["id"]
        return answer.headers["Set-Cookie"]

    def plain(self, path="/"):
        url = f"http://127.0.0.1:{self.port}{path}"
        end_s = time.monotonic() + LONG_S
        while True:
            try:
                with urllib.request.urlopen(url, timeout=LONG_S) as answer:
                    return answer.read()
            except urllib.error.URLError:
                assert time.monotonic() < end_s
                time.sleep(0.05)

    def wait_until_free(self):
        """Wait until nobody listens on either port."""
        end_s = time.monotonic() + LONG_S
        for port in (self.port, self.https_port):
            while True:
                with socket.socket() as probe:
                    if probe.connect_ex(("127.0.0.1", port)) != 0:
                        break
                assert time.monotonic() < end_s, port
                time.sleep(0.05)


@pytest.fixture(scope="module")
def server(tmp_path_factory):
    server = Server(tmp_path_factory.mktemp("secure"))
    yield server
    server.process.kill()
    server.process.communicate()


@pytest.fixture(scope="module")
def owner(server):
    """Give the server with the owner's phone paired."""
    server.cookie = server.pair()
    return server


def test_a_phone_pairs_over_https_and_its_cookie_stays_there(owner):
    assert owner.cookie.startswith("__Host-vatside=")
    assert "Secure" in owner.cookie
    answer, told = owner.ask("GET", "/me")
    assert (answer.status, told["person"]["name"]) == (200, "Ada")


def test_health_tells_until_when_the_certificate_holds(owner):
    _, told = owner.ask("GET", "/health")
    shown = read_certificate(owner.room.leaf)
    end_s = int(shown.not_valid_after_utc.timestamp())
    assert told["certificate"]["ends_ms"] == end_s * 1000
    assert told["certificate"]["findings"] == []


def test_the_setup_page_is_beside_it_and_the_app_is_not(owner):
    told = json.loads(owner.plain("/facts.json"))
    assert told["secure_urls"] == [f"https://127.0.0.1:{owner.https_port}"]
    assert told["fingerprint"] in owner.said
    assert ssl.PEM_cert_to_DER_cert(owner.room.root.read_text()) == owner.plain(
        "/root.crt"
    )
    page = owner.plain("/")
    assert owner.plain("/api/v1/health") == page
    assert owner.plain("/js/app.js") == page


def test_the_one_picture_leads_to_the_setup_page(owner):
    code = re.search(r"code (\S+) or", owner.said)[1]
    assert f"  http://127.0.0.1:{owner.port}/#/pair/{code}\n" in owner.said
    assert owner.said.count("/#/pair/") == 1


def test_a_new_persons_picture_leads_to_the_setup_page_too(owner):
    _, made = owner.ask("POST", f"/people/{owner.person}/pairing", {})
    assert made["url"].startswith(f"http://{NAME}:{owner.port}/#/pair/")


def test_the_live_stream_comes_over_https(owner):
    connection = http.client.HTTPConnection(NAME, owner.https_port)
    connection.sock = owner.connect()
    connection.request("GET", "/api/v1/live", headers=owner.headers)
    answer = connection.getresponse()
    assert answer.status == 200
    events = [note(owner.device, 1, owner.person)]
    while not answer.readline().startswith(b"event: head"):
        pass
    _, told = owner.ask("POST", "/sync/push", {"events": events})
    assert told["results"][0]["st"] == "stored"
    while not (line := answer.readline()).startswith(b"id: "):
        assert line
    connection.close()


def test_the_command_given_again_shows_the_certificate_and_lets_the_server_be(
    owner, capsys
):
    before = owner.serial()
    assert cli.main(["tls", "--data", str(owner.data)]) == 0
    said = capsys.readouterr().out
    assert fingerprint(owner.room.read_root()) in said
    assert "it takes the certificate up by itself" in said
    assert owner.serial() == before


def test_a_renewed_certificate_is_shown_without_a_restart(owner):
    first = owner.serial()
    assert first == read_certificate(owner.room.leaf).serial_number
    now_ms = int(time.time() * 1000)
    tend(owner.room, [], now_ms, Asked(names=("floor.vatside.home.arpa",)))
    # Every worker takes it up: in so many tries each of the two has answered.
    shown = {owner.serial() for _ in range(12)}
    assert shown == {read_certificate(owner.room.leaf).serial_number} != {first}
    with owner.connect("floor.vatside.home.arpa") as secure:
        assert secure.version() == "TLSv1.3"


def test_a_client_without_the_root_is_refused_by_itself(owner):
    here = ("127.0.0.1", owner.https_port)
    stranger = ssl.create_default_context()
    with (
        socket.create_connection(here, LONG_S) as plain,
        pytest.raises(ssl.SSLCertVerificationError),
    ):
        stranger.wrap_socket(plain, server_hostname=NAME)


def test_a_stopped_client_of_the_setup_page_holds_nobody_up(owner):
    halves = [socket.create_connection(("127.0.0.1", owner.port)) for _ in range(20)]
    for half in halves:
        half.sendall(b"GET / HTTP/1.1\r\nHost: vat")
    assert owner.plain()
    for half in halves:
        half.close()


def test_the_setup_page_ends_with_a_server_that_is_killed(tmp_path):
    server = Server(tmp_path)
    assert server.plain()
    server.serial()
    server.process.kill()
    server.process.communicate(timeout=LONG_S)
    server.wait_until_free()


def test_the_setup_page_ends_with_a_server_that_is_told_to_stop(owner):
    os.kill(owner.process.pid, signal.SIGTERM)
    _, said = owner.process.communicate(timeout=LONG_S)
    owner.wait_until_free()
    assert owner.process.returncode == 0, said
    assert "Traceback" not in said
