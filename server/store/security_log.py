"""What happened to the doors of this server: who was let in, sent away, changed.

Rules. A line says when (UTC, by the real clock), what, and whom it was about: ids
of people and phones, never their names; never a code, a token or an address. Where
a stranger came from is told as a short hash under this server's own key, so that
lines of one source can be put together and not be turned back into an address.

Lines are only ever added, each in one write, so that workers do not mix theirs.
It is a file and no table: it must outlive a restore, which puts the tables back.
It holds at most two files of MOST_BYTES, then the older half goes. What strangers
can cause without end is counted instead of written line by line, or they could
push out of the file what they had done before.
"""

import fcntl
import hashlib
import hmac
import json
import logging
import os
import secrets
import threading
import time
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from server.store.files import made_once

logger = logging.getLogger(__name__)

NAME = "security.log"
KEY_NAME = "security-key"
MOST_BYTES = 1 << 20  # some seven thousand lines
HASH_SIGNS = 12
# Of these at most so many lines a minute and worker; the rest is counted.
STRANGERS_MAY = (
    "pairing_failed",
    "link_failed",
    "pin_failed",
    "host_refused",
    "origin_refused",
    "throttled",
)
MOST_A_MINUTE = 10


class SecurityLog:
    """Adds lines to the log of one server.

    Args:
        data_dir: folder of the data.
    """

    def __init__(self, data_dir: Path) -> None:
        self._dir = data_dir
        self._lock = threading.Lock()
        self._minute: dict[str, tuple[int, int]] = {}

    def note(
        self,
        what: str,
        by: str | None = None,
        device: str | None = None,
        about: str | None = None,
        source: str | None = None,
        **more: str | None,
    ) -> None:
        """Add a line; a failure to do so is logged and stops nothing.

        Args:
            what: what happened, a key in the past tense.
            by: id of the person who did it.
            device: id of the phone that it was done from.
            about: id of the person, phone or link that it was done to.
            source: address it came from; only a keyed hash is written.
            **more: further keys; neither names nor secrets.
        """
        unwritten = self._unwritten(what)
        if unwritten is None:
            return
        line: dict[str, Any] = {"at": _now_text(), "what": what}
        line |= {"by": by, "device": device, "about": about, **more}
        try:
            line["source"] = self._source(source) if source else None
            line["unwritten_before"] = unwritten or None
            kept = {name: value for name, value in line.items() if value is not None}
            self._append(json.dumps(kept, separators=(",", ":")) + "\n")
        except OSError as problem:
            logger.error("the security log cannot be written: %s", problem)

    def _unwritten(self, what: str) -> int | None:
        """Return how many lines were left out before this one, None to leave it out."""
        if what not in STRANGERS_MAY:
            return 0
        minute = int(time.monotonic() // 60)
        with self._lock:
            last, count = self._minute.get(what, (minute, 0))
            if last != minute:
                self._minute[what] = (minute, 1)
                return max(0, count - MOST_A_MINUTE)
            self._minute[what] = (minute, count + 1)
            return 0 if count < MOST_A_MINUTE else None

    def _source(self, address: str) -> str:
        key = made_once(self._dir / KEY_NAME, lambda: secrets.token_bytes(32))
        return hmac.new(key, address.encode(), hashlib.sha256).hexdigest()[:HASH_SIGNS]

    def _append(self, line: str) -> None:
        file = self._dir / NAME
        flags = os.O_WRONLY | os.O_APPEND | os.O_CREAT
        while True:
            handle = os.open(file, flags, 0o600)
            try:
                fcntl.flock(handle, fcntl.LOCK_EX)
                if not _is_still(handle, file):
                    continue  # another worker has put it aside meanwhile
                if os.fstat(handle).st_size + len(line) > MOST_BYTES:
                    file.replace(_older(file))
                    continue
                os.write(handle, line.encode())
                return
            finally:
                os.close(handle)


def lines(data_dir: Path) -> Iterator[dict[str, Any]]:
    """Return the lines of a log, oldest first; a line cut off by a crash is left out.

    Args:
        data_dir: folder of the data.
    """
    for file in (_older(data_dir / NAME), data_dir / NAME):
        if not file.exists():
            continue
        for text in file.read_text("utf-8", "replace").splitlines():
            try:
                yield json.loads(text)
            except ValueError:
                continue


def _older(file: Path) -> Path:
    return file.with_name(file.name + ".1")


def _is_still(handle: int, file: Path) -> bool:
    try:
        return os.path.samestat(os.fstat(handle), file.stat())
    except FileNotFoundError:
        return False


def _now_text() -> str:
    return datetime.now(UTC).isoformat(timespec="seconds").replace("+00:00", "Z")
