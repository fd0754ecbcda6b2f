"""Where an alarm reaches people: pushes, calendar files, the room's display.

What rings is decided in the core; here it is carried. The one thread that sends
starts with a worker, see `watch`.
"""

from collections.abc import Callable
from typing import Any, cast

from flask import Flask, current_app

from server.alarm.delivery import Delivery
from server.alarm.watch import Watch
from server.config import Settings

__all__ = [
    "Delivery",
    "Watch",
    "close",
    "delivery",
    "init_app",
    "some_worker_sends",
    "start",
]

_WATCH = "vatside_alarms"


def init_app(app: Flask, ask: Callable[..., Any]) -> None:
    """Give the app what sends its alarms. No thread is started here.

    Args:
        app: the app, its store already in place.
        ask: puts a question to the core about the log as it stands.
    """
    settings = app.extensions["vatside"]
    assert isinstance(settings, Settings)
    app.extensions[_WATCH] = Watch(app, Delivery(ask, settings))


def start(app: Flask) -> None:
    """Begin to look for alarms in this process, after it was forked.

    Args:
        app: the app.
    """
    cast(Watch, app.extensions[_WATCH]).start()


def close(app: Flask) -> None:
    """End the looking, because this process stops.

    Args:
        app: the app.
    """
    cast(Watch, app.extensions[_WATCH]).close()


def some_worker_sends() -> bool:
    """Tell whether some worker looks for alarms, as far as seen from this one."""
    return cast(Watch, current_app.extensions[_WATCH]).term.is_done_by_some()


def delivery() -> Delivery:
    """Return what sends for the app that is answering."""
    return cast(Watch, current_app.extensions[_WATCH]).delivery
