"""Run the app under gunicorn."""

import errno
import signal
import socket
from collections.abc import Callable, Mapping
from dataclasses import replace
from types import FrameType
from typing import Any

from flask import Flask
from gunicorn.app.base import BaseApplication

from server import alarm, live, store
from server.app import create_app
from server.cli import orphans
from server.config import Clock, Settings, real_now_ms
from server.serving.worker import Worker

# In-flight requests take milliseconds and live streams end at once when told,
# so a stop need not wait longer than this.
STOP_S = 5
NO_MORE: Mapping[str, object] = {}
_PORT_ADVICE = {
    errno.EADDRINUSE: " Another program has it: on 80 and 443 often a web server, "
    "which may stay and stand in front (see deploy/README.md).",
    errno.EACCES: " Ports below 1024 must be allowed to this user: by the service "
    "that starts it (AmbientCapabilities=CAP_NET_BIND_SERVICE), or choose one above.",
}


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


def serve(
    app: Flask,
    host: str,
    port: int,
    workers: int,
    further: Mapping[str, object] = NO_MORE,
) -> None:
    """Answer requests until told to stop.

    Args:
        app: the app, made before the workers fork.
        host: address to listen on.
        port: port to listen on.
        workers: processes; each holds its own threads.
        further: gunicorn's settings beyond ours.
    """
    settings = app.extensions["vatside"]
    options = gunicorn_options(host, port, workers, settings.threads)
    Server(app, {**options, **further}).run()


def require_port(host: str, port: int, option: str = "--port") -> None:
    """Refuse a port that cannot be listened on, before anything is said of it.

    Args:
        host: address to listen on.
        port: port to listen on.
        option: what another one is chosen by.

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
                f"try {option} N.{_PORT_ADVICE.get(problem.errno or 0, '')}"
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
