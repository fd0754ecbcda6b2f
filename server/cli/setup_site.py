"""Run the set-up page beside the server, over plain http, in its own process.

It holds nothing of the app, and dies with the server. The same process looks
after the room's certificate, since there is exactly one of it.
"""

import contextlib
import os
import signal
import sys
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any, NoReturn
from urllib.parse import urlsplit

from cryptography.hazmat.primitives.serialization import Encoding
from flask import Flask, redirect, request
from werkzeug.wrappers import Response

from server.cli import orphans
from server.cli.announce import EVERYWHERE, Entrance, at
from server.cli.serve import Server, gunicorn_options
from server.config import Settings, real_now_ms
from server.setup import create_setup_app
from server.shapes.setup import SetupFacts
from server.shapes.setup import fingerprint as fingerprint_of
from server.tls import Served, TlsError, lan_addresses
from server.tls.folder import read_certificate
from server.tls.lan import leads_here
from server.tls.made import names_of
from server.tls.names import THIS_BOX, Names
from server.tls.watch import Watch

THREADS = 4


class Site:
    """What is served over plain http beside https.

    Args:
        settings: settings of the server.
        kept: the certificate that the server shows.
        host: address to listen on.
        port: port of plain http.
        https_port: port of https.
    """

    def __init__(
        self, settings: Settings, kept: Served, host: str, port: int, https_port: int
    ) -> None:
        self._settings = settings
        self.kept = kept
        self.host, self.port, self._https_port = host, port, https_port
        self._names = self._certified()
        self._found = leads_here(self._names.dns, lan_addresses())
        self._facts: SetupFacts | None = None

    def app(self) -> Flask:
        """Return the app: the set-up page, or a way on where none is needed."""
        if self.kept.room is not None:
            return create_setup_app(self.facts)
        return create_way_on(self._settings.public_url, self._https_port)

    def entrance(self) -> Entrance:
        """Return where people get in."""
        if self.kept.room is None:
            return Entrance(self.secure_urls())
        hosts = lan_addresses() if self.host in EVERYWHERE else [self.host]
        setup = at("http", [*hosts, "localhost"][0], self.port)
        return Entrance(self.secure_urls(), setup, self.facts().root_sha256)

    def facts(self) -> SetupFacts:
        """Return what the set-up page tells, as it is now."""
        try:
            self._facts = self._facts_now()
        except (TlsError, OSError):
            # The files are being put in place by hand; what was told last holds.
            if self._facts is None:
                raise
        return self._facts

    def _facts_now(self) -> SetupFacts:
        room = self.kept.room
        root = room.read_root() if room else None
        if root is None:
            raise TlsError("There is no root of this room. Run: vatside tls.")
        der = root.public_bytes(Encoding.DER)
        secure = tuple(self.secure_urls())
        return SetupFacts(der, fingerprint_of(der), secure, self._settings.static_dir)

    def hosts(self) -> list[str]:
        """Return the names that the certificate holds."""
        held = self._certified()
        return [*held.dns, *held.addresses]

    def secure_urls(self) -> list[str]:
        """Return the app's addresses, the best one first.

        Names go before addresses where they are known to lead here: an address
        may change, and what a phone keeps belongs to the one it was opened by.
        """
        public_url = self._settings.public_url
        if public_url and self.kept.room is None:
            return [public_url]
        if self.host not in EVERYWHERE:
            hosts = [self.host]
        else:
            hosts = self._hosts(self._certified())
        found = [at("https", host, self._https_port) for host in hosts]
        return list(dict.fromkeys([public_url, *found] if public_url else found))

    def _hosts(self, names: Names) -> list[str]:
        lan = lan_addresses()
        dns = [one for one in names.dns if "*" not in one and one not in THIS_BOX]
        held = [one for one in lan if one in names.addresses]
        found = [one for one in dns if one in self._found]
        if self.kept.room is None:
            return [*dns, *held] or list(THIS_BOX)
        return list(dict.fromkeys([*found, *held, *dns]))

    def _certified(self) -> Names:
        with contextlib.suppress(TlsError):
            self._names = names_of(read_certificate(self.kept.certificate))
        return self._names


def create_way_on(public_url: str, https_port: int) -> Flask:
    """Make the app that leads from plain http to the real one.

    Args:
        public_url: address that phones use; empty for the host they ask for.
        https_port: port of https.
    """
    app = Flask("server.way_on", static_folder=None)

    @app.get("/")
    @app.get("/<path:path>")
    def way_on(path: str = "") -> Response:
        host = urlsplit(request.host_url).hostname or "localhost"
        return redirect(public_url or at("https", host, https_port))

    return app


@contextmanager
def beside(site: Site) -> Iterator[None]:
    """Serve the site in a process of its own meanwhile.

    Args:
        site: the site.
    """
    server = os.getpid()
    child = os.fork()
    if child == 0:
        orphans.let_go()
        _run(site)
    try:
        yield
    finally:
        # Workers leave through here too, and must not take the site with them.
        if os.getpid() == server:
            with contextlib.suppress(ProcessLookupError):
                os.kill(child, signal.SIGTERM)
            with contextlib.suppress(ChildProcessError):  # gunicorn reaps all
                os.waitpid(child, 0)


def _run(site: Site) -> NoReturn:
    code: Any = 1
    try:
        options = gunicorn_options(site.host, site.port, 1, THREADS)

        def begin(worker: Any) -> None:
            orphans.end_with_first(os.getppid())
            _watch(site)

        def end(_arbiter: Any, _worker: Any) -> None:
            """Leave alone what only the app's own workers have."""

        hooks = {"post_worker_init": begin, "worker_exit": end}
        Server(site.app(), {**options, **hooks}).run()
    except SystemExit as stop:
        code = stop.code
    finally:
        sys.stdout.flush()
        sys.stderr.flush()
        # Not back up into what the server was about to do.
        os._exit(code if isinstance(code, int) else 0)


def _watch(site: Site) -> None:
    if site.kept.room is not None:
        Watch(site.kept.room, lan_addresses, real_now_ms).start(threading.Event())
