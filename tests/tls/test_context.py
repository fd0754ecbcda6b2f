"""A renewed certificate is shown to the next client, without a restart."""

import socket
import ssl
import threading
import time

import pytest

from server.tls.context import FreshContext
from server.tls.folder import Folder
from server.tls.renewal import Asked, tend
from tests.tls.conftest import LAN


@pytest.fixture
def now_ms():
    return int(time.time() * 1000)


@pytest.fixture
def room(tmp_path, now_ms):
    folder = Folder(tmp_path / "tls")
    tend(folder, LAN, now_ms)
    return folder


@pytest.fixture
def shown(room):
    """Give a function that meets a running server; return the serial number seen."""
    context = FreshContext(room.leaf, room.leaf).context
    listener = socket.create_server(("127.0.0.1", 0))
    listener.settimeout(30)

    def serve_one():
        client, _ = listener.accept()
        try:
            context.wrap_socket(client, server_side=True).close()
        except OSError:
            client.close()

    def meet(host, version=None):
        trust = ssl.create_default_context(cafile=room.root)
        if version is not None:
            trust.minimum_version = trust.maximum_version = version
        thread = threading.Thread(target=serve_one)
        thread.start()
        try:
            with (
                socket.create_connection(listener.getsockname(), 30) as plain,
                trust.wrap_socket(plain, server_hostname=host) as secure,
            ):
                return int(secure.getpeercert()["serialNumber"], 16)
        finally:
            thread.join()

    yield meet
    listener.close()


# By an address the client names no host, so nothing may hang on one being named.
@pytest.mark.parametrize("host", ["vatside.home.arpa", "192.168.1.20"])
@pytest.mark.parametrize("version", [ssl.TLSVersion.TLSv1_2, ssl.TLSVersion.TLSv1_3])
def test_a_renewed_certificate_is_shown_to_the_next_client(
    room, shown, now_ms, host, version
):
    first = room.read_leaf().serial_number
    assert shown(host, version) == first
    tend(room, LAN, now_ms, Asked(names=("floor.vatbox.local",)))
    assert shown(host, version) == room.read_leaf().serial_number != first


def test_half_placed_files_leave_clients_with_what_was_good(room, shown, caplog):
    good, first = room.leaf.read_bytes(), room.read_leaf().serial_number
    room.leaf.write_bytes(good[:200])
    assert shown("vatside.home.arpa") == first
    assert "cannot be used" in caplog.text
    room.leaf.unlink()
    assert shown("vatside.home.arpa") == first
    room.leaf.write_bytes(good)
    assert shown("vatside.home.arpa") == first


def test_old_versions_of_tls_are_not_spoken(room):
    context = FreshContext(room.leaf, room.leaf)
    assert context.context.minimum_version == ssl.TLSVersion.TLSv1_2
    assert context.newest().minimum_version == ssl.TLSVersion.TLSv1_2
