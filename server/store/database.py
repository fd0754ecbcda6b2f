"""One connection rule for both databases, and two ways to use it.

The phone forgets an event once the server has answered for it, so that answer
is the only copy's receipt: nothing is answered before COMMIT, and COMMIT means
that the disk has it. On SQLite that is WAL with synchronous=FULL; NORMAL can
lose the last commits when the power goes. Both are read back on each new
connection, because a pragma that is not taken says nothing.

A writer takes its lock at once: BEGIN IMMEDIATE on SQLite, where a deferred
transaction that reads first and writes later fails when another writer came
between; one advisory lock for all writers on PostgreSQL, where it would succeed
and act on what is no longer so. So whatever is read inside `writing` stays true
until it is left, on both, and a guard may be written as it is thought: read,
decide, write.
"""

import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from flask import Flask
from flask_sqlalchemy import SQLAlchemy
from flask_sqlalchemy.session import Session
from sqlalchemy import Connection, Engine, event, text
from sqlalchemy.exc import DBAPIError
from sqlalchemy.orm import scoped_session

from server.store import disk
from server.store.models import Base

BUSY_MS = 10_000  # how long one writer waits for another
IDLE_MS = 30_000  # a host that vanished in mid-writing holds the others up so long
POOL = 40  # threads of a worker, and some
WRITERS = 86_286_744  # any number, the same in every worker

db = SQLAlchemy(model_class=Base)
_OPEN = "vatside_open"


def prepare(app: Flask) -> Engine:
    """Bind the database to the app and set the rules for its connections.

    Args:
        app: the app, its SQLALCHEMY_DATABASE_URI set.

    Returns:
        The engine, not yet connected.
    """
    url = app.config["SQLALCHEMY_DATABASE_URI"]
    options: dict[str, Any] = {"pool_size": POOL, "max_overflow": 20}
    if url.startswith("sqlite"):
        options["connect_args"] = {"timeout": BUSY_MS / 1000}
    else:
        options["pool_pre_ping"] = True
    app.config["SQLALCHEMY_ENGINE_OPTIONS"] = options
    db.init_app(app)
    with app.app_context():
        engine = db.engine
    keep_rules(engine)
    return engine


def keep_rules(engine: Engine) -> None:
    """Hold each connection of an engine to the one rule.

    Args:
        engine: of either kind, not yet connected.
    """
    if engine.dialect.name == "sqlite":
        event.listen(engine, "connect", _on_sqlite_connect)
        event.listen(engine, "begin", _on_sqlite_begin)
    else:
        event.listen(engine, "connect", _on_postgres_connect)


def _on_sqlite_connect(connection: sqlite3.Connection, _record: object) -> None:
    # The driver's own BEGIN comes late and is never IMMEDIATE; ours replaces it.
    connection.isolation_level = None
    for pragma, value, wanted in (
        ("busy_timeout", str(BUSY_MS), BUSY_MS),
        ("journal_mode", "wal", "wal"),
        ("synchronous", "full", 2),
        ("foreign_keys", "on", 1),
    ):
        found = connection.execute(f"PRAGMA {pragma}").fetchone()[0]
        if found != wanted:
            connection.execute(f"PRAGMA {pragma}={value}")
            found = connection.execute(f"PRAGMA {pragma}").fetchone()[0]
        if found != wanted:
            connection.close()
            raise RuntimeError(f"SQLite keeps {pragma}={found}, {wanted} is needed")


def _on_sqlite_begin(connection: Connection) -> None:
    writes = connection.get_execution_options().get("vatside_writes", False)
    connection.exec_driver_sql("BEGIN IMMEDIATE" if writes else "BEGIN")


def _on_postgres_connect(connection: Any, _record: object) -> None:
    with connection.cursor() as cursor:
        cursor.execute("SET synchronous_commit = on")
        cursor.execute(f"SET lock_timeout = {BUSY_MS}")
        cursor.execute(f"SET idle_in_transaction_session_timeout = {IDLE_MS}")
    connection.commit()


def _lock_writers(connection: Connection) -> None:
    # SQLite has its lock since BEGIN IMMEDIATE.
    if connection.dialect.name != "sqlite":
        connection.execute(text("SELECT pg_advisory_xact_lock(:k)"), {"k": WRITERS})


@contextmanager
def reading() -> Iterator[scoped_session[Session]]:
    """Give a session that sees one state, and let its connection go after.

    Inside another `reading` or `writing` it joins that one.
    """
    session = db.session
    if session().info.get(_OPEN):
        yield session
        return
    with _alone(session):
        yield session
        session.rollback()


@contextmanager
def writing() -> Iterator[scoped_session[Session]]:
    """Give a session whose work is on disk when the block is left, or not at all.

    Inside another `writing` it joins that one; inside a `reading` it is misuse.
    """
    session = db.session
    found = session().info.get(_OPEN)
    if found == "reading":
        raise RuntimeError("a reader cannot become a writer")
    if found:
        yield session
        return
    try:
        with _alone(session, writes=True):
            yield session
            session.commit()
    except DBAPIError as problem:
        disk.note(problem)
        raise
    disk.note(None)


@contextmanager
def _alone(session: scoped_session[Session], writes: bool = False) -> Iterator[None]:
    session.rollback()
    info = session().info
    info[_OPEN] = "writing" if writes else "reading"
    try:
        if writes:
            _lock_writers(
                session.connection(execution_options={"vatside_writes": True})
            )
        elif db.engine.dialect.name != "sqlite":
            # Or each question would be answered from another state.
            session.connection(execution_options={"isolation_level": "REPEATABLE READ"})
        yield
    except BaseException:
        session.rollback()
        raise
    finally:
        info.pop(_OPEN, None)
