"""The set-up page and a secure server beside it, as a phone in the room meets them."""

import base64
import contextlib
import datetime
import hashlib
import ipaddress
import ssl
import threading
from dataclasses import dataclass
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from wsgiref.simple_server import WSGIRequestHandler, WSGIServer, make_server

from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.oid import NameOID

from server.setup import create_setup_app
from server.shapes.setup import SetupFacts, fingerprint
from tests.conftest import ROOT

HOST = "vat.home.arpa"  # no localhost, which browsers trust without a certificate
RULES = f"--host-resolver-rules=MAP {HOST} 127.0.0.1, MAP *.absent.test ~NOTFOUND"


@dataclass
class Certificate:
    """A certificate of one's own, and what a browser is told to let it in by."""

    file: object
    der: bytes
    spki: str


def certificate(folder):
    """Make a self-signed certificate for HOST; return where it is kept with its key."""
    key = ec.generate_private_key(ec.SECP256R1())
    name = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, "Vatside test")])
    now = datetime.datetime.now(datetime.UTC)
    names = [x509.DNSName(HOST), x509.IPAddress(ipaddress.ip_address("127.0.0.1"))]
    made = (
        x509.CertificateBuilder()
        .subject_name(name)
        .issuer_name(name)
        .public_key(key.public_key())
        .serial_number(x509.random_serial_number())
        .not_valid_before(now - datetime.timedelta(hours=1))
        .not_valid_after(now + datetime.timedelta(days=2))
        .add_extension(x509.SubjectAlternativeName(names), critical=False)
        .sign(key, hashes.SHA256())
    )
    pem = serialization.Encoding.PEM
    file = folder / "certificate.pem"
    private = key.private_bytes(
        pem, serialization.PrivateFormat.PKCS8, serialization.NoEncryption()
    )
    file.write_bytes(private + made.public_bytes(pem))
    spki = key.public_key().public_bytes(
        serialization.Encoding.DER, serialization.PublicFormat.SubjectPublicKeyInfo
    )
    pin = base64.b64encode(hashlib.sha256(spki).digest()).decode()
    return Certificate(file, made.public_bytes(serialization.Encoding.DER), pin)


class _Quiet(WSGIRequestHandler):
    def log_message(self, *words):
        pass


class _Probe(BaseHTTPRequestHandler):
    def do_GET(self):
        self.send_response(200)
        self.send_header("Content-Type", "image/svg+xml")
        self.end_headers()
        self.wfile.write((ROOT / "static" / "setup" / "ok.svg").read_bytes())

    def log_message(self, *words):
        pass


class Room:
    """What a phone meets: a set-up page, and perhaps a secure server.

    Args:
        folder: where certificates may lie.
        secure_urls: addresses that the page is to name; None for the secure server's.
    """

    def __init__(self, folder):
        self.certificate = certificate(folder)
        self.running = []
        self.secure = self._start(self._secure_server())
        self.urls = (f"https://{HOST}:{self.secure.server_port}",)
        page = create_setup_app(self.facts)
        self.page = self._start(make_server("127.0.0.1", 0, page, _Server, _Quiet))
        self.url = f"http://{HOST}:{self.page.server_port}/"

    def facts(self):
        der = self.certificate.der
        return SetupFacts(der, fingerprint(der), self.urls, ROOT / "static")

    def _secure_server(self):
        server = ThreadingHTTPServer(("127.0.0.1", 0), _Probe)
        context = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
        context.load_cert_chain(self.certificate.file)
        server.socket = context.wrap_socket(server.socket, server_side=True)
        server.handle_error = lambda *words: None  # a browser that trusts nothing
        return server

    def _start(self, server):
        threading.Thread(target=server.serve_forever, args=(0.05,), daemon=True).start()
        self.running.append(server)
        return server

    def stop(self, server):
        self.running.remove(server)
        server.shutdown()
        server.server_close()

    def close(self):
        for server in list(self.running):
            with contextlib.suppress(OSError):
                self.stop(server)


class _Server(WSGIServer):
    # Browsers hold sockets open in advance; one of them must not stop the others.
    daemon_threads = True

    def process_request(self, request, address):
        arguments = (request, address)
        threading.Thread(target=self._answer, args=arguments, daemon=True).start()

    def _answer(self, request, address):
        with contextlib.suppress(OSError):
            self.finish_request(request, address)
        self.shutdown_request(request)
