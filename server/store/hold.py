"""Who has the database's file: one server with its workers, or one restore.

An acknowledged entry that goes into a file which a restore has just replaced is
lost, so the two must know of each other. A lock of the operating system on a
file beside the database ends with its last holder, also when that was killed;
no clock and no process number is trusted. Workers share their server's lock by
the fork. What the file says is only for whoever is refused.

A second server on the same file is refused too: it would have a clock and a
practice rate of its own, and a restore could not be told from outside.
"""

import contextlib
import fcntl
import os
import time
from pathlib import Path
from types import TracebackType

from server.store.files import FILE_MODE, FOLDER_MODE, give_to_owner

SERVER, RESTORE = "server", "restore"
LOOK_S = 0.1

_REFUSED = {
    (SERVER, SERVER): "Another Vatside server ({who}) runs on {file}. "
    "Stop that one, or give this one a folder of its own (--data DIR).",
    (SERVER, RESTORE): "A Vatside server ({who}) runs on {file}. "
    "Stop it first: Ctrl+C where it was started, or stop its service.",
    (RESTORE, SERVER): "A copy is being put back into {file} ({who}). "
    "Start the server when that is done.",
    (RESTORE, RESTORE): "A copy is being put back into {file} already ({who}).",
}


class InUseError(ValueError):
    """Say in plain words who has the database's file."""


class Hold:
    """A lock on one database's file, until it is closed or the process ends."""

    def __init__(self, handle: int) -> None:
        self._handle = handle

    def close(self) -> None:
        """Let others have the file."""
        os.close(self._handle)

    def __enter__(self) -> "Hold":
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        value: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self.close()


def hold(database: Path | None, what: str, wait_s: float = 0.0) -> Hold | None:
    """Take a database's file for this process and those that it forks.

    Args:
        database: SQLite's file; None for another database.
        what: SERVER or RESTORE.
        wait_s: how long to wait for one that is just ending [s].

    Returns:
        The lock, to be kept as long as the file is needed; None without a file.

    Raises:
        InUseError: another process has it; the words say what to do.
    """
    if database is None:
        return None
    handle = _open(database)
    end_s = time.monotonic() + wait_s
    while not _is_taken(handle):
        if time.monotonic() >= end_s:
            text = os.pread(handle, 200, 0).decode("utf-8", "replace")
            os.close(handle)
            raise InUseError(_refusal(text, what, database))
        time.sleep(LOOK_S)
    with contextlib.suppress(OSError):  # a full disk; these are only words
        os.ftruncate(handle, 0)
        os.pwrite(handle, f"{what} {os.getpid()}\n".encode(), 0)
    return Hold(handle)


def require_no_restore(database: Path | None) -> None:
    """Refuse to write into a database that is just being replaced.

    Args:
        database: SQLite's file; None for another database.

    Raises:
        InUseError: a restore is under way.
    """
    if database is None:
        return
    handle = _open(database)
    try:
        text = os.pread(handle, 200, 0).decode("utf-8", "replace")
        if text.startswith(RESTORE) and not _is_taken(handle):
            raise InUseError(_refusal(text, SERVER, database))
    finally:
        os.close(handle)


def _open(database: Path) -> int:
    file = database.resolve()  # by any of its names it is one file
    file.parent.mkdir(parents=True, exist_ok=True, mode=FOLDER_MODE)
    lock = file.with_name(file.name + ".lock")
    try:
        handle = os.open(lock, os.O_RDWR | os.O_CREAT, FILE_MODE)
    except OSError as problem:
        raise InUseError(
            f"{lock} cannot be opened ({problem.strerror}). Run this as the user "
            "that the server runs as, on a disk that can be written."
        ) from problem
    give_to_owner(lock)
    return handle


def _is_taken(handle: int) -> bool:
    try:
        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except BlockingIOError:
        return False
    return True


def _refusal(text: str, what: str, database: Path) -> str:
    holder, _, number = text.strip().partition(" ")
    holder = holder if holder in (SERVER, RESTORE) else SERVER
    who = f"process {number}" if number.isdecimal() else "another process"
    return _REFUSED[holder, what].format(who=who, file=database)
