"""A push service and a browser of our own, on this machine.

The browser's half of RFC 8291 is written out here from the standard's own steps,
so that what the server encrypts is read by other code than it was written with.
"""

import base64
import hmac
import json
import threading
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer

from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec, utils
from cryptography.hazmat.primitives.ciphers.aead import AESGCM

POINT = (serialization.Encoding.X962, serialization.PublicFormat.UncompressedPoint)


def text64(data):
    return base64.urlsafe_b64encode(data).decode().rstrip("=")


def bytes64(text):
    return base64.urlsafe_b64decode(text + "=" * (-len(text) % 4))


def mac(key, data):
    return hmac.digest(key, data, "sha256")


class Browser:
    """One browser's subscription, with the secrets that stay in the browser."""

    def __init__(self, endpoint):
        self.key = ec.generate_private_key(ec.SECP256R1())
        self.point = self.key.public_key().public_bytes(*POINT)
        self.secret = b"0123456789abcdef"
        self.endpoint = endpoint

    def posted(self, wants="all"):
        """Return what its page posts to the server."""
        keys = {"p256dh": text64(self.point), "auth": text64(self.secret)}
        return {"endpoint": self.endpoint, "keys": keys, "wants": wants}

    def read(self, body):
        """Return a push's plain text (RFC 8291 section 3.4, RFC 8188 section 2)."""
        salt, length = body[:16], body[20]
        sender, sealed = body[21 : 21 + length], body[21 + length :]
        theirs = ec.EllipticCurvePublicKey.from_encoded_point(ec.SECP256R1(), sender)
        shared = self.key.exchange(ec.ECDH(), theirs)
        info = b"WebPush: info\0" + self.point + sender
        material = mac(mac(self.secret, shared), info + b"\x01")
        master = mac(salt, material)
        content_key = mac(master, b"Content-Encoding: aes128gcm\0\x01")[:16]
        nonce = mac(master, b"Content-Encoding: nonce\0\x01")[:12]
        padded = AESGCM(content_key).decrypt(nonce, sealed, None)
        plain, mark = padded.rstrip(b"\0")[:-1], padded.rstrip(b"\0")[-1:]
        assert mark == b"\x02"  # the last record
        return json.loads(plain)


def read_ticket(header):
    """Return (claims, public key text) of a push's Authorization, its signature
    checked (RFC 8292 section 3)."""
    assert header.startswith("vapid ")
    parts = dict(part.strip().split("=", 1) for part in header[6:].split(","))
    head, claims, signature = parts["t"].split(".")
    point = bytes64(parts["k"])
    key = ec.EllipticCurvePublicKey.from_encoded_point(ec.SECP256R1(), point)
    raw = bytes64(signature)
    r, s = (int.from_bytes(raw[at : at + 32], "big") for at in (0, 32))
    signed = f"{head}.{claims}".encode()
    key.verify(utils.encode_dss_signature(r, s), signed, ec.ECDSA(hashes.SHA256()))
    return json.loads(bytes64(claims)), parts["k"]


class PushService:
    """Takes pushes, answers as told, and remembers what came."""

    def __init__(self):
        self.status = 201
        self.headers = {}
        self.came = []
        service = self

        class Handler(BaseHTTPRequestHandler):
            def do_POST(self):
                body = self.rfile.read(int(self.headers["Content-Length"]))
                service.came.append((self.path, self.headers, body))
                self.send_response(service.status)
                for name, value in service.headers.items():
                    self.send_header(name, value)
                self.send_header("Content-Length", "0")
                self.end_headers()

            def log_message(self, *args):
                pass

        self.server = ThreadingHTTPServer(("127.0.0.1", 0), Handler)
        self.url = f"http://127.0.0.1:{self.server.server_port}"
        self.thread = threading.Thread(target=self.server.serve_forever)
        self.thread.start()

    def browser(self, name="one"):
        return Browser(f"{self.url}/push/{name}")

    def close(self):
        if not self.thread.is_alive():
            return
        self.server.shutdown()
        self.thread.join()
        self.server.server_close()
