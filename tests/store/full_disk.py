"""A disk that takes nothing more, at the database's own edge."""

from contextlib import contextmanager

from sqlalchemy import event

from server import store

LIMITS = {
    # The first gives SQLITE_FULL, the second SQLITE_READONLY.
    "full": "PRAGMA max_page_count=1",
    "read_only": "PRAGMA query_only=ON",
}


@contextmanager
def disk_that_is(state):
    """Let every connection of the app find its disk full or write-protected."""
    engine = store.db.engine

    def limit(connection, _record):
        connection.execute(LIMITS[state])

    engine.dispose()
    event.listen(engine, "connect", limit)
    try:
        yield
    finally:
        event.remove(engine, "connect", limit)
        engine.dispose()
