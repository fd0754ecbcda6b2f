"""Hand a renewed certificate to workers that are running."""

import logging
import ssl
import threading
from pathlib import Path

LOG = logging.getLogger(__name__)


class FreshContext:
    """A context that shows each client the certificate that lies there now.

    The files are read again when they have changed. Where what is found then
    cannot be used, such as a certificate whose key is still to come, connections
    go on with what was good.

    Args:
        certificate: file of the certificate, with its chain.
        key: file of its key; may be the same.

    Raises:
        OSError: they cannot be used from the beginning.
    """

    def __init__(self, certificate: Path, key: Path) -> None:
        self._files = (certificate, key)
        self._lock = threading.Lock()
        self._stamp = self._now()
        self._newest = self._load()
        self.context = self._load()
        # Called within every handshake, also when the client names no host, as
        # it does not where it opens an address.
        self.context.sni_callback = self._choose

    def _choose(
        self, client: ssl.SSLSocket | ssl.SSLObject, host: str | None, _: ssl.SSLContext
    ) -> None:
        client.context = self.newest()

    def newest(self) -> ssl.SSLContext:
        """Return a context with the certificate as it lies there now."""
        with self._lock:
            stamp = self._now()
            if stamp != self._stamp:
                self._stamp = stamp
                try:
                    self._newest = self._load()
                except (OSError, ValueError) as problem:
                    LOG.warning(
                        "The new certificate in %s cannot be used (%s); going on "
                        "with the one before.",
                        self._files[0],
                        problem,
                    )
            return self._newest

    def _now(self) -> list[tuple[int, int, int] | None]:
        return [_stamp(file) for file in self._files]

    def _load(self) -> ssl.SSLContext:
        context = ssl.create_default_context(ssl.Purpose.CLIENT_AUTH)
        context.minimum_version = ssl.TLSVersion.TLSv1_2
        context.set_alpn_protocols(["http/1.1"])
        context.load_cert_chain(*self._files)
        return context


def _stamp(file: Path) -> tuple[int, int, int] | None:
    try:
        found = file.stat()
    except OSError:
        return None
    return (found.st_ino, found.st_mtime_ns, found.st_size)
