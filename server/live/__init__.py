"""Many viewers, one log: follow what is stored and fold it into views."""

from collections.abc import Callable
from typing import Any, cast

from flask import Flask, current_app

from server import store
from server.live.folds import Folds
from server.live.follower import Follower
from server.live.log import read_after
from server.live.stream import stream

__all__ = ["Folds", "Follower", "ask", "close", "follower", "init_app", "stream"]

_FOLLOWER = "vatside_follower"
_FOLDS = "vatside_folds"


def init_app(app: Flask, places: int) -> None:
    """Give the app what its viewers share. No thread is started here.

    Args:
        app: the app, its store already in place.
        places: how many streams this process may hold at once.
    """

    def read_head() -> int:
        with app.app_context():
            return store.head_n()

    app.extensions[_FOLLOWER] = Follower(read_head, places)
    app.extensions[_FOLDS] = Folds(store.epoch, read_after)


def follower(app: Flask | None = None) -> Follower:
    """Return what watches the log for this process.

    Args:
        app: its app; None for the one that is answering.
    """
    return cast(Follower, (app or current_app).extensions[_FOLLOWER])


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
    follower(app).close()
