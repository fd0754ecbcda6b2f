"""What a person types, and what they are told."""

import errno
import socket
import time

import pytest

from server import cli
from server.cli.serve import require_port
from server.tls.folder import Folder, read_key, write_whole
from server.tls.renewal import DAY_MS
from tests.tls.conftest import verified


@pytest.fixture(autouse=True)
def network(monkeypatch):
    """Let this box have one address, and a network that knows no names."""
    for module in ("cli.tls", "cli.secure", "tls.standing"):
        monkeypatch.setattr(f"server.{module}.lan_addresses", lambda: ["192.168.1.20"])
    monkeypatch.setattr("server.cli.tls.leads_here", lambda names, addresses: [])


@pytest.fixture
def data(tmp_path):
    return tmp_path / "data"


@pytest.fixture
def room(data):
    return Folder(data / "tls")


@pytest.fixture
def run(data, capsys):
    """Give a function that runs `vatside tls`; return its code, and all it said."""

    def tls(*options):
        code = cli.main(["tls", "--only", "--data", str(data), *map(str, options)])
        said = capsys.readouterr()
        return code, said.out + said.err

    return tls


def now_ms():
    return int(time.time() * 1000)


def test_one_command_makes_all_that_https_needs_and_says_what_comes_next(run, room):
    code, said = run()
    assert code == 0
    assert verified(room.root, room.leaf, at_ms=now_ms())[0]
    for told in ("vatbox.local", "vatside.home.arpa", "192.168.1.20", "SHA-256"):
        assert told in said
    assert "fixed address (192.168.1.20)" in said
    assert "let vatside.home.arpa lead to 192.168.1.20" in said


def test_a_second_run_makes_nothing_and_shows_the_same(run, room):
    run()
    before = room.leaf.read_bytes(), room.root.read_bytes()
    code, said = run()
    assert code == 0
    assert "was made" not in said
    assert (room.leaf.read_bytes(), room.root.read_bytes()) == before


def test_names_and_addresses_can_be_given(run, room):
    run("--name", "floor.creamery.example", "--address", "203.0.113.9")
    for asked in (
        ["-verify_hostname", "floor.creamery.example"],
        ["-verify_ip", "203.0.113.9"],
    ):
        assert verified(room.root, room.leaf, *asked, at_ms=now_ms())[0]


@pytest.mark.parametrize(
    ("option", "text"),
    [
        ("--name", "https://vat.example"),
        ("--name", "vat.example:8443"),
        ("--name", "*.vat.example"),
        ("--name", "-vat"),
        ("--name", ""),
        ("--name", "192.168.1.20"),
        ("--address", "192.168.1"),
        ("--address", "0.0.0.0"),
        ("--address", "vat.example"),
    ],
)
def test_what_is_no_name_or_address_is_refused_before_anything_is_made(
    run, room, option, text
):
    code, said = run(f"{option}={text}")
    assert code == 1
    assert repr(text) in said
    assert "write it as in" in said
    assert not room.path.exists()


def test_a_name_too_late_for_the_root_is_said_with_what_to_do(run):
    run()
    code, said = run("--name", "cheese.example")
    assert code == 1
    assert "cheese.example" in said
    assert "--new-root" in said


def test_the_roots_key_goes_to_a_file_and_leaves_the_box(run, room, tmp_path):
    run()
    content, stick = room.root_key.read_bytes(), tmp_path / "stick.pem"
    code, said = run("--take-root-key", stick)
    assert code == 0
    assert stick.read_bytes() == content
    assert oct(stick.stat().st_mode & 0o777) == "0o600"
    assert not room.root_key.exists()
    assert "not on this box" in said
    assert "--root-key FILE" in said
    before = room.leaf.read_bytes()
    code, said = run("--root-key", stick)
    assert code == 0
    assert room.leaf.read_bytes() != before
    assert not room.root_key.exists()


def test_the_roots_key_can_be_locked_and_then_needs_its_passphrase(
    run, room, tmp_path, monkeypatch
):
    run()
    stick = tmp_path / "stick.pem"
    monkeypatch.setattr("getpass.getpass", lambda prompt: "cellar door")
    run("--take-root-key", stick, "--passphrase")
    assert b"ENCRYPTED" in stick.read_bytes()
    code, said = run("--root-key", stick)
    assert code == 1
    assert "--passphrase" in said
    assert run("--root-key", stick, "--passphrase")[0] == 0
    monkeypatch.setattr("getpass.getpass", lambda prompt: "wrong")
    code, said = run("--root-key", stick, "--passphrase")
    assert code == 1
    assert "with this passphrase" in said


def test_two_passphrases_that_differ_change_nothing(run, room, tmp_path, monkeypatch):
    run()
    typed = iter(["one", "two"])
    monkeypatch.setattr("getpass.getpass", lambda prompt: next(typed))
    code, said = run("--take-root-key", tmp_path / "stick.pem", "--passphrase")
    assert code == 1
    assert "differ" in said
    assert room.root_key.exists()
    assert not (tmp_path / "stick.pem").exists()


@pytest.mark.parametrize("where", ["exists", "no-folder/key.pem"])
def test_a_place_that_cannot_take_the_key_leaves_it_on_the_box(
    run, room, tmp_path, where
):
    run()
    (tmp_path / "exists").write_text("something else")
    code, said = run("--take-root-key", tmp_path / where)
    assert code == 1
    assert "The key is still here" in said
    assert read_key(room.root_key)
    assert (tmp_path / "exists").read_text() == "something else"


def test_the_roots_key_cannot_be_taken_twice(run, tmp_path):
    run()
    run("--take-root-key", tmp_path / "one.pem")
    code, said = run("--take-root-key", tmp_path / "two.pem")
    assert code == 1
    assert "was taken off" in said
    assert not (tmp_path / "two.pem").exists()


def test_an_owners_certificate_is_shown_and_its_key_looked_at(run, room, tmp_path):
    run()
    cert, key = tmp_path / "cert.pem", tmp_path / "key.pem"
    text = room.leaf.read_bytes()
    cut = text.index(b"-----BEGIN CERTIFICATE")
    write_whole(cert, text[cut:] + room.root.read_bytes())
    write_whole(key, text[:cut])
    code, said = run("--tls-cert", cert, "--tls-key", key)
    assert code == 0
    assert "your own" in said
    write_whole(key, room.root_key.read_bytes())
    code, said = run("--tls-cert", cert, "--tls-key", key)
    assert code == 1
    assert "does not fit" in said


def check(data, capsys):
    code = cli.main(["check", "--data", str(data)])
    said = capsys.readouterr()
    return code, said.out + said.err


def test_check_warns_of_a_certificate_that_nobody_will_renew(
    run, room, data, capsys, monkeypatch
):
    run()
    assert check(data, capsys) == (0, "All is well.\n")
    room.root_key.unlink()
    assert check(data, capsys) == (0, "All is well.\n")
    # 367 days are left of 397, for it began 30 days ago.
    late_ms = now_ms() + (367 - 20) * DAY_MS
    monkeypatch.setattr("server.cli.checks.real_now_ms", lambda: late_ms)
    code, said = check(data, capsys)
    assert code == 1
    assert said.startswith("https: The certificate ends")
    assert "vatside tls --root-key FILE" in said


def test_serve_refuses_one_port_for_both(run, data, capsys):
    run()
    with socket.create_server(("127.0.0.1", 0)) as probe:
        port = probe.getsockname()[1]
    command = ["serve", "--data", str(data), "--host", "127.0.0.1"]
    assert cli.main([*command, f"--port={port}", f"--https-port={port}"]) == 1
    assert "choose two" in capsys.readouterr().err


def test_a_taken_https_port_is_named_with_its_own_option(run, data, capsys):
    run()
    with socket.create_server(("127.0.0.1", 0)) as other:
        taken = other.getsockname()[1]
        with socket.create_server(("127.0.0.1", 0)) as probe:
            free = probe.getsockname()[1]
        command = ["serve", "--data", str(data), "--host", "127.0.0.1"]
        command += [f"--port={free}", f"--https-port={taken}"]
        assert cli.main(command) == 1
    said = capsys.readouterr().err
    assert f"Port {taken} of 127.0.0.1" in said
    assert "--https-port N" in said
    assert "Another program has it" in said


def test_serve_refuses_a_key_that_does_not_fit(run, room, data, tmp_path, capsys):
    run()
    command = ["serve", "--data", str(data), "--tls-cert", str(room.root)]
    assert cli.main([*command, "--tls-key", str(room.leaf)]) == 1
    assert "does not fit" in capsys.readouterr().err


def test_a_port_that_this_user_may_not_use_says_who_may_allow_it(monkeypatch):
    class Forbidden(socket.socket):
        def bind(self, address):
            raise PermissionError(errno.EACCES, "Permission denied")

    monkeypatch.setattr("server.cli.serve.socket.socket", Forbidden)
    with pytest.raises(ValueError, match=r"Port 443 .*Permission denied") as refused:
        require_port("0.0.0.0", 443, "--https-port")
    assert "try --https-port N" in str(refused.value)
    assert "AmbientCapabilities=CAP_NET_BIND_SERVICE" in str(refused.value)
