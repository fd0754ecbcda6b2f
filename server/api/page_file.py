"""One file of the page as it is sent: its bytes, compressed, named and marked."""

import base64
import gzip
import hashlib
import re
from dataclasses import dataclass

MIME = {
    ".html": "text/html; charset=utf-8",
    ".js": "text/javascript; charset=utf-8",
    ".mjs": "text/javascript; charset=utf-8",
    ".css": "text/css; charset=utf-8",
    ".json": "application/json",
    ".webmanifest": "application/manifest+json",
    ".wasm": "application/wasm",
    ".svg": "image/svg+xml",
    ".png": "image/png",
    ".ico": "image/x-icon",
    ".woff2": "font/woff2",
    ".txt": "text/plain; charset=utf-8",
}
PACKED = (".png", ".woff2", ".ico")  # already compressed
IMPORT_MAP = re.compile(rb'<script type="importmap">(.*?)</script>', re.DOTALL)


@dataclass(frozen=True)
class Page:
    """One file as it is sent.

    Args:
        body: its bytes.
        packed: its bytes compressed with gzip, or None when that gains nothing.
        brotli: its bytes compressed with brotli at set-up, or None.
        mime: its content type.
        etag: fingerprint of its bytes.
    """

    body: bytes
    packed: bytes | None
    mime: str
    etag: str
    brotli: bytes | None = None


def make_page(body: bytes, suffix: str) -> Page:
    """Make a page from its bytes.

    Args:
        body: its bytes.
        suffix: ending of its name, such as ".js".
    """
    # mtime 0, so that two workers send the same bytes.
    packed = None if suffix in PACKED else gzip.compress(body, 6, mtime=0)
    if packed is not None and len(packed) >= len(body):
        packed = None
    return Page(body, packed, MIME[suffix], hashlib.sha256(body).hexdigest()[:32])


def import_map_hashes(html: bytes) -> list[str]:
    """Return the policy's sources that let a page's inline import maps run.

    Args:
        html: the page; a browser takes an import map only from within it.
    """
    return [
        f"'sha256-{base64.b64encode(hashlib.sha256(text).digest()).decode()}'"
        for text in IMPORT_MAP.findall(html)
    ]
