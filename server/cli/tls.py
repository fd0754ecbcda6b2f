"""What `vatside tls` does before it serves: make, renew and show the certificates."""

import argparse
import getpass
import os
from pathlib import Path

from cryptography import x509
from cryptography.hazmat.primitives.asymmetric import ec

from server.config import DEFAULT_HTTPS_PORT, Settings, real_now_ms
from server.tls import TlsError, lan_addresses
from server.tls.findings import day, room_findings
from server.tls.folder import FILE_MODE, Folder, fits, key_pem, read_key
from server.tls.lan import leads_here
from server.tls.made import ends_ms, fingerprint, names_of, permitted_by
from server.tls.names import PRIVATE, THIS_BOX, address_as_meant, name_as_meant
from server.tls.own import read_pair
from server.tls.renewal import Asked, Done, renews_ms, tend
from server.tls.standing import findings, room_folder, served

WHY = {
    "absent": "There was none yet.",
    "unfit": "The one before could not be used.",
    "age": "Two thirds of the life of the one before were over.",
    "address": "This box has another address.",
    "name": "It has a further name.",
    "asked": "You brought the root's key.",
}


def add_options(serving: argparse.ArgumentParser) -> None:
    """Add the options that say which certificate a server shows.

    Args:
        serving: the command's parser.
    """
    _add_https_port(serving)
    serving.add_argument(
        "--no-tls", action="store_true", help="serve plain http, certificate or not"
    )
    add_own(serving)


def _add_https_port(command: argparse.ArgumentParser) -> None:
    command.add_argument(
        "--https-port",
        type=port,
        default=DEFAULT_HTTPS_PORT,
        help="where https is served, beside the set-up page on --port",
    )


def add_own(command: argparse.ArgumentParser) -> None:
    """Add the options by which an owner brings a certificate.

    Args:
        command: the command's parser.
    """
    for name, what in (("cert", "your own certificate, whole chain"), ("key", "key")):
        command.add_argument(f"--tls-{name}", type=Path, metavar="FILE", help=what)


def add_arguments(command: argparse.ArgumentParser) -> None:
    """Add what `vatside tls` may be told.

    Args:
        command: the command's parser.
    """
    add = command.add_argument
    add("--name", action="append", default=[], help="a further host name, once each")
    add("--address", action="append", default=[], help="a further address, once each")
    add("--new-root", action="store_true", help="make a new root; every phone takes it")
    add("--take-root-key", type=Path, metavar="FILE", help="move the root's key there")
    add("--root-key", type=Path, metavar="FILE", help="use the root's key from there")
    add("--passphrase", action="store_true", help="ask for what locks that FILE")
    add("--only", action="store_true", help="make and show them, and do not serve")
    _add_https_port(command)
    add_own(command)


def port(text: str) -> int:
    """Return a port as typed.

    Args:
        text: what was typed.

    Raises:
        ValueError: it is none.
    """
    number = int(text)
    if not 1 <= number <= 65535:
        raise ValueError(text)
    return number


def run_tls(settings: Settings, args: argparse.Namespace) -> int:
    """Make or renew the certificates of this room, and show them.

    Args:
        settings: settings of the server.
        args: what the command line says.
    """
    kept = served(settings)
    if kept is not None and kept.room is None:
        return _show_own(settings, kept.certificate, kept.key)
    folder = room_folder(settings)
    asked = Asked(
        tuple(name_as_meant(text) for text in args.name),
        tuple(address_as_meant(text) for text in args.address),
        args.new_root,
        args.root_key,
        _passphrase(args, twice=False) if args.root_key else "",
    )
    done = tend(folder, lan_addresses(), real_now_ms(), asked)
    if args.take_root_key is not None:
        take_root_key(folder, args.take_root_key, _passphrase(args, twice=True))
    return _show(folder, done)


def _passphrase(args: argparse.Namespace, twice: bool) -> str:
    if not args.passphrase:
        return ""
    typed = getpass.getpass("Passphrase of the root's key: ")
    if twice and getpass.getpass("Once more: ") != typed:
        raise TlsError("The two differ. Nothing was changed; try again.")
    if not typed:
        raise TlsError("The passphrase is empty. Nothing was changed; try again.")
    return typed


def take_root_key(folder: Folder, file: Path, passphrase: str) -> None:
    """Move the root's key into a file elsewhere, once it is there for certain.

    Args:
        folder: the room's certificates.
        file: where it goes; must not exist.
        passphrase: what it is to be locked with; empty to leave it open.

    Raises:
        TlsError: it cannot be written, or is not here.
    """
    with folder.locked():
        root = folder.read_root()
        if root is None or not folder.root_key.exists():
            raise TlsError(f"The root's key is not in {folder.path}: it was taken off.")
        key = read_key(folder.root_key)
        assert isinstance(key, ec.EllipticCurvePrivateKey)
        _write_new(file, key_pem(key, passphrase))
        if not fits(read_key(file, passphrase), root):
            raise TlsError(f"What was written to {file} is not what it should be.")
        folder.root_key.unlink()


def _write_new(file: Path, content: bytes) -> None:
    try:
        handle = os.open(file, os.O_CREAT | os.O_EXCL | os.O_WRONLY, FILE_MODE)
    except OSError as problem:
        raise TlsError(
            f"The root's key cannot be written to {file} ({problem.strerror}). Name a "
            "file that does not exist, in a folder that does. The key is still here."
        ) from problem
    try:
        with os.fdopen(handle, "wb") as out:
            out.write(content)
            out.flush()
            os.fsync(out.fileno())
    except OSError as problem:
        file.unlink(missing_ok=True)
        raise TlsError(
            f"The root's key cannot be written to {file} ({problem.strerror}). "
            "The key is still here."
        ) from problem


def _show(folder: Folder, done: Done) -> int:
    root, leaf = folder.read_root(), folder.read_leaf()
    assert root is not None
    assert leaf is not None
    for file in done.aside:
        print(f"The root before is kept as {file}; remove it once no phone needs it.")
    if done.root:
        print("A root was made for this room. Every phone takes it once.")
    if done.leaf:
        print(f"The server's certificate was made. {WHY[done.leaf]}")
    lines = [
        f"Root             {folder.root}",
        f"  SHA-256        {fingerprint(root)}",
        f"  ends           {day(ends_ms(root))}",
        f"  vouches for    {', '.join(permitted_by(root).dns)}",
        f"                 and {_networks(root)}",
        f"Certificate      {folder.leaf}",
        f"  names          {', '.join(names_of(leaf).dns)}",
        f"  addresses      {', '.join(names_of(leaf).addresses)}",
        f"  ends           {day(ends_ms(leaf))}",
    ]
    print("\n".join(lines))
    print(_of_key(folder, leaf_renews=day(renews_ms(leaf)), ends=day(ends_ms(leaf))))
    found = room_findings(folder, lan_addresses(), real_now_ms())
    for one in found:
        print(f"! {one.text}")
    print(_next(folder))
    return 1 if found else 0


def _networks(root: x509.Certificate) -> str:
    permitted = permitted_by(root).networks
    alone = [str(one.network_address) for one in permitted if one not in PRIVATE]
    return ", ".join(["private addresses", *alone])


def _of_key(folder: Folder, leaf_renews: str, ends: str) -> str:
    if folder.root_key.exists():
        return (
            f"Root's key       {folder.root_key}\n"
            f"  The server renews its certificate by itself from {leaf_renews}, and\n"
            "  when its address changes. To keep the key elsewhere: vatside tls\n"
            "  --take-root-key FILE; then both need you and that file."
        )
    return (
        "Root's key       not on this box\n"
        "  A new certificate needs it: vatside tls --root-key FILE, before\n"
        f"  {ends}, and whenever the address or a name of this box changes."
    )


def _next(folder: Folder) -> str:
    leaf = folder.read_leaf()
    assert leaf is not None
    names = [one for one in names_of(leaf).dns if one not in THIS_BOX]
    lan = lan_addresses()
    found = leads_here(names, lan)
    address = lan[0] if lan else "its address"
    known = (
        f"Your network leads {found[0]} to this box."
        if found
        else f"If the router can hold names, let {names[-1]} lead to {address}."
    )
    return (
        "Next\n"
        f"  1. In the router, give this box a fixed address ({address}).\n"
        f"     {known}\n"
        "  2. Phones that used the plain address: let each send what waits first.\n"
        "  3. Scan the picture that the server prints with each phone."
    )


def _show_own(settings: Settings, certificate: Path, key: Path) -> int:
    pair = read_pair(certificate, key)
    first = pair.chain[0]
    print(f"Certificate      {certificate} (your own)")
    print(f"  SHA-256        {fingerprint(first)}")
    print(f"  names          {', '.join([*names_of(first).dns])}")
    print(f"  addresses      {', '.join(names_of(first).addresses) or 'none'}")
    print(f"  ends           {day(ends_ms(first))}")
    print("  Renew it where it came from; the server takes new files up by itself.")
    found = findings(settings, real_now_ms())
    for one in found:
        print(f"! {one.text}")
    return 1 if found else 0
