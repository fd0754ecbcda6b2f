"""Move a SQLite database into an empty PostgreSQL one, all of it or nothing.

Every row keeps its number, so the log reads the same. The epoch is new: a phone
that meets the old database once more, by mistake, is told that it is another.
"""

import contextlib
import uuid
from pathlib import Path
from typing import Any

from sqlalchemy import (
    Connection,
    Engine,
    Table,
    create_engine,
    func,
    select,
    text,
    update,
)
from sqlalchemy.exc import OperationalError
from sqlalchemy.pool import NullPool

from server.store.copies import BackupError, check_file
from server.store.database import keep_rules
from server.store.hold import RESTORE, hold
from server.store.migrate import bring_up_to_date, newest_known, revision_of
from server.store.models import Base, DeviceRow, Head, LoggedEvent, PersonRow
from server.store.recipes import RecipeRow

AT_ONCE = 500  # rows
HELD = (LoggedEvent, PersonRow, DeviceRow)  # whose rows are somebody's
OURS = RecipeRow  # its table too, which lies in a file of its own


def move(file: Path, url: str) -> int:
    """Copy all of a SQLite database into an empty one of another kind.

    Args:
        file: the database; no server runs on it. It is only read.
        url: SQLAlchemy address of the other database.

    Returns:
        How many events the log holds there.

    Raises:
        BackupError: the file is not sound or of another version, or the other
            database holds something already; nothing was changed then.
        InUseError: a server runs on the file.
    """
    check_file(file)
    source = create_engine(f"sqlite:///{file.resolve()}", poolclass=NullPool)
    target = create_engine(url, poolclass=NullPool)
    for engine in (source, target):
        keep_rules(engine)
    with hold(file, RESTORE) or contextlib.nullcontext():
        if revision_of(source) != newest_known():
            raise BackupError(
                f"{file} is of an older Vatside: start this one on it once."
            )
        _begin(target)
        with source.connect() as old, target.connect() as new, new.begin():
            _require_empty(new)
            for table in reversed(Base.metadata.sorted_tables):
                new.execute(table.delete())
            for table in Base.metadata.sorted_tables:
                _copy(table, old, new)
            new.execute(update(Head).values(epoch=str(uuid.uuid4())))
            return int(new.execute(select(Head.n)).scalar_one())


def _begin(target: Engine) -> None:
    try:
        bring_up_to_date(target)
    except OperationalError as problem:
        raise BackupError(
            f"The database that DATABASE_URL names cannot be used: {problem.orig}"
        ) from problem


def _require_empty(new: Connection) -> None:
    # Recipes that came with the program are there after a mere start: they go.
    for row in HELD:
        if new.execute(select(func.count()).select_from(row)).scalar_one():
            raise BackupError(
                "The database that DATABASE_URL names is not empty. Name a new one."
            )


def _copy(table: Table, old: Connection, new: Connection) -> None:
    rows: list[dict[str, Any]] = []
    for row in (
        old.execution_options(yield_per=AT_ONCE).execute(select(table)).mappings()
    ):
        rows.append(dict(row))
        if len(rows) == AT_ONCE:
            new.execute(table.insert(), rows)
            rows = []
    if rows:
        new.execute(table.insert(), rows)
    _count_on(table, new)


def _count_on(table: Table, new: Connection) -> None:
    # PostgreSQL gives out numbers of its own, from 1, whatever was put in.
    column = table.autoincrement_column
    if column is None or new.dialect.name != "postgresql":
        return
    names = {"table": table.name, "column": column.name}
    sequence = new.execute(
        text("SELECT pg_get_serial_sequence(:table, :column)"), names
    ).scalar()
    if sequence:
        highest = select(func.coalesce(func.max(column), 0) + 1).scalar_subquery()
        new.execute(select(func.setval(sequence, highest, False)))
