"""The files of the room's certificates, written whole or not at all."""

import fcntl
import json
import os
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import asdict, dataclass, field, fields
from pathlib import Path

from cryptography import x509
from cryptography.hazmat.primitives import serialization
from cryptography.hazmat.primitives.asymmetric import ec
from cryptography.hazmat.primitives.asymmetric.types import PrivateKeyTypes

from server.tls.made import Made
from server.tls.refused import TlsError

FOLDER = "tls"
FOLDER_MODE = 0o700
FILE_MODE = 0o600
_PEM = serialization.Encoding.PEM


@dataclass(frozen=True)
class Room:
    """What the certificates of a room are to be for.

    Args:
        names: host names that the owner has given.
        addresses: addresses that the owner has given.
        seen: when each address of this box was last seen, by address [ms].
        primary: the address that phones were last told; empty for none.
        moved_from: the one before it, when it changed by itself; empty for none.
        moved_ms: when it changed [ms].
    """

    names: tuple[str, ...] = ()
    addresses: tuple[str, ...] = ()
    seen: dict[str, int] = field(default_factory=dict)
    primary: str = ""
    moved_from: str = ""
    moved_ms: int = 0


class Folder:
    """The folder of a room's certificates.

    Args:
        path: where it is.
    """

    def __init__(self, path: Path) -> None:
        self.path = path
        self.root = path / "root.pem"
        self.root_key = path / "root-key.pem"
        # Key and certificate in one file: renewed in one step, never half.
        self.leaf = path / "server.pem"
        self.room = path / "room.json"

    @contextmanager
    def locked(self) -> Iterator[None]:
        """Keep other processes from changing the files meanwhile; make the folder."""
        self.path.mkdir(parents=True, exist_ok=True, mode=FOLDER_MODE)
        self.path.chmod(FOLDER_MODE)
        held = os.open(self.path / ".lock", os.O_CREAT | os.O_RDWR, FILE_MODE)
        try:
            fcntl.flock(held, fcntl.LOCK_EX)
            yield
        finally:
            os.close(held)

    def read_root(self) -> x509.Certificate | None:
        """Return the root, None where there is none."""
        return read_certificate(self.root) if self.root.exists() else None

    def read_leaf(self) -> x509.Certificate | None:
        """Return the server's certificate, None where there is none."""
        return read_certificate(self.leaf) if self.leaf.exists() else None

    def read_room(self) -> Room:
        """Return what the certificates are to be for."""
        if not self.room.exists():
            return Room()
        known = {one.name for one in fields(Room)}
        try:
            kept = json.loads(self.room.read_text("utf-8"))
            kept = {name: value for name, value in kept.items() if name in known}
            lists = {name: tuple(kept.get(name, ())) for name in ("names", "addresses")}
            return Room(**{**kept, **lists})
        except (OSError, ValueError, TypeError, AttributeError) as problem:
            raise TlsError(
                f"{self.room} cannot be read ({problem}). Remove it and give the "
                "names again: vatside tls --name NAME."
            ) from problem

    def write_room(self, room: Room) -> None:
        """Keep what the certificates are to be for.

        Args:
            room: the room.
        """
        write_whole(self.room, json.dumps(asdict(room), indent=1).encode())

    def write_root(self, root: Made) -> None:
        """Keep a root and its key; the key goes first, for alone it is harmless.

        Args:
            root: the root.
        """
        write_whole(self.root_key, key_pem(root.key))
        write_whole(self.root, root.certificate.public_bytes(_PEM))

    def write_leaf(self, leaf: Made) -> None:
        """Keep the server's certificate and its key.

        Args:
            leaf: the certificate.
        """
        write_whole(self.leaf, key_pem(leaf.key) + leaf.certificate.public_bytes(_PEM))

    def put_root_aside(self, day: str) -> list[Path]:
        """Rename a root that a new one replaces, and return its files' new names.

        Args:
            day: when it was replaced, as in 2026-11-28.
        """
        moved = []
        for file in (self.root, self.root_key):
            if file.exists():
                to, count = file.with_stem(f"{file.stem}-until-{day}"), 1
                while to.exists():
                    count += 1
                    to = file.with_stem(f"{file.stem}-until-{day}-{count}")
                moved.append(file.rename(to))
        return moved


def write_whole(file: Path, content: bytes) -> None:
    """Write a file that only its owner may read, at once or not at all.

    Args:
        file: where.
        content: what.
    """
    part = file.with_name(f".{file.name}.part")
    part.unlink(missing_ok=True)
    handle = os.open(part, os.O_CREAT | os.O_EXCL | os.O_WRONLY, FILE_MODE)
    with os.fdopen(handle, "wb") as out:
        out.write(content)
        out.flush()
        os.fsync(out.fileno())
    part.replace(file)
    folder = os.open(file.parent, os.O_RDONLY)
    try:
        os.fsync(folder)
    finally:
        os.close(folder)


def key_pem(key: ec.EllipticCurvePrivateKey, passphrase: str = "") -> bytes:
    """Return a key as text.

    Args:
        key: the key.
        passphrase: what it is to be locked with; empty to leave it open.
    """
    lock: serialization.KeySerializationEncryption
    lock = serialization.NoEncryption()
    if passphrase:
        lock = serialization.BestAvailableEncryption(passphrase.encode())
    return key.private_bytes(_PEM, serialization.PrivateFormat.PKCS8, lock)


def read_certificate(file: Path) -> x509.Certificate:
    """Return the first certificate of a file.

    Args:
        file: where it is.

    Raises:
        TlsError: there is none.
    """
    return read_certificates(file)[0]


def read_certificates(file: Path) -> list[x509.Certificate]:
    """Return the certificates of a file, in its order.

    Args:
        file: where they are.

    Raises:
        TlsError: there is none.
    """
    try:
        return x509.load_pem_x509_certificates(file.read_bytes())
    except (OSError, ValueError) as problem:
        reason = problem.strerror if isinstance(problem, OSError) else "no PEM in it"
        raise TlsError(
            f"{file} cannot be read as a certificate ({reason}). It should begin "
            "with -----BEGIN CERTIFICATE-----."
        ) from problem


def read_key(file: Path, passphrase: str = "") -> PrivateKeyTypes:
    """Return the private key of a file.

    Args:
        file: where it is.
        passphrase: what it is locked with; empty for nothing.

    Raises:
        TlsError: there is none, or the passphrase does not open it.
    """
    try:
        content = file.read_bytes()
    except OSError as problem:
        raise TlsError(f"{file} cannot be read ({problem.strerror}).") from problem
    secret = passphrase.encode() or None
    try:
        return serialization.load_pem_private_key(content, secret)
    except TypeError as problem:
        raise TlsError(
            f"{file} has no passphrase; leave --passphrase out."
            if passphrase
            else f"{file} is locked with a passphrase. A server that starts by itself "
            "needs its own key open; for the root's key add --passphrase."
        ) from problem
    except ValueError as problem:
        raise TlsError(
            f"{file} holds no key that can be read"
            + (" with this passphrase." if passphrase else ", in PEM.")
        ) from problem


def fits(key: PrivateKeyTypes, certificate: x509.Certificate) -> bool:
    """Return whether a key belongs to a certificate.

    Args:
        key: private key.
        certificate: the certificate.
    """
    form = (serialization.Encoding.DER, serialization.PublicFormat.SubjectPublicKeyInfo)
    own = key.public_key().public_bytes(*form)
    return bool(own == certificate.public_key().public_bytes(*form))


def is_open(file: Path) -> bool:
    """Return whether other users of the box may read a file.

    Args:
        file: the file.
    """
    return bool(file.stat().st_mode & 0o077)
