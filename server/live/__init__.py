"""Many viewers, one log: follow what is stored and fold it into views."""

from collections.abc import Callable, Collection
from functools import partial
from typing import Any, cast

from flask import Flask, current_app

from server import store
from server.live.folds import Folds
from server.live.hub import Hub
from server.live.log import read_after
from server.live.mailbox import Mailbox
from server.live.places import Place
from server.live.rounds import Reads
from server.live.stream import greeting

__all__ = [
    "Folds",
    "Hub",
    "Mailbox",
    "Place",
    "Reads",
    "ask",
    "close",
    "greeting",
    "hub",
    "init_app",
    "join",
]

StillGood = Callable[[Collection[str]], Collection[str]]
# What is kept at most for a viewer on a slow line.
STREAM_BYTES = 131_072
_HUB = "vatside_hub"
_FOLDS = "vatside_folds"


def init_app(app: Flask, places: int, still_good: StillGood) -> None:
    """Give the app what its viewers share. No thread is started here.

    Args:
        app: the app, its store already in place.
        places: how many streams this process may hold at once.
        still_good: returns those of some tokens that may still watch.
    """

    def here(read: Callable[..., Any]) -> Callable[..., Any]:
        def reading(*args: object) -> Any:
            with app.app_context():
                return read(*args)

        return reading

    read_some = partial(read_after, most_bytes=STREAM_BYTES)
    reads = Reads(here(store.head_n), here(read_some), here(still_good))
    app.extensions[_HUB] = Hub(reads, places)
    app.extensions[_FOLDS] = Folds(store.epoch, read_after)


def hub(app: Flask | None = None) -> Hub:
    """Return what serves the streams of this process.

    Args:
        app: its app; None for the one that is answering.
    """
    return cast(Hub, (app or current_app).extensions[_HUB])


def ask(question: Callable[..., Any], *args: object) -> Any:
    """Put a question to the core about the log as it stands now.

    Args:
        question: function of the core that takes the desk first.
        *args: its other arguments.
    """
    return cast(Folds, current_app.extensions[_FOLDS]).ask(question, *args)


def close(app: Flask) -> None:
    """End all streams of this process, because it stops.

    Args:
        app: the app.
    """
    hub(app).close()


def join(app: Flask, most_s: float) -> None:
    """Wait until all streams of this process have ended.

    Args:
        app: the app.
        most_s: longest wait [s].
    """
    hub(app).join(most_s)
