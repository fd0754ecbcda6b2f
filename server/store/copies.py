"""Copy the database while the server runs, and put a copy back."""

import contextlib
import sqlite3
from pathlib import Path


class BackupError(RuntimeError):
    """Say in plain words why a copy was not made or not put back."""


def check_file(file: Path) -> None:
    """Refuse a file that is not a sound Vatside database.

    Args:
        file: the database or a copy of it; it is only read.

    Raises:
        BackupError: absent, damaged, or something else.
    """
    if not file.is_file():
        raise BackupError(f"There is no file {file}.")
    try:
        with contextlib.closing(_open_to_read(file)) as database:
            answer = database.execute("PRAGMA integrity_check").fetchone()[0]
            names = {row[0] for row in database.execute(_TABLES)}
    except sqlite3.DatabaseError as problem:
        raise BackupError(f"{file} is not a database: {problem}.") from problem
    if answer != "ok":
        raise BackupError(f"{file} is damaged: {answer}.")
    if "alembic_version" not in names:
        raise BackupError(f"{file} is a database, but not one of Vatside.")


_TABLES = "SELECT name FROM sqlite_master WHERE type = 'table'"


def _open_to_read(file: Path) -> sqlite3.Connection:
    return sqlite3.connect(f"{file.resolve().as_uri()}?mode=ro", uri=True)


def copy(source: Path, target: Path) -> None:
    """Copy a database whole, also while others write to it.

    A plain copy of the file would miss what still lies in its write-ahead log.
    The copy is checked before it gets its name, so a file of that name is
    always a sound one.

    Args:
        source: database to copy.
        target: file to write; replaced when it exists.

    Raises:
        BackupError: there is no sound database to copy.
    """
    if not source.is_file():
        raise BackupError(f"There is no database {source}.")
    scratch = target.with_name(target.name + ".part")
    scratch.unlink(missing_ok=True)
    try:
        with (
            contextlib.closing(_open_to_read(source)) as old,
            contextlib.closing(sqlite3.connect(scratch)) as new,
        ):
            old.backup(new)
        check_file(scratch)
        scratch.replace(target)
    except sqlite3.Error as problem:
        raise BackupError(f"{source} was not copied: {problem}.") from problem
    finally:
        scratch.unlink(missing_ok=True)


def put_back(file: Path, database: Path) -> Path | None:
    """Replace the database by a copy, keeping the old one beside it.

    Args:
        file: copy to put back.
        database: the server's database; the server must be stopped.

    Returns:
        Where the old database was kept, or None when there was none.

    Raises:
        BackupError: the copy is not sound, or the database could not be saved.
    """
    check_file(file)
    kept: Path | None = None
    if database.is_file():
        kept = _free_name(database)
        copy(database, kept)
    database.parent.mkdir(parents=True, exist_ok=True)
    fresh = database.with_name(database.name + ".new")
    copy(file, fresh)
    # These belong to the old database and would be played into the new one, so
    # they go first; what they hold is in the copy kept above.
    for ending in ("-wal", "-shm"):
        database.with_name(database.name + ending).unlink(missing_ok=True)
    fresh.replace(database)
    return kept


def _free_name(database: Path) -> Path:
    number = 1
    while True:
        name = database.with_name(f"{database.stem}-before-restore-{number}.sqlite3")
        if not name.exists():
            return name
        number += 1
