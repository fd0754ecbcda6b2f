"""Files that the server's user alone may read, and that are on disk when told so."""

import logging
import os
import stat
import tempfile
from collections.abc import Callable
from pathlib import Path

log = logging.getLogger(__name__)

FOLDER_MODE = 0o700
FILE_MODE = 0o600
BESIDE = ("", "-wal", "-shm", "-journal")  # what SQLite keeps of one database


def make_folder(folder: Path) -> None:
    """Make the folder of the data, or close one that is there to others.

    A folder that all may write to, such as /tmp, is left as it is: others work
    in it.

    Args:
        folder: the folder.
    """
    folder.mkdir(parents=True, exist_ok=True, mode=FOLDER_MODE)
    if not folder.stat().st_mode & stat.S_ISVTX:
        _close(folder, FOLDER_MODE)


def make_private(database: Path) -> None:
    """Make a database's file, or close one that is there to others.

    SQLite gives its files beside a database the same rights.

    Args:
        database: the database's file; its folder is there.
    """
    try:
        os.close(os.open(database, os.O_CREAT | os.O_RDWR, FILE_MODE))
    except OSError as problem:
        # Whoever connects next says so in the database's own words.
        log.warning("%s cannot be opened: %s", database, problem.strerror)
    for ending in BESIDE:
        file = database.with_name(database.name + ending)
        if file.exists():
            _close(file, FILE_MODE)
            give_to_owner(file)


def _close(path: Path, mode: int) -> None:
    if stat.S_IMODE(path.stat().st_mode) & ~mode == 0:
        return
    try:
        path.chmod(mode)
    except OSError as problem:
        log.warning(
            "others may read %s, and it cannot be changed: %s", path, problem.strerror
        )


def give_to_owner(file: Path) -> None:
    """Let a file that root made belong to the server's user, as its folder does.

    Args:
        file: the file.
    """
    folder = file.parent.stat()
    if os.geteuid() == 0 and file.stat().st_uid != folder.st_uid:
        os.chown(file, folder.st_uid, folder.st_gid)


def sync_file(file: Path) -> None:
    """Return when a file, or the names in a folder, are on disk.

    Args:
        file: the file or folder.
    """
    handle = os.open(file, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)


def made_once(file: Path, make: Callable[[], bytes]) -> bytes:
    """Return what a file holds, made if there is none yet; the first one stays.

    Args:
        file: the file.
        make: makes what it is to hold.
    """
    if not file.exists():
        _make(file, make())
    return file.read_bytes()


def _make(file: Path, content: bytes) -> None:
    # mkstemp opens with 0600. Several workers may come here at once: a link
    # fails where a name is taken, so the first content stays.
    handle, temporary = tempfile.mkstemp(dir=file.parent, prefix="." + file.stem)
    try:
        with os.fdopen(handle, "wb") as out:
            out.write(content)
            out.flush()
            os.fsync(out.fileno())
        try:
            os.link(temporary, file)
        except FileExistsError:
            return
        sync_file(file.parent)
    finally:
        Path(temporary).unlink()
