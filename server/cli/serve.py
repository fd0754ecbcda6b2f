"""Run the app under gunicorn and tell people where to find it."""

import signal
import socket
import sys
from collections.abc import Callable
from dataclasses import replace
from types import FrameType
from typing import Any, TextIO

import segno
from flask import Flask
from gunicorn.app.base import BaseApplication

from server import alarm, auth, live, store
from server.app import create_app
from server.cli import orphans, owner
from server.config import Clock, Settings, real_now_ms
from server.serving.worker import Worker
from server.store import hold
from server.store.people import all_devices

# In-flight requests take milliseconds and live streams end at once when told,
# so a stop need not wait longer than this.
STOP_S = 5
ENDING_S = STOP_S + 3  # the workers of a server that was killed take so long


class Server(BaseApplication):  # type: ignore[misc]
    """Gunicorn with threads, set up from here instead of from a file.

    Args:
        app: the app, made before the workers fork.
        options: gunicorn's settings.
    """

    def __init__(self, app: Flask, options: dict[str, object]) -> None:
        self.app = app
        self.options = options
        super().__init__()

    def load_config(self) -> None:
        """Hand the settings to gunicorn."""
        for name, value in self.options.items():
            self.cfg.set(name, value)

    def load(self) -> Flask:
        """Return the app that was made before the fork."""
        return self.app


def gunicorn_options(
    host: str, port: int, workers: int, threads: int
) -> dict[str, object]:
    """Return gunicorn's settings for this server.

    Args:
        host: address to listen on.
        port: port to listen on.
        workers: processes.
        threads: threads of each.
    """
    return {
        "bind": f"[{host}]:{port}" if ":" in host else f"{host}:{port}",
        "workers": workers,
        "worker_class": Worker,
        "threads": threads,
        "preload_app": True,
        "control_socket_disable": True,
        "graceful_timeout": STOP_S,
        "loglevel": "warning",
        "post_worker_init": _on_worker,
        "worker_exit": _on_exit,
    }


def _on_worker(worker: Any) -> None:
    orphans.end_with_parent()
    _end_streams_on_stop(worker)
    # After the fork, and at once: alarms go out though nobody has asked anything.
    alarm.start(worker.wsgi)


def _on_exit(_arbiter: Any, worker: Any) -> None:
    # Streams that are told of their end are taken up again without delay.
    live.join(worker.wsgi, STOP_S)


def _end_streams_on_stop(worker: Any) -> None:
    before: Callable[[int, FrameType | None], Any] = worker.handle_exit

    def stop(number: int, frame: FrameType | None) -> None:
        live.close(worker.wsgi)
        alarm.close(worker.wsgi)
        before(number, frame)

    signal.signal(signal.SIGTERM, stop)


def lan_addresses() -> list[str]:
    """Return the addresses under which other machines reach this one.

    The first is the one that the default route uses. Nothing is sent.
    """
    found: list[str] = []
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as probe:
        try:
            # 192.0.2.0/24 is kept for documentation (RFC 5737): connecting a
            # datagram socket only looks up the route.
            probe.connect(("192.0.2.1", 9))
            found.append(probe.getsockname()[0])
        except OSError:
            pass
    try:
        rows = socket.getaddrinfo(socket.gethostname(), None, socket.AF_INET)
    except OSError:
        rows = []
    for row in rows:
        address = str(row[4][0])
        if address not in found and not address.startswith("127."):
            found.append(address)
    return found


def urls(host: str, port: int, public_url: str = "") -> list[str]:
    """Return the addresses to open on a phone, the best one first.

    Args:
        host: address that the server listens on.
        port: port that it listens on.
        public_url: address that the owner has set; empty for none.
    """
    if public_url:
        return [public_url]
    if host in ("0.0.0.0", "::", ""):
        hosts = [*lan_addresses(), "localhost"]
    else:
        hosts = [f"[{host}]" if ":" in host else host]
    return [f"http://{name}:{port}" for name in hosts]


def announce(
    addresses: list[str], codes: list[tuple[str, str]], rate: float, out: TextIO
) -> None:
    """Print where the server is and how to get in.

    Args:
        addresses: as from `urls`.
        codes: one-time codes, each with whom it lets in.
        rate: how fast the server's clock runs; 1 is the real clock.
        out: where to print.
    """
    print("Vatside is running at", file=out)
    for address in addresses:
        print(f"  {address}", file=out)
    if rate != 1:
        print(f"Practice clock: {rate:g} times as fast as the real one.", file=out)
    link = addresses[0]
    for whom, code in codes:
        link = f"{addresses[0]}/#/pair/{code}"
        print(f"Enter as {whom}, once: code {code} or", file=out)
        print(f"  {link}", file=out)
        _print_qr(link, out)
    if not codes:
        _print_qr(link, out)
    print("Stop with Ctrl+C.", file=out, flush=True)


def _print_qr(text: str, out: TextIO) -> None:
    segno.make(text, error="m").terminal(out=out, border=2, compact=True)


def serve(app: Flask, host: str, port: int, workers: int) -> None:
    """Answer requests until told to stop.

    Args:
        app: the app, made before the workers fork.
        host: address to listen on.
        port: port to listen on.
        workers: processes; each holds its own threads.
    """
    settings = app.extensions["vatside"]
    options = gunicorn_options(host, port, workers, settings.threads)
    Server(app, options).run()


def require_port(host: str, port: int) -> None:
    """Refuse a port that cannot be listened on, before anything is said of it.

    Args:
        host: address to listen on.
        port: port to listen on.

    Raises:
        ValueError: another program has it, or it may not be used.
    """
    family = socket.AF_INET6 if ":" in host else socket.AF_INET
    with socket.socket(family, socket.SOCK_STREAM) as probe:
        # As gunicorn binds, so that a port that only just closed counts as free.
        probe.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            probe.bind((host, port))
        except OSError as problem:
            raise ValueError(
                f"Port {port} of {host} cannot be used ({problem.strerror}); "
                "try --port N."
            ) from problem


def with_clock(settings: Settings, rate: float) -> Settings:
    """Return the settings with a clock that runs at a rate.

    A fast clock that is started again goes on after the newest entry, or that
    entry would lie in the future.

    Args:
        settings: the settings.
        rate: how fast the clock is to run; 1 for the real one.
    """
    if rate == 1:
        return settings
    with create_app(settings).app_context():
        newest = store.events_after(store.head_n() - 1, 1)
        store.db.engine.dispose()
    real_ms = real_now_ms()
    shown_ms = max([real_ms, *(row.recv_ms for row in newest)])
    return replace(settings, clock=Clock(rate, real_ms, shown_ms))


def start(settings: Settings, host: str, port: int, workers: int) -> None:
    """Make the app, say where it is, and serve until told to stop.

    Args:
        settings: what to run with.
        host: address to listen on.
        port: port to listen on.
        workers: processes; each holds its own threads.

    Raises:
        ValueError: the port cannot be listened on, or another server or a
            restore has the database.
    """
    require_port(host, port)
    _held = hold.hold(settings.database_file, hold.SERVER, ENDING_S)
    orphans.begin()
    app = create_app(settings)
    with app.app_context():
        code = first_code()
        # Connections must not be shared with the workers.
        store.db.engine.dispose()
    codes = [(f"the owner, until {owner.until()}", code)] if code else []
    addresses = urls(host, port, settings.public_url)
    announce(addresses, codes, settings.clock.rate, sys.stdout)
    serve(app, host, port, workers)


def first_code() -> str | None:
    """Return a code for the owner while no owner has a phone, None after.

    Whoever reads this terminal runs the server and could read its data anyway.
    """
    people = {row.id for row in auth.people() if row.active and row.role == "owner"}
    devices = [row for row in all_devices() if row.removed_ms is None]
    if any(row.person in people for row in devices):
        return None
    return owner.new_code()
