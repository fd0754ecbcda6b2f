"""Certificates are judged by openssl and by Python's client, never by our code."""

import re
import socket
import ssl
import threading
import time

import pytest
from cryptography.hazmat.primitives.serialization import Encoding

from server.tls.context import FreshContext
from server.tls.folder import key_pem, write_whole
from server.tls.made import Made, Permitted, fingerprint, make_leaf, make_root
from server.tls.names import PRIVATE, Names, networks
from tests.tls.conftest import NOW_MS, days, openssl, verified

DNS = ("vatbox.local", "vatside.home.arpa")
IN = Names(DNS, ("192.168.1.20", "127.0.0.1", "::1", "fd00::12"))


@pytest.fixture
def root():
    return make_root(Permitted(DNS, networks(["203.0.113.9"])), "vatbox", NOW_MS)


@pytest.fixture
def files(tmp_path, root):
    """Give a function that makes a certificate, as files of root and of it."""

    def make(names, now_ms=NOW_MS):
        leaf = make_leaf(root, names, now_ms)
        paths = tmp_path / "root.pem", tmp_path / "server.pem"
        write_whole(paths[0], root.certificate.public_bytes(Encoding.PEM))
        write_whole(
            paths[1], leaf.certificate.public_bytes(Encoding.PEM) + key_pem(leaf.key)
        )
        return paths

    return make


@pytest.mark.parametrize(
    "asked",
    [
        ["-verify_hostname", "vatbox.local"],
        ["-verify_hostname", "vatside.home.arpa"],
        ["-verify_ip", "192.168.1.20"],
        ["-verify_ip", "::1"],
        ["-purpose", "sslserver"],
    ],
)
def test_a_certificate_holds_for_each_of_its_names(files, asked):
    assert verified(*files(IN), *asked) == (True, f"{files(IN)[1]}: OK\n")


@pytest.mark.parametrize(
    "names",
    [
        Names(("bank.example",), ()),
        Names(("vatside.home.arpa", "other.home.arpa"), ()),
        Names(("home.arpa",), ()),
        Names((), ("203.0.113.10",)),
        Names((), ("2001:db8::1",)),
    ],
)
def test_the_root_may_vouch_for_nothing_outside_of_the_room(files, names):
    good, said = verified(*files(names))
    assert not good
    assert "permitted subtree violation" in said


def test_a_public_address_is_permitted_alone(files):
    assert verified(*files(Names((), ("203.0.113.9",))))[0]


def test_the_root_is_one_for_certificates_only_and_for_none_below_it(files):
    root, _ = files(IN)
    _, text = openssl("x509", "-in", str(root), "-noout", "-text")
    assert re.search(r"Basic Constraints: critical\s+CA:TRUE, pathlen:0", text)
    assert re.search(r"Key Usage: critical\s+Certificate Sign\n", text)
    assert re.search(r"Name Constraints: critical\s+Permitted:\n", text)
    assert text.count("ASN1 OID: prime256v1") == 1


def test_the_servers_certificate_is_what_phones_ask_for(files):
    _, leaf = files(IN)
    _, text = openssl("x509", "-in", str(leaf), "-noout", "-text")
    assert "ASN1 OID: prime256v1" in text
    assert "ecdsa-with-SHA256" in text
    assert re.search(r"Extended Key Usage: \n\s+TLS Web Server Authentication\n", text)
    assert "CA:FALSE" in text
    assert "DNS:vatbox.local" in text
    assert "IP Address:192.168.1.20" in text


def test_certificates_last_as_long_as_said_and_began_a_month_ago(root):
    leaf = make_leaf(root, IN, NOW_MS).certificate
    for made, whole in ((root.certificate, 3650), (leaf, 397)):
        start, end = made.not_valid_before_utc, made.not_valid_after_utc
        assert (end - start).days == whole
        assert start.timestamp() * 1000 == days(-30)


def test_a_phone_whose_clock_lags_four_weeks_finds_it_begun(files):
    assert verified(*files(IN), at_ms=days(-28))[0]
    good, said = verified(*files(IN), at_ms=days(-31))
    assert not good
    assert "not yet valid" in said


def test_a_certificate_never_outlives_its_root(root):
    leaf = make_leaf(root, IN, days(3500)).certificate
    assert leaf.not_valid_after_utc == root.certificate.not_valid_after_utc


def test_the_fingerprint_is_the_one_that_phones_show(files, root):
    _, text = openssl(
        "x509", "-in", str(files(IN)[0]), "-noout", "-fingerprint", "-sha256"
    )
    assert text.strip().split("=")[1] == fingerprint(root.certificate)


def test_only_private_networks_are_open_to_every_room():
    listed = [str(one) for one in PRIVATE]
    # RFC 1918, RFC 3927, RFC 4193, and the box itself.
    assert listed == [
        "10.0.0.0/8",
        "172.16.0.0/12",
        "192.168.0.0/16",
        "169.254.0.0/16",
        "127.0.0.0/8",
        "fc00::/7",
        "::1/128",
    ]


def shake_hands(leaf, root, host):
    """Let Python's own client, which trusts this root only, meet the certificate."""
    context = FreshContext(leaf, leaf).context
    trust = ssl.SSLContext(ssl.PROTOCOL_TLS_CLIENT)
    trust.load_verify_locations(root)
    with socket.create_server(("127.0.0.1", 0)) as listener:

        def answer():
            client, _ = listener.accept()
            try:
                context.wrap_socket(client, server_side=True).close()
            except OSError:
                client.close()

        thread = threading.Thread(target=answer)
        thread.start()
        try:
            with (
                socket.create_connection(listener.getsockname(), 10) as plain,
                trust.wrap_socket(plain, server_hostname=host) as secure,
            ):
                return secure.getpeercert()
        finally:
            thread.join()


def now_files(files, names):
    return files(names, int(time.time() * 1000))


@pytest.mark.parametrize("host", ["vatside.home.arpa", "192.168.1.20"])
def test_a_client_that_trusts_the_root_alone_trusts_the_server(files, host):
    root, leaf = now_files(files, IN)
    assert shake_hands(leaf, root, host)


def test_a_client_refuses_what_the_root_may_not_vouch_for(files):
    root, leaf = now_files(files, Names(("vatbox.local", "bank.example"), ()))
    for host in ("bank.example", "vatbox.local"):
        with pytest.raises(ssl.SSLCertVerificationError, match="permitted subtree"):
            shake_hands(leaf, root, host)


def test_a_certificate_of_another_root_is_refused(tmp_path, files):
    root, _ = now_files(files, IN)
    other = make_root(Permitted(DNS, PRIVATE), "elsewhere", NOW_MS)
    leaf = make_leaf(Made(other.certificate, other.key), IN, NOW_MS)
    file = tmp_path / "other.pem"
    write_whole(file, leaf.certificate.public_bytes(Encoding.PEM))
    assert not verified(root, file)[0]
