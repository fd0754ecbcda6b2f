"""What a phone must be told before it trusts this server."""

import hashlib
from dataclasses import dataclass
from pathlib import Path


@dataclass(frozen=True)
class SetupFacts:
    """What the set-up page says and gives.

    Args:
        root_der: the root certificate that phones are to trust, as DER.
        root_sha256: its SHA-256, upper-case pairs of hex digits joined with ":".
        secure_urls: https addresses of the app, the best one first.
        static_dir: folder of the page, with `setup` in it.
    """

    root_der: bytes
    root_sha256: str
    secure_urls: tuple[str, ...]
    static_dir: Path

    def __post_init__(self) -> None:
        """Refuse a fingerprint of another certificate, and plain addresses."""
        if self.root_sha256 != fingerprint(self.root_der):
            raise ValueError("root_sha256 is not the fingerprint of root_der")
        for url in self.secure_urls:
            if not url.startswith("https://"):
                raise ValueError(f"secure_urls must be https, not {url!r}")


def fingerprint(der: bytes) -> str:
    """Return the SHA-256 of a certificate as people compare it.

    Args:
        der: the certificate.

    >>> fingerprint(b"")[:11]
    'E3:B0:C4:42'
    """
    return ":".join(f"{byte:02X}" for byte in hashlib.sha256(der).digest())
