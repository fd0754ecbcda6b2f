"""Which certificate this server shows, and how it stands with it."""

from dataclasses import dataclass
from pathlib import Path
from typing import Any
from urllib.parse import urlsplit

from cryptography import x509

from server.config import Settings
from server.tls import folder as files
from server.tls.findings import Finding, room_findings
from server.tls.folder import Folder, read_certificate
from server.tls.lan import lan_addresses
from server.tls.made import ends_ms
from server.tls.own import own_findings, read_pair
from server.tls.refused import TlsError
from server.tls.renewal import renews_ms

# Who may read which file of the box is told to those who are at it.
OWN_AFFAIR = "key_open"


@dataclass(frozen=True)
class Served:
    """The certificate that a server shows.

    Args:
        certificate: file of it.
        key: file of its key.
        room: the room's own certificates; None for one that the owner brought.
    """

    certificate: Path
    key: Path
    room: Folder | None


def room_folder(settings: Settings) -> Folder:
    """Return where the room's own certificates are kept.

    Args:
        settings: settings of the server.
    """
    return Folder(settings.data_dir / files.FOLDER)


def served(settings: Settings) -> Served | None:
    """Return which certificate a server shows, None for a plain one.

    Args:
        settings: settings of the server.

    Raises:
        TlsError: a certificate is named without its key, or a key without it.
    """
    if not settings.https:
        return None
    if settings.tls_cert or settings.tls_key:
        if not settings.tls_cert or not settings.tls_key:
            missing = "VATSIDE_TLS_KEY" if settings.tls_cert else "VATSIDE_TLS_CERT"
            raise TlsError(
                f"{missing} is not set: a certificate and its key go together "
                "(--tls-cert FILE --tls-key FILE)."
            )
        return Served(settings.tls_cert, settings.tls_key, None)
    room = room_folder(settings)
    return Served(room.leaf, room.leaf, room) if room.root.exists() else None


def findings(settings: Settings, now_ms: int) -> list[Finding]:
    """Return all that is to be seen to with the server's certificate.

    Args:
        settings: settings of the server.
        now_ms: now, by the real clock [ms].
    """
    try:
        kept = served(settings)
        if kept is None:
            return []
        if kept.room is not None:
            return room_findings(kept.room, lan_addresses(), now_ms)
        host = urlsplit(settings.public_url).hostname or ""
        return own_findings(read_pair(kept.certificate, kept.key), host, now_ms)
    except TlsError as problem:
        return [Finding("unreadable", str(problem))]


def state(settings: Settings, now_ms: int) -> dict[str, Any] | None:
    """Return how it stands with the certificate, None where none is shown.

    Args:
        settings: settings of the server.
        now_ms: now, by the real clock [ms].

    Returns:
        {"ends_ms", "renews_ms" (None where it is not renewed from here),
        "findings" [key]}.
    """
    found = [one.key for one in findings(settings, now_ms) if one.key != OWN_AFFAIR]
    try:
        kept = served(settings)
        if kept is None:
            return None
        shown: x509.Certificate = read_certificate(kept.certificate)
    except TlsError:
        return {"ends_ms": None, "renews_ms": None, "findings": found}
    by_itself = kept.room is not None and kept.room.root_key.exists()
    return {
        "ends_ms": ends_ms(shown),
        "renews_ms": renews_ms(shown) if by_itself else None,
        "findings": found,
    }
