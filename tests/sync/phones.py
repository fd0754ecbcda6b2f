"""Builders for tests of the server: an app of its own, people, phones, events."""

import random
import tempfile
import uuid
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path

from flask import Flask
from sqlalchemy import create_engine

from server import auth, store
from server.app import create_app
from server.config import Clock, Settings
from server.store import receipts
from server.store.migrate import bring_up_to_date
from server.sync import Sender

NOON_MS = 1_790_000_000_000  # an instant in September 2026


@dataclass(frozen=True)
class HandClock(Clock):
    """A clock that a test sets by hand."""

    hands: list = field(default_factory=lambda: [NOON_MS])

    def now_ms(self):
        return self.hands[0]

    def tick(self, ms):
        self.hands[0] += ms


@cache
def migrated():
    """Return an empty database: a copy of it takes less than all the migrations."""
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "empty.sqlite3"
        engine = create_engine(f"sqlite:///{file}")
        bring_up_to_date(engine)
        engine.dispose()
        return file.read_bytes()


def make_app(folder, database_url="", clock=None):
    return create_app(
        Settings(
            data_dir=folder,
            database_url=database_url,
            clock=clock or HandClock(),
            static_dir=folder,
        )
    )


def bare_app(url):
    """Make an app with a store and nothing else: quick to start."""
    app = Flask("server", static_folder=None)
    app.config["SQLALCHEMY_DATABASE_URI"] = url
    store.init_app(app)
    app.extensions[receipts.KEY] = b"the tests' own key"  # has no folder for one
    return app


def close_app(app):
    with app.app_context():
        store.db.session.remove()
        store.db.engine.dispose()


def a_person(role="maker", name="Ada", now_ms=NOON_MS):
    return auth.add_person(name, role, now_ms)


def a_uuid(rng=random):
    return str(uuid.UUID(int=rng.getrandbits(128), version=4))


def note(device, seq, person, text="warm", **changed):
    """Build one sound event of the simplest kind."""
    event = {
        "id": a_uuid(),
        "make": "00000000-0000-4000-8000-00000000aaaa",
        "device": device,
        "seq": seq,
        "person": person,
        "at_ms": NOON_MS,
        "entered_ms": NOON_MS,
        "tz_min": 60,
        "mono_ms": 1234.5,
        "boot": "00000000-0000-4000-8000-00000000bbbb",
        "off_ms": 0,
        "off_q_ms": None,
        "kind": "note_added",
        "v": 1,
        "ref": None,
        "data": {"text": text},
    }
    return event | changed


def a_phone(person="ada", device=None, removed=False):
    """Build the sender of a push; `person` is an id."""
    return Sender(device or a_uuid(), person, removed)
