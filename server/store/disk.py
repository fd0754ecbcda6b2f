"""Whether there is room to write, and what to say when there is not.

Two things tell: how much the file system has left, and what the database said
when it was last asked to write. The second also knows of limits that the first
does not see, such as a quota or another machine's disk. It counts until a write
goes well again, and no longer than BELIEVED_S: this worker may have no more to
write.
"""

import logging
import os
import time
from pathlib import Path
from typing import Any, NamedTuple

from flask import current_app
from sqlalchemy import make_url
from sqlalchemy.exc import DBAPIError

from server.config import settings

log = logging.getLogger(__name__)

FINE, NEARLY_FULL, FULL, READ_ONLY = "fine", "nearly_full", "full", "read_only"
STOPPED = (FULL, READ_ONLY)
MB = 1_000_000
NEARLY_FULL_BYTES = 500 * MB  # some years of makes, or the copies of a few weeks
FULL_BYTES = 2 * MB  # one push and the write-ahead log of some others

# Primary codes of sqlite.org/rescode.html.
_SQLITE_READONLY, _SQLITE_IOERR, _SQLITE_FULL, _SQLITE_CANTOPEN = 8, 10, 13, 14
# Appendix A of PostgreSQL's manual.
_POSTGRES = {"53100": FULL, "25006": READ_ONLY}

_TROUBLE = "vatside_disk"
BELIEVED_S = 60  # phones try again within half a minute, so a lasting one is renewed
_now_s = time.monotonic  # a clock that nobody can set


class Disk(NamedTuple):
    """How it stands: one of the four states, and what is left [bytes], if known."""

    state: str
    free_bytes: int | None

    @property
    def text(self) -> str:
        """Return what it means and what to do, in words."""
        left = "" if self.free_bytes is None else f" {self.free_bytes // MB} MB left."
        return _TEXT[self.state] + left


_TEXT = {
    FINE: "There is room on the server's disk.",
    NEARLY_FULL: "The server's disk is nearly full: remove what is not needed from "
    "it, old copies first.",
    FULL: "The server's disk is full: nothing is recorded here until there is room; "
    "phones keep their entries. Remove what is not needed, never vatside.sqlite3.",
    READ_ONLY: "The server's disk takes no writing: nothing is recorded here; phones "
    "keep their entries. Often the disk is failing: copy the data elsewhere first.",
}


class Trouble(NamedTuple):
    """What the database last said, when [s], and whether the disk showed it too."""

    state: str
    at_s: float
    is_seen: bool


def look() -> Disk:
    """Return how the disk of the app that is answering stands."""
    folder = _folder()
    found = of_folder(folder or settings().data_dir)
    said = _said()
    if folder is None:  # the database lies elsewhere; only its own word counts
        return Disk(said or FINE, None)
    return found if found.state in STOPPED else Disk(said or found.state, found[1])


def _said() -> str | None:
    said: Trouble | None = current_app.extensions.get(_TROUBLE)
    # What the disk showed by itself is over as soon as it shows room.
    if said is None or said.is_seen or _now_s() - said.at_s > BELIEVED_S:
        return None
    return said.state


def _folder() -> Path | None:
    """Return SQLite's folder, None for another database."""
    url = make_url(current_app.config["SQLALCHEMY_DATABASE_URI"])
    if url.get_backend_name() != "sqlite" or not url.database:
        return None
    return Path(url.database).resolve().parent


def of_folder(folder: Path) -> Disk:
    """Return how the disk of a folder stands.

    Args:
        folder: the folder.
    """
    try:
        found = os.statvfs(folder)
    except OSError:
        return Disk(FINE, None)  # whatever is wrong there is not its room
    # The rest is kept for the system's own user.
    blocks = found.f_bfree if os.geteuid() == 0 else found.f_bavail
    free_bytes = blocks * found.f_frsize
    if found.f_flag & os.ST_RDONLY:
        return Disk(READ_ONLY, free_bytes)
    if free_bytes < FULL_BYTES:
        return Disk(FULL, free_bytes)
    return Disk(NEARLY_FULL if free_bytes < NEARLY_FULL_BYTES else FINE, free_bytes)


def trouble_of(error: DBAPIError) -> str | None:
    """Return FULL or READ_ONLY where that is why the database refused.

    Args:
        error: what the database said.
    """
    cause: Any = error.orig
    if hasattr(cause, "sqlstate"):
        return _POSTGRES.get(cause.sqlstate or "")
    code = getattr(cause, "sqlite_errorcode", 0) & 0xFF  # the rest tells details
    if code == _SQLITE_FULL:
        return FULL
    if code == _SQLITE_READONLY:
        return READ_ONLY
    if code in (_SQLITE_IOERR, _SQLITE_CANTOPEN):
        return _seen()
    return None


def _seen() -> str | None:
    folder = _folder()
    state = of_folder(folder).state if folder else FINE
    return state if state in STOPPED else None


def note(error: DBAPIError | None) -> None:
    """Remember how the last writing went.

    Args:
        error: what the database said; None when it went well.
    """
    before = current_app.extensions.get(_TROUBLE)
    found = None if error is None else trouble_of(error)
    if error is not None and found is None:
        return  # of another kind, such as a lock: it says nothing of the disk
    trouble = Trouble(found, _now_s(), _seen() == found) if found else None
    current_app.extensions[_TROUBLE] = trouble
    if found != (before.state if before else None):
        log.error("%s", Disk(found or FINE, None).text)
