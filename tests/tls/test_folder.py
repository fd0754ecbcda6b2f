import os

import pytest

from server.tls import folder as files
from server.tls.folder import Folder, Room, read_certificate, read_key, write_whole
from server.tls.refused import TlsError
from server.tls.renewal import tend
from tests.tls.conftest import LAN, NOW_MS, days


def mode(path):
    return oct(path.stat().st_mode & 0o777)


def test_only_the_owner_of_the_box_may_read_any_of_it(folder):
    assert mode(folder.path) == "0o700"
    names = {path.name for path in folder.path.iterdir()}
    assert names == {".lock", "root.pem", "root-key.pem", "server.pem", "room.json"}
    assert {mode(path) for path in folder.path.iterdir()} == {"0o600"}


def test_what_others_could_read_is_closed_again_by_the_next_certificate(folder):
    folder.path.chmod(0o755)
    folder.leaf.chmod(0o644)
    tend(folder, LAN, days(300))
    assert mode(folder.path) == "0o700"
    assert mode(folder.leaf) == "0o600"


def test_a_file_is_private_from_its_first_byte(tmp_path, monkeypatch):
    seen = []
    real = os.fdopen

    def look(handle, *rest):
        seen.append(oct(os.fstat(handle).st_mode & 0o777))
        return real(handle, *rest)

    monkeypatch.setattr(files.os, "fdopen", look)
    before = os.umask(0)
    try:
        write_whole(tmp_path / "key", b"secret")
    finally:
        os.umask(before)
    assert seen == ["0o600"]


def test_a_write_that_fails_leaves_the_file_before_it(tmp_path, monkeypatch):
    file = tmp_path / "server.pem"
    write_whole(file, b"good")

    def full(handle):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(files.os, "fsync", full)
    with pytest.raises(OSError, match="No space"):
        write_whole(file, b"half")
    monkeypatch.undo()
    assert file.read_bytes() == b"good"
    write_whole(file, b"later")  # what was left lying is in nobody's way
    assert [path.name for path in tmp_path.iterdir()] == ["server.pem"]


def test_a_room_is_read_as_it_was_written(tmp_path):
    room = Room(("a.local",), ("10.0.0.5",), {"10.0.0.5": NOW_MS}, "10.0.0.5")
    folder = Folder(tmp_path)
    assert folder.read_room() == Room()
    folder.write_room(room)
    assert folder.read_room() == room


@pytest.mark.parametrize("text", ["{", "[1]", '{"names": 3}', "\x00"])
def test_a_room_that_cannot_be_read_is_named(tmp_path, text):
    (tmp_path / "room.json").write_text(text)
    with pytest.raises(TlsError, match=r"room\.json cannot be read.*--name"):
        Folder(tmp_path).read_room()


def test_a_file_without_a_certificate_is_named(tmp_path):
    file = tmp_path / "cert.pem"
    with pytest.raises(TlsError, match="No such file"):
        read_certificate(file)
    file.write_text("-----BEGIN NONSENSE-----")
    with pytest.raises(TlsError, match="should begin with -----BEGIN CERTIFICATE-----"):
        read_certificate(file)


def test_a_file_without_a_key_is_named(tmp_path):
    file = tmp_path / "key.pem"
    with pytest.raises(TlsError, match="No such file"):
        read_key(file)
    file.write_text("nothing")
    with pytest.raises(TlsError, match="holds no key"):
        read_key(file)
