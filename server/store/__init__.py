"""The only place that speaks SQL."""

from pathlib import Path

from flask import Flask
from sqlalchemy import make_url

from server.store.database import db, prepare, reading, writing
from server.store.files import make_private
from server.store.head import epoch, head_n, new_epoch
from server.store.log import count_events, events_after, events_of_make, every_event
from server.store.migrate import bring_up_to_date

__all__ = [
    "count_events",
    "db",
    "epoch",
    "events_after",
    "events_of_make",
    "every_event",
    "head_n",
    "init_app",
    "new_epoch",
    "reading",
    "writing",
]


def init_app(app: Flask) -> None:
    """Bind the database to the app and bring its tables up to date.

    Args:
        app: the app, its SQLALCHEMY_DATABASE_URI set.
    """
    url = make_url(app.config["SQLALCHEMY_DATABASE_URI"])
    if url.get_backend_name() == "sqlite" and url.database:
        make_private(Path(url.database))
    bring_up_to_date(prepare(app))
