"""Start the server: over https where there is a certificate, else plain."""

import sys
from dataclasses import replace

from flask import Flask

from server import auth, store
from server.app import create_app
from server.cli import orphans, owner, secure, setup_site
from server.cli.announce import Entrance, announce, urls
from server.cli.serve import STOP_S, require_port, serve
from server.config import DEFAULT_HTTPS_PORT, DEFAULT_PORT, Settings
from server.store import hold
from server.store.people import all_devices
from server.tls import Served

ENDING_S = STOP_S + 3  # the workers of a server that was killed take so long


def start(
    settings: Settings,
    host: str,
    port: int = DEFAULT_PORT,
    workers: int = 2,
    https_port: int = DEFAULT_HTTPS_PORT,
) -> None:
    """Make the app, say where it is, and serve until told to stop.

    Args:
        settings: what to run with.
        host: address to listen on.
        port: port of plain http: of the app, or of the set-up page beside https.
        workers: processes; each holds its own threads.
        https_port: port of https, where there is a certificate.

    Raises:
        ValueError: a port cannot be listened on, a certificate not be used, or
            another server or a restore has the database.
    """
    kept = secure.ready(settings, sys.stderr)
    require_port(host, port)
    orphans.begin()
    if kept is not None:
        _start_secure(settings, kept, (host, port, https_port), workers)
        return
    _held = hold.hold(settings.database_file, hold.SERVER, ENDING_S)
    app, codes = _made(settings)
    entrance = Entrance(urls(host, port, settings.public_url))
    announce(entrance, codes, settings.clock.rate, sys.stdout)
    serve(app, host, port, workers)


def _start_secure(
    settings: Settings, kept: Served, where: tuple[str, int, int], workers: int
) -> None:
    host, port, https_port = where
    if port == https_port:
        raise ValueError(f"--port and --https-port are both {port}: choose two.")
    require_port(host, https_port, "--https-port")
    further = secure.gunicorn_settings(kept)
    if kept.room is not None:
        settings = replace(settings, setup_port=port)
    site = setup_site.Site(settings, kept, host, port, https_port)
    # Begun first, so that its process has neither the app nor the database.
    with setup_site.beside(site):
        _held = hold.hold(settings.database_file, hold.SERVER, ENDING_S)
        app, codes = _made(settings)
        app.extensions["vatside_hosts"].add_source(site.hosts)
        announce(site.entrance(), codes, settings.clock.rate, sys.stdout)
        serve(app, host, https_port, workers, further)


def _made(settings: Settings) -> tuple[Flask, list[tuple[str, str]]]:
    app = create_app(settings)
    with app.app_context():
        code = first_code()
        # Connections must not be shared with the workers.
        store.db.engine.dispose()
    return app, [(f"the owner, until {owner.until()}", code)] if code else []


def first_code() -> str | None:
    """Return a code for the owner while no owner has a phone, None after.

    Whoever reads this terminal runs the server and could read its data anyway.
    """
    people = {row.id for row in auth.people() if row.active and row.role == "owner"}
    devices = [row for row in all_devices() if row.removed_ms is None]
    if any(row.person in people for row in devices):
        return None
    return owner.new_code()
