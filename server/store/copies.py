"""Copy the database while the server runs."""

import contextlib
import os
import sqlite3
from pathlib import Path

from server.store.files import BESIDE, FILE_MODE, sync_file
from server.store.migrate import newest_known, revisions


class BackupError(RuntimeError):
    """Say in plain words why a copy was not made or not put back."""


def check_file(file: Path) -> None:
    """Refuse a file that is not a sound Vatside database that we can read.

    Args:
        file: the database or a copy of it; it is only read.

    Raises:
        BackupError: absent, damaged, something else, or of a newer Vatside.
    """
    if not file.is_file():
        raise BackupError(f"There is no file {file}.")
    try:
        with contextlib.closing(_open_to_read(file)) as database:
            answer = database.execute("PRAGMA integrity_check").fetchone()[0]
            is_ours = bool(database.execute(_OUR_TABLE).fetchone())
            found = is_ours and database.execute(_REVISION).fetchone()
    except sqlite3.DatabaseError as problem:
        raise BackupError(f"{file} is not a database: {problem}.") from problem
    if answer != "ok":
        raise BackupError(f"{file} is damaged: {answer}.")
    if not found:
        raise BackupError(f"{file} is a database, but not one of Vatside.")
    if found[0] not in revisions():
        raise BackupError(
            f"{file} was written by a newer Vatside (its tables are {found[0]}, "
            f"known here up to {newest_known()}). Install that version first."
        )


_OUR_TABLE = (
    "SELECT name FROM sqlite_master WHERE type = 'table' AND name = 'alembic_version'"
)
_REVISION = "SELECT version_num FROM alembic_version"


def _open_to_read(file: Path) -> sqlite3.Connection:
    return sqlite3.connect(f"{file.resolve().as_uri()}?mode=ro", uri=True)


def back_up(database: Path, target: Path) -> None:
    """Copy the server's database, also while the server runs.

    Args:
        database: the server's database.
        target: file to write; an older copy there is replaced.

    Raises:
        BackupError: there is no sound database to copy, the target is the
            database itself, or another file that a copy must not replace.
    """
    target = target.resolve()
    if not target.parent.is_dir():
        raise BackupError(f"There is no folder {target.parent}.")
    for ending in (*BESIDE, ".lock"):
        own = database.resolve()
        own = own.with_name(own.name + ending)
        if target == own or (target.exists() and own.exists() and target.samefile(own)):
            raise BackupError(
                f"{target} belongs to the database itself. Name another file, best "
                "on another disk."
            )
    if target.exists() and not _is_database(target):
        raise BackupError(
            f"{target} is there already and is no copy of a database. Name another."
        )
    copy(database, target)


def _is_database(file: Path) -> bool:
    if not file.is_file():
        return False
    with file.open("rb") as opened:
        start = opened.read(16)
    return start in (b"", b"SQLite format 3\x00")  # sqlite.org/fileformat.html#1.3.1


def copy(source: Path, target: Path) -> None:
    """Copy a database whole, also while others write to it.

    A plain copy of the file would miss what still lies in its write-ahead log.
    The copy is checked, and on disk, before it gets its name, so a file of that
    name is always a sound one. It needs no file beside it.

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
        os.close(os.open(scratch, os.O_CREAT | os.O_EXCL | os.O_WRONLY, FILE_MODE))
        with (
            contextlib.closing(_open_to_read(source)) as old,
            contextlib.closing(sqlite3.connect(scratch)) as new,
        ):
            old.backup(new)
            new.execute("PRAGMA journal_mode=DELETE")
        check_file(scratch)
        sync_file(scratch)
        scratch.replace(target)
        sync_file(target.parent)
    except (sqlite3.Error, OSError) as problem:
        raise BackupError(f"{source} was not copied: {problem}.") from problem
    finally:
        scratch.unlink(missing_ok=True)
