"""Copy a SQLite database while it is in use."""

import sqlite3
from pathlib import Path

from server.store.database import db


def backup_to(path: Path) -> None:
    """Write a whole and consistent copy of the database.

    A copy made with the file system lacks what is still in the write-ahead log.

    Args:
        path: file to write; it must not exist.

    Raises:
        ValueError: the database is not SQLite, or the file exists.
    """
    if db.engine.dialect.name != "sqlite":
        raise ValueError("only SQLite is copied here; use pg_dump for PostgreSQL")
    if path.exists():
        raise ValueError(f"{path} exists already")
    with db.engine.connect() as connection:
        source = connection.connection.driver_connection
        assert isinstance(source, sqlite3.Connection)
        target = sqlite3.connect(path)
        try:
            source.backup(target)
        finally:
            target.close()
