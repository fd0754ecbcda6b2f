"""Bring the tables up to date when the server starts."""

import time
from pathlib import Path

from alembic import command
from alembic.config import Config
from sqlalchemy import Connection, Engine, text
from sqlalchemy.exc import OperationalError

MIGRATIONS = Path(__file__).resolve().parent / "migrations"
LOCK = 86_286_743  # any number, the same in every worker


def bring_up_to_date(engine: Engine) -> None:
    """Run the migrations that this database lacks, all or none of them.

    Several workers may start at once: one migrates, the others wait for it.

    Args:
        engine: the database.
    """
    with _patiently(engine) as connection, connection.begin():
        if connection.dialect.name != "sqlite":
            connection.execute(text("SELECT pg_advisory_xact_lock(:k)"), {"k": LOCK})
        command.upgrade(_config(connection), "head")


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
