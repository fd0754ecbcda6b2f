"""Put a copy of the database back.

Rules. Nothing is touched before the copy is known to be good: sound, ours, and
brought up to date under a name of its own. The database as it was stays beside,
with all that its write-ahead log held. The new one takes the name in one step,
its epoch already new, so that a crash at any point leaves one whole database of
that name. Whoever else has the old one open is found out before that step.
"""

import contextlib
import os
import shutil
import sqlite3
import uuid
from collections.abc import Iterator
from pathlib import Path
from typing import NamedTuple

from sqlalchemy import create_engine, select, update
from sqlalchemy.pool import NullPool

from server.store.copies import BackupError, check_file, copy
from server.store.database import keep_rules
from server.store.files import BESIDE, FILE_MODE, give_to_owner, make_folder, sync_file
from server.store.hold import RESTORE, hold
from server.store.migrate import bring_up_to_date
from server.store.models import Head


class Restored(NamedTuple):
    """What was put back, and where the database as it was is kept."""

    events: int
    kept: Path | None


def put_back(file: Path, database: Path) -> Restored:
    """Replace the database by a copy, keeping the old one beside it.

    Args:
        file: copy to put back.
        database: the server's database.

    Returns:
        What was put back; `kept` is None when there was no database.

    Raises:
        BackupError: the copy is not sound or of a newer Vatside, or another
            program has the database open; nothing was changed.
        InUseError: a server runs, or another restore.
    """
    database = database.resolve()
    make_folder(database.parent)
    with hold(database, RESTORE) or contextlib.nullcontext():
        check_file(file)
        if database.exists() and file.samefile(database):
            raise BackupError(f"{file} is the database itself.")
        fresh = database.with_name(database.name + ".new")
        copy(file, fresh)
        try:
            events = _bring_to_life(fresh)
            return Restored(events, _swap(fresh, database))
        finally:
            for ending in BESIDE:
                fresh.with_name(fresh.name + ending).unlink(missing_ok=True)


def _bring_to_life(fresh: Path) -> int:
    engine = create_engine(f"sqlite:///{fresh}", poolclass=NullPool)
    keep_rules(engine)
    bring_up_to_date(engine)
    with engine.connect() as connection, connection.begin():
        connection.execute(update(Head).values(epoch=str(uuid.uuid4())))
        events = connection.execute(select(Head.n)).scalar_one()
    engine.dispose()
    with contextlib.closing(sqlite3.connect(fresh)) as opened:
        opened.execute("PRAGMA journal_mode=DELETE")  # one file, nothing beside it
    give_to_owner(fresh)
    sync_file(fresh)
    return int(events)


def _swap(fresh: Path, database: Path) -> Path | None:
    kept = None
    with _shut(database) as is_one_file:
        if database.exists():
            kept = _free_name(database)
            _keep(database, kept)
        if not is_one_file:
            # These belong to the old database and would be played into the new
            # one; they are kept beside the old one.
            for ending in BESIDE[1:]:
                database.with_name(database.name + ending).unlink(missing_ok=True)
        sync_file(database.parent)
        fresh.replace(database)
        sync_file(database.parent)
    return kept


@contextlib.contextmanager
def _shut(database: Path) -> Iterator[bool]:
    """Let nobody else open the old database; tell whether it is one file now."""
    if not database.exists():
        yield False
        return
    # Without a wait: nobody but a server would let it go.
    opened = sqlite3.connect(database, timeout=0, isolation_level=None)
    with contextlib.closing(opened):
        yield _fold(opened, database)


def _fold(opened: sqlite3.Connection, database: Path) -> bool:
    try:
        opened.execute("PRAGMA locking_mode=EXCLUSIVE")
        # Brings the write-ahead log into the file; refused while anybody else
        # has the database open, also a program that knows nothing of our lock.
        opened.execute("PRAGMA journal_mode=DELETE")
        opened.execute("BEGIN EXCLUSIVE")
    except sqlite3.DatabaseError as problem:
        if problem.sqlite_errorcode in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED):
            raise BackupError(
                f"Another program has {database} open. Stop it first."
            ) from problem
        return False  # damaged, or the disk is full: its files are kept as they lie
    return True


def _keep(database: Path, kept: Path) -> None:
    for ending in BESIDE:
        file = database.with_name(database.name + ending)
        if not file.exists():
            continue
        name = kept.with_name(kept.name + ending)
        try:
            os.link(file, name)  # takes no room, and cannot be half done
        except OSError:
            shutil.copyfile(file, name)
            name.chmod(FILE_MODE)
            give_to_owner(name)
            sync_file(name)


def _free_name(database: Path) -> Path:
    number = 1
    while True:
        name = database.with_name(f"{database.stem}-before-restore-{number}.sqlite3")
        if not name.exists():
            return name
        number += 1
