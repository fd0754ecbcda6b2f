"""nginx with our file, on ports of its own and with a certificate of the test."""

import datetime
import re

from cryptography import x509
from cryptography.hazmat.primitives import hashes, serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.x509.oid import NameOID

from tests.conftest import ROOT

NAME = "floor.example.org"


def certificate(folder):
    """Make a certificate for NAME that nobody vouches for; return its files."""
    key = ec.generate_private_key(ec.SECP256R1())
    name = x509.Name([x509.NameAttribute(NameOID.COMMON_NAME, NAME)])
    now = datetime.datetime.now(datetime.UTC)
    made = (
        x509.CertificateBuilder(name, name, key.public_key())
        .serial_number(x509.random_serial_number())
        .not_valid_before(now - datetime.timedelta(hours=1))
        .not_valid_after(now + datetime.timedelta(days=1))
        .add_extension(x509.SubjectAlternativeName([x509.DNSName(NAME)]), False)
        .sign(key, hashes.SHA256())
    )
    pem = serialization.Encoding.PEM
    cert_file, key_file = folder / "cert.pem", folder / "key.pem"
    cert_file.write_bytes(made.public_bytes(pem))
    key_file.write_bytes(
        key.private_bytes(
            pem, serialization.PrivateFormat.PKCS8, serialization.NoEncryption()
        )
    )
    return cert_file, key_file


def nginx_config(folder, https_port, vatside_port):
    """Write a whole configuration around our file; only places are changed."""
    cert, key = certificate(folder)
    text = (ROOT / "deploy" / "nginx.conf").read_text()
    places = {
        "    listen 80;": f"    listen 127.0.0.1:{https_port + 1};",
        "    listen 443 ssl": f"    listen 127.0.0.1:{https_port} ssl",
        "/etc/vatside/tls/fullchain.pem": str(cert),
        "/etc/vatside/tls/key.pem": str(key),
        "127.0.0.1:8000": f"127.0.0.1:{vatside_port}",
    }
    for before, after in places.items():
        assert before in text, before
        text = text.replace(before, after)
    text = re.sub(r"    listen \[::\].*\n", "", text)  # a test box may have no IPv6
    (folder / "site.conf").write_text(text)
    temporary = "\n".join(
        f"  {kind}_temp_path {folder}/{kind};"
        for kind in ("client_body", "proxy", "fastcgi", "uwsgi", "scgi")
    )
    whole = folder / "nginx.conf"
    whole.write_text(
        f"daemon off;\npid {folder}/pid;\nerror_log {folder}/error.log;\n"
        "events {}\nhttp {\n"
        f"{temporary}\n  access_log {folder}/access.log;\n"
        f"  include {folder}/site.conf;\n}}\n"
    )
    return str(whole)
