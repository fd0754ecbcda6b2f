"""Bring the tables up to date when the server starts."""

import time
from pathlib import Path

from alembic import command
from alembic.config import Config
from alembic.migration import MigrationContext
from alembic.script import ScriptDirectory
from sqlalchemy import Connection, Engine, text
from sqlalchemy.exc import OperationalError

MIGRATIONS = Path(__file__).resolve().parent / "migrations"
LOCK = 86_286_743  # any number, the same in every worker


def bring_up_to_date(engine: Engine) -> None:
    """Run the migrations that this database lacks, all or none of them.

    Several workers may start at once: one migrates, the others wait for it.

    Args:
        engine: the database.

    Raises:
        ValueError: a newer Vatside has migrated it already.
    """
    with _patiently(engine) as connection, connection.begin():
        if connection.dialect.name != "sqlite":
            # Another host may be migrating for longer than a writer waits.
            connection.execute(text("SET LOCAL lock_timeout = 0"))
            connection.execute(text("SELECT pg_advisory_xact_lock(:k)"), {"k": LOCK})
        _require_known(connection)
        command.upgrade(_config(connection), "head")


def revisions() -> set[str]:
    """Return the states of the tables that this program knows."""
    return {row.revision for row in ScriptDirectory(str(MIGRATIONS)).walk_revisions()}


def newest_known() -> str:
    """Return the state of the tables that this program brings about."""
    return str(ScriptDirectory(str(MIGRATIONS)).get_current_head())


def revision_of(engine: Engine) -> str | None:
    """Return the state of a database's tables, None where it has none.

    Args:
        engine: the database.
    """
    with engine.connect() as connection:
        return MigrationContext.configure(connection).get_current_revision()


def _require_known(connection: Connection) -> None:
    found = MigrationContext.configure(connection).get_current_revision()
    if found is not None and found not in revisions():
        raise ValueError(
            f"This database was written by a newer Vatside (its tables are {found}, "
            f"known here up to {newest_known()}). Install that version again, or "
            "put a copy back that was made before it."
        )


def _patiently(engine: Engine) -> Connection:
    # SQLite does not wait when a second worker also turns WAL on.
    for _ in range(50):
        try:
            return engine.connect().execution_options(vatside_writes=True)
        except OperationalError as error:
            if "locked" not in str(error):
                raise
            time.sleep(0.1)
    return engine.connect().execution_options(vatside_writes=True)


def _config(connection: Connection) -> Config:
    config = Config()
    config.set_main_option("script_location", str(MIGRATIONS).replace("%", "%%"))
    config.set_main_option("path_separator", "os")
    config.attributes["connection"] = connection
    return config
